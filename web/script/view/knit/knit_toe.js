// The toe: how it increases, and its stitches round by round.
import { formatCount } from '../../units.js';
import { planWords } from '../../../words/en.js';
import { table } from '../dom.js';
import { guessMark } from '../guess.js';
import { sayIncrease } from './lines.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */

const words = planWords.knit.toe;

const isSided = (/** @type {Plan} */ { toe }) =>
  toe.sides.some((sides) => sides === 'great' || sides === 'little');

/** The toe's first round that widens these sides: its line, and the second sock's where that differs. @param {Plan} plan @param {string} sides */
function firstOf(plan, sides) {
  const round = plan.toe.sides.findIndex((one) => one === sides);
  if (round < 0) return undefined;
  let done = 0;
  const span = plan.rounds.find(({ rounds }) => {
    done += rounds;
    return done > round;
  });
  return span && { line: plan.lines[span.line], second: plan.lines[span.secondLine ?? span.line] };
}

/** Every kind of increase round there is, told. @param {Plan} plan */
export function sayIncreases(plan) {
  return ['both', 'great', 'little'].flatMap((sides) => {
    const found = firstOf(plan, sides);
    if (!found) return [];
    const { line, second } = found;
    const halves = (/** @type {typeof line} */ one) =>
      words.halves(sayIncrease(one, 0), sayIncrease(one, 1));
    if (sides !== 'both') return [words.sided[sides](halves(line), halves(second))];
    return [(isSided(plan) ? words.bothSides : words.increase)(sayIncrease(line, 0))];
  });
}

/** What a toe round does, in a word or two. @param {Plan} plan @param {string} sides that it widens */
export function sayWork(plan, sides) {
  if (isSided(plan)) return words.work[sides];
  return sides === 'none' ? words.isPlain : words.isIncrease;
}

/** @param {Make} h @param {import('../showing.js').Showing} showing */
export function knitToe(h, showing) {
  const { plan } = showing;
  const { counts, sides } = plan.toe;
  const increases = sayIncreases(plan);
  const how =
    increases.length > 0
      ? [isSided(plan) ? words.lead : '', ...increases, words.plain].filter(Boolean)
      : [words.allPlain];
  const rows = counts.map((count, j) => ({
    name: String(j + 1),
    mark: sides[j] === 'none' ? '' : 'increase',
    cells: [sayWork(plan, sides[j]), formatCount(count / 2), formatCount(count)],
  }));
  return [
    h('h3', { id: 'knit-toe' }, `${words.title} `, guessMark(h, showing, 'toe')),
    ...how.map((text) => h('p', {}, text)),
    table(h, {
      caption: words.caption,
      heads: [words.round, words.workHead, words.half, words.stitches],
      rows,
      className: 'figures toe',
    }),
  ];
}
