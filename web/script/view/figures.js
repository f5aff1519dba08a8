// Figures in the page's units, as the views write them.
import {
  formatCount,
  formatLength,
  formatMass,
  formatNumber,
  formatPercent,
  formatTime,
  formatYarn,
  overGauge,
  unitIn,
} from '../units.js';

/** @typedef {import('../units.js').System} System */

/** @param {System} system */
export function figuresIn(system) {
  const other = system === 'metric' ? 'inch' : 'metric';
  return {
    length: (/** @type {number} */ mm) => formatLength(mm, unitIn('length', system)),
    otherLength: (/** @type {number} */ mm) => formatLength(mm, unitIn('length', other)),
    yarn: (/** @type {number} */ m) => formatYarn(m, unitIn('yarn', system)),
    otherYarn: (/** @type {number} */ m) => formatYarn(m, unitIn('yarn', other)),
    mass: (/** @type {number} */ g) => formatMass(g, unitIn('mass', system)),
    otherMass: (/** @type {number} */ g) => formatMass(g, unitIn('mass', other)),
  };
}

/** Ease with its sign, "−11 %". @param {number} share */
export const writeEase = (share) => formatPercent(share);

/** A needle: millimetres in every system. @param {number} mm */
export const writeNeedle = (mm) => `${formatNumber(mm, 2)} mm`;

export const shares = new Set([
  'apart',
  'asked',
  'backStrain',
  'contraction',
  'cv',
  'ease',
  'error',
  'frontStrain',
  'girthEase',
  'heelUse',
  'leastCv',
  'lengthEase',
  'margin',
  'passUse',
  'relativeError',
  'ribError',
  'share',
  'tipShare',
  'use',
  'washError',
]);

// Yarn in a stitch, a stitch's own width, a needle: millimetres in every system.
const small = new Set([
  'geometryMm',
  'limitMm',
  'measuredMm',
  'mm',
  'mmPerStitch',
  'tryMm',
  'weighedMm',
  'widestStitchMm',
]);

/**
 * A number of the reply by its name: what it is follows from how it is called.
 * @param {string} name @param {unknown} value @param {System} system
 */
export function writeNamed(name, value, system) {
  if (typeof value !== 'number') return String(value);
  const figures = figuresIn(system);
  if (shares.has(name)) return formatPercent(value, Math.abs(value) < 0.1 ? 1 : 0);
  if (small.has(name)) return `${formatNumber(value, 2)} mm`;
  if (name.endsWith('PerMm')) {
    return formatNumber(overGauge(value, system), 2);
  }
  if (name.endsWith('Mm')) return figures.length(value);
  if (name === 'm' || name === 'ballM' || /[a-z]M$/.test(name) || name === 'mPerSock')
    return figures.yarn(value);
  if (name === 'g' || /[a-z]G$/.test(name)) return figures.mass(value);
  if (name === 'minutes') return formatTime(value);
  return Number.isInteger(value) ? formatCount(value) : formatNumber(value, 2);
}
