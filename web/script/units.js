// The only converter, parser and writer of measures. Inside, lengths are millimetres, yarn is metres,
// mass is grams; a reader sees the units she chose.
//
// What was typed stays the truth. A draft keeps the text and the unit it was typed with, and the plan
// is made from those two alone; a unit switched later changes what is shown and never the plan.
export { formatFigures, overGauge } from './units/exact.js';
export { coloursOf, parseList } from './units/list.js';
export { parseQuantity, withoutUnit } from './units/parse.js';

/** @typedef {import('./units/list.js').Item} Item */

/** @typedef {'metric' | 'inch'} System */

// One inch is 25.4 mm, one yard 0.9144 m, one pound of 16 ounces 453.59237 g, exactly (the agreement of 1959).
const perUnit = {
  cm: 10,
  mm: 1,
  in: 25.4,
  m: 1,
  yd: 0.9144,
  g: 1,
  oz: 28.349523125,
  kg: 1000,
  lb: 453.59237,
};

/** Units a field may be typed in; the first two stand in its unit control. */
export const unitsOfKind = {
  length: ['cm', 'in', 'mm'],
  needle: ['mm'],
  yarn: ['m', 'yd'],
  mass: ['g', 'oz'],
  percent: ['%'],
  stitches: ['st'],
  rounds: ['r'],
  minutes: ['min'],
  number: /** @type {string[]} */ ([]),
};

/** @typedef {keyof typeof unitsOfKind} Kind */

const systemUnits = {
  metric: { length: 'cm', yarn: 'm', mass: 'g' },
  inch: { length: 'in', yarn: 'yd', mass: 'oz' },
};

/**
 * The unit that a kind of measure is shown in under a system, or '' where there is no choice.
 * @param {Kind} kind @param {System} system
 */
export function unitIn(kind, system) {
  const units = /** @type {Record<string, string>} */ (systemUnits[system]);
  return units[kind] ?? '';
}

/** The other unit of a kind's two. @param {Kind} kind @param {string} unit */
export function otherUnit(kind, unit) {
  const [first, second] = unitsOfKind[kind];
  return unit === first ? second : first;
}

// Fifteen figures: enough for any tape, and 1.1 cm is 11 mm, not 11.000000000000002.
const clean = (/** @type {number} */ value) => Number(value.toPrecision(15));

/** From a unit to millimetres, metres, grams, or a share. @param {number} value @param {string} unit */
export function toBase(value, unit) {
  if (unit === '%') return clean(value / 100);
  const factor = /** @type {Record<string, number>} */ (perUnit)[unit] ?? 1;
  return clean(value * factor);
}

/** @param {number} base @param {string} unit */
export function fromBase(base, unit) {
  if (unit === '%') return clean(base * 100);
  const factor = /** @type {Record<string, number>} */ (perUnit)[unit] ?? 1;
  return base / factor;
}

const trimZeros = (/** @type {string} */ text) =>
  text.includes('.') ? text.replace(/\.?0+$/, '') : text;

/** A number with at most so many decimals, and a true minus sign. @param {number} value @param {number} [most] */
export function formatNumber(value, most = 0) {
  const text = trimZeros(value.toFixed(most));
  return text === '-0' ? '0' : text.replace('-', '\u2212');
}

/** A whole number with a thin space in its thousands, which nobody takes for a decimal sign. */
export const formatCount = (/** @type {number} */ count) =>
  formatNumber(count).replace(/\B(?=(\d{3})+$)/g, count < 10000 ? '' : '\u202f');

const eighths = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

/** Inches as a tape shows them, to an eighth. @param {number} mm */
function formatInches(mm) {
  const parts = Math.round(Math.abs(mm / 25.4) * 8);
  const whole = Math.floor(parts / 8);
  const rest = eighths[parts % 8];
  const sign = mm < 0 && parts > 0 ? '\u2212' : '';
  return `${sign}${whole > 0 || rest === '' ? whole : ''}${rest}`;
}

/** Inches to an eighth as one types them, "9 5/8". @param {number} mm */
function typedInches(mm) {
  const parts = Math.round((mm / 25.4) * 8);
  const [whole, rest] = [Math.floor(parts / 8), parts % 8];
  const fraction =
    rest === 0 ? '' : rest % 4 === 0 ? '1/2' : rest % 2 === 0 ? `${rest / 2}/4` : `${rest}/8`;
  return [whole > 0 || rest === 0 ? String(whole) : '', fraction].filter(Boolean).join(' ');
}

