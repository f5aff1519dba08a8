// The teacher's moment: the sock for all to see. Its large figures are the count's own, set larger by the style.
import { pageWords, penWords, sheetWords, tagWords } from '../../../words/en.js';
import { printButton } from '../paper/print_button.js';

/** @typedef {import('../dom.js').Make} Make */

const words = pageWords.forClass;

/** @param {Make} h */
export const viewClass = (h) => [h('h2', {}, words.title), h('p', {}, words.lead)];

/** What there is on paper, and whom it is for. @param {Make} h */
export function viewPrints(h) {
  const one = (
    /** @type {import('../paper/printing.js').Printed} */ what,
    /** @type {string} */ label,
    /** @type {{ title: string, text: string }} */ { title, text },
    /** @type {import('../dom.js').Child} */ fields = null,
  ) => h('div', {}, h('h3', {}, title), h('p', {}, text), fields, printButton(h, what, label));
  return [
    one('sheet', sheetWords.print, words.sheet),
    one('pen', penWords.print, words.pen),
    one('tags', tagWords.print, words.tags, h('div', { class: 'fields', 'data-fields': 'tags' })),
  ];
}
