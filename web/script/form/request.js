// From the draft to the request: what was typed, parsed and put into the core's units. A text that is
// no number is told here and left out; everything else is the core's to judge.
import { parseQuantity, toBase, unitsOfKind } from '../units.js';
import { isDay, isTime } from '../units/days.js';
import { countReadings } from '../state.js';
import { readList } from './lists.js';
import { besideFields, fieldsOf, isAsked, isAside, waysOf } from './fields.js';

/** @typedef {{ field: string, code: string, [more: string]: unknown }} Problem */
/** @typedef {import('./fields.js').Field} Field */
/** @typedef {import('../state.js').Draft} Draft */

/**
 * A typed quantity in the core's units.
 * @param {Field} field @param {import('../state.js').Entry} entry
 */
export function readEntry(field, entry) {
  const parsed = parseQuantity(entry.typed, unitsOfKind[field.kind]);
  if (!parsed.ok) return parsed;
  const unit = parsed.unit || entry.unit || (field.kind === 'percent' ? '%' : '');
  return { ok: /** @type {const} */ (true), value: toBase(parsed.value, unit), unit: parsed.unit };
}

/** Puts a value at a JSON pointer, making what is on the way. @param {any} target @param {string} pointer @param {unknown} value */
function putAt(target, pointer, value) {
  const steps = pointer.slice(1).split('/');
  const last = /** @type {string} */ (steps.pop());
  let here = target;
  steps.forEach((step, i) => {
    const next = steps[i + 1] ?? last;
    here[step] ??= /^\d+$/.test(next) ? [] : {};
    here = here[step];
  });
  here[last] = value;
}

const isEmpty = (/** @type {Draft} */ draft, /** @type {string} */ pointer) =>
  (draft[pointer]?.typed ?? '').trim() === '';

/** Rows of readings with anything in them; the first always counts, for a swatch needs one. @param {Draft} draft */
function usedRows(draft) {
  const rows = Array.from({ length: countReadings(draft) }, (_, index) => index);
  return rows.filter((row) => {
    const at = `/swatch/readings/${row}/`;
    const typed = Object.keys(draft).filter((pointer) => pointer.startsWith(at));
    return row === 0 || typed.some((pointer) => !isEmpty(draft, pointer));
  });
}

const rowPattern = /^(\/swatch\/readings\/)(\d+)(.*)$/;

/** A pointer of the draft as one of the request, where empty rows are left out. @param {string} pointer @param {number[]} rows */
function toRequest(pointer, rows) {
  const [, at, row, rest] = rowPattern.exec(pointer) ?? [];
  return at ? `${at}${rows.indexOf(Number(row))}${rest}` : pointer;
}

/** The way back. @param {string} pointer @param {number[]} rows */
function toDraft(pointer, rows) {
  const [, at, row, rest] = rowPattern.exec(pointer) ?? [];
  return at ? `${at}${rows[Number(row)] ?? row}${rest}` : pointer;
}

/** @param {Field} field @param {string} typed */
function chosen(field, typed) {
  if (typed === 'true' || typed === 'false') return typed === 'true';
  return field.whole ? Number(typed) : typed;
}

/**
 * @param {Draft} draft
 * @returns {{ request: Record<string, any>, problems: Problem[], locate: (pointer: string) => string }}
 *   `locate` turns a pointer of the core's reply into one of the draft
 */
export function readDraft(draft) {
  const rows = usedRows(draft);
  /** @type {Record<string, any>} */
  // A foot there is, be it empty: so the core says what of it is missing.
  const request = { version: 1, foot: {} };
  /** @type {Problem[]} */
  const problems = [];
  if (waysOf(draft).swatch === 'swatch')
    putAt(
      request,
      '/swatch/readings',
      rows.map(() => ({})),
    );
  for (const field of fieldsOf(draft)) {
    if (field.as === 'mode' || isEmpty(draft, field.pointer)) continue;
    if (field.asks || !isAsked(field, draft) || isAside(field, draft)) continue;
    const pointer = toRequest(field.pointer, rows);
    const entry = draft[field.pointer];
    if (field.as === 'choice') {
      putAt(request, pointer, chosen(field, entry.typed));
      continue;
    }
    const read = readEntry(field, entry);
    if (read.ok) putAt(request, pointer, read.value);
    else problems.push({ field: field.pointer, code: read.code });
  }
  return { request, problems, locate: (pointer) => toDraft(pointer, rows) };
}

