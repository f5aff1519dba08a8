// A rib that moves and leans nowhere changes places: a chequer, drawn as one pattern however many rounds it has.
import { at, svg } from './svg.js';

/** @typedef {import('./profile.js').Size} Size */
/** @typedef {import('./rib_track.js').Run} Run */

/**
 * The chequer's pattern and the stretch of sock it fills, or nothing. Two runs and two stitches repeat: the purl
 * of the lower run, and above its knit the purl of the next.
 * @param {Document} document @param {string} id of the sock @param {Size} size @param {Run[]} track
 */
export function checks(document, id, size, track) {
  const runs = track.filter(({ isBroken }) => isBroken);
  if (runs.length === 0) return [];
  const [{ from, rounds, standing }] = runs;
  const last = runs[runs.length - 1];
  const foot = size.height - from * size.round;
  const top = size.height - (last.from + last.rounds) * size.round;
  const tall = rounds * size.round;
  const cell = (/** @type {number} */ x, /** @type {number} */ y) =>
    svg(document, 'rect', {
      class: 'purl',
      x,
      y,
      width: size.stitch,
      height: tall,
      fill: `url(#${id}-purl)`,
    });
  return [
    svg(
      document,
      'pattern',
      {
        id: `${id}-checks`,
        patternUnits: 'userSpaceOnUse',
        x: size.width / 2 - (standing.phase + 1) * size.stitch,
        y: foot - 2 * tall,
        width: 2 * size.stitch,
        height: 2 * tall,
      },
      cell(0, tall),
      cell(size.stitch, 0),
    ),
    svg(document, 'path', {
      d: `M${at(-size.width / 2, top)}H${at(size.width / 2)}V${at(foot)}H${at(-size.width / 2)}Z`,
      fill: `url(#${id}-checks)`,
    }),
  ];
}
