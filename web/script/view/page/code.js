// A link to photograph.
import { drawCode } from '../../draw/code.js';
import { keptWords as words } from '../../../words/en.js';

/** @typedef {import('../dom.js').Make} Make */

/** @param {Make} h @param {Document} document @param {string} url none where it has no address of its own, or is too long for one */
export function viewCode(h, document, url) {
  const code = url.startsWith('#') ? undefined : drawCode(document, url, words.code);
  return code ? h('div', { class: 'code' }, code) : null;
}
