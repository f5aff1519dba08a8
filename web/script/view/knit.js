// How to knit it: cast-on, the four passes of a round, the toe round by round, the rib, the cuff.
import { formatPercent } from '../units.js';
import { drawingWords, planWords } from '../../words/en.js';
import { figuresIn } from './figures.js';
import { knitRib, spansOf } from './knit_rib.js';
import { knitToe } from './knit_toe.js';
import { knitWider } from './knit_wider.js';
import { saySocks } from './lines.js';
import { markLastGood } from './page_state.js';
import { isWidened, lengthTo } from './parts.js';

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

/** What a sock without a heel trades where the foot turns. @param {Make} h @param {Plan} plan */
function ankle(h, { backStrain, frontStrain }) {
  const share = (/** @type {number} */ strain) => formatPercent(Math.abs(strain), 1);
  return [
    h('h3', {}, words.ankle.title),
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

/** @param {Make} h @param {Plan} plan @param {ReturnType<typeof figuresIn>} figures */
function cuff(h, plan, figures) {
  const spans = spansOf(plan, 'cuff');
  const bindOff = plan.yarn.sections.find(({ section }) => section === 'bindOff');
  const lines = spans.flatMap((span) => saySocks(plan, span));
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
  const end = cuff(h, plan, figuresIn(system));
  return [
    h('h2', {}, words.title),
    markLastGood(h, showing),
    h('p', {}, words.noHeel),
    h(
      'div',
      { class: 'columns knit' },
      h('div', {}, beginning(h, plan)),
      h('div', {}, knitToe(h, plan)),
      h('div', { class: 'broad' }, knitRib(h, plan), ankle(h, plan), isWidened(plan) ? [] : end),
    ),
    // A widened leg asks for a row of its own, and the cuff comes after it.
    isWidened(plan) && h('div', { class: 'wider' }, knitWider(h, showing), h('div', {}, end)),
  ];
}
