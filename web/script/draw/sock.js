// One sock laid flat, to scale, from its real counts: every stitch of the fabric stands where it is
// knit, drawn by two patterns and a few paths, never a node a stitch.
import { at, svg } from './svg.js';

/** @typedef {import('../contract.js').Plan} Plan */

/**
 * @typedef {object} Size in the drawing's units
 * @property {number} stitch width of one stitch
 * @property {number} round height of one round
 * @property {number} width of the sock, half its stitches
 * @property {number} height of the sock, all its rounds
 */

/** @param {Plan} plan @param {number} scale units per millimetre @returns {Size} */
export function sizeSock(plan, scale) {
  const stitch = scale / plan.gauge.stitchesPerMm;
  const round = scale / plan.gauge.roundsPerMm;
  return {
    stitch,
    round,
    width: (plan.stitchCount / 2) * stitch,
    height: plan.totalRounds * round,
  };
}

/** Corners of the toe's right side from the tip up: the tip's corner, then each increase. @param {Plan} plan @param {Size} size */
function toeCorners(plan, size) {
  const { counts } = plan.toe;
  const corners = [{ x: (plan.castOn.stitches / 4) * size.stitch, y: size.height }];
  counts.forEach((count, j) => {
    const before = j === 0 ? plan.castOn.stitches : counts[j - 1];
    if (count !== before)
      corners.push({ x: (count / 4) * size.stitch, y: size.height - j * size.round });
  });
  corners.push({ x: size.width / 2, y: size.height - counts.length * size.round });
  return corners;
}

/** The outline, its toe made smooth: a curve through the middles of the toe's own corners. @param {Plan} plan @param {Size} size */
function outline(plan, size) {
  const corners = toeCorners(plan, size);
  const middles = corners.slice(1).map((corner, i) => ({
    x: (corner.x + corners[i].x) / 2,
    y: (corner.y + corners[i].y) / 2,
  }));
  const side = corners
    .slice(0, -1)
    .map((corner, i) => `Q${at(corner.x, corner.y, middles[i].x, middles[i].y)}`);
  const end = corners[corners.length - 1];
  const back = [...middles.keys()].reverse().map((i) => {
    const to = i === 0 ? { x: 0, y: size.height } : middles[i - 1];
    return `Q${at(-corners[i].x, corners[i].y, -to.x, to.y)}`;
  });
  const last = middles[middles.length - 1];
  return [
    `M${at(0, size.height)}`,
    ...side,
    `L${at(end.x, end.y)}`,
    `V${at(0)}H${at(-end.x)}V${at(end.y)}`,
    `L${at(-last.x, last.y)}`,
    ...back,
    'Z',
  ].join('');
}

/**
 * Every purl stitch of the front, as bands: for each run of equal rounds its runs of purl. Seen from
 * outside, knitting goes from right to left.
 * @param {Plan} plan @param {Size} size @param {boolean} isSecond
 */
function purlBands(plan, size, isSecond) {
  const path = [];
  let done = 0;
  for (const span of plan.rounds) {
    const bottom = size.height - done * size.round;
    done += span.rounds;
    if (span.section === 'toe') continue;
    const line = plan.lines[isSecond ? (span.secondLine ?? span.line) : span.line];
    const tall = span.rounds * size.round;
    let x = size.width / 2;
    for (const [work, times] of line.halves[0]) {
      const wide = times * size.stitch;
      x -= wide;
      if (work === 'p') path.push(`M${at(x, bottom)}v${at(-tall)}h${at(wide)}v${at(tall)}z`);
    }
  }
  return path.join('');
}

/** Where stitches are added: a dot a stitch in from each edge. @param {Plan} plan @param {Size} size */
function increaseDots(plan, size) {
  const { counts } = plan.toe;
  const path = counts.flatMap((count, j) => {
    const before = j === 0 ? plan.castOn.stitches : counts[j - 1];
    if (count === before) return [];
    const x = (count / 4 - 1.5) * size.stitch;
    const y = size.height - (j + 0.5) * size.round;
    return [`M${at(x, y)}h0M${at(-x, y)}h0`];
  });
  return path.join('');
}

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
 * @param {Document} document @param {Plan} plan @param {Size} size
 * @param {{ id: string, isSecond: boolean, giveOrTake: number }} how `giveOrTake` is a share of the width,
 *   or 0 for no ghost of it
 */
export function drawSock(document, plan, size, { id, isSecond, giveOrTake }) {
  const edge = outline(plan, size);
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
      svg(document, 'path', {
        class: 'purl',
        d: purlBands(plan, size, isSecond),
        fill: `url(#${id}-purl)`,
      }),
    ),
    svg(document, 'path', { class: 'increases', d: increaseDots(plan, size) }),
    svg(document, 'path', { class: 'edge', d: edge }),
    ...ghosts.map((wide) =>
      svg(document, 'path', { class: 'ghost', d: edge, transform: `scale(${at(wide)} 1)` }),
    ),
  );
}
