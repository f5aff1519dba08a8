// The readings of a swatch as two strips, stitches above rounds: a mark a reading, the mean as a line,
// its give or take as a band. Both strips have one scale of shares, so that a spread in one looks like
// the same spread in the other.
import { at, svg, text } from './svg.js';

/**
 * @typedef {object} Strip
 * @property {string} label what is counted
 * @property {string} mean in words, with its give or take
 * @property {number} middle the pooled gauge
 * @property {number} error its relative give or take
 * @property {number[]} values each reading's own gauge
 * @property {(value: number) => string} write a gauge for the ends of the scale
 */

const width = 240;
const [left, right] = [8, width - 8];
// Nothing closer than this is told apart on a tape: a narrower scale would make much of little.
const leastReach = 0.1;
const mark = 4;
const tall = 66;

/** How far below and above the mean the scale reaches, as shares of it. @param {Strip[]} strips */
function reachOf(strips) {
  const off = strips.flatMap(({ values, middle, error }) => [
    -error,
    error,
    ...values.map((value) => value / middle - 1),
  ]);
  const room = 1.05;
  return {
    // No gauge is below nothing.
    low: Math.max(-1, Math.min(-leastReach, ...off.map((share) => share * room))),
    high: Math.max(leastReach, ...off.map((share) => share * room)),
  };
}

/** Marks that would cover each other stand one above the other. @param {number[]} xs in order */
function stack(xs) {
  /** @type {Array<{ x: number, row: number }>} */
  const placed = [];
  for (const x of xs) {
    let row = 0;
    while (placed.some((other) => other.row === row && Math.abs(other.x - x) < 2 * mark + 0.5)) {
      row += 1;
    }
    placed.push({ x, row });
  }
  // Many in one place: nearer together, so that they stay within the strip.
  const rows = Math.max(...placed.map(({ row }) => row), 2);
  return { placed, step: Math.min(2 * mark + 0.5, 20 / rows) };
}

/** @param {Document} document @param {Strip} strip @param {number} top @param {{ low: number, high: number }} reach */
function drawStrip(document, { label, mean, middle, error, values, write }, top, { low, high }) {
  const perShare = (right - left) / (high - low);
  const xOf = (/** @type {number} */ value) => left + (value / middle - 1 - low) * perShare;
  const floor = top + 46;
  const { placed, step } = stack([...values].sort((a, b) => a - b).map(xOf));
  const ring = (/** @type {number} */ x, /** @type {number} */ y) =>
    `M${at(x - mark, y)}a${at(mark, mark)} 0 1 0 ${at(2 * mark, 0)}a${at(mark, mark)} 0 1 0 ${at(-2 * mark, 0)}Z`;
  return [
    text(document, label, { class: 'scatter-name', x: 0, y: top + 12 }),
    text(document, mean, { class: 'scatter-mean', x: width, y: top + 12, 'text-anchor': 'end' }),
    svg(document, 'rect', {
      class: 'scatter-band',
      x: xOf(middle * (1 - error)),
      y: floor - 28,
      width: 2 * error * perShare,
      height: 28,
    }),
    svg(document, 'path', {
      class: 'scatter-scale',
      d: `M${at(left, floor)}H${at(right)}M${at(left, floor)}v-5M${at(right, floor)}v-5`,
    }),
    svg(document, 'path', { class: 'scatter-line', d: `M${at(xOf(middle), floor)}v-30` }),
    svg(document, 'path', {
      class: 'scatter-marks',
      d: placed.map(({ x, row }) => ring(x, floor - mark - 1.5 - row * step)).join(''),
    }),
    text(document, write(middle * (1 + low)), { class: 'scatter-end', x: 0, y: floor + 14 }),
    text(document, write(middle * (1 + high)), {
      class: 'scatter-end',
      x: width,
      y: floor + 14,
      'text-anchor': 'end',
    }),
  ];
}

/** @param {Document} document @param {Strip[]} strips @param {string} name */
export function drawScatter(document, strips, name) {
  const reach = reachOf(strips);
  return svg(
    document,
    'svg',
    {
      class: 'scatter',
      viewBox: `0 0 ${width} ${strips.length * tall}`,
      role: 'img',
      'aria-label': name,
    },
    ...strips.flatMap((strip, i) => drawStrip(document, strip, i * tall, reach)),
  );
}
