// The rib, round by round, until it comes back to where it began.
import { formatCount, formatNumber } from '../../units.js';
import { drawingWords, planWords } from '../../../words/en.js';
import { table } from '../dom.js';
import { guessMark } from '../guess.js';
import { sayHalf } from './lines.js';
import { sayRib } from '../parts.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */

const words = planWords.knit;

/** The runs of rounds of one section, each with its first round counted from the section's start. @param {Plan} plan @param {string} section */
export function spansOf(plan, section) {
  let from = 0;
  return plan.rounds
    .filter((span) => span.section === section)
    .map((span) => {
      const start = from;
      from += span.rounds;
      return { ...span, from: start };
    });
}

export const sayRounds = (/** @type {number} */ from, /** @type {number} */ to) =>
  from === to ? formatCount(from) : `${formatCount(from)}–${formatCount(to)}`;

/**
 * A run of rounds as rows: one where both socks are alike, else one a sock.
 * @param {Plan} plan @param {{ from: number, rounds: number, line: number, secondLine?: number }} span
 * @param {{ most: number, isMirrored: boolean }} how
 */
export function rowsOf(plan, span, { most, isMirrored }) {
  const name = sayRounds(span.from + 1, Math.min(span.from + span.rounds, most));
  const row = (/** @type {string} */ socks, /** @type {number} */ line) => {
    const halves = [sayHalf(plan.lines[line], 0), sayHalf(plan.lines[line], 1)];
    return { name, cells: isMirrored ? [socks, ...halves] : halves };
  };
  if (span.secondLine === undefined) return [row(words.rib.socks, span.line)];
  return [row(words.rib.sockA, span.line), row(words.rib.sockB, span.secondLine)];
}

/**
 * Lines of rib as a table. On paper, where room is dear, halves that read the same are told once.
 * @param {Make} h @param {string} caption @param {{ rows: ReturnType<typeof rowsOf>, isMirrored: boolean, isBrief: boolean }} lines
 */
export function linesTable(h, caption, { rows, isMirrored, isBrief }) {
  const { round, sock, first, second, each } = words.rib;
  const areAlike = isBrief && rows.every(({ cells }) => cells.at(-1) === cells.at(-2));
  return table(h, {
    caption,
    heads: [round, ...(isMirrored ? [sock] : []), ...(areAlike ? [each] : [first, second])],
    rows: areAlike ? rows.map(({ name, cells }) => ({ name, cells: cells.slice(0, -1) })) : rows,
    className: 'lines',
  });
}

/** One whole turn of the rib, line by line. @param {Make} h @param {Plan} plan @param {boolean} [isBrief] */
export function ribTable(h, plan, isBrief = false) {
  const isStraight = plan.rib.roundsPerShift === 0;
  const period = Math.min(isStraight ? 1 : plan.spiral.periodRounds, plan.spiral.rounds);
  const spans = spansOf(plan, 'spiral').filter((span) => span.from < period);
  const most = isStraight ? plan.spiral.rounds : period;
  const isMirrored = spans.some((span) => span.secondLine !== undefined);
  const rows = spans.flatMap((span) => rowsOf(plan, span, { most, isMirrored }));
  return linesTable(h, words.rib.caption, { rows, isMirrored, isBrief });
}

/** What the rib is, how long it goes on, and how it leans. @param {Plan} plan */
export function sayRibLead(plan) {
  const rounds = drawingWords.rounds(plan.spiral.rounds);
  const { roundsPerShift } = plan.rib;
  const isStraight = roundsPerShift === 0;
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
  return [lead, ...rest].join(' ');
}

/** @param {Make} h @param {import('../showing.js').Showing} showing */
export function knitRib(h, showing) {
  const { plan } = showing;
  return [
    h('h3', { id: 'knit-rib' }, `${words.rib.title} `, guessMark(h, showing, 'rounds')),
    h('p', {}, sayRibLead(plan)),
    h('p', {}, words.rib.reading),
    ribTable(h, plan),
  ];
}