/** What the core never sees is judged here. @param {Field} field @param {number} value */
function faultOf({ limits }, value) {
  if (!limits) return undefined;
  const [min, max] = limits;
  if (value < min || value > max) return { code: 'out_of_range', min, max };
  return Number.isInteger(value) ? undefined : { code: 'not_whole' };
}

/** A browser that has no control of its own for these lets anything be typed. @param {Field} field @param {string} typed */
function faultOfWhen({ as }, typed) {
  if (as === 'day' && !isDay(typed)) return { code: 'not_a_day' };
  return as === 'time' && !isTime(typed) ? { code: 'not_a_time' } : undefined;
}

const ways = new Set(['choice', 'day', 'time', 'text']);
// The parts of stripes are asked each for itself; all else is asked as one.
const partAsked = (/** @type {Field} */ { pointer, asks }) =>
  asks === 'stripes' ? pointer.split('/')[2] : asks;

/**
 * What was typed for another question than the plan's, under the names that it has there.
 * @param {Draft} draft @param {Field['asks']} asks
 * @returns {{ said: Record<string, any>, isEmpty: boolean, problems: Problem[] }} `isEmpty`: nobody has asked
 */
export function readBeside(draft, asks) {
  /** @type {Record<string, any>} */
  const said = {};
  /** @type {Problem[]} */
  const problems = [];
  const filled = besideFields.filter(
    (field) => field.asks === asks && !isEmpty(draft, field.pointer),
  );
  // A choice says how and a day when, never that something is asked.
  const asked = new Set(filled.filter(({ as }) => !ways.has(as)).map(partAsked));
  const typed = filled.filter((field) => asked.has(partAsked(field)));
  for (const field of typed) {
    const entry = draft[field.pointer];
    const { pointer, as } = field;
    const missed = faultOfWhen(field, entry.typed);
    if (missed) {
      problems.push({ field: pointer, ...missed });
      continue;
    }
    if (ways.has(as) || as === 'many') {
      const one = as === 'many' ? entry.typed.split(' ').map(Number) : chosen(field, entry.typed);
      putAt(said, pointer, one);
      continue;
    }
    const read = as === 'list' ? readList(field, entry) : readEntry(field, entry);
    const fault = read.ok ? faultOf(field, Number(read.value)) : read;
    if (read.ok && !fault) putAt(said, pointer, read.value);
    else problems.push({ .../** @type {{ code: string }} */ (fault), field: pointer });
  }
  return { said, isEmpty: typed.length === 0, problems };
}

// What the core says of the whole sock, not of one field's value.
const ofTheSock = new Set([
  'count_out_of_range',
  'heel_out_of_reach',
  'not_a_count',
  'leg_too_short',
  'no_room_for_rib',
  'too_many_rounds',
  'stretched_too_narrow',
]);

/**
 * What stands in the way, all of it: what could not be read, and what the core refused, less what it
 * misses only because it could not be read.
 * @param {Problem[]} unread @param {Problem[]} refused
 * @param {(pointer: string) => string} locate
 */
export function gatherProblems(unread, refused, locate) {
  const known = new Set(unread.map(({ field }) => field));
  // While something is unread, what the core makes of the rest is a sock that nobody asked for.
  const ofFields = refused.filter(({ code }) => unread.length === 0 || !ofTheSock.has(code));
  const others = ofFields
    .map((problem) => ({ ...problem, field: locate(problem.field) }))
    .filter(({ field, code, ...more }) => {
      const partner = 'partner' in more ? locate(String(more.partner)) : '';
      return !known.has(field) && !(code === 'needs_partner' && known.has(partner));
    });
  return [...unread, ...others];
}
