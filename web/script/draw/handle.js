// The count on its line: a stitch marker to hold, the counts beside it that can be knit, and how sure its
// girth is.
import { at, svg, text } from './svg.js';

const bead = { y: 21, r: 17 };
const countLine = 54;

/**
 * The counts around the chosen one, each over its girth. A number that would run into another is left out, its
 * tick never.
 * @param {Document} document
 * @param {Array<{ x: number, stitches: string, isChosen: boolean, isAdvised: boolean }>} counts
 * @param {number} top of the band
 */
export function drawCounts(document, counts, top) {
  const wide = (/** @type {string} */ stitches) => stitches.length * 7 + 6;
  let free = -Infinity;
  const nodes = counts.flatMap(({ x, stitches, isChosen, isAdvised }) => {
    const half = wide(stitches) / 2;
    const hasRoom = isChosen || x - half >= free;
    if (hasRoom) free = x + (isChosen ? 4 : half);
    const tick = svg(document, 'path', {
      class: isAdvised ? 'count-tick advised' : 'count-tick',
      d: `M${at(x, countLine + 4)}V${at(top - 1)}`,
    });
    if (isChosen || !hasRoom) return [tick];
    const attributes = { class: 'count-figure', x, y: countLine, 'text-anchor': 'middle' };
    return [tick, text(document, stitches, attributes)];
  });
  return svg(document, 'g', { class: 'counts', 'data-key': 'counts' }, ...nodes);
}

/**
 * The give and take of the girth, as a soft band round its mark.
 * @param {Document} document @param {{ from: number, to: number, top: number, bottom: number }} area
 */
export function drawSure(document, { from, to, top, bottom }) {
  return svg(
    document,
    'g',
    { class: 'sure', 'data-key': 'sure' },
    svg(document, 'rect', { x: from, y: top, width: to - from, height: bottom - top }),
    svg(document, 'path', { d: `M${at(from, top)}V${at(bottom)}M${at(to, top)}V${at(bottom)}` }),
  );
}

/**
 * A marker with the count in it, and a line down through the band.
 * @param {Document} document
 * @param {{ x: number, bottom: number, count: string }} how
 * @param {Record<string, string>} attributes what makes it a slider
 */
export function drawHandle(document, { x, bottom, count }, attributes) {
  const { y, r } = bead;
  return svg(
    document,
    'g',
    { ...attributes, class: 'handle', 'data-key': 'handle', transform: `translate(${at(x)} 0)` },
    // Wide enough for a thumb.
    svg(document, 'rect', { class: 'grip', x: -24, y: -2, width: 48, height: bottom + 2 }),
    svg(document, 'path', { class: 'stem', d: `M${at(0, y + r)}V${at(bottom)}` }),
    svg(document, 'circle', { class: 'ring', cx: 0, cy: y, r: r + 4 }),
    svg(document, 'circle', { class: 'bead', cx: 0, cy: y, r }),
    svg(document, 'path', {
      class: 'ways',
      d: `M${at(-r - 6, y - 5)}l-5 5l5 5M${at(r + 6, y - 5)}l5 5l-5 5`,
    }),
    text(document, count, { class: 'bead-figure', x: 0, y: y + 6, 'text-anchor': 'middle' }),
  );
}
