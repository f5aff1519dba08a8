// A field's own words: what stands in it as a reader says it, what it is in the other unit, and what is
// wrong with it.
import {
  formatKind,
  formatLimit,
  formatNumber,
  formatPercent,
  fromBase,
  inputText,
  otherUnit,
  unitIn,
  unitsOfKind,
  withoutUnit,
} from '../units.js';
import { fieldWords, formWords, optionWords, problemWords } from '../../words/en.js';
import { shownUnit } from '../state.js';
import { fieldsOf, idOf, isAsked, isAside, isOfGauge, wordsKey } from './fields.js';
import { unitsInList } from './lists.js';
import { readEntry } from './request.js';

/** @typedef {import('./fields.js').Field} Field */
/** @typedef {Pick<import('../state.js').State, 'draft' | 'shown' | 'system'>} Shown what is on the sheet, and in which units */
/** @typedef {import('../state.js').State} State */
/** @typedef {import('./request.js').Problem} Problem */

/** The unit a field shows, whether or not anything was typed in it. @param {Shown} state @param {Field} field */
export const unitOf = (state, field) =>
  shownUnit(state, field.pointer) || unitIn(field.kind, state.system);

/**
 * A measure as text for its field. A gauge is counted over more than a tape's eighths can say.
 * @param {Field} field @param {number} value @param {string} unit
 */
const inField = (field, value, unit) =>
  isOfGauge(field) ? formatNumber(fromBase(value, unit), 2) : inputText(field.kind, value, unit);

/** The text that stands in a field: as typed, or as converted when it is shown in another unit. @param {State} state @param {Field} field */
export function textOf(state, field) {
  const entry = state.draft[field.pointer];
  if (!entry) return field.as === 'many' ? '' : (field.options?.[0] ?? '');
  if (field.as !== 'quantity') return entry.typed;
  const unit = unitOf(state, field);
  const read = readEntry(field, entry);
  if (!read.ok) return entry.typed;
  const written = read.unit || entry.unit;
  if (unit !== written) return inField(field, read.value, unit);
  // A unit written behind the number stands in the unit control already.
  return read.unit !== '' && unitsOfKind[field.kind].length > 1
    ? withoutUnit(entry.typed)
    : entry.typed;
}

/** What a field is in its other unit, or ''. @param {State} state @param {Field} field */
export function alsoOf(state, field) {
  const entry = state.draft[field.pointer];
  if (!entry || field.as !== 'quantity' || unitsOfKind[field.kind].length < 2) return '';
  const read = readEntry(field, entry);
  if (!read.ok) return '';
  const other = otherUnit(field.kind, unitOf(state, field));
  return `= ${isOfGauge(field) ? `${inField(field, read.value, other)} ${other}` : formatKind(field.kind, read.value, other)}`;
}

