// The chart's squares: the plan's runs written out stitch by stitch, and compared with the round below.
// Nothing here knows how a rib moves; it reads what the plan says of each round.

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {Plan['rounds'][number]} Span */
/** @typedef {{ number: number, section: string, halves: string[][], changed: boolean[][] }} ChartRound
 *   `number` from 1; `changed` where the rib stands otherwise than in the round below */

/** Every round of the sock and the run of rounds it is of. @param {Plan} plan @returns {Span[]} */
const spanOfEach = (plan) => plan.rounds.flatMap((span) => Array(span.rounds).fill(span));

/** @param {Plan} plan @param {Span} span @param {boolean} isSecond @returns {string[][]} what is worked, stitch by stitch */
function writeOut(plan, span, isSecond) {
  const line = plan.lines[isSecond ? (span.secondLine ?? span.line) : span.line];
  return line.halves.map((runs) =>
    runs.flatMap(([work, times]) => Array.from({ length: times }, () => String(work))),
  );
}

const isMade = (/** @type {string} */ work) => work.startsWith('m1');
const isPurl = (/** @type {string} */ work) => work === 'p' || work === 'm1p';

/**
 * Which stitches are knit where the one below was purled, or the other way round. A made stitch has none
 * below it.
 * @param {string[][]} halves @param {string[][]} below
 */
function findChanged(halves, below) {
  const under = below.flat();
  let next = 0;
  return halves.map((half) =>
    half.map((work) => {
      if (isMade(work)) return false;
      const isOther = isPurl(work) !== isPurl(under[next]);
      next += 1;
      return isOther;
    }),
  );
}

/**
 * @param {Plan} plan @param {{ from: number, to: number }} window first and last round, from 1
 * @param {boolean} isSecond of the second sock
 * @returns {ChartRound[]} from the lowest up
 */
export function roundsOf(plan, { from, to }, isSecond) {
  const spans = spanOfEach(plan);
  return spans.slice(from - 1, to).map((span, i) => {
    const below = spans[from + i - 2];
    const halves = writeOut(plan, span, isSecond);
    // Where the toe ends the rib begins; it has not moved.
    const isRib = below !== undefined && below.section !== 'toe';
    const changed = isRib
      ? findChanged(halves, below === span ? halves : writeOut(plan, below, isSecond))
      : halves.map((half) => half.map(() => false));
    return { number: from + i, section: span.section, halves, changed };
  });
}

/** Whether the second sock has a line of its own in these rounds. @param {Plan} plan @param {{ from: number, to: number }} window */
export const isPairUnlike = (plan, { from, to }) =>
  spanOfEach(plan)
    .slice(from - 1, to)
    .some(({ secondLine }) => secondLine !== undefined);

/** Runs of equal rounds inside the window. @param {Plan} plan @param {{ from: number, to: number }} window */
export function spansIn(plan, { from, to }) {
  let start = 1;
  return plan.rounds.flatMap((span) => {
    const first = Math.max(start, from);
    const last = Math.min(start + span.rounds - 1, to);
    start += span.rounds;
    return first > last ? [] : [{ ...span, first, last }];
  });
}
