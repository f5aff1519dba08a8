// Buttons under a part of the desk: to print it, to paste it into a mail, to have it as a file.
import { takeWords as words } from '../../../words/en.js';

/** @typedef {import('../dom.js').Make} Make */
/** @typedef {'csv' | 'ics' | 'copy' | 'print'} Way */

/** @param {Make} h @param {string} what the part @param {Way[]} ways */
export const fileButtons = (h, what, ways) =>
  h(
    'p',
    { class: 'print-it' },
    ways.map((way) => {
      /** @type {Record<string, string>} */
      const does = way === 'print' ? { 'data-print': what } : { 'data-carry': `${what}.${way}` };
      return h('button', { type: 'button', class: 'quiet', ...does }, words[way]);
    }),
  );
