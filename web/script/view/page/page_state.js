// How the page stands: on the example, or with something to mend, or unable to answer.
import { keptWords, pageWords } from '../../../words/en.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** @param {Make} h @param {string} text */
export const viewTrouble = (h, text) => [
  h('p', { role: 'alert', class: 'trouble', 'data-key': 'trouble' }, text),
];

/** Over a part of the page that is still of the last good plan. @param {Make} h @param {Showing} showing */
export const markLastGood = (h, { problems, lastGood }) =>
  problems.length === 0 ? null : h('p', { class: 'last-good' }, pageWords.lastGood(lastGood));

/** @param {Make} h @param {Showing} showing */
export function viewStanding(h, { problems, examples, trouble, isBegun, isRemade }) {
  if (isRemade) return viewTrouble(h, keptWords.remade);
  if (trouble) return viewTrouble(h, trouble);
  if (problems.length > 0) {
    const list = problems.map(({ pointer, id, name, text }) =>
      h(
        'li',
        {},
        id === '' ? name : h('a', { href: `#${id}`, 'data-goto': pointer }, name),
        `: ${text}`,
      ),
    );
    return [
      h(
        'div',
        { class: 'mend', 'data-key': 'mend' },
        h('strong', {}, pageWords.problems(problems.length)),
        h('ul', {}, list),
      ),
    ];
  }
  const text =
    isBegun || examples.length === 0
      ? isBegun
        ? ''
        : pageWords.allOwn
      : `${pageWords.exampleIs} ${pageWords.exampleLeft(examples.join(', '))}`;
  return [h('p', { class: 'standing-text', 'data-key': 'standing' }, text)];
}
