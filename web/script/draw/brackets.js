// Brackets along a sock's parts, each with its name and figure, no label in the way of another.
import { at, svg, text } from './svg.js';

/** @typedef {{ from: number, to: number, lines: string[], figure: string }} Part `figure` stands after the first line */

/**
 * Middles of labels along a line, each clear of the next, in rising order.
 * @param {number[]} wanted @param {number[]} sizes @param {number} least @param {number} most
 */
function spread(wanted, sizes, least, most) {
  const placed = [...wanted];
  let limit = least;
  for (let i = 0; i < placed.length; i += 1) {
    placed[i] = Math.max(placed[i], limit + sizes[i] / 2);
    limit = placed[i] + sizes[i] / 2;
  }
  limit = most;
  for (let i = placed.length - 1; i >= 0; i -= 1) {
    placed[i] = Math.min(placed[i], limit - sizes[i] / 2);
    limit = placed[i] - sizes[i] / 2;
  }
  return placed;
}

/**
 * A standing sock's parts from the top down, bracketed at the right.
 * @param {Document} document @param {number} x @param {Part[]} parts @param {number} bottom
 */
export function brackets(document, x, parts, bottom) {
  const tall = parts.map(({ lines }) => 26 + lines.length * 17);
  const wanted = parts.map(({ from, to }) => (from + to) / 2);
  const middles = spread(wanted, tall, 0, bottom);
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

const level = (
  /** @type {number} */ y,
  /** @type {Part} */ { from, to },
  /** @type {number} */ way,
) => `M${at(from + 1, y)}v${at(5 * way)}H${at(to - 1)}v${at(-5 * way)}`;

/**
 * A lying sock's parts from left to right, bracketed below, a name over each figure.
 * @param {Document} document @param {{ y: number, parts: Part[], width: number }} place
 */
export function bracketsBelow(document, { y, parts, width }) {
  // Of a letter about so much, measured on the widest of the fonts there are.
  const long = parts.map(
    ({ lines, figure }) => Math.max(lines[0].length * 6.1, figure.length * 6) + 6,
  );
  const wanted = parts.map(({ from, to }) => (from + to) / 2);
  const middles = spread(wanted, long, 0, width);
  return svg(
    document,
    'g',
    { class: 'brackets level' },
    ...parts.map((part, i) => {
      const lead = `M${at(wanted[i], y + 5)}L${at(middles[i], y + 11)}`;
      const label = { x: middles[i], 'text-anchor': 'middle' };
      return svg(
        document,
        'g',
        {},
        svg(document, 'path', { class: 'bracket', d: level(y, part, 1) + lead }),
        text(document, part.lines[0], { class: 'part-name', ...label, y: y + 23 }),
        text(document, part.figure, { class: 'part-figure', ...label, y: y + 39 }),
      );
    }),
  );
}

/** How far a stair of labels rises for each. */
export const stairStep = 16;

/**
 * Parts bracketed above a lying sock, each in one line, the lines a stair that rises to the right.
 * @param {Document} document @param {{ y: number, parts: Part[] }} place
 */
export function stairAbove(document, { y, parts }) {
  return svg(
    document,
    'g',
    { class: 'brackets level' },
    ...parts.map((part, i) => {
      const x = (part.from + part.to) / 2;
      const line = y - 12 - i * stairStep;
      return svg(
        document,
        'g',
        {},
        svg(document, 'path', {
          class: 'bracket',
          d: `${level(y, part, -1)}M${at(x, y - 5)}V${at(line - 4)}h-4`,
        }),
        text(document, `${part.lines.join(', ')}: ${part.figure}`, {
          class: 'part-name',
          x: x - 8,
          y: line,
          'text-anchor': 'end',
        }),
      );
    }),
  );
}
