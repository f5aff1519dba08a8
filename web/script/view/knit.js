// How to knit it: cast-on, the four passes of a round, the toe round by round, the rib, the cuff.
import { formatCount, formatNumber } from '../units.js';
import { drawingWords, planWords } from '../../words/en.js';
import { table } from './dom.js';
import { figuresIn } from './figures.js';
import { sayHalf, sayHalves, sayIncrease } from './lines.js';
import { markLastGood } from './page_state.js';
import { lengthTo, sayRib } from './parts.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./dom.js').Make} Make */

const words = planWords.knit;

/** @param {Make} h @param {Plan} plan */
function beginning(h, plan) {
  return [
    h('h3', {}, words.castOn.title),
    h(
      'ol',
      { class: 'steps' },
      words.castOn.steps(plan.castOn.wraps, plan.castOn.stitches).map((text) => h('li', {}, text)),
    ),
    h('h3', {}, words.passes.title),
    h(
      'ol',
      { class: 'passes' },
      words.passes.list.map((pass) => h('li', {}, pass)),
    ),
    h('p', {}, words.passes.turn),
  ];
}

/** @param {Make} h @param {Plan} plan */
function toe(h, plan) {
  const { counts } = plan.toe;
  const isIncrease = (/** @type {number} */ j) =>
    counts[j] !== (j === 0 ? plan.castOn.stitches : counts[j - 1]);
  // The toe's first increase round is worked by the line of its run.
  let done = 0;
  let increaseLine;
  for (const span of plan.rounds) {
    if (span.section === 'toe' && increaseLine === undefined && isIncrease(done))
      increaseLine = plan.lines[span.line];
    done += span.rounds;
  }
  const how = increaseLine
    ? [words.toe.increase(sayIncrease(increaseLine)), words.toe.plain, words.toe.made]
    : [words.toe.allPlain];
  const rows = counts.map((count, j) => ({
    name: String(j + 1),
    mark: isIncrease(j) ? 'increase' : '',
    cells: [
      isIncrease(j) ? words.toe.isIncrease : words.toe.isPlain,
      formatCount(count / 2),
      formatCount(count),
    ],
  }));
  return [
    h('h3', {}, words.toe.title),
    ...how.map((text) => h('p', {}, text)),
    table(h, {
      caption: words.toe.caption,
      heads: [words.toe.round, words.toe.work, words.toe.half, words.toe.stitches],
      rows,
      className: 'figures toe',
    }),
  ];
}

/** The runs of rounds of one section, each with its first round counted from the section's start. @param {Plan} plan @param {string} section */
function spansOf(plan, section) {
  let from = 0;
  return plan.rounds
    .filter((span) => span.section === section)
    .map((span) => {
      const start = from;
      from += span.rounds;
      return { ...span, from: start };
    });
}

const sayRounds = (/** @type {number} */ from, /** @type {number} */ to) =>
  from === to ? formatCount(from) : `${formatCount(from)}–${formatCount(to)}`;

/**
 * A run of rounds as rows: one where both socks are alike, else one a sock.
 * @param {Plan} plan @param {{ from: number, rounds: number, line: number, secondLine?: number }} span
 * @param {{ most: number, isMirrored: boolean }} how
 */
function rowsOf(plan, span, { most, isMirrored }) {
  const name = sayRounds(span.from + 1, Math.min(span.from + span.rounds, most));
  const row = (/** @type {string} */ socks, /** @type {number} */ line) => {
    const halves = [sayHalf(plan.lines[line], 0), sayHalf(plan.lines[line], 1)];
    return { name, cells: isMirrored ? [socks, ...halves] : halves };
  };
  if (span.secondLine === undefined) return [row(words.rib.socks, span.line)];
  return [row(words.rib.sockA, span.line), row(words.rib.sockB, span.secondLine)];
}

/** @param {Make} h @param {Plan} plan */
function rib(h, plan) {
  const rounds = drawingWords.rounds(plan.spiral.rounds);
  const { roundsPerShift } = plan.rib;
  const isStraight = roundsPerShift === 0;
  const period = Math.min(isStraight ? 1 : plan.spiral.periodRounds, plan.spiral.rounds);
  const spans = spansOf(plan, 'spiral').filter((span) => span.from < period);
  const most = isStraight ? plan.spiral.rounds : period;
  const isMirrored = spans.some((span) => span.secondLine !== undefined);
  const lead = isStraight
    ? words.rib.straight(sayRib(plan), rounds)
    : words.rib.spiral(
        sayRib(plan),
        roundsPerShift === 1 ? words.rib.everyRound : drawingWords.rounds(roundsPerShift),
        rounds,
      );
  const { periodRounds, pitchDeg } = plan.spiral;
  const over = plan.spiral.rounds % periodRounds;
  const rest = [
    !isStraight && periodRounds < plan.spiral.rounds
      ? words.rib.period(periodRounds, (plan.spiral.rounds - over) / periodRounds, over)
      : '',
    pitchDeg
      ? words.rib.pitch(`${formatNumber(pitchDeg)}°`, words.rib.leans[plan.rib.lean] ?? '')
      : '',
  ].filter(Boolean);
  return [
    h('h3', {}, words.rib.title),
    h('p', {}, [lead, ...rest].join(' ')),
    h('p', {}, words.rib.forward),
    h('p', {}, words.rib.reading),
    table(h, {
      caption: words.rib.caption,
      heads: isMirrored
        ? [words.rib.round, words.rib.sock, words.rib.first, words.rib.second]
        : [words.rib.round, words.rib.first, words.rib.second],
      rows: spans.flatMap((span) => rowsOf(plan, span, { most, isMirrored })),
      className: 'lines',
    }),
    h('p', {}, words.rib.tryOn),
  ];
}

/** @param {Make} h @param {Plan} plan @param {ReturnType<typeof figuresIn>} figures */
function cuff(h, plan, figures) {
  const spans = spansOf(plan, 'cuff');
  const bindOff = plan.yarn.sections.find(({ section }) => section === 'bindOff');
  const lines = spans.flatMap((span) => {
    const a = sayHalves(plan.lines[span.line]);
    if (span.secondLine === undefined) return [words.cuff.halves('', a)];
    return [
      words.cuff.halves(words.rib.sockA, a),
      words.cuff.halves(words.rib.sockB, sayHalves(plan.lines[span.secondLine])),
    ];
  });
  return [
    h('h3', {}, words.cuff.title),
    plan.cuff.rounds === 0
      ? h('p', {}, words.cuff.none)
      : h(
          'p',
          {},
          `${words.cuff.text(drawingWords.rounds(plan.cuff.rounds))} `,
          lines.map((line) => h('span', { class: 'line' }, line)),
          ` ${words.cuff.at(figures.length(lengthTo(plan, 'cuff')))}`,
        ),
    ...(bindOff ? words.cuff.bindOff(figures.yarn(bindOff.m)) : []).map((text) => h('p', {}, text)),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function viewKnit(h, showing) {
  const { plan, system } = showing;
  return [
    h('h2', {}, words.title),
    markLastGood(h, showing),
    h('p', {}, words.noHeel),
    h(
      'div',
      { class: 'columns knit' },
      h('div', {}, beginning(h, plan)),
      h('div', {}, toe(h, plan)),
      h('div', { class: 'broad' }, rib(h, plan), cuff(h, plan, figuresIn(system))),
    ),
  ];
}
