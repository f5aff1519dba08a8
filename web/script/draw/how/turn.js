// The turn before a purl: the yarn comes from the half just worked, which now lies behind, forward between
// the tips. Dashed and crossed out: over the right needle, which would make a stitch too many.
import { brow, foot, leg, loop, point, shank, stick } from './svg.js';

const [top, neck] = [33.5, 113];
const near = [36, 92].map((x) => ({ x, top, neck }));
const below = near.map(({ x }) => ({ x, top: 105, neck: 152, wide: 23 }));
const behind = { x: 130, top: 13, neck: 94 };
const each = (
  /** @type {typeof near} */ loops,
  /** @type {(one: typeof behind) => string} */ path,
) => loops.map(path).join('');

/** @type {import('./svg.js').Picture} */
export const turn = {
  box: [270, 140],
  marks: [
    ['back', loop(behind) + foot(behind, -1, 150)],
    ['cable', 'M-10 25H150C210 25 240 16 280 2'],
    ['back over', brow(behind, 1)],
    ['a', each(below, loop)],
    ['a', foot(near[0], -1, 60) + foot(near[0], 1, 28) + foot(near[1], -1, 28)],
    ['a', foot(near[1], 1, 52)],
    ['c', 'M145 72C142 78 139 84 138 93C137 106 154 104 152 118C150 130 142 136 136 152'],
    ['a', each(near, (one) => leg(one, -1)) + leg(near[0], 1)],
    ['a over', each(below, (one) => shank(one, -1) + shank(one, 1))],
    ['stick', stick([-12, 46], [158, 46])],
    ['a over', brow(near[0], 1)],
    ['stick', stick([290, 76], [82, 67])],
    ['a', shank(near[1], 1)],
    ['a over', brow(near[1], 1)],
    ['not', 'M158 104C176 40 214 30 218 60C221 84 204 104 198 126'],
    ['go', point(198, 128, 106) + 'M196 62l18 18m0 -18l-18 18'],
  ],
};
