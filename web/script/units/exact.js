// Numbers written finely enough to be reckoned with on paper: more places than one reads for pleasure,
// inches in decimals, for nobody divides by three eighths.

/**
 * So many significant figures at most, no zeros behind them, and never fewer than the whole number.
 * @param {number} value @param {number} figures
 */
export function formatFigures(value, figures) {
  if (value === 0) return '0';
  const ahead = Math.floor(Math.log10(Math.abs(value))) + 1;
  const text = value.toFixed(Math.max(0, figures - ahead));
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short.replace('-', '\u2212');
}

/** What a gauge is told over, in millimetres: ten centimetres or four inches. */
const overs = { metric: 100, inch: 101.6 };

/**
 * Stitches or rounds over ten centimetres or four inches.
 * @param {number} perMm @param {import('../units.js').System} system
 */
export const overGauge = (perMm, system) => perMm * overs[system];