/** @param {number} mm @param {string} unit cm, mm or in */
export function formatLength(mm, unit) {
  if (unit === 'in') return `${formatInches(mm)} in`;
  return `${formatNumber(fromBase(mm, unit), 1)} ${unit}`;
}

/** Yarn: whole metres or yards; a decimal under ten. @param {number} m @param {string} unit */
export function formatYarn(m, unit) {
  const value = fromBase(m, unit);
  return `${formatNumber(value, Math.abs(value) < 9.95 ? 1 : 0)} ${unit}`;
}

/** @param {number} g @param {string} unit */
export function formatMass(g, unit) {
  const value = fromBase(g, unit);
  if (unit === 'oz') return `${formatNumber(value, 1)} oz`;
  return `${formatNumber(value, Math.abs(value) < 9.95 ? 1 : 0)} g`;
}

/** @param {number} share 0.1 is 10 % @param {number} [most] */
export const formatPercent = (share, most = 0) => `${formatNumber(share * 100, most)}\u00a0%`;

/** Away from a limit, so that a share just outside of it never reads as the limit itself. @param {number} share @param {boolean} isUp */
export function formatPercentAway(share, isUp) {
  const tenths = (isUp ? Math.ceil : Math.floor)(clean(Math.abs(share) * 1000));
  return `${share < 0 ? '\u2212' : ''}${formatNumber(tenths / 10, 1)}\u00a0%`;
}

/**
 * A limit, in a form that the limit itself still allows when it is typed: the least rounded up, the most
 * down, inches in decimals because their eighths are too coarse.
 * @param {Kind} kind @param {number} base @param {string} unit @param {boolean} isLeast
 */
export function formatLimit(kind, base, unit, isLeast) {
  if (kind !== 'length' && kind !== 'yarn' && kind !== 'mass') return formatKind(kind, base, unit);
  const most = unit === 'cm' ? 10 : 100;
  const value = (isLeast ? Math.ceil : Math.floor)(clean(fromBase(base, unit) * most)) / most;
  return `${formatNumber(value, 2)} ${unit}`;
}

/** Hours and minutes as they are: of a course, whose time nobody estimates. @param {number} minutes */
export function formatWholeTime(minutes) {
  const hours = Math.floor(minutes / 60);
  const rest = minutes - hours * 60;
  const parts = [hours > 0 && `${hours} h`, rest > 0 && `${formatNumber(rest, 1)} min`];
  return parts.filter(Boolean).join(' ');
}

/**
 * Hours and minutes, to five minutes; from three hours on to half an hour.
 * @param {number} minutes @param {number} [whole] the time this one is the give or take of: as coarse as that
 */
export function formatTime(minutes, whole = minutes) {
  const step = whole < 180 ? 5 : 30;
  const fives = Math.max(1, Math.round(minutes / step)) * step;
  const hours = Math.floor(fives / 60);
  const rest = fives % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 || hours >= 10 ? `${Math.round(minutes / 60)} h` : `${hours} h ${rest} min`;
}

/**
 * A measure of a kind, written for reading.
 * @param {Kind} kind @param {number} base @param {string} unit
 */
export function formatKind(kind, base, unit) {
  if (kind === 'length' || kind === 'needle') return formatLength(base, unit || 'mm');
  if (kind === 'yarn') return formatYarn(base, unit);
  if (kind === 'mass') return formatMass(base, unit);
  if (kind === 'percent') return formatPercent(base, 1);
  return formatNumber(base, 2);
}

/**
 * A measure of a kind as text for its input, without its unit: finer than for reading, for it
 * stands where a typed number stood.
 * @param {Kind} kind @param {number} base @param {string} unit
 */
export function inputText(kind, base, unit) {
  if (kind === 'length' && unit === 'in') return typedInches(base);
  const most = unit === 'cm' || unit === 'g' ? 1 : unit === 'm' || unit === 'yd' ? 0 : 2;
  return formatNumber(fromBase(base, unit), kind === 'mass' ? 2 : most);
}
