// One sock laid flat: its outline filled with knit, its ribs with purl, every stitch where it is knit. Two
// patterns and a few paths, never a node a stitch.
import { at, svg } from './svg.js';

/** @typedef {{ stitch: number, round: number, width: number, height: number }} Size */

/** A knit stitch: two legs that meet below, and the feet of the one above. @param {Size} size */
function knitLegs({ stitch: w, round: h }) {
  const leg = (/** @type {number} */ side, /** @type {number} */ up) => {
    const x = (/** @type {number} */ share) => (0.5 + side * share) * w;
    const y = (/** @type {number} */ share) => (share + up) * h;
    return `M${at(x(0.46), y(0.1))}C${at(x(0.5), y(0.55), x(0.24), y(1.1), x(0.03), y(1.22))}C${at(
      x(-0.02),
      y(0.85),
      x(0.18),
      y(0.3),
      x(0.46),
      y(0.1),
    )}Z`;
  };
  return [0, -1].flatMap((up) => [leg(1, up), leg(-1, up)]).join('');
}

/** A purl stitch: the bump across, and half of its neighbours. @param {Size} size */
function purlBump({ stitch: w, round: h }) {
  const bump = (/** @type {number} */ x, /** @type {number} */ y) =>
    `M${at((x - 0.46) * w, y * h)}q${at(0.46 * w, -0.62 * h, 0.92 * w, 0)}q${at(
      -0.46 * w,
      0.5 * h,
      -0.92 * w,
      0,
    )}z`;
  return bump(0.5, 0.62);
}

/** @param {Document} document @param {string} id @param {Size} size @param {string} kind @param {string} path */
const fabric = (document, id, size, kind, path) =>
  svg(
    document,
    'pattern',
    {
      id: `${id}-${kind}`,
      patternUnits: 'userSpaceOnUse',
      x: -size.width / 2,
      y: 0,
      width: size.stitch,
      height: size.round,
    },
    svg(document, 'rect', { class: `${kind}-ground`, width: size.stitch, height: size.round }),
    svg(document, 'path', { class: `${kind}-yarn`, d: path }),
  );

/**
 * Its top edge lies on y = 0 and its middle on x = 0; the toe points down.
 * @param {Document} document @param {Size} size
 * @param {{ edge: string, purl: string, increases: string }} paths
 * @param {{ id: string, isSecond: boolean, giveOrTake: number }} how `giveOrTake` is a share of the width,
 *   or 0 for no ghost of it
 */
export function drawSock(document, size, { edge, purl, increases }, { id, isSecond, giveOrTake }) {
  const ghosts = giveOrTake === 0 ? [] : [1 / (1 + giveOrTake), 1 / (1 - giveOrTake)];
  return svg(
    document,
    'g',
    { class: isSecond ? 'sock yarn-b' : 'sock yarn-a' },
    svg(
      document,
      'defs',
      {},
      fabric(document, id, size, 'knit', knitLegs(size)),
      fabric(document, id, size, 'purl', purlBump(size)),
      svg(document, 'clipPath', { id: `${id}-edge` }, svg(document, 'path', { d: edge })),
    ),
    svg(document, 'path', { d: edge, fill: `url(#${id}-knit)` }),
    svg(
      document,
      'g',
      { 'clip-path': `url(#${id}-edge)` },
      svg(document, 'path', { class: 'purl', d: purl, fill: `url(#${id}-purl)` }),
    ),
    svg(document, 'path', {
      class: 'increases',
      d: increases,
      'stroke-width': Math.min(3, size.stitch * 0.5),
    }),
    svg(document, 'path', { class: 'edge', d: edge }),
    ...ghosts.map((wide) =>
      svg(document, 'path', { class: 'ghost', d: edge, transform: `scale(${at(wide)} 1)` }),
    ),
  );
}
