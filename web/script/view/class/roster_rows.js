// The rows of a class's table with what the core says of each, in words: for the page, and for files.
import { problemWords, rosterWords as words } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { glanceAt } from './odd.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').Oddity} Oddity */
/**
 * @typedef {object} SeatRow
 * @property {number} row as pasted, from 1
 * @property {string} seat its label
 * @property {import('../../contract.js').SeatPart} [part] what it says of its own; nothing, where it could not be read
 * @property {import('../../contract.js').PairLine} [line]
 * @property {string[]} odd what does harm, at a glance
 * @property {string[]} oddGauge those of it that are the swatch's
 * @property {Oddity[]} oddities the same as the core says it
 * @property {Array<{ column: string, text: string }>} faults why there is no sock
 */
/** @typedef {{ row: number, seat: string, column: string, code: string, typed: string, units?: string }} Fault of what was pasted */

/** @param {Fault} fault */
function sayFault({ column, code, typed, units = '' }) {
  const text = words.faults[code]?.(typed, units) ?? problemWords[code]?.({ typed, units }) ?? code;
  return { column, text };
}

const isOfSwatch = (/** @type {Oddity} */ { field }) => field.startsWith('/swatch');

/** @param {Showing} showing @returns {SeatRow[]} */
function tell({ beside, tellSeat }) {
  const { about, reply } = beside?.roster ?? {};
  /** @type {Map<number, Fault[]>} */
  const faults = new Map();
  for (const fault of about.faults) {
    if (!faults.has(fault.row)) faults.set(fault.row, []);
    faults.get(fault.row)?.push(fault);
  }
  let at = -1;
  return about.rows.map(
    (/** @type {{ row: number, seat: string, part?: object }} */ { row, seat, part }) => {
      if (part) at += 1;
      const { line, odd = [], problems = [] } = (part && reply?.seats[at]) ?? {};
      return {
        row,
        seat,
        part,
        line,
        oddities: odd,
        odd: odd.map(glanceAt),
        oddGauge: odd.filter(isOfSwatch).map(glanceAt),
        faults: part
          ? problems.map((/** @type {import('../../ask.js').Problem} */ one) =>
              tellSeat?.(one, about, part),
            )
          : (faults.get(row) ?? []).map(sayFault),
      };
    },
  );
}

/** What was told of an answer last: the same until there is another. @type {WeakMap<object, { reply: unknown, system: string, rows: SeatRow[] }>} */
const told = new WeakMap();

/** Every row, in the order pasted. @param {Showing} showing @returns {SeatRow[]} */
export function rosterRows(showing) {
  const { about, reply } = showing.beside?.roster ?? {};
  if (!about) return [];
  const { system } = showing;
  const known = told.get(about);
  if (known?.system === system && known.reply === reply) return known.rows;
  const rows = tell(showing);
  told.set(about, { reply, system, rows });
  return rows;
}

/** What is the matter with the heading row, in words. @param {Showing} showing */
export const headFaults = ({ beside }) => {
  const { about } = beside?.roster ?? {};
  /** @type {Fault[]} */
  const faults = about?.faults ?? [];
  return faults
    .filter(({ seat }) => seat === '')
    .map((fault) => words.fault(String(fault.row), '', '', sayFault(fault).text));
};

// Fewer are told row by row.
const many = 3;

/**
 * What keeps seats from their socks, in words; what is the same in many rows is told once.
 * @param {Showing} showing @returns {string[]}
 */
export function rowFaults(showing) {
  /** @type {Map<string, { column: string, text: string, rows: SeatRow[] }>} */
  const all = new Map();
  for (const row of rosterRows(showing))
    for (const { column, text } of row.faults) {
      const key = `${column}: ${text}`;
      const fault = all.get(key) ?? { column, text, rows: [] };
      if (fault.rows.at(-1) !== row) fault.rows.push(row);
      all.set(key, fault);
    }
  return [...all.values()].flatMap(({ column, text, rows }) => {
    if (rows.length < many)
      return rows.map(({ row, seat }) => words.fault(String(row), seat, column, text));
    const first = rows.slice(0, many).map(({ row }) => String(row));
    const rest = rows.length - many;
    const which = rest > 0 ? words.andMore(first.join(', '), formatCount(rest)) : first.join(', ');
    return [words.faultOfMany(which, column, text)];
  });
}
