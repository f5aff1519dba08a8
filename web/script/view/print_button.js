// A button that prints, and what will come out.

/** @typedef {import('./dom.js').Make} Make */

/** @param {Make} h @param {import('./printing.js').Printed} what @param {string} label @param {string} [note] */
export const printButton = (h, what, label, note = '') =>
  h(
    'p',
    { class: 'print-it' },
    h('button', { type: 'button', class: 'quiet', 'data-print': what }, label),
    note && h('span', { class: 'aside' }, note),
  );
