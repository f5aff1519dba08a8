// Dimension lines: what is measured on the foot, and where on it.
import { at, svg, text } from './svg.js';

/** A line with a stop at each end, along y. @param {number} x @param {number} from @param {number} to */
const upright = (x, from, to) =>
  `M${at(x - 5, from)}h10M${at(x, from)}V${at(to)}M${at(x - 5, to)}h10`;

/** A line with a stop at each end, along x. @param {number} y @param {number} from @param {number} to */
const level = (y, from, to) =>
  `M${at(from, y - 5)}v10M${at(from, y)}H${at(to)}M${at(to, y - 5)}v10`;

/**
 * What a finger may touch to come to the line's field: broader than the line, and not drawn.
 * @param {Document} document @param {string} d
 */
const reach = (document, d) => svg(document, 'path', { class: 'reach', d, 'data-on': 'page' });

/**
 * A length along a sock that stands, led to from the field at its side.
 * @param {Document} document
 * @param {{ x: number, from: number, to: number, field?: number, goto: string, label: string }} place `goto` is
 *   its field; `label` is for a drawing that is saved: on the page the field stands there
 */
export function uprightLength(document, { x, from, to, field, goto, label }) {
  const middle = (from + to) / 2;
  const lead =
    field === undefined ? '' : `M${at(0, field)}H${at(10)}L${at(x - 8, middle)}H${at(x)}`;
  return svg(
    document,
    'g',
    { 'data-goto': goto },
    svg(document, 'path', { class: 'measure', d: upright(x, from, to) }),
    svg(document, 'path', { class: 'measure', d: lead, 'data-on': 'page' }),
    text(document, label, {
      class: 'measure-text',
      transform: `translate(${at(x - 10, middle)}) rotate(-90)`,
      'text-anchor': 'middle',
      'data-on': 'file',
    }),
    reach(document, `M${at(x, from)}V${at(to)}`),
  );
}

/**
 * A girth, drawn across the sock where it is taken.
 * @param {Document} document
 * @param {{ from: number, to: number, y: number, turn: number, field?: number, goto: string }} place `turn` is
 *   where the lead bends, `goto` its field
 */
export function girth(document, { from, to, y, turn, field, goto }) {
  const lead = field === undefined ? '' : `M${at(0, field)}H${at(10)}L${at(turn, y)}H${at(from)}`;
  const across = `M${at(from, y)}H${at(to)}M${at(to, y - 5)}v10M${at(from, y - 5)}v10`;
  // Its words are the field's, which a saved drawing has not.
  return svg(
    document,
    'g',
    { 'data-on': 'page', 'data-goto': goto },
    svg(document, 'path', { class: 'measure-halo', d: `M${at(from, y)}H${at(to)}` }),
    svg(document, 'path', { class: 'measure', d: lead + across }),
    reach(document, `M${at(from, y)}H${at(to)}`),
  );
}

/** @param {Document} document @param {{ y: number, from: number, to: number, goto: string, label: string }} place */
export function levelLength(document, { y, from, to, goto, label }) {
  return svg(
    document,
    'g',
    { 'data-goto': goto },
    svg(document, 'path', { class: 'measure', d: level(y, from, to) }),
    reach(document, `M${at(from, y + 6)}H${at(to)}`),
    text(document, label, {
      class: 'measure-text',
      x: (from + to) / 2,
      y: y + 18,
      'text-anchor': 'middle',
    }),
  );
}

/**
 * Between two toes that stand or lie side by side: on this side of each is the great toe.
 * @param {Document} document @param {{ x: number, y: number, label: string, isLying?: boolean }} place
 *   the label's middle
 */
export function greatToes(document, { x, y, label, isLying = false }) {
  const [one, other] = isLying
    ? [`M${at(x - 4, y - 15)}l4 -5l4 5`, `M${at(x - 4, y + 5)}l4 5l4 -5`]
    : [`M${at(x - 37, y)}l-4 -4l4 -4`, `M${at(x + 37, y)}l4 -4l-4 -4`];
  return svg(
    document,
    'g',
    { class: 'great-toes' },
    svg(document, 'path', { class: 'measure', d: one + other }),
    text(document, label, { class: 'measure-text', x, y, 'text-anchor': 'middle' }),
  );
}
