// The yarns that a class may use: ticked by the teacher, and offered to a student among all the others.
import { formWords, optionWords } from '../../words/en.js';

const all = '/supply/yarns';
const box = 'input[data-lesson="yarns"]';

/** A box for each, in the lesson's part of the page. @param {Document} document */
export function buildClassYarns(document) {
  const place = document.querySelector('[data-lesson-yarns]');
  for (const [category, words] of Object.entries(optionWords[all])) {
    const input = document.createElement('input');
    for (const [name, value] of [
      ['type', 'checkbox'],
      ['value', category],
      ['data-lesson', 'yarns'],
    ])
      input.setAttribute(name, value);
    const label = document.createElement('label');
    label.append(input, ` ${words}`);
    place?.append(label);
  }
}

/** @param {Document} document @returns {HTMLInputElement[]} */
const boxesIn = (document) =>
  [...document.querySelectorAll(box)].map((one) => /** @type {any} */ (one));

/** @param {Document} document */
export const classYarnsIn = (document) =>
  boxesIn(document)
    .filter(({ checked }) => checked)
    .map(({ value }) => Number(value));

/** @param {Document} document @param {import('../state.js').State} state */
export function showClassYarns(document, { lesson, course }) {
  for (const one of boxesIn(document)) one.checked = lesson.yarns.includes(Number(one.value));
  const isOpen = lesson.yarns.length > 0;
  document.querySelector('input[data-lesson="yarn"]')?.toggleAttribute('disabled', isOpen);
  document.querySelector('[data-yarn-open]')?.toggleAttribute('hidden', !isOpen);
  for (const option of document.querySelectorAll('[data-field="/yarn/category"] option')) {
    const category = option.getAttribute('value') ?? '';
    const isOther =
      category !== '' && course.yarns.length > 0 && !course.yarns.includes(Number(category));
    option.toggleAttribute('disabled', isOther);
    const words = optionWords['/yarn/category'][category];
    const text = isOther ? formWords.notInClass(words) : words;
    if (option.textContent !== text) option.textContent = text;
  }
}
