// The shape of one sock laid flat, to scale, from its real counts.
import { at } from './svg.js';

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

/** Each corner drawn towards its neighbours, the ends as they are. @param {Array<{ x: number, y: number }>} corners */
const ease = (corners) =>
  corners.map((corner, i) => {
    const before = corners[i - 1];
    const after = corners[i + 1];
    if (!before || !after) return corner;
    return {
      x: (before.x + 2 * corner.x + after.x) / 4,
      y: (before.y + 2 * corner.y + after.y) / 4,
    };
  });

/** The outline, its toe made smooth: a curve through the middles of the toe's own, eased corners. @param {Plan} plan @param {Size} size */
export function outline(plan, size) {
  const corners = ease(ease(toeCorners(plan, size)));
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

/** Where stitches are added: a dot a stitch in from each edge. @param {Plan} plan @param {Size} size */
export function increaseDots(plan, size) {
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
