// What the core says of one seat of a class's table, told at its column.
import { columnOf } from './roster.js';
import { tellProblems } from './tell.js';

/** @typedef {import('./request.js').Problem} Problem */
/** @typedef {import('./roster.js').Roster} Roster */

// Yarn in hand has no field in the form; what a ball weighs is read in the same units.
const standsFor = /** @type {Record<string, string>} */ ({ '/inHand/g': '/yarn/ballG' });

/**
 * @param {Problem} problem @param {Roster} roster
 * @param {import('../contract.js').SeatPart | undefined} part of the seat, or nothing of the whole table
 * @param {import('../units.js').System} system
 * @returns {{ column: string, text: string }} the column by its head, else by the name its measure has in the form
 */
export function tellSeat(problem, roster, part, system) {
  const mode = (/** @type {string} */ typed) => ({ typed, unit: '' });
  const draft = {
    '/swatch': mode('swatch'),
    '/foot': mode(part?.foot?.shoe ? 'shoe' : 'tape'),
  };
  const field = standsFor[problem.field] ?? problem.field;
  const [told] = tellProblems([{ ...problem, field }], { draft, shown: {}, system });
  const column = columnOf(roster, problem.field);
  return { column: column || (told.pointer ? told.name : ''), text: told.text };
}
