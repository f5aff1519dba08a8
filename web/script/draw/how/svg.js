// Strokes that the small drawings share. A drawing is a list of marks, the lowest first; where one strand
// crosses another, the upper one is drawn later and its edge makes the gap.
import { svg, text } from '../svg.js';

/** Numbers of a path, to a tenth: these drawings are small. @param {...number} values */
export const at = (...values) => values.map((value) => Math.round(value * 10) / 10).join(' ');

/** A class and a path, or a class, a place and what is written there. @typedef {[string, string] | [string, number, number, string]} Mark */

/** A drawing: how wide and tall it is, and its marks. @typedef {{ box: [number, number], top?: number, marks: Mark[] }} Picture */

// What is drawn in several strokes of one path: an edge, and what lies inside it.
const strokes = new Map([
  ['a', ['edge', 'yarn a']],
  ['b', ['edge', 'yarn b']],
  ['c', ['edge', 'yarn c']],
  ['dark', ['edge', 'yarn dark']],
  ['back', ['edge', 'yarn back']],
  // A strand that goes on over what was drawn since: without round ends, so that no seam shows.
  ['a over', ['edge over', 'yarn a over']],
  ['b over', ['edge over', 'yarn b over']],
  ['back over', ['edge over', 'yarn back over']],
  ['c over', ['edge over', 'yarn c over']],
  ['dark over', ['edge over', 'yarn dark over']],
  ['tape', ['tape-edge', 'tape', 'tape-marks']],
  ['go', ['go-halo', 'go']],
]);

/** @param {Document} document @param {Mark} mark */
function draw(document, mark) {
  if (mark.length === 4) {
    const [kind, x, y, words] = mark;
    return [text(document, words, { class: kind, x, y })];
  }
  const [kind, d] = mark;
  return (strokes.get(kind) ?? [kind]).map((each) => svg(document, 'path', { class: each, d }));
}

/** @param {Document} document @param {Picture} picture @param {string} name what it shows */
export const drawPicture = (document, { box: [wide, tall], top = 0, marks }, name) =>
  svg(
    document,
    'svg',
    { class: 'how-drawing', viewBox: `0 ${top} ${wide} ${tall}`, role: 'img', 'aria-label': name },
    ...marks.flatMap((mark) => draw(document, mark)),
  );

/**
 * A needle's end, `half` of its thickness to each side, from one place to its point.
 * @param {[number, number]} from @param {[number, number]} to @param {number} [half]
 */
export function stick([x1, y1], [x2, y2], half = 7) {
  const long = Math.hypot(x2 - x1, y2 - y1);
  const [ux, uy] = [(x2 - x1) / long, (y2 - y1) / long];
  // A place `back` from the point and `side` off the middle.
  const off = (/** @type {number} */ back, /** @type {number} */ side) =>
    at(x2 - ux * back - uy * side * half, y2 - uy * back + ux * side * half);
  const edge = (/** @type {number} */ side) =>
    `${off(half * 2.3, side)} ${off(half * 0.6, side * 0.4)}`;
  return `M${off(long, -1)}L${off(half * 5, -1)}C${edge(-1)} ${off(0, 0)}C${off(half * 0.6, 0.4)} ${off(
    half * 2.3,
    1,
  )} ${off(half * 5, 1)}L${off(long, 1)}Z`;
}

/** The point of an arrow that comes to x, y by the angle, in degrees from the right, clockwise. @param {number} x @param {number} y @param {number} degrees */
export function point(x, y, degrees) {
  const side = (/** @type {number} */ turn) => {
    const angle = ((degrees + turn) * Math.PI) / 180;
    return at(x - 9 * Math.cos(angle), y - 9 * Math.sin(angle));
  };
  return `M${side(-30)}L${at(x, y)}L${side(30)}`;
}

/** @typedef {{ x: number, top: number, neck: number, wide?: number }} Loop from its head's top to its neck, and half its width */

/** From the top of the head to the shoulder. @param {Loop} loop @param {number} side -1 the left, 1 the right */
function head({ x, top, neck, wide = 20 }, side) {
  const out = x + side * wide;
  const y = top + Math.min(26, (neck - top) * 0.4);
  return [x, top, x + side * wide * 0.6, top, out, (top + y) / 2, out, y];
}

/** The half of a head on one side: where a loop lies over its needle. @param {Loop} loop @param {number} side */
export function brow(loop, side) {
  const [x, y, ...rest] = head(loop, side);
  return `M${at(x, y)}C${at(...rest)}`;
}

/** From the shoulder down to the neck. @param {Loop} loop @param {number} side */
const fall = ({ x, top, neck, wide = 20 }, side) =>
  `C${at(x + side * wide, top + (neck - top) * 0.6, x + side * 11, neck - (neck - top) * 0.3, x + side * 8, neck)}`;

/** A leg from a little above its shoulder: what lies over the feet of the round above. @param {Loop} loop @param {number} side */
export function shank(loop, side) {
  const [, , x1, y1, x2, y2, x3, y3] = head(loop, side);
  // The last third of the head's curve.
  const part = (/** @type {number} */ from, /** @type {number} */ to) => from + (to - from) * 0.7;
  const [ax, ay] = [part(x1, x2), part(y1, y2)];
  const [bx, by] = [part(x2, x3), part(y2, y3)];
  const [cx, cy] = [part(ax, bx), part(ay, by)];
  const [dx, dy] = [part(part(part(loop.x, x1), ax), cx), part(part(part(loop.top, y1), ay), cy)];
  return `M${at(dx, dy)}C${at(cx, cy, bx, by, x3, y3)}${fall(loop, side)}`;
}

/** A leg with its half of the head. @param {Loop} loop @param {number} side */
export const leg = (loop, side) => brow(loop, side) + fall(loop, side);

/** A whole loop: both its legs from its head. @param {Loop} shape */
export const loop = (shape) => leg(shape, -1) + leg(shape, 1);

/** A loop's foot: from the neck out towards the next column. @param {{ x: number, neck: number }} loop @param {number} side @param {number} [far] */
export const foot = ({ x, neck }, side, far = 26) =>
  `M${at(x + side * 8, neck)}C${at(x + side * 7, neck + 8, x + side * 13, neck + 13, x + side * far, neck + 13)}`;
