// A foot and leg with a tape, where each measure is taken: from the side, and from above.
import { point } from './svg.js';

/** @typedef {import('./svg.js').Mark} Mark */
/** @typedef {import('./svg.js').Picture} Picture */

// Heel to the right, toes to the left, 120 long, the floor at 230; the calf is widest at 64.
const leg =
  'M128 -6C134 22 143 46 141 76C139 108 130 130 129 160C128.500 176 131 186 136 197C142 211 142 229 129 230C118 231 110 230 101 226.500C88 221.500 76 222 66 227C58 231 44 230.500 34 230C24 229.500 18 227 18.500 219C19 211 30 209 38 207C52 203 62 196 72 189C82 182 89 174 90 160C91 138 84 100 83 72C82.500 46 82 20 83 -6';
const toes = 'M21 219q5 -5 10 -4M104 184c3 -7 11 -7 13 0';
const floor = 'M4 231H156';

const drawn = /** @type {Mark[]} */ ([
  ['skin', leg],
  ['line', toes],
  ['floor', floor],
]);

/** Only the part from `top` down. @param {number} top @param {Mark[]} more @returns {Picture} */
const fromSide = (top, more) => ({ box: [160, 240 - top], top, marks: [...drawn, ...more] });

// From above: the right foot, its heel at a wall.
const sole =
  'M172 62C172 80 160 86 146 84C128 81 112 84 92 88C74 91 56 92 46 86C40 82 42 76 48 74C38 77 32 73 35 67C27 69 23 63 28 58C19 58 17 51 24 47C12 46 10 34 26 31C44 28 62 30 80 34C104 39 128 42 146 41C160 40 172 46 172 62Z';
const nails = 'M19 38q-2 4 1 6M23 51q-1 3 1 5M31 61q-1 3 1 4M38 70q0 3 1 4';

/** @param {Mark[]} under @param {Mark[]} over @returns {Picture} */
const fromAbove = (under, over) => ({
  box: [190, 124],
  marks: [...under, ['skin', sole], ['line', nails], ...over],
});

/** A level tape round the leg: its near side. @param {number} left @param {number} right @param {number} y @returns {Mark} */
const round = (left, right, y) => [
  'tape',
  `M${left} ${y}Q${(left + right) / 2} ${y + 12} ${right} ${y}`,
];

/** @type {Record<string, Picture>} */
export const foot = {
  ball: fromAbove([], [['tape', 'M52 25C62 46 68 72 71 95']]),
  length: fromAbove(
    [
      ['paper', 'M4 18H174V106H4Z'],
      ['wall', 'M178 4V120'],
    ],
    [
      ['dash', 'M15.500 38V98M172.500 62V98'],
      ['measure', `M17 98H171${point(16, 98, 180)}${point(172, 98, 0)}`],
    ],
  ),
  heel: fromSide(128, [
    ['dash', 'M91 165C112 164 132 186 140 214'],
    ['tape', 'M142 219C124 198 106 182 89 167'],
  ]),
  ankle: fromSide(128, [round(87, 132, 163)]),
  calf: fromSide(20, [round(80, 143, 70)]),
  leg: fromSide(80, [
    ['dash', 'M84 106H152'],
    ['measure', `M152 108V229${point(152, 107, 270)}${point(152, 230, 90)}`],
  ]),
  cuff: fromSide(80, [
    ['band', 'M84 106H138L134 132H88Z'],
    ['line', 'M93 106l2 26M102 106l1 26M111 106v26M120 106l-1 26M129 106l-2 26'],
    ['measure', `M152 108V131${point(152, 107, 270)}${point(152, 132, 90)}`],
  ]),
  shoe: {
    box: [190, 124],
    marks: [
      [
        'skin',
        'M24 98C20 84 34 78 52 74C72 69 88 56 96 42C102 34 110 36 112 46C118 56 134 58 146 48C152 43 160 44 161 50C165 64 166 80 166 98Z',
      ],
      ['band', 'M96 42L104 14C110 10 120 12 126 17L118 52'],
      [
        'line',
        'M66 71l10 12M76 64l10 12M85 56l10 12M22 98H168V108H26Q20 106 22 98M50 75C44 84 44 90 46 98',
      ],
      ['small', 113, 31, '39'],
    ],
  },
};

/** Trying on: the sock past the heel, its stitches on a lifeline, the needle out. @type {Picture} */
export const tryOn = fromSide(104, [
  [
    'sock-a',
    'M134 152C132 170 132 186 138 197C145 211 145 229 129 230C118 231 110 230.500 101 227.500C88 223 76 223.500 66 228C58 231 44 230.500 34 230C22 229.500 16 226 16.500 219C17 209 30 207 37 205C52 201 61 194 71 187C81 180 87 172 88 152Q110 161 134 152Z',
  ],
  [
    'rib',
    'M46 208C50 213 52 219 52 224M64 198C72 206 77 213 80 218M80 186C92 198 99 208 103 221M90 171C108 184 121 203 126 223M102 166C118 176 129 190 136 207M119 166L129 181',
  ],
  ['life', 'M68 122C72 138 78 150 90 154Q110 162 133 154C142 148 146 134 150 118'],
  // Its stitches, each with the thread through it.
  ['held', 'M94 152v9M101 154v9M108 155v9M115 155v9M122 154v9M129 152v9'],
]);
