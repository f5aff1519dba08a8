// Buttons that take the sock along: on paper, and as a link.
import { keptWords } from '../../words/en.js';

/** @typedef {import('./dom.js').Make} Make */

/** @param {Make} h @param {import('./printing.js').Printed} what @param {string} label @param {string} [note] */
export const printButton = (h, what, label, note = '') =>
  h(
    'p',
    { class: 'print-it' },
    h('button', { type: 'button', class: 'quiet', 'data-print': what }, label),
    note && h('span', { class: 'aside' }, note),
  );

/** @param {Make} h */
export const shareButton = (h) =>
  h(
    'p',
    { class: 'print-it' },
    h('button', { type: 'button', class: 'quiet', 'data-share': '' }, keptWords.share),
  );
