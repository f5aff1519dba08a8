// One sock laid flat: its outline filled with knit, its ribs with purl, every stitch where it is knit. Two
// patterns and a few paths, never a node a stitch.
import { at, svg } from './svg.js';

/** @typedef {import('./profile.js').Size} Size */

// Smaller than this no stitch can be told from the next, and a pattern of them only flickers.
const leastStitch = 1.5;
const isTold = (/** @type {Size} */ size) => size.stitch >= leastStitch;

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
    svg(document, 'rect', {
      class: isTold(size) ? `${kind}-ground` : `${kind}-yarn`,
      width: size.stitch,
      height: size.round,
    }),
    ...(isTold(size) ? [svg(document, 'path', { class: `${kind}-yarn`, d: path })] : []),
  );

/** The loops of the top edge, over the needle they hang from: one path. @param {Size} size */
function loops(size) {
  const { stitch: w, widest } = size;
  if (!isTold(size)) return '';
  const left = -widest / 2;
  const rise = Math.min(6, Math.max(3.2, w * 0.9));
  return Array.from({ length: Math.round(widest / w) }, (_, i) => {
    const x = (/** @type {number} */ share) => left + (i + share) * w;
    return `M${at(x(0.24), 1)}C${at(x(0.1), -rise, x(0.9), -rise, x(0.76), 1)}`;
  }).join('');
}

/** A tube laid flat turns away at its sides. @param {Document} document @param {string} id */
const shade = (document, id) =>
  svg(
    document,
    'linearGradient',
    { id: `${id}-shade` },
    ...[
      [0, 'deep'],
      [0.16, 'clear'],
      [0.36, 'light'],
      [0.62, 'clear'],
      [0.84, 'clear'],
      [1, 'deep'],
    ].map(([offset, tone]) => svg(document, 'stop', { offset, class: `shade-${tone}` })),
  );

/**
 * Its top edge lies on y = 0 and its middle on x = 0; the toe points down.
 * @param {Document} document @param {Size} size
 * @param {{ edge: string, purl: string, checks: Node[], increases: string }} paths
 * @param {{ id: string, isSecond: boolean, giveOrTake: number }} how `giveOrTake` is a share of the width,
 *   or 0 for no ghost of it
 */
export function drawSock(
  document,
  size,
  { edge, purl, checks, increases },
  { id, isSecond, giveOrTake },
) {
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
      shade(document, id),
      svg(document, 'clipPath', { id: `${id}-edge` }, svg(document, 'path', { d: edge })),
    ),
    svg(document, 'path', { d: edge, fill: `url(#${id}-knit)` }),
    svg(
      document,
      'g',
      { 'clip-path': `url(#${id}-edge)` },
      svg(document, 'path', { class: 'purl', d: purl, fill: `url(#${id}-purl)` }),
      ...checks,
    ),
    svg(document, 'path', { d: edge, fill: `url(#${id}-shade)` }),
    svg(document, 'path', {
      class: 'increases',
      d: increases,
      'stroke-width': Math.min(3, size.stitch * 0.5),
    }),
    svg(document, 'path', { class: 'edge', d: edge }),
    svg(document, 'path', {
      class: 'loops',
      d: loops(size),
      'stroke-width': Math.min(2.4, size.stitch * 0.36),
    }),
    ...ghosts.map((wide) =>
      svg(document, 'path', { class: 'ghost', d: edge, transform: `scale(${at(wide)} 1)` }),
    ),
  );
}
