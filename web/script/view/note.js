// The hand note: the five numbers a knitter writes on the back of her hand, and the next thing to do.
import { formatCount, formatPercent } from '../units.js';
import { planWords } from '../../words/en.js';
import { figuresIn } from './figures.js';
import { markLastGood } from './page_state.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */

const words = planWords.note;

/** @param {Make} h @param {Showing} showing */
export function viewNote(h, showing) {
  const { plan, system } = showing;
  const { yarn } = figuresIn(system);
  const wraps = formatCount(plan.castOn.wraps);
  const line = (/** @type {string} */ label, /** @type {string} */ figure) =>
    h('div', {}, h('dt', {}, label), h('dd', {}, figure));
  const take = yarn(plan.yarn.mWithMargin * plan.yarn.relativeError);
  const margin = formatPercent(plan.yarn.mWithMargin / plan.yarn.mPerPair - 1);
  return [
    h('h2', { class: 'unseen' }, words.title),
    markLastGood(h, showing) ?? h('p', { class: 'next' }, words.next(wraps)),
    h(
      'dl',
      { class: 'hand' },
      line(words.wraps, wraps),
      line(words.stitches, formatCount(plan.stitchCount)),
      line(words.toe, formatCount(plan.toe.rounds)),
      line(words.rounds, formatCount(plan.totalRounds)),
      line(words.yarn, yarn(plan.yarn.mWithMargin)),
    ),
    h('p', { class: 'aside' }, words.giveOrTake(take, margin)),
  ];
}
