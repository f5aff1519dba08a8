// A class's seats out of a pasted table: what each says of its own, as the core is asked it, and what could not be read, by
// row and column. A row in error stops no other.
import { mostRoster } from '../state.js';
import { readCell } from './roster_cells.js';
import { readHead } from './roster_heads.js';
import { readTable } from './table.js';

/** @typedef {import('./roster_heads.js').Head} Head */
/** @typedef {import('../contract.js').SeatPart} SeatPart */
/** @typedef {{ row: number, seat: string, column: string, code: string, typed: string, units?: string }} Fault `row` from 1, as pasted; `column` is its head */
/** @typedef {{ row: number, seat: string, part?: SeatPart }} Row without a part, where something in it could not be read */
/**
 * @typedef {object} Roster
 * @property {Head[]} heads none, where the table has no heading row
 * @property {Row[]} rows
 * @property {Array<Row & { part: SeatPart }>} seats those that can be asked about, in order
 * @property {Fault[]} faults
 * @property {boolean} isFull whether the field holds no more: what was pasted may have lost its end
 */

/** Where a column's figures go, for the core's problems to find their way back. @type {Array<[RegExp, string[]]>} */
const places = [
  [/\/stitches$/, ['stitches']],
  [/\/widthMm$/, ['width', 'stitches']],
  [/\/rounds$/, ['rounds']],
  [/\/heightMm$/, ['height', 'rounds']],
  [/^\/swatch/, ['stitches']],
  [/^\/yarn/, ['yarn']],
  [/^\/foot\/lengthMm/, ['length', 'size']],
  [/^\/foot\/ballGirthMm/, ['girth', 'size']],
  [/^\/foot\/heelAnkleGirthMm/, ['heel']],
  [/\/scale$/, ['scale', 'size']],
  [/^\/foot\/shoe/, ['size']],
  [/^\/foot\/body/, ['body']],
  [/^\/legHeightMm/, ['leg']],
  [/^\/pace/, ['pace']],
  [/^\/inHand\/balls/, ['balls']],
  [/^\/inHand\/g/, ['grams']],
];

/** The head of the column that a problem's pointer is of, or ''. @param {Roster} roster @param {string} pointer */
export function columnOf({ heads }, pointer) {
  const [, columns = []] = places.find(([pattern]) => pattern.test(pointer)) ?? [];
  const found = columns.map((name) => heads.find(({ column }) => column === name));
  return found.find(Boolean)?.text ?? '';
}

/** The parts of a foot that one row tells. @param {Record<string, any>} said @returns {SeatPart['foot'] | string} or what is wrong */
function footOf({ length, girth, heel, scale, size, body }) {
  const more = heel === undefined ? {} : { heelAnkleGirthMm: heel };
  const isTaped = length !== undefined && girth !== undefined;
  if (isTaped) return { lengthMm: length, ballGirthMm: girth, ...more };
  if (length === undefined && girth === undefined && size === undefined)
    return body === undefined && heel === undefined
      ? undefined
      : { ...(body && { body }), ...more };
  if (size === undefined) return { lengthMm: length, ballGirthMm: girth, ...more };
  if (length !== undefined || girth !== undefined) return 'half_taped';
  const named = size.scale || scale;
  return named === 'us' ? 'us_which' : { shoe: { scale: named, size: size.size }, body, ...more };
}

/** One reading of a swatch; what one count was taken over goes for both. @param {Record<string, any>} said @returns {SeatPart['swatch'] | string} or what is wrong */
function swatchOf({ stitches, width, rounds, height }) {
  if (!stitches && !rounds) return undefined;
  if (!stitches || !rounds) return 'half_gauge';
  const widthMm = stitches.overMm ?? width;
  const heightMm = rounds.overMm ?? height;
  const [over, high] = [widthMm ?? heightMm, heightMm ?? widthMm];
  if (over === undefined) return 'over_what';
  const reading = { stitches: stitches.count, widthMm: over, rounds: rounds.count, heightMm: high };
  return { readings: [reading] };
}

const isSaid = (/** @type {unknown} */ value) => value !== undefined;

/** @param {Record<string, any>} all @returns {any} what of it is said; nothing, where nothing is */
const saidIn = (all) => {
  const said = Object.entries(all).filter(([, value]) => isSaid(value));
  return said.length > 0 ? Object.fromEntries(said) : undefined;
};

