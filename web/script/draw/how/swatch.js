// The swatch: counted, pulled and weighed; and the ball, its band and the needle.
import { at, point, stick } from './svg.js';

/** @typedef {import('./svg.js').Mark} Mark */
/** @typedef {import('./svg.js').Picture} Picture */

/** @typedef {{ x: number, y: number, wide: number, tall: number }} Grid its first stitch, and a stitch's size */

const count = (/** @type {number} */ n) => Array.from({ length: n }, (_, i) => i);

/** Where a stitch begins. @param {Grid} grid @param {number} column @param {number} row */
const start = ({ x, y, wide, tall }, column, row) =>
  `M${at(x + (column + 0.17) * wide, y + row * tall)}`;

/** A knit stitch is a V; its left leg alone is half of one. @param {Grid} grid */
const leg = ({ wide, tall }) => `l${at(wide * 0.33, tall * 0.9)}`;
const stitch = (/** @type {Grid} */ grid) =>
  `${leg(grid)}l${at(grid.wide * 0.33, -grid.tall * 0.9)}`;

/** A row of stitches, each by the same few letters, so that a page with many of them stays small. @param {Grid} grid @param {number} n */
const course = (grid, n) => `${stitch(grid)}m${at(grid.wide * 0.34)} 0`.repeat(n);

/** @param {Grid} grid @param {number} columns @param {number} rows */
const cloth = (grid, columns, rows) =>
  count(rows)
    .map((row) => start(grid, 0, row) + course(grid, columns))
    .join('');

/** A ruler lying level or upright, a tick each tenth of its length. @param {number} x @param {number} y @param {number} long @param {boolean} isUpright @returns {Mark[]} */
function ruler(x, y, long, isUpright) {
  const ticks = count(11).map((i) => {
    const along = (long / 10) * i;
    const tick = i % 5 === 0 ? 9 : 5;
    return isUpright ? `M${at(x, y + along)}h${tick}` : `M${at(x + along, y)}v${-tick}`;
  });
  const body = isUpright
    ? `M${at(x, y - 6)}h20v${at(long + 12)}h-20Z`
    : `M${at(x - 6, y)}v-20h${at(long + 12)}v20Z`;
  return [
    ['paper', body],
    ['line', ticks.join('')],
  ];
}

// A third of a stitch's width is a whole tenth, so that a course ends where it should.
const grid = { x: 16, y: 12, wide: 13, tall: 10 };
const ground = /** @type {Mark} */ (['ground', 'M10 6H204V114H10Z']);

const scale = /** @type {Mark[]} */ ([
  ['paper', 'M52 78H148L158 112H42Z'],
  ['paper', 'M36 70H164V78H36Z'],
  ['paper', 'M80 86H120V104H80Z'],
]);

const ball = (/** @type {number} */ x, /** @type {number} */ y) =>
  /** @type {Mark[]} */ ([
    ['ball', `M${x - 34} ${y}a34 28 0 1 0 68 0a34 28 0 1 0 -68 0`],
    [
      'wound',
      `M${x - 28} ${y + 12}C${x - 14} ${y - 6} ${x + 4} ${y - 18} ${x + 22} ${y - 18}M${x - 20} ${y + 20}C${x - 6} ${y + 2} ${x + 12} ${y - 8} ${x + 30} ${y - 8}M${x - 32} ${y + 2}C${x - 20} ${y - 14} ${x - 4} ${y - 24} ${x + 8} ${y - 25}M${x - 8} ${y + 26}C${x + 4} ${y + 12} ${x + 18} ${y + 4} ${x + 33} ${y + 3}`,
    ],
  ]);

/** @type {Record<string, Picture>} */
export const swatch = {
  // From the edge of one V: twelve and a half lie along the ruler, the last one cut.
  stitches: {
    box: [214, 120],
    marks: [
      ground,
      ['knit', cloth(grid, 14, 10)],
      ['counted', start(grid, 1, 5) + course(grid, 12) + leg(grid)],
      ...ruler(grid.x + 13, 57, 162.5, false),
    ],
  },
  rounds: {
    box: [214, 120],
    marks: [
      ground,
      ['knit', cloth(grid, 14, 10)],
      [
        'counted',
        count(8)
          .map((i) => start(grid, 6, i + 1) + stitch(grid))
          .join(''),
      ],
      ...ruler(grid.x + 7 * 13 + 2, 21, 80, true),
    ],
  },
  stretched: {
    box: [214, 120],
    marks: [
      ['ground', 'M26 14Q107 26 188 14V82Q107 70 26 82Z'],
      ['knit', cloth({ x: 31, y: 24, wide: 19, tall: 8 }, 8, 6)],
      ['go', `M20 48H4${point(3, 48, 180)}M194 48H210${point(211, 48, 0)}`],
      ...ruler(30, 114, 154, false),
    ],
  },
  weighed: {
    box: [200, 120],
    marks: [
      ...scale,
      ['ground', 'M58 24H142V69H58Z'],
      ['knit', cloth({ x: 61, y: 29, wide: 13, tall: 9 }, 6, 4)],
      ['small', 100, 100, '12 g'],
    ],
  },
  scale: { box: [200, 120], marks: [...scale, ...ball(100, 42), ['small', 100, 100, '63 g']] },
  band: {
    box: [200, 120],
    marks: [
      [
        'ball',
        'M14 60C14 26 46 14 100 14C154 14 186 26 186 60C186 94 154 106 100 106C46 106 14 94 14 60Z',
      ],
      [
        'wound',
        'M20 46C34 30 46 24 58 22M18 62C32 42 46 34 58 32M20 76C32 58 46 48 58 46M28 88C38 74 48 66 58 62M42 98C48 90 52 84 58 80M142 40C154 38 166 38 178 44M142 56C156 52 170 52 184 58M142 72C156 68 170 68 182 72M142 88C152 84 162 84 172 86',
      ],
      ['paper', 'M58 17C72 14 128 14 142 17V103C128 106 72 106 58 103Z'],
      [
        'line',
        'M86 44C80 38 80 28 88 26C96 24 104 24 112 26C120 28 120 38 114 44C106 47 94 47 86 44ZM86 44l-4 5M114 44l4 5',
      ],
      ['small', 100, 41, '4'],
      ['small', 100, 68, '100 g'],
      ['small', 100, 88, '200 m'],
    ],
  },
  needle: {
    box: [200, 120],
    // It goes in from above, and comes out behind the gauge.
    marks: [
      ['stick', stick([150, -20], [106, 114], 5)],
      ['paper', 'M16 34Q16 28 22 28H178Q184 28 184 34V86Q184 92 178 92H22Q16 92 16 86Z'],
      [
        'hole',
        count(7)
          .map((i) => {
            const r = 3 + i * 0.9;
            return `M${at(32 + i * 22.5 - r, 60)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
          })
          .join(''),
      ],
      ['stick', 'M145 -20L118 61.500A5.500 5.500 0 0 0 128 64.500L155 -20'],
    ],
  },
};
