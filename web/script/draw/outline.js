// The shape of one sock laid flat, to scale, from its real counts.
import { at } from './svg.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./profile.js').Size} Size */
/** @typedef {import('./profile.js').Profile} Profile */
/** @typedef {{ x: number, y: number }} Point */
/** @typedef {'great' | 'little'} Side */

/** Whether a toe round widens one side. @param {string} sides @param {Side} side */
const widens = (sides, side) => sides === 'both' || sides === side;

/**
 * Corners of one side of the toe from the tip up, x counted outward: the tip's corner, then each increase.
 * @param {Plan} plan @param {Size} size @param {Side} side
 */
function toeCorners(plan, size, side) {
  let x = (plan.castOn.stitches / 4) * size.stitch;
  const corners = [{ x, y: size.height }];
  plan.toe.sides.forEach((sides, j) => {
    if (!widens(sides, side)) return;
    x += size.stitch;
    corners.push({ x, y: size.height - j * size.round });
  });
  corners.push({ x: size.width / 2, y: size.height - plan.toe.rounds * size.round });
  return corners;
}

/** Each corner drawn towards its neighbours, the ends as they are. @param {Point[]} corners */
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

const mirror = (/** @type {Point[]} */ points) => points.map(({ x, y }) => ({ x: -x, y }));

/** Up one side of the toe: a curve through the middles of its eased corners. @param {Point[]} corners */
function upToe(corners) {
  const middles = corners.slice(1).map((corner, i) => ({
    x: (corner.x + corners[i].x) / 2,
    y: (corner.y + corners[i].y) / 2,
  }));
  const curves = middles.map(({ x, y }, i) => `Q${at(corners[i].x, corners[i].y, x, y)}`);
  const end = corners[corners.length - 1];
  return [...curves, `L${at(end.x, end.y)}`];
}

/** Down it again, to the middle of the tip. @param {Point[]} corners @param {number} tip */
function downToe(corners, tip) {
  const middles = corners.slice(1).map((corner, i) => ({
    x: (corner.x + corners[i].x) / 2,
    y: (corner.y + corners[i].y) / 2,
  }));
  const last = middles[middles.length - 1];
  const curves = [...middles.keys()].reverse().map((i) => {
    const to = i === 0 ? { x: 0, y: tip } : middles[i - 1];
    return `Q${at(corners[i].x, corners[i].y, to.x, to.y)}`;
  });
  return [`L${at(last.x, last.y)}`, ...curves];
}

/**
 * The outline. The great toe of the first sock lies where its rounds begin: at the right, seen from outside.
 * @param {Plan} plan @param {Size} size @param {Profile} leg @param {boolean} isSecond
 */
export function outline(plan, size, leg, isSecond) {
  const corners = (/** @type {'great' | 'little'} */ side) =>
    ease(ease(toeCorners(plan, size, side)));
  const [right, left] = isSecond
    ? [corners('little'), corners('great')]
    : [corners('great'), corners('little')];
  const edge = leg.curve.map((y) => ({ x: leg.half(y), y }));
  const line = (/** @type {Point[]} */ points) => points.map(({ x, y }) => `L${at(x, y)}`);
  const foot = left[left.length - 1];
  return [
    `M${at(0, size.height)}`,
    ...upToe(right),
    ...line(edge),
    `V${at(0)}H${at(-leg.half(0))}`,
    ...line(mirror(edge).reverse()),
    `V${at(foot.y)}`,
    ...downToe(mirror(left), size.height),
    'Z',
  ].join('');
}

/** Where the toe gains stitches: a dot a stitch in from each edge that widens. @param {Plan} plan @param {Size} size @param {boolean} isSecond */
export function increaseDots(plan, size, isSecond) {
  const out = { great: plan.castOn.stitches / 4, little: plan.castOn.stitches / 4 };
  const dots = plan.toe.sides.flatMap((sides, j) =>
    /** @type {const} */ (['great', 'little']).map((side) => {
      if (!widens(sides, side)) return '';
      out[side] += 1;
      const toRight = (side === 'great') !== isSecond;
      const x = (out[side] - 1.5) * size.stitch;
      return `M${at(toRight ? x : -x, size.height - (j + 0.5) * size.round)}h0`;
    }),
  );
  return dots.join('');
}
