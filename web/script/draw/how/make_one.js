// Making one, three ways: the strand between two stitches hangs over the left needle, and an arrow goes
// under the leg that is worked. Under the needle lie the round before (its two loops) and the heads of
// the round below that.
import { at, brow, foot, loop, point, shank, stick } from './svg.js';

/** @typedef {import('./svg.js').Mark} Mark */

const middle = 132;
const [needle, top] = [46, 33.5];
// The next stitch, waiting on the left needle; the stitch before, already worked, and the new one in it.
const next = { x: 60, top, neck: 113 };
const before = { x: 204, top: 78, neck: 113 };
const made = { x: 204, top, neck: 86, wide: 17 };
const below = [60, 204].map((x) => ({ x, top: 105, neck: 152, wide: 23 }));

// The strand, lifted: from the next stitch's right foot over the needle to the left foot of the stitch
// before. Its colour changes where the round below hides it.
const side = (/** @type {1 | -1} */ to) => {
  const x = (/** @type {number} */ away) => middle + to * away;
  const upper = `C${at(x(9), top, x(15), 42, x(16), 54)}C${at(x(18), 74, x(22), 96, x(30), 112)}`;
  const lower = `C${at(x(35), 121, x(42), 127, x(50), 126)}`;
  return {
    leg: `M${at(middle, top)}${upper}`,
    strand: `M${at(middle, top)}${upper}${lower}`,
    rest: `M${at(x(50), 126)}C${at(x(60), 125, x(65), 121, x(64), 113)}`,
  };
};
const [left, right] = [side(-1), side(1)];

/** Which leg lies in front of the needle, which is worked, and the way under it. */
const ways = {
  m1l: { front: right, worked: left, go: `M164 94C146 84 128 62 106 18${point(106, 18, 244)}` },
  m1r: { front: left, worked: left, go: `M88 98C112 88 136 64 152 18${point(152, 18, 288)}` },
  m1p: { front: left, worked: left, go: `M164 84C144 80 120 68 92 58${point(92, 58, 200)}` },
};

/** @param {keyof typeof ways} way @returns {import('./svg.js').Picture} */
export function makeOne(way) {
  const { front, worked, go } = ways[way];
  const isPurl = way === 'm1p';
  const stickMark = /** @type {Mark} */ (['stick', stick([-12, needle], [164, needle])]);
  const arrow = /** @type {Mark} */ (['go', go]);
  // The working yarn leaves the new stitch at the back; to purl it comes forward between the tips.
  const yarn = isPurl
    ? 'M196 86C195 96 188 100 178 101C172 102 170 108 170 118V150'
    : 'M196 86C195 97 184 98 178 88C170 74 168 40 186 -6';
  const colour = worked === front ? 'dark' : 'c';
  /** @type {Mark[]} */
  const marks = [
    ...below.map((each) => /** @type {Mark} */ (['a', loop(each)])),
    ['a', yarn + foot({ x: 204, neck: 86 }, 1, 80)],
    ['c', left.strand + right.strand],
    ['dark over', worked.strand],
    ['a', loop(next) + foot(next, -1, 70) + left.rest + right.rest],
    ['a', loop(before) + foot(before, 1, 80)],
    ['a over', below.map((each) => shank(each, -1) + shank(each, 1)).join('')],
    ['a', loop(made)],
    ...(isPurl ? [stickMark, arrow] : [arrow, stickMark]),
    ['stick', stick([300, needle], [174, needle])],
    ['a over', brow(next, 1) + brow(made, 1)],
    [`${colour} over`, front.leg],
  ];
  if (isPurl) marks.push(['a over', 'M178 101C172 102 170 108 170 118V150']);
  return { box: [270, 140], marks };
}
