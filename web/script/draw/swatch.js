// A square of the swatch: its stitches and rounds, drawn, with their counts on dimension lines.
import { at, svg, text } from './svg.js';

/**
 * @param {Document} document
 * @param {{ stitches: number, rounds: number, wide: number, tall: number, across: string, up: string, over: string, name: string }} swatch
 *   `wide` and `tall` in the drawing's units
 */
export function drawSwatch(document, { stitches, rounds, wide, tall, across, up, over, name }) {
  const stitch = wide / stitches;
  const round = tall / rounds;
  const [left, top] = [2, 26];
  const leg = (/** @type {number} */ side) =>
    `M${at((0.5 + side * 0.44) * stitch, 0)}L${at(0.5 * stitch, round)}`;
  const right = left + wide;
  const bottom = top + tall;
  return svg(
    document,
    'svg',
    { class: 'swatch-drawing', viewBox: `0 0 216 ${bottom + 4}`, role: 'img', 'aria-label': name },
    svg(
      document,
      'defs',
      {},
      svg(
        document,
        'pattern',
        {
          id: 'swatch-knit',
          patternUnits: 'userSpaceOnUse',
          x: left,
          y: top,
          width: stitch,
          height: round,
        },
        svg(document, 'rect', { class: 'swatch-ground', width: stitch, height: round }),
        svg(document, 'path', {
          class: 'swatch-yarn',
          d: leg(1) + leg(-1),
          'stroke-width': stitch * 0.34,
        }),
      ),
    ),
    svg(document, 'rect', {
      x: left,
      y: top,
      width: wide,
      height: tall,
      class: 'swatch-cloth',
      fill: 'url(#swatch-knit)',
    }),
    svg(document, 'path', {
      class: 'measure',
      d: `M${at(left, top - 12)}v8M${at(left, top - 8)}H${at(right)}M${at(right, top - 12)}v8M${at(right + 4, top)}h8M${at(
        right + 8,
        top,
      )}V${at(bottom)}M${at(right + 4, bottom)}h8`,
    }),
    text(document, across, {
      class: 'measure-text',
      x: left + wide / 2,
      y: top - 14,
      'text-anchor': 'middle',
    }),
    text(document, up, { class: 'measure-text', x: right + 17, y: top + tall / 2 - 5 }),
    text(document, over, { class: 'measure-over', x: right + 17, y: top + tall / 2 + 13 }),
  );
}
