// The stretchy bind-off: the right tip goes behind the left needle, through the back legs of two stitches.
import { brow, foot, leg, loop, shank, stick } from './svg.js';

const [top, neck] = [33.5, 113];
const later = { x: 48, top, neck };
const two = [142, 200].map((x) => ({ x, top, neck }));
const below = [48, 142, 200].map((x) => ({ x, top: 105, neck: 152, wide: 23 }));
const each = (/** @type {typeof two} */ loops, /** @type {(one: typeof later) => string} */ path) =>
  loops.map(path).join('');

/** @type {import('./svg.js').Picture} */
export const bindOff = {
  box: [270, 140],
  marks: [
    ['a', each(below, loop)],
    ['a', foot(later, -1, 70) + foot(later, 1, 47) + foot(two[0], -1, 47)],
    ['c', foot(two[0], 1, 29) + foot(two[1], -1, 29) + foot(two[1], 1, 90)],
    ['a', loop(later)],
    ['c', each(two, (one) => leg(one, -1))],
    // Behind the left needle and the front legs, before the back legs.
    ['stick', stick([290, 94], [98, 62])],
    ['c', each(two, (one) => shank(one, 1))],
    ['a over', each(below, (one) => shank(one, -1) + shank(one, 1))],
    ['stick', stick([-12, 46], [252, 46])],
    ['a over', brow(later, 1)],
    ['c over', each(two, (one) => brow(one, 1))],
  ],
};
