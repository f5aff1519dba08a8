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
 * The first purl column from the toe up: slanting through the middle of each step, upright in the cuff and in a
 * broken rib, growing wider within a widening round.
 * @param {Size} size @param {Run[]} track
 */
function levelsOf(size, track) {
  return track.flatMap((run, i) => {
    const from = size.height - run.from * size.round;
    const to = from - run.rounds * size.round;
    if (run.before) return [levelAt(from, run.before), levelAt(to, run.standing)];
    if (run.isBroken) return [levelAt(from, run.standing), levelAt(to, run.standing)];
    const isCuff = run.section === 'cuff';
    return [
      i === 0 || isCuff ? [from] : [],
      isCuff ? [] : [(from + to) / 2],
      i === track.length - 1 ? [to] : [],
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

/**
 * Every purl column of the front as a band. Seen from outside, knitting goes from right to left.
 * @param {Plan} plan @param {Size} size @param {Profile} leg @param {Run[]} track
 */
export function purlBands(plan, size, leg, track) {
  const levels = refine(levelsOf(size, track), leg.curve);
  if (levels.length === 0) return '';
  // A widening adds a stitch to each repeat and no repeat: as a share of the half it stays what it is.
  const repeat = (plan.rib.knit + plan.rib.purl) / (plan.stitchCount / 2);
  const first = Math.floor(-Math.max(...levels.map(({ end }) => end)) / repeat);
  const last = Math.ceil((1 - Math.min(...levels.map(({ start }) => start))) / repeat);
  const wide = levels.map(({ y }) => leg.half(y));
  const point = (/** @type {number} */ share, /** @type {number} */ i) =>
    at(wide[i] * (1 - 2 * share), levels[i].y);
  const band = (/** @type {number} */ shift) => {
    const right = levels.map(({ start }, i) => point(start + shift, i));
    const left = levels.map(({ end }, i) => point(end + shift, i)).reverse();
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
