// Dimension lines and brackets: what is measured on the foot, and what the sock's parts come to.
import { at, svg, text } from './svg.js';

/** A line with a stop at each end, along y. @param {number} x @param {number} from @param {number} to */
const upright = (x, from, to) =>
  `M${at(x - 5, from)}h10M${at(x, from)}V${at(to)}M${at(x - 5, to)}h10`;

/** A line with a stop at each end, along x. @param {number} y @param {number} from @param {number} to */
const level = (y, from, to) =>
  `M${at(from, y - 5)}v10M${at(from, y)}H${at(to)}M${at(to, y - 5)}v10`;

/**
 * A length along a sock that stands, led to from the field at its side.
 * @param {Document} document @param {{ x: number, from: number, to: number, field?: number }} place
 */
export function uprightLength(document, { x, from, to, field }) {
  const middle = (from + to) / 2;
  const lead =
    field === undefined ? '' : `M${at(0, field)}H${at(10)}L${at(x - 8, middle)}H${at(x)}`;
  return svg(document, 'path', { class: 'measure', d: upright(x, from, to) + lead });
}

/**
 * A girth, drawn across the sock where it is taken.
 * @param {Document} document @param {{ from: number, to: number, y: number, turn: number, field?: number }} place
 *   `turn` is where the lead bends
 */
export function girth(document, { from, to, y, turn, field }) {
  const lead = field === undefined ? '' : `M${at(0, field)}H${at(10)}L${at(turn, y)}H${at(from)}`;
  const across = `M${at(from, y)}H${at(to)}M${at(to, y - 5)}v10M${at(from, y - 5)}v10`;
  return svg(
    document,
    'g',
    {},
    svg(document, 'path', { class: 'measure-halo', d: `M${at(from, y)}H${at(to)}` }),
    svg(document, 'path', { class: 'measure', d: lead + across }),
  );
}

/** @param {Document} document @param {{ y: number, from: number, to: number, label: string }} place */
export function levelLength(document, { y, from, to, label }) {
  return svg(
    document,
    'g',
    {},
    svg(document, 'path', { class: 'measure', d: level(y, from, to) }),
    text(document, label, {
      class: 'measure-text',
      x: (from + to) / 2,
      y: y + 18,
      'text-anchor': 'middle',
    }),
  );
}

/** @typedef {{ from: number, to: number, lines: string[], figure: string }} Part */

/** Middles of labels, each at least `apart` from the next, in order from the top. @param {number[]} wanted @param {number[]} tall @param {number} bottom */
function spread(wanted, tall, bottom) {
  const placed = [...wanted];
  for (let i = 1; i < placed.length; i += 1) {
    placed[i] = Math.max(placed[i], placed[i - 1] + (tall[i - 1] + tall[i]) / 2);
  }
  let limit = bottom;
  for (let i = placed.length - 1; i >= 0; i -= 1) {
    placed[i] = Math.min(placed[i], limit - tall[i] / 2);
    limit = placed[i] - tall[i] / 2;
  }
  return placed;
}

/**
 * The sock's parts from the top down, bracketed at the right.
 * @param {Document} document @param {number} x @param {Part[]} parts @param {number} bottom
 */
export function brackets(document, x, parts, bottom) {
  const tall = parts.map(({ lines }) => 26 + lines.length * 17);
  const wanted = parts.map(({ from, to }) => (from + to) / 2);
  const middles = spread(wanted, tall, bottom);
  return svg(
    document,
    'g',
    { class: 'brackets' },
    ...parts.map(({ from, to, lines, figure }, i) => {
      const top = middles[i] - tall[i] / 2 + 15;
      const lead = `M${at(x + 7, wanted[i])}L${at(x + 13, middles[i])}`;
      return svg(
        document,
        'g',
        {},
        svg(document, 'path', {
          class: 'bracket',
          d: `M${at(x, from + 2)}h7V${at(to - 2)}h-7${lead}`,
        }),
        text(document, lines[0], { class: 'part-name', x: x + 18, y: top }),
        text(document, figure, { class: 'part-figure', x: x + 18, y: top + 20 }),
        ...lines
          .slice(1)
          .map((line, j) =>
            text(document, line, { class: 'part-name', x: x + 18, y: top + 38 + j * 16 }),
          ),
      );
    }),
  );
}
