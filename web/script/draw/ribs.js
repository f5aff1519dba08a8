// The rib as it slants over the front of a sock: one band for every purl column, from the lines that are knit.
import { at } from './svg.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./profile.js').Size} Size */
/** @typedef {import('./profile.js').Profile} Profile */
/** @typedef {import('./rib_track.js').Run} Run */
/** @typedef {import('./rib_track.js').Standing} Standing */

/** @typedef {{ y: number, start: number, end: number }} Level where the first column begins and ends, as shares of the half */

/** @param {number} y @param {Standing} standing @returns {Level} */
const levelAt = (y, { phase, purl, half }) => ({
  y,
  start: phase / half,
  end: (phase + purl) / half,
});

/**
 * The first purl column from the toe up: slanting through the middle of each step, upright in the cuff, growing wider within a widening round.
 * @param {Size} size @param {Run[]} track
 */
function levelsOf(size, track) {
  const runs = track.filter(({ isBroken }) => !isBroken);
  return runs.flatMap((run, i) => {
    const from = size.height - run.from * size.round;
    const to = from - run.rounds * size.round;
    if (run.before) return [levelAt(from, run.before), levelAt(to, run.standing)];
    const isCuff = run.section === 'cuff';
    return [
      i === 0 || isCuff ? [from] : [],
      isCuff ? [] : [(from + to) / 2],
      i === runs.length - 1 ? [to] : [],
    ]
      .flat()
      .map((y) => levelAt(y, run.standing));
  });
}

/** Levels between these, so that a band follows the sock's edge where that curves. @param {Level[]} levels @param {number[]} heights */
function refine(levels, heights) {
  const between = heights.flatMap((y) => {
    const above = levels.findIndex((level) => level.y < y);
    const below = levels[above - 1];
    if (!below || below.y <= y) return [];
    const share = (below.y - y) / (below.y - levels[above].y);
    const mix = (/** @type {number} */ one, /** @type {number} */ other) =>
      one + (other - one) * share;
    return [
      {
        y,
        start: mix(below.start, levels[above].start),
        end: mix(below.end, levels[above].end),
      },
    ];
  });
  return between.length === 0
    ? levels
    : [...levels, ...between].sort((one, other) => other.y - one.y);
}

// A tenth of a unit is seen on no screen.
const unseen = 0.1;

/**
 * Only the levels at which a band bends: over a steady spiral that is its two ends, however many rounds it has.
 * @param {Level[]} levels @param {Profile} leg
 */
function straighten(levels, leg) {
  const edges = levels.map(({ y, start, end }) => {
    const wide = leg.half(y) * 2;
    return [wide, wide * start, wide * end];
  });
  /** @type {number[]} */
  const kept = [];
  levels.forEach((_, i) => {
    const from = kept[kept.length - 1];
    if (from === undefined || i === levels.length - 1) {
      kept.push(i);
      return;
    }
    // Straight as far as the next level, past all that were left out on the way?
    const to = i + 1;
    const isStraight = levels.slice(from + 1, to).every(({ y }, k) => {
      const share = (levels[from].y - y) / (levels[from].y - levels[to].y || 1);
      return edges[from].every((edge, e) => {
        const drawn = edge + (edges[to][e] - edge) * share;
        return Math.abs(drawn - edges[from + 1 + k][e]) < unseen;
      });
    });
    if (!isStraight) kept.push(i);
  });
  return kept.map((i) => levels[i]);
}

// Bands closer than the first run together into a grey; those that are drawn then stand at least the second apart.
const [leastApart, clearlyApart] = [3, 5];

/**
 * One rib in how many is drawn: all of them, as long as an eye can tell them apart.
 * @param {Plan} plan @param {Size} size
 */
export function ribsPerBand(plan, size) {
  const slant = ((plan.spiral.pitchDeg ?? 0) * Math.PI) / 180;
  const apart = (plan.rib.knit + plan.rib.purl) * size.stitch * Math.cos(slant);
  return apart < leastApart ? Math.ceil(clearlyApart / apart) : 1;
}

/** The part of a band that may lie on the front, with a level to spare at either end. @param {Level[]} levels @param {number} shift */
function inSight(levels, shift) {
  const isSeen = levels.map(({ start, end }) => start + shift < 1 && end + shift > 0);
  // Between two levels on either side of the front it crosses it.
  const crosses = levels.map(
    ({ start }, i) => i > 0 && (start + shift - 0.5) * (levels[i - 1].start + shift - 0.5) < 0,
  );
  const any = isSeen.map((seen, i) => seen || crosses[i] || crosses[i + 1]);
  const first = any.indexOf(true);
  return first < 0 ? [] : levels.slice(Math.max(0, first - 1), any.lastIndexOf(true) + 2);
}

/**
 * The purl columns of the front as bands. Seen from outside, knitting goes from right to left.
 * @param {Plan} plan @param {Size} size @param {Profile} leg @param {Run[]} track
 */
export function purlBands(plan, size, leg, track) {
  const levels = straighten(refine(levelsOf(size, track), leg.curve), leg);
  if (levels.length === 0) return '';
  const every = ribsPerBand(plan, size);
  // A widening adds a stitch to each repeat and no repeat: as a share of the half it stays what it is.
  const repeat = ((plan.rib.knit + plan.rib.purl) / (plan.stitchCount / 2)) * every;
  const first = Math.floor(-Math.max(...levels.map(({ end }) => end)) / repeat);
  const last = Math.ceil((1 - Math.min(...levels.map(({ start }) => start))) / repeat);
  const point = (/** @type {number} */ share, /** @type {number} */ y) =>
    at(leg.half(y) * (1 - 2 * share), y);
  const band = (/** @type {number} */ shift) => {
    const seen = inSight(levels, shift);
    if (seen.length === 0) return '';
    const right = seen.map(({ start, y }) => point(start + shift, y));
    const left = seen.map(({ end, y }) => point(end + shift, y)).reverse();
    return `M${[...right, ...left].join('L')}Z`;
  };
  return Array.from({ length: last - first + 1 }, (_, i) => band((first + i) * repeat)).join('');
}

/** Where a widening round makes its stitches: a dot each. @param {Plan} plan @param {Size} size @param {Profile} leg @param {Run[]} track */
export function wideningDots(plan, size, leg, track) {
  const dots = track
    .filter(({ before }) => before)
    .flatMap(({ line, from, standing }) => {
      const y = size.height - (from + 0.5) * size.round;
      const wide = leg.half(y);
      let done = 0;
      return plan.lines[line].halves[0].map(([work, times]) => {
        const share = (done + times / 2) / standing.half;
        done += times;
        return work === 'k' || work === 'p' ? '' : `M${at(wide * (1 - 2 * share), y)}h0`;
      });
    });
  return dots.join('');
}
