// The page for the shop: the big figures first, the list to tick second, and why so much after that.
import { buyWords as words } from '../../../words/en.js';
import { shoppingList } from './buy_list.js';
import { howToSwatch, howToSwatchFolded } from './buy_swatch.js';
import { aboutTools, needleSum } from './buy_tools.js';
import { aboutYarn, yarnSums } from './buy_yarn.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { guessMark } from '../guess.js';
import { markLastGood } from '../page/page_state.js';
import { nameOf } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** Where in the sock the yarn goes. @param {Make} h @param {Showing} showing @param {boolean} [isOneSock] no more than that */
export function sectionTable(h, showing, isOneSock = false) {
  const { plan, system } = showing;
  const { yarn } = plan;
  const figures = figuresIn(system);
  const row = (/** @type {string} */ name, /** @type {number} */ m, mark = '') => ({
    name,
    mark,
    cells: [figures.yarn(m), figures.otherYarn(m)],
  });
  return table(h, {
    caption: [`${words.sections} `, guessMark(h, showing, 'yarn')],
    heads: [words.part, words.length, words.also],
    rows: [
      ...yarn.sections.filter(({ m }) => m > 0).map(({ section, m }) => row(nameOf(section), m)),
      row(words.oneSock, yarn.mPerSock, 'sum'),
      ...(isOneSock
        ? []
        : [row(words.pair, yarn.mPerPair, 'sum'), row(words.withMargin, yarn.mWithMargin, 'sum')]),
    ],
    className: 'figures',
  });
}

/** @param {Make} h @param {Showing} showing */
export function viewBuy(h, showing) {
  const isGuessed = showing.plan.gauge.from === 'label';
  const why = [h('h3', {}, words.why), aboutYarn(h, showing), aboutTools(h, showing)].flat();
  const sections = sectionTable(h, showing);
  return [
    h('h2', {}, words.title),
    markLastGood(h, showing),
    h('div', { class: 'sums' }, yarnSums(h, showing), needleSum(h, showing)),
    h(
      'div',
      { class: 'columns', 'data-key': isGuessed ? 'guessed' : 'swatched' },
      h('div', {}, shoppingList(h, showing)),
      isGuessed ? h('div', {}, howToSwatch(h, showing)) : h('div', {}, why),
      isGuessed
        ? h('div', { class: 'both' }, h('div', {}, why), h('div', {}, sections))
        : h('div', {}, sections),
    ),
    isGuessed ? null : howToSwatchFolded(h, showing),
  ];
}
