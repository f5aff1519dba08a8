// The ways to take the sock along as a file, or to paste it into a mail.
import { alongWords as words } from '../../../words/en.js';

/** @typedef {import('../dom.js').Make} Make */

/** @param {{ isCopied: boolean }} copied */
export const copiedText = ({ isCopied }) => (isCopied ? words.copied : words.byHand);

/** @param {Make} h @param {import('../showing.js').Showing} showing */
export function viewAlong(h, { problems, trouble, copied }) {
  // As printing does: a plan that is not what the fields say goes into no file.
  const isWaiting = problems.length > 0 || trouble !== '';
  /** @type {Record<string, string>} */
  const wait = isWaiting ? { 'aria-disabled': 'true', 'aria-describedby': 'along-said' } : {};
  const said = isWaiting ? words.waits : copied && copiedText(copied);
  const button = (/** @type {'csv' | 'json' | 'txt' | 'copy'} */ kind) =>
    h('button', { type: 'button', class: 'quiet', 'data-export': kind, ...wait }, words[kind]);
  const way = (/** @type {string} */ separator, /** @type {string} */ label, isUsual = false) =>
    h(
      'label',
      { class: 'way' },
      h('input', {
        type: 'radio',
        name: 'cells',
        value: separator,
        ...(isUsual && { checked: '' }),
      }),
      label,
    );
  return [
    h(
      'details',
      { class: 'fold', 'data-key': 'along' },
      h('summary', {}, words.title),
      h(
        'fieldset',
        {},
        h('legend', {}, words.cells),
        h('div', { class: 'ways' }, way(',', words.comma, true), way(';', words.semicolon)),
        h('span', { class: 'aside' }, words.hint),
      ),
      h('p', { class: 'print-it' }, button('csv'), button('json')),
      h('p', { class: 'print-it' }, button('txt'), button('copy')),
      h('p', { id: 'along-said' }, said),
      copied &&
        !copied.isCopied &&
        h(
          'textarea',
          { id: 'copied-text', readonly: '', rows: '12', 'aria-label': words.text },
          copied.text,
        ),
    ),
  ];
}
