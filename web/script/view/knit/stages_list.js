// The stages as a list: the present one open, the others a line each. And their links at work.
import { bringIntoView } from '../../frame.js';
import { bandWords, planWords, sheetWords, stagesWords as words } from '../../../words/en.js';
import { explainRing, guessText } from '../guess.js';
import { beginIt } from './knit.js';
import { markLastGood } from '../page/page_state.js';
import { printButton } from '../paper/print_button.js';
import { stageAt, stagesOf } from './stages.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('./stages.js').Stage} Stage */

// Between two rounds; the others without a round are before all or after all.
const hasMoment = new Set(['measure', 'tryOn', 'bindOff']);

/** Which rounds, or after which. @param {Stage} stage */
function whenOf({ key, from, to }) {
  if (from < to) return words.rounds(from + 1, to);
  return hasMoment.has(key) ? words.after(from) : '';
}

/** @param {Make} h @param {Stage} stage */
function linksOf(h, { drawing = [], link }) {
  const links = drawing.map((card) => ({ to: `how-${card}`, text: words.drawn[card] }));
  const all = link ? [link, ...links] : links;
  return (
    all.length > 0 &&
    h(
      'p',
      { class: 'stage-links' },
      all.flatMap(({ to, text }) => [h('a', { href: `#${to}` }, text), ' ']),
    )
  );
}

/** @param {Make} h @param {Stage} stage */
function stepsOf(h, { key, steps }) {
  const items = (/** @type {string[]} */ texts) => texts.map((text) => h('li', {}, text));
  if (key === 'castOn') return [h('ol', { class: 'steps' }, items(steps))];
  const told = steps.map((text) => h('p', {}, text));
  if (key === 'setUp')
    told.splice(2, 0, h('ol', { class: 'passes' }, items(planWords.knit.passes.list)));
  return told;
}

/** The same as words alone. @param {Make} h @param {Showing} showing */
export const tellStages = (h, showing) => [
  h('h2', {}, words.title),
  h('p', {}, planWords.knit.noHeel),
  ...stagesOf(showing)
    .filter(({ key }) => key !== 'give')
    .flatMap((stage) => [
      h('h3', {}, [stage.title, whenOf(stage)].filter(Boolean).join(', ')),
      ...stepsOf(h, stage),
    ]),
];

/** @param {Make} h @param {Showing} showing @param {Stage} stage @param {{ isOpen: boolean, isHere: boolean }} how */
function stageItem(h, showing, stage, { isOpen, isHere }) {
  const { key, title } = stage;
  const when = whenOf(stage);
  return h(
    'li',
    { class: 'stage-of-pair', ...(isHere && { 'aria-current': 'step' }) },
    h(
      'details',
      // Come to or left, it is another one: so it opens, and closes, by itself.
      { 'data-key': isOpen ? `${key} now` : key, ...(isOpen && { open: '' }) },
      h(
        'summary',
        {},
        title,
        when &&
          h('span', { class: 'when' }, guessText(showing, key === 'toe' ? 'toe' : 'rounds', when)),
        isHere && h('em', {}, words.here),
      ),
      stepsOf(h, stage),
      linksOf(h, stage),
      key === 'give' && printButton(h, 'band', bandWords.print),
    ),
  );
}

/** @param {Make} h @param {Showing} showing */
export function viewStages(h, showing) {
  const stages = stagesOf(showing);
  const { place } = showing;
  const open = place ? stageAt(stages, place) : stages[0];
  return [
    h('h2', {}, words.title),
    h(
      'div',
      { class: 'stages-lead' },
      markLastGood(h, showing),
      h('p', {}, planWords.knit.noHeel, explainRing(showing, ['rounds', 'toe'])),
      printButton(h, 'sheet', sheetWords.print, sheetWords.printNote),
      beginIt(h, showing),
    ),
    h(
      'ol',
      { class: 'stages' },
      stages.map((stage) =>
        stageItem(h, showing, stage, {
          isOpen: stage === open,
          isHere: place !== undefined && stage === open,
        }),
      ),
    ),
  ];
}

/** The address stays as it is: what stands behind its # is not ours to change. @param {Document} document */
export function listenStages(document) {
  document.addEventListener('click', (event) => {
    const link = event.target instanceof Element && event.target.closest('.stage-links a');
    const target = link && document.querySelector(link.getAttribute('href') ?? '');
    if (!target || event.defaultPrevented) return;
    event.preventDefault();
    if (target instanceof HTMLDetailsElement) target.open = true;
    bringIntoView(target);
    const head = target.querySelector('summary') ?? target;
    if (head instanceof HTMLElement) head.focus({ preventScroll: true });
  });
}
