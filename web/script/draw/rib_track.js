// Where the rib stands in each run of rounds, read from the lines that are knit.

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {Plan['lines'][number]} Line */

/**
 * @typedef {object} Standing
 * @property {number} phase stitches from the half's start to the first purl column; below 0 where one is begun
 * @property {number} knit
 * @property {number} purl
 * @property {number} half stitches in a half
 */

/**
 * @typedef {object} Run a run of equal rounds above the toe
 * @property {string} section
 * @property {number} from its first round, from 0 at the tip
 * @property {number} rounds
 * @property {number} line place in the plan's lines
 * @property {boolean} isMove whether the rib has moved since the round before
 * @property {boolean} isBroken whether it moves and leans nowhere: its columns only change places, but for the cuff's
 * @property {Standing} [before] of a widening round: how the stitches stood that it is worked on
 * @property {Standing} standing
 */

const made = /** @type {Record<string, string>} */ ({ m1l: 'k', m1r: 'k', m1p: 'p' });

/**
 * Stitches from the round's start to its first purl column, made ones left out or counted in.
 * @param {Line} line @param {number} purl @param {boolean} isAfter
 */
function phaseOf(line, purl, isAfter) {
  let kind = '';
  let first = 0;
  for (const [work, times] of line.halves.flat()) {
    if (made[work] && !isAfter) continue;
    const stitch = made[work] ?? work;
    if (kind !== '' && stitch !== kind) break;
    kind = stitch;
    first += times;
  }
  return kind === 'p' ? first - purl : first;
}

/**
 * The runs above the toe, their phases unwound so that a column keeps its number all the way up.
 * @param {Plan} plan @param {boolean} isSecond @returns {Run[]}
 */
export function ribTrack(plan, isSecond) {
  let { knit, purl } = plan.rib;
  let half = plan.stitchCount / 2;
  let stage = 0;
  // Whole repeats that the columns have moved by: kept through a widening, for its columns go on.
  let turns = 0;
  /** @type {Standing | undefined} */
  let last;
  let from = 0;
  /** @type {Run[]} */
  const track = [];
  const stand = (/** @type {Line} */ line, /** @type {boolean} */ isAfter) => {
    const phase = phaseOf(line, purl, isAfter) + turns * (knit + purl);
    return { phase, knit, purl, half };
  };
  for (const { section, rounds, stitches, ...lines } of plan.rounds) {
    const start = from;
    from += rounds;
    if (section === 'toe') continue;
    const line = isSecond ? (lines.secondLine ?? lines.line) : lines.line;
    let standing = stand(plan.lines[line], false);
    const isBroken = plan.rib.roundsPerShift > 0 && knit === 1 && purl === 1;
    if (last && !isBroken) {
      turns += Math.round((last.phase - standing.phase) / (knit + purl));
      standing = stand(plan.lines[line], false);
    }
    const isMove = last !== undefined && standing.phase !== last.phase;
    /** @type {Run} */
    const run = {
      section,
      from: start,
      rounds,
      line,
      isMove,
      isBroken: isBroken && section !== 'cuff',
      standing,
    };
    if (stitches !== half * 2) {
      run.before = standing;
      ({ knit, purl } = plan.widening.stages[stage]);
      stage += 1;
      half = stitches / 2;
      run.standing = stand(plan.lines[line], true);
    }
    last = run.standing;
    track.push(run);
  }
  return track;
}
