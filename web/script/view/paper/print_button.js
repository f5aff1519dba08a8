// Buttons that take the sock along: on paper, and as a link.
import { keptWords, sheetWords } from '../../../words/en.js';

/** @typedef {import('../dom.js').Make} Make */

/** @param {Make} h @param {import('./printing.js').Printed} what @param {string} label @param {string} [note] */
export const printButton = (h, what, label, note = '') =>
  h(
    'p',
    { class: 'print-it' },
    h('button', { type: 'button', class: 'quiet', 'data-print': what }, label),
    note && h('span', { class: 'aside' }, note),
  );

/** Under the plan: the ways to take it along. @param {Make} h */
export const takeAlong = (h) =>
  h(
    'p',
    { class: 'print-it' },
    h('button', { type: 'button', class: 'quiet', 'data-print': 'sheet' }, sheetWords.print),
    h('button', { type: 'button', class: 'quiet', 'data-share': '' }, keptWords.share),
    h('span', { class: 'aside' }, sheetWords.printNote),
  );