/** @param {Record<string, any>} said by column @returns {{ part: SeatPart, wrong: Array<[string, string]> }} */
function partOf(said) {
  const [swatch, foot] = [swatchOf(said), footOf(said)];
  /** @type {Array<[string, string]>} */
  const wrong = [];
  if (typeof swatch === 'string') wrong.push([said.stitches ? 'stitches' : 'rounds', swatch]);
  if (typeof foot === 'string') wrong.push(['size', foot]);
  if (said.balls !== undefined && said.grams !== undefined) wrong.push(['grams', 'both_in_hand']);
  const part = saidIn({
    swatch,
    yarn: saidIn({ category: said.yarn }),
    foot: typeof foot === 'object' ? saidIn(foot) : undefined,
    legHeightMm: said.leg,
    pace: saidIn({ stitchesPerMinute: said.pace }),
    inHand: saidIn({ balls: said.balls, g: said.grams }),
  });
  return { part: part ?? {}, wrong };
}

/** The heads, each column once, and what is the matter with them. @param {string[]} cells @param {number} row */
function readHeads(cells, row) {
  const heads = cells.map(readHead);
  /** @type {Fault[]} */
  const faults = [];
  heads.forEach((head, i) => {
    const { text, column } = head;
    const fault = (/** @type {string} */ code) =>
      faults.push({ row, seat: '', column: '', code, typed: text });
    if (column === '' && text !== '') fault('unknown_head');
    if (column === '' || heads.findIndex((one) => one.column === column) === i) return;
    fault('repeated_head');
    heads[i] = { ...head, column: '' };
  });
  return { heads, faults };
}

/** @param {string} text @returns {Roster} */
function read(text) {
  const table = readTable(text);
  const first = table.findIndex((cells) => cells.some((cell) => cell !== ''));
  const isFull = text.length >= mostRoster;
  const none = { heads: [], rows: [], seats: [], faults: [], isFull };
  if (first < 0) return none;
  const { heads, faults } = readHeads(table[first], first + 1);
  if (heads.every(({ column }) => column === '')) return none;
  const headOf = (/** @type {string} */ name) => heads.find(({ column }) => column === name);
  const overs = { stitches: headOf('stitches')?.overMm, rounds: headOf('rounds')?.overMm };

  /** @param {string[]} cells @param {number} row @returns {Row} */
  function readRow(cells, row) {
    const seat = cells[heads.findIndex(({ column }) => column === 'seat')] || String(row);
    /** @type {Record<string, any>} */
    const said = {};
    const before = faults.length;
    const fault = (
      /** @type {string} */ column,
      /** @type {string} */ code,
      typed = '',
      units = '',
    ) => faults.push({ row, seat, column, code, typed, units });
    // A decimal comma where commas part the cells moves all that stands behind it.
    if (cells.slice(heads.length).some((cell) => cell !== '')) fault('', 'too_many_cells');
    else
      heads.forEach(({ column, text: head, unit, scale }, i) => {
        const cell = cells[i] ?? '';
        if (column === '' || cell === '') return;
        const one = readCell[column](cell, unit);
        if (!one.ok) fault(head, one.code, cell, one.units);
        else if (column === 'size') said.size = { ...one.value, scale: one.value.scale || scale };
        else said[column] = one.value;
      });
    for (const name of /** @type {const} */ (['stitches', 'rounds']))
      if (said[name]) said[name] = { overMm: overs[name], ...said[name] };
    const { part, wrong } = partOf(said);
    const isRead = faults.length === before;
    for (const [column, code] of isRead ? wrong : []) fault(headOf(column)?.text ?? '', code);
    return faults.length === before ? { row, seat, part } : { row, seat };
  }

  const rows = table
    .map((cells, i) =>
      i > first && cells.some((cell) => cell !== '') ? readRow(cells, i + 1) : undefined,
    )
    .filter((row) => row !== undefined);
  const seats = rows.flatMap(({ part, ...row }) => (part ? [{ ...row, part }] : []));
  return { heads, rows, seats, faults, isFull };
}

/** The table read last: it is asked for at every key that is typed anywhere. @type {{ text: string, roster: Roster } | undefined} */
let last;

/** @param {string} text as pasted @returns {Roster} */
export function readRoster(text) {
  if (last?.text !== text) last = { text, roster: read(text) };
  return last.roster;
}
