// The shopping list. A tick is a mark on the page and nothing else.
import { buyWords, optionWords, sheetWords } from '../../../words/en.js';
import { figuresIn, writeNeedle } from '../figures.js';
import { guessMark } from '../guess.js';
import { printButton } from '../paper/print_button.js';
import { needleToTry, soldLength } from './buy_tools.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

const words = buyWords.list;

/** @param {Make} h @param {string} what @param {string} more @param {import('../dom.js').Child} [mark] */
const item = (h, what, more, mark) =>
  h(
    'li',
    {},
    h(
      'label',
      { class: 'tick' },
      h('input', { type: 'checkbox' }),
      h(
        'span',
        {},
        h('b', {}, what, mark ? ' ' : null, mark),
        more ? h('span', { class: 'more' }, more) : null,
      ),
    ),
  );

/** What this pair asks for. @param {Make} h @param {Showing} showing */
function toBuy(h, showing) {
  const { plan, system } = showing;
  const { yarn, otherYarn } = figuresIn(system);
  const { mWithMargin, balls } = plan.yarn;
  const { mm, us = '', uk = '', cableBuyMm } = plan.needle;
  const weight = words.weight(optionWords['/yarn/category'][plan.category]);
  const size = [writeNeedle(mm), buyWords.names(us, uk)].filter(Boolean).join(', ');
  const [length, also] = soldLength(cableBuyMm ?? 0, system);
  const tryMm = needleToTry(plan);
  return [
    item(
      h,
      words.yarn(yarn(mWithMargin), otherYarn(mWithMargin)),
      balls === undefined ? weight : `${buyWords.balls(balls)}, ${weight}`,
      guessMark(h, showing, 'yarn'),
    ),
    item(
      h,
      words.needle(size),
      cableBuyMm === undefined ? '' : words.cableOf(length, also),
      guessMark(h, showing, 'needle'),
    ),
    item(h, words.spare, tryMm === '' ? words.spareWhy : words.spareTry(tryMm)),
  ];
}

/** What every pair asks for. @param {Make} h */
const toHave = (h) => [
  item(h, words.markers, words.markersWhy),
  item(h, words.scale, words.scaleWhy),
  item(h, words.darning, words.darningWhy),
  item(h, words.lifeline, words.lifelineWhy),
  item(h, words.tape, words.tapeWhy),
];

/** @param {Make} h @param {Showing} showing */
export const shoppingList = (h, showing) => [
  h('h3', {}, words.title),
  h('ul', { class: 'ticks' }, toBuy(h, showing)),
  h('h4', {}, words.have),
  h('ul', { class: 'ticks' }, toHave(h)),
  h('p', { class: 'aside form-only' }, words.help),
  printButton(h, 'list', sheetWords.printList),
];
