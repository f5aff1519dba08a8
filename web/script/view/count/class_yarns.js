// Beside the yarn: which yarns the class may use, and whether hers is one of them. She is told, and never stopped.
import { classYarnWords as words, optionWords } from '../../../words/en.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

const nameOf = (/** @type {number} */ category) => optionWords['/supply/yarns'][category];

/** @param {Make} h @param {Showing} showing */
export function viewClassYarns(h, { classYarns = [], request, beside }) {
  if (classYarns.length === 0) return [];
  const isOther = (/** @type {number | undefined} */ category) =>
    category !== undefined && !classYarns.includes(category);
  const chosen = request.yarn?.category;
  const ofSwatch = beside?.classYarns?.reply;
  return [
    h('p', { class: 'aside' }, words.all(classYarns.map(nameOf))),
    isOther(chosen) && h('p', { class: 'aside' }, words.chosen(nameOf(chosen))),
    isOther(ofSwatch) && h('p', { class: 'aside' }, words.ofSwatch(nameOf(ofSwatch))),
  ];
}
