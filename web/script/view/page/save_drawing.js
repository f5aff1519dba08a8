// Two buttons under each drawing: the file's name is theirs, what is drawn is read when one is pressed.
import { chartWords, drawingWords } from '../../../words/en.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../dom.js').Child} Child */
/** @typedef {keyof typeof words.drawings} Drawing */

const words = chartWords.save;

const isDrawing = (/** @type {Child} */ child) =>
  /** @type {Element} */ (child)?.nodeType === 1 &&
  [child, .../** @type {Element} */ (child).querySelectorAll('svg')].some(
    (one) => /** @type {Element} */ (one).localName === 'svg',
  );

/**
 * A file of this sock, named by what is in it.
 * @param {string} what @param {Plan} plan @param {string} [rounds] where it has not all of them
 */
export const fileName = (what, plan, rounds = '') =>
  words
    .file(what, String(plan.stitchCount), rounds)
    .trim()
    .replace(/[^a-z0-9]+/g, '-');

/**
 * The buttons put in right under the drawing.
 * @param {Make} h @param {Plan} plan @param {Drawing} drawing @param {Child[]} children
 * @param {{ from: number, to: number }} [window] the rounds in it, where it has not all of them
 */
export function withSave(h, plan, drawing, children, window) {
  const rounds = window ? words.rounds(drawingWords.strip.span(window.from, window.to)) : '';
  const button = (/** @type {string} */ kind) =>
    h(
      'button',
      {
        type: 'button',
        'data-save': kind,
        'data-file': fileName(drawing, plan, rounds),
        'aria-label': words.label(words.drawings[drawing], kind),
      },
      kind,
    );
  const buttons = h('p', { class: 'save-drawing' }, words.lead, button('SVG'), button('PNG'));
  const last = children.map(isDrawing).lastIndexOf(true) + 1;
  return [...children.slice(0, last), buttons, ...children.slice(last)];
}