/** A field's value in words, "24.6 cm" or "to the left", or '' when it is empty. @param {State} state @param {Field} field */
function valueOf(state, field) {
  const text = textOf(state, field).trim();
  if (['list', 'many', 'day', 'time', 'text'].includes(field.as)) return text;
  if (field.as !== 'quantity') return optionWords[field.pointer][text] ?? '';
  if (text === '') return '';
  const unit = unitOf(state, field);
  const hasUnit = /[a-z"″”%]/i.test(text);
  return unit === '' || hasUnit ? text : `${text}\u00a0${unit}`;
}

/** Every asked field's value in words, by pointer. @param {State} state */
export const valuesOf = (state) =>
  Object.fromEntries(
    fieldsOf(state.draft)
      .filter((field) => isAsked(field, state.draft))
      .map((field) => [field.pointer, valueOf(state, field)]),
  );

// What one measures or reads off a label. The rest (rib, toe, fit, pace) has values that are usual, which
// nobody has to make her own.
const measured = new Set(['readings', 'yarn', 'shoe', 'foot']);

/** Whether a field stands at a value that is usual, not at somebody's measure. @param {Field} field */
export const isUsual = ({ group, pointer }) =>
  !measured.has(group) && !pointer.startsWith('/foot/') && pointer !== '/swatch/needleMm';

// One's own may well be like the example's in these: they say what a measure was counted over.
const countedOver = /\/(widthMm|heightMm|scale)$/;

const partOf = (/** @type {Field} */ { pointer }) => pointer.split('/')[1];

/** The fields a reader makes her own, all that are asked. @param {State} state */
const ownable = (state) =>
  fieldsOf(state.draft).filter(
    (field) =>
      field.as !== 'mode' &&
      isAsked(field, state.draft) &&
      !isAside(field, state.draft) &&
      !isUsual(field) &&
      !countedOver.test(field.pointer) &&
      textOf(state, field) !== '',
  );

/**
 * What is still the example's, in words: a part of the sheet, or what is left of one begun.
 * @param {State} state
 */
export function examplesLeft(state) {
  const fields = ownable(state);
  const isLeft = (/** @type {Field} */ field) => Boolean(state.example[field.pointer]);
  const begun = new Set(fields.filter((field) => !isLeft(field)).map(partOf));
  const words = fields
    .filter(isLeft)
    .map((field) => (begun.has(partOf(field)) ? shortName(field) : formWords.part[partOf(field)]));
  return [...new Set(words)];
}

/**
 * Whether a field still holds the example's measure though what it goes with is the reader's own: foot
 * and leg are of one person.
 * @param {State} state @param {Field} field
 */
export function isStranger(state, field) {
  const ofOne = (/** @type {Field} */ one) => ['foot', 'legHeightMm'].includes(partOf(one));
  return (
    ofOne(field) &&
    !isAside(field, state.draft) &&
    Boolean(state.example[field.pointer]) &&
    ownable(state).some((one) => partOf(one) === 'foot' && !state.example[one.pointer])
  );
}

// A measure that a foot by its shoe is not asked for, and the field that it is worked out from.
const standsFor = /** @type {Record<string, string>} */ ({ '/foot/ballGirthMm': '/foot/body' });

/**
 * The field that a problem's pointer names, or the nearest there is: one inside it, else one beside it (a girth that is not
 * asked for, because the foot is told by its shoe).
 * @param {Field[]} fields @param {string} pointer @returns {Field | undefined}
 */
function nearest(fields, pointer) {
  const asked = fields.filter((field) => field.as !== 'mode');
  const named = (/** @type {string} */ name) => asked.find((field) => field.pointer === name);
  const exact = named(pointer) ?? named(standsFor[pointer] ?? '');
  if (exact) return exact;
  const inside = asked.find((field) => field.pointer.startsWith(`${pointer}/`));
  if (inside) return inside;
  const around = pointer.slice(0, Math.max(0, pointer.lastIndexOf('/')));
  return around === '' ? undefined : nearest(fields, around);
}

// Their limits are lengths of feet, whatever the field is that they stand at.
const ofFeet = new Set(['shoe_out_of_range', 'girth_out_of_range']);

/** Figures of a problem as the field's reader reads them. @param {Problem} problem @param {Field | undefined} field @param {Shown} state */
function figuresOf(problem, field, state) {
  // A list of lots holds weights, and lengths besides.
  const isYarn = field?.as === 'list' && /\/m(Per100G)?$/.test(problem.field);
  const kind = isYarn ? 'yarn' : (field?.kind ?? 'number');
  const unit = isYarn ? unitIn('yarn', state.system) : field ? unitOf(state, field) : '';
  const length = unitIn('length', state.system);
  const lengthUnit = kind === 'length' ? unit : length;
  // A limit is the field's own, but for problems that the whole sock has: those count, or measure feet.
  const limit = (/** @type {number} */ value, /** @type {boolean} */ isLeast) => {
    if (problem.code === 'out_of_range') return formatLimit(kind, value, unit, isLeast);
    if (ofFeet.has(problem.code)) return formatLimit('length', value, length, isLeast);
    return formatNumber(value);
  };
  const write = (/** @type {string} */ key, /** @type {unknown} */ value) => {
    if (typeof value !== 'number') return String(value);
    if (key === 'leastMm') return formatLimit('length', value, lengthUnit, true);
    if (key.endsWith('Mm')) return formatKind('length', value, lengthUnit);
    if (key === 'use') return formatPercent(value);
    if (key === 'min' || key === 'max') return limit(value, key === 'min');
    return formatNumber(value, 2);
  };
  return Object.fromEntries(
    Object.entries(problem).map(([key, value]) => [key, write(key, value)]),
  );
}

const shortName = (/** @type {Field | undefined} */ field) => {
  if (!field) return '';
  const words = fieldWords[wordsKey(field.pointer)];
  return words.short ?? words.label;
};

/** A missing value, where its field has words of its own for that. @param {Problem} problem @param {Field | undefined} field */
const neededWords = ({ code }, field) =>
  code === 'required' && field ? fieldWords[wordsKey(field.pointer)].needed : undefined;

/** @typedef {{ stitches: number, isAdvised: boolean }} Offer a count that would do */
/** @typedef {{ pointer: string, id: string, name: string, text: string, offers: Offer[] }} Told */

/**
 * In place of a count that is none: its neighbours, and the one that would be advised.
 * @param {Problem} problem @returns {Offer[]}
 */
function offersOf({ code, below, above, advised }) {
  if (code !== 'not_a_count') return [];
  const near = [below, above].filter((count) => count !== advised);
  return [...near, advised]
    .filter((count) => typeof count === 'number')
    .map((stitches) => ({ stitches, isAdvised: stitches === advised }));
}

/**
 * Problems in words, each at a field that is there.
 * @param {Problem[]} problems @param {Shown} state @returns {Told[]}
 */
export function tellProblems(problems, state) {
  const fields = fieldsOf(state.draft).filter((field) => isAsked(field, state.draft));
  return problems.map((problem) => {
    const field = nearest(fields, problem.field) ?? nearest(fields, String(problem.instead ?? '-'));
    const say = problemWords[problem.code];
    const partner = 'partner' in problem ? nearest(fields, String(problem.partner)) : undefined;
    const figures = { ...figuresOf(problem, field, state), partner: shortName(partner) };
    const typed = field ? (state.draft[field.pointer]?.typed ?? '') : '';
    const { as = '', kind = 'number' } = field ?? {};
    const units = (as === 'list' ? unitsInList(kind) : unitsOfKind[kind])
      // What is counted needs none.
      .filter((unit) => unit !== 'st' && unit !== 'r')
      .join(', ');
    return {
      pointer: field?.pointer ?? '',
      id: field ? idOf(field.pointer) : '',
      name: field ? shortName(field) : formWords.sheet,
      text:
        neededWords(problem, field) ??
        (say ? say({ ...figures, typed, units }) : String(problem.message ?? problem.code)),
      offers: offersOf(problem),
    };
  });
}

/** What the last good plan was made from, at the fields now wrong. @param {Told[]} told @param {State} good */
export const tellGood = (told, good) => {
  const values = valuesOf(good);
  return told
    .filter(({ pointer }) => values[pointer])
    .map(({ pointer, name }) => `${name} ${values[pointer]}`);
};
