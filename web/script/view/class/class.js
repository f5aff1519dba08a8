// The teacher's moment: the sock for all to see. Its large figures are the count's own, set larger by the style.
import { pageWords, penWords, sheetWords } from '../../../words/en.js';
import { printButton } from '../print_button.js';

/** @typedef {import('../dom.js').Make} Make */

const words = pageWords.forClass;

/** @param {Make} h */
export const viewClass = (h) => [
  h('h2', {}, words.title),
  h('p', {}, words.lead),
  printButton(h, 'sheet', sheetWords.print),
  printButton(h, 'pen', penWords.print),
];
