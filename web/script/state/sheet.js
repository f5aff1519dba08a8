// A sheet: what is kept of a sock, so that the page can be left half-filled and come back to as it was. It is read
// from storage and from files that anybody may have written.
import { isBegun } from './begun.js';
import { isOfDesk } from './desk.js';
import { roomFor, withinPlan } from './place.js';
import { isRecord, isText } from './shape.js';
import { sheetVersion, upgrade } from './sheet_versions.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Draft} Draft */
/** @typedef {Pick<State, 'name' | 'note' | 'draft' | 'example' | 'shown' | 'system' | 'moment' | 'locks' | 'course' | 'started'>} Sheet */

// More than any sheet of ours; what is longer is not one.
const most = { entries: 120, pointer: 64, typed: 200, name: 60, note: 2000, courseNote: 280 };
// A thousand seats, and twice what a row of theirs takes.
export const mostRoster = 200_000;

const units = ['', 'cm', 'in', 'mm', 'm', 'yd', 'g', 'oz', '%', 'st', 'r', 'min'];

const moments = ['buy', 'count', 'knit', 'class'];
export const lockable = ['rib', 'toe', 'yarn'];

// By the number on a label.
const yarnsIn = (/** @type {unknown} */ kept) =>
  [0, 1, 2, 3, 4, 5, 6, 7].filter((yarn) => Array.isArray(kept) && kept.includes(yarn));

/** @param {State} state */
export const toSheet = ({
  name,
  note,
  draft,
  example,
  shown,
  system,
  moment,
  locks,
  course,
  started,
}) => ({
  kind: 'sheet',
  version: sheetVersion,
  name,
  note,
  view: moment,
  system,
  draft,
  example: Object.keys(example),
  shown,
  locks,
  course,
  ...(started ? { started } : {}),
});

/** What a teacher's link says besides, as it was kept. @param {unknown} kept @returns {State['lesson']} */
export function lessonIn(kept) {
  const { title, note, locks, yarns, view, desk, roster } = /** @type {Record<string, unknown>} */ (
    kept ?? {}
  );
  return {
    title: isText(title, most.name) ? title : '',
    note: isText(note, most.courseNote) ? note : '',
    locks: lockable.filter((lock) => Array.isArray(locks) && locks.includes(lock)),
    yarns: yarnsIn(yarns),
    view: typeof view === 'string' && moments.includes(view) ? view : 'count',
    desk: deskIn(desk),
    roster: isText(roster, mostRoster) ? roster : '',
  };
}

/** What a device is to do while one knits on it, as it was kept. @param {unknown} kept */
export function wishesIn(kept) {
  const { wake, large, night, aloud } = isRecord(kept) ? kept : {};
  return {
    wake: wake === true,
    large: large === true,
    night: night === true,
    aloud: aloud === true,
  };
}

/** @param {unknown} value @param {(one: unknown) => boolean} isOne */
const isTable = (value, isOne) =>
  isRecord(value) &&
  Object.keys(value).length <= most.entries &&
  Object.entries(value).every(
    ([pointer, one]) => pointer.startsWith('/') && pointer.length <= most.pointer && isOne(one),
  );

/** @param {unknown} entry */
const isEntry = (entry) =>
  isRecord(entry) && isText(entry.typed, most.typed) && units.includes(entry.unit);

/** What is typed at a teacher's desk; fields of a sock have no business there. @param {unknown} desk @returns {Draft} */
const deskIn = (desk) =>
  isRecord(desk) && isTable(desk, isEntry) && Object.keys(desk).every(isOfDesk)
    ? /** @type {Draft} */ (desk)
    : {};

/** @param {unknown} value @param {number} longest */
const isList = (value, longest) =>
  Array.isArray(value) && value.every((one) => isText(one, longest));

/** @param {unknown} course */
const isCourse = (course) =>
  isRecord(course) &&
  isText(course.title, most.name) &&
  isText(course.note, most.courseNote) &&
  Array.isArray(course.yarns);

/** What a sheet says of the sock, however it is looked at, and whether or not it is begun. @param {Sheet} sheet */
const sockOf = ({ name, note, draft, example, locks, course }) =>
  JSON.stringify([name, note, draft, Object.keys(example).sort(), locks, course]);

/** @param {Sheet} sheet */
const beginningOf = ({ started }) =>
  started && JSON.stringify([started.request, started.reply, started.since]);

/** Whether two differ in whether they are begun, and how far they are knit, and no more. @param {Sheet} a @param {Sheet} b */
export const isSameButBegun = (a, b) => sockOf(a) === sockOf(b);

/** Whether two differ in how far they are knit, and no more. @param {Sheet} a @param {Sheet} b */
export const isSameButPlace = (a, b) => isSameButBegun(a, b) && beginningOf(a) === beginningOf(b);

/** @param {Sheet} a @param {Sheet} b */
export const isSameSock = (a, b) =>
  isSameButPlace(a, b) &&
  /** @type {const} */ (['round', 'pass', 'taps']).every(
    (part) => a.started?.[part] === b.started?.[part],
  );

/** As it is kept. @param {State} state */
export const writeSheet = (state) =>
  JSON.stringify(toSheet(state)) + (state.started ? roomFor(state.started) : '');

/**
 * What a sheet says, or nothing if it is none that this page can read.
 * @param {unknown} kept @returns {Sheet | undefined}
 */
export function fromSheet(kept) {
  if (!isRecord(kept) || kept.kind !== 'sheet') return undefined;
  const sheet = upgrade(kept);
  const { name, note, draft, example, shown, system, view, locks, course, started } = sheet;
  const isOurs =
    sheet.version === sheetVersion &&
    isText(name, most.name) &&
    isText(note, most.note) &&
    isTable(draft, isEntry) &&
    isTable(shown, (unit) => typeof unit === 'string' && units.includes(unit)) &&
    isList(example, most.pointer) &&
    isList(locks, most.name) &&
    isCourse(course) &&
    (started === undefined || isBegun(started));
  if (!isOurs) return undefined;
  return {
    name,
    note,
    draft: /** @type {Draft} */ (draft),
    shown,
    example: Object.fromEntries(
      Object.keys(draft).flatMap((pointer) => (example.includes(pointer) ? [[pointer, true]] : [])),
    ),
    system: system === 'inch' ? 'inch' : 'metric',
    moment: moments.includes(view) ? view : 'count',
    locks: lockable.filter((lock) => locks.includes(lock)),
    course: { title: course.title, note: course.note, yarns: yarnsIn(course.yarns) },
    started: started && withinPlan(started),
  };
}
