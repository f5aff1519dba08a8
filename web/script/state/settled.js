// What is not the reader's to change: a part that her class has settled, and a sock that is on the needles.

import { isOfDesk } from './desk.js';

/** @typedef {import('../state.js').State} State */

/** Actions that change what was typed. */
const ofDraft = [
  'typed',
  'unit',
  'rib',
  'undo',
  'redo',
  'anew',
  'reading added',
  'reading removed',
  'toe swatched',
];

// What belongs to one student: her swatch, her foot, the count she took, her pace, another yarn of her own.
const ofOne = /^\/(swatch|foot|stitchCount|pace|yarn\/substitute)(\/|$)/;

/** Whether a class has no say in a field. @param {string} pointer */
export const isOfOne = (pointer) => ofOne.test(pointer);

/** Which of the class's locks a field is under. @param {Pick<State, 'locks'>} state @param {string} pointer */
export const lockOf = ({ locks }, pointer) =>
  isOfOne(pointer) ? undefined : locks.find((lock) => pointer.startsWith(`/${lock}/`));

// What is measured on the needles and asked beside the plan.
const ofTheNeedles = /^\/(needles|found|stripes)\//;

/** @param {State} state @param {import('../state.js').Action} action */
export function isSettled(state, action) {
  if (!ofDraft.includes(action.type)) return false;
  if ('pointer' in action && (ofTheNeedles.test(action.pointer) || isOfDesk(action.pointer)))
    return false;
  if (state.started) return true;
  if (action.type === 'rib') return state.locks.includes('rib');
  return action.type === 'typed' && lockOf(state, action.pointer) !== undefined;
}

/** Of a record by pointer, what the class has settled. @template T @param {State} state @param {Record<string, T>} record */
export const ofTheClass = (state, record) =>
  Object.fromEntries(Object.entries(record).filter(([pointer]) => lockOf(state, pointer)));
