// The rib as it moves over by one: a V a knit stitch, a bar a purl. Read from the bottom right.
/** @typedef {import('./svg.js').Mark} Mark */

const [wide, tall] = [28, 15];
const rows = [0, 1, 2, 3, 4, 5, 6, 7];

/** The path of the cells that are asked for, one by one. @param {(column: number, row: number) => string} cell column from the right, row from below */
const cells = (cell) => rows.flatMap((row) => rows.map((column) => cell(column, row))).join('');
const place = (/** @type {number} */ column, /** @type {number} */ row) =>
  `M${23 + (7 - column) * wide} ${24 + (7 - row) * tall}`;

// Four rounds, then the rib one stitch further on.
const isKnit = (/** @type {number} */ column, /** @type {number} */ row) =>
  (column + 4 - (row < 4 ? 0 : 1)) % 4 < 2;
const isNew = (/** @type {number} */ column, /** @type {number} */ row) =>
  isKnit(column, row) !== isKnit(column, 0);

const v = 'm4 0l9 12l9 -12';
const bar = 'm3 9q10 -8 20 0';
const some = (/** @type {boolean} */ knit, /** @type {boolean} */ fresh) =>
  cells((column, row) =>
    isKnit(column, row) === knit && isNew(column, row) === fresh
      ? place(column, row) + (knit ? v : bar)
      : '',
  );

/** @type {import('./svg.js').Picture} */
export const ribMoves = {
  box: [270, 154],
  marks: [
    ['ground', 'M18 18H248V148H18Z'],
    ['purl', some(false, false)],
    ['a', some(true, false)],
    ['c', some(true, true)],
    ['lost', some(false, true)],
    ...rows.flatMap((column) => {
      if (!isNew(column, 7)) return [];
      const x = 36 + (7 - column) * wide;
      return [/** @type {Mark} */ (['name', x, 14, isKnit(column, 7) ? '+' : '−'])];
    }),
  ],
};
