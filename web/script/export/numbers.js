// Numbers for a spreadsheet: in the reader's units, without them, and no finer than the page tells them.
import { fromBase, unitIn } from '../units.js';

/** The units of length, yarn and mass. @param {import('../units.js').System} system */
export const unitsIn = (system) => [
  unitIn('length', system),
  unitIn('yarn', system),
  unitIn('mass', system),
];

/** @param {number | undefined} value in millimetres, metres or grams @param {string} unit */
export const plainNumber = (value, unit) =>
  value === undefined ? '' : Number(fromBase(value, unit).toFixed(1));
