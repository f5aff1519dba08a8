// Fields that are no part of a sock's request: its name and notes, and what a teacher's link says besides.
import { lockable } from '../state.js';
import { classYarnsIn, showClassYarns } from './class_yarns.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Action} Action */

/** @param {Document} document */
const locksIn = (document) =>
  lockable.filter(
    (lock) =>
      /** @type {HTMLInputElement | null} */ (document.querySelector(`[data-lesson="${lock}"]`))
        ?.checked,
  );

/** @param {HTMLInputElement & HTMLSelectElement} control @returns {Action | undefined} */
export function readOwn(control) {
  const { value } = control;
  const own = control.getAttribute('data-own');
  if (own === 'name') return { type: 'named', name: value };
  if (own === 'note') return { type: 'noted', note: value };
  const lesson = control.getAttribute('data-lesson');
  if (lesson === null) return undefined;
  const document = control.ownerDocument;
  const said = lockable.includes(lesson)
    ? { locks: locksIn(document) }
    : { [lesson]: lesson === 'yarns' ? classYarnsIn(document) : value };
  return { type: 'lesson', lesson: said };
}

/** @param {Document} document @param {State} state */
export function showOwn(document, state) {
  const { name, note, lesson } = state;
  const set = (/** @type {string} */ css, /** @type {string} */ text) => {
    const field = /** @type {HTMLInputElement | null} */ (document.querySelector(css));
    if (field && field.value !== text) field.value = text;
  };
  set('[data-own="name"]', name);
  set('[data-own="note"]', note);
  set('[data-lesson="title"]', lesson.title);
  set('[data-lesson="note"]', lesson.note);
  set('[data-lesson="roster"]', lesson.roster);
  for (const box of document.querySelectorAll('input[data-lesson]')) {
    const input = /** @type {HTMLInputElement} */ (box);
    const what = input.getAttribute('data-lesson') ?? '';
    if (lockable.includes(what)) input.checked = lesson.locks.includes(what);
    if (what === 'view') input.checked = input.value === lesson.view;
  }
  showClassYarns(document, state);
}

/** A file chosen; chosen again it is read again. @param {Document} document @param {(file: File) => unknown} open */
export function listenFile(document, open) {
  const input = /** @type {HTMLInputElement | null} */ (document.getElementById('open-file'));
  input?.addEventListener('change', () => {
    const file = input.files?.[0];
    if (file) open(file);
    input.value = '';
  });
}
