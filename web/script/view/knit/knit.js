// What is knit, to look it up: the toe round by round, the rib, the ankle, the cuff.
import { formatCount, formatPercent } from '../../units.js';
import { drawingWords, keptWords, planWords } from '../../../words/en.js';
import { figuresIn } from '../figures.js';
import { guessMark } from '../guess.js';
import { keptButton } from '../page/kept_button.js';
import { knitRib, spansOf } from './knit_rib.js';
import { knitToe } from './knit_toe.js';
import { knitWider } from './knit_wider.js';
import { saySocks } from './lines.js';
import { markLastGood } from '../page/page_state.js';
import { isWidened, lengthTo } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

const words = planWords.knit;

/** What a sock without a heel trades where the foot turns. @param {Make} h @param {Showing} showing */
function ankle(h, showing) {
  const { backStrain, frontStrain } = showing.plan;
  const share = (/** @type {number} */ strain) => formatPercent(Math.abs(strain), 1);
  return [
    h('h3', {}, `${words.ankle.title} `, guessMark(h, showing, 'ankle')),
    h(
      'p',
      {},
      words.ankle.text(
        words.ankle.way(share(backStrain), backStrain >= 0),
        words.ankle.way(share(frontStrain), frontStrain >= 0),
        backStrain > 0,
        frontStrain < 0,
      ),
    ),
    h('p', {}, words.ankle.why),
  ];
}

/** @param {Make} h @param {Showing} showing */
function cuff(h, showing) {
  const { plan, system } = showing;
  const figures = figuresIn(system);
  const spans = spansOf(plan, 'cuff');
  const lines = spans.flatMap((span) => saySocks(plan, span));
  return [
    h('h3', { id: 'knit-cuff' }, `${words.cuff.title} `, guessMark(h, showing, 'rounds')),
    plan.cuff.rounds === 0
      ? h('p', {}, words.cuff.none)
      : h(
          'p',
          {},
          `${words.cuff.text(drawingWords.rounds(plan.cuff.rounds))} `,
          lines.map((line) => h('span', { class: 'line' }, line)),
          ` ${words.cuff.at(figures.length(lengthTo(plan, 'cuff')))}`,
        ),
  ];
}

/** From here on it is on her needles; and the way back, at the same place. @param {Make} h @param {Showing} showing */
export function beginIt(h, { isBegun, problems, examples, place }) {
  const back = keptButton(h, 'notBegun', keptWords.notBegun);
  // Twenty evenings are not put at stake by one tap beside another button.
  if (place && place.round + place.pass > 0)
    return h(
      'details',
      { class: 'fold', 'data-key': 'not-begun' },
      h('summary', {}, keptWords.notBegun, '?'),
      h('p', {}, keptWords.placeForgotten(formatCount(place.round + 1))),
      h('p', { class: 'print-it' }, back),
    );
  const said = isBegun
    ? keptWords.begun
    : examples.length > 0 && keptWords.stillExample(examples.join(', '));
  return h(
    'p',
    { class: 'print-it' },
    isBegun ? back : keptButton(h, 'begin', keptWords.begin, { isOn: problems.length === 0 }),
    said && h('span', { class: 'aside' }, said),
  );
}

/** @param {Make} h @param {Showing} showing */
export function viewKnit(h, showing) {
  const { plan } = showing;
  const end = cuff(h, showing);
  return [
    h('h2', {}, words.title),
    markLastGood(h, showing),
    h(
      'div',
      { class: 'columns knit' },
      h('div', {}, knitToe(h, showing)),
      h(
        'div',
        { class: 'broad' },
        knitRib(h, showing),
        ankle(h, showing),
        isWidened(plan) ? [] : end,
      ),
    ),
    // A widened leg asks for a row of its own, and the cuff comes after it.
    isWidened(plan) && h('div', { class: 'wider' }, knitWider(h, showing), h('div', {}, end)),
  ];
}
