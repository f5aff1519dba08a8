// A class's table as it is read: columns in any order, cells with their units, and every fault by its place.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';

import Papa from 'papaparse';

import { readRoster } from '../../web/script/form/roster.js';
import { mostRoster } from '../../web/script/state.js';
import { partOf, randomFrom, randomSeats, withTabs } from './seats.mjs';

const partsIn = (text) => readRoster(text).seats.map(({ part }) => part);
const faultsIn = (text) =>
  readRoster(text).faults.map(({ row, column, code }) => [row, column, code]);

const reading = (more) => ({ swatch: { readings: [more] } });
const gauge = (stitches, widthMm, heightMm = widthMm) =>
  reading({ stitches, widthMm, rounds: 36, heightMm });
const foot = (lengthMm, ballGirthMm) => ({ foot: { lengthMm, ballGirthMm } });
const shoe = (scale, size, body) => ({ foot: { shoe: { scale, size }, body } });

/** A table with commas between its cells, what is read of its one row, and the units of the page. */
const rows = [
  ['foot cm,girth cm\n24.5,22', foot(245, 220)],
  ['foot cm;girth cm\n24,5;22', foot(245, 220)],
  ['foot cm;girth\n24,5;9 1/2 in', foot(245, 241.3)],
  ['foot in;girth mm\n9½;220', foot(241.3, 220)],
  ['foot in;girth in\n9.5;8¾', foot(241.3, 222.25)],
  ['foot in;girth\n24.5 cm;22 cm', foot(245, 220)],
  ['stitches per 10 cm;rounds\n28;36', gauge(28, 100)],
  ['stitches;rounds\n28 over 10 cm;36', gauge(28, 100)],
  ['stitches;rounds per 10 cm\n28;36', gauge(28, 100)],
  ['stitches per 10 cm;rounds\n28 st / 4 in;36 r / 10 cm', gauge(28, 101.6, 100)],
  ['stitches;rounds\n28 1/2 per 4";36', gauge(28.5, 101.6)],
  ['stitches;width;rounds\n28;12,5 cm;36', gauge(28, 125)],
  ['stitches;width;rounds;swatch height\n28;12,5 cm;36;80 mm', gauge(28, 125, 80)],
  [
    'stitches per 4 in;rounds\n20;28',
    reading({ stitches: 20, widthMm: 101.6, rounds: 28, heightMm: 101.6 }),
  ],
  [
    'sts per 10 cm;rows per 5 cm\n20;14',
    reading({ stitches: 20, widthMm: 100, rounds: 14, heightMm: 50 }),
  ],
  ['yarn\n4', { yarn: { category: 4 } }],
  ['yarn\n0', { yarn: { category: 0 } }],
  ['yarn\nDK', { yarn: { category: 3 } }],
  ['yarn\n4 medium', { yarn: { category: 4 } }],
  ['size;worn by\nEU 38;woman', shoe('eu', 38, 'woman')],
  ['size;scale;worn by\n38,5;EU;w', shoe('eu', 38.5, 'woman')],
  ['US men;worn by\n9 1/2;man', shoe('us-men', 9.5, 'man')],
  ['size;wearer\n12 UK;boy', shoe('uk', 12, 'child')],
  // Who wears a foot that was measured is not asked for.
  ['foot cm;girth cm;size;worn by\n24;22;EU 38;woman', foot(240, 220)],
  ['leg cm;pace\n20;15', { legHeightMm: 200, pace: { stitchesPerMinute: 15 } }],
  ['balls;grams\n2 balls;', { inHand: { balls: 2 } }],
  ['oz in hand\n2', { inHand: { g: 56.69904625 } }],
  ['seat;yarn\n1;', {}],
  ['seat,foot cm,girth cm\n1,"24,5",22', foot(245, 220)],
];

describe('a row', () => {
  for (const [text, part] of rows)
    it(JSON.stringify(text), () => {
      assert.deepEqual(faultsIn(text), []);
      assert.deepEqual(partsIn(text), [part]);
    });
});

/** A table, and what is the matter with it: row as pasted, head, code. */
const faulty = [
  ['seat;foot cm;girth cm\n1;24.5.1;22', [[2, 'foot cm', 'ambiguous_number']]],
  ['seat;foot cm;girth cm\n1;1,245;22', [[2, 'foot cm', 'ambiguous_number']]],
  ['seat;foot cm;girth cm\n1;24 5;22', [[2, 'foot cm', 'two_numbers']]],
  // Centimetres or inches: nothing is guessed, and the page’s own units say nothing of a table’s.
  ['seat;foot;girth cm\n1;24,5;22', [[2, 'foot', 'which_unit']]],
  ['seat;yarn in hand\n1;50', [[2, 'yarn in hand', 'which_unit']]],
  ['seat;foot;girth cm\n1;long;22', [[2, 'foot', 'not_a_number']]],
  ['seat;foot;girth cm\n1;24 g;22', [[2, 'foot', 'wrong_unit']]],
  ['seat;foot;girth cm\n1;24 hands;22', [[2, 'foot', 'unknown_unit']]],
  ['seat;yarn\n1;thick', [[2, 'yarn', 'not_a_yarn']]],
  ['seat;worn by\n1;teacher', [[2, 'worn by', 'not_a_wearer']]],
  ['shoe;scale\n38;Paris', [[2, 'scale', 'not_a_scale']]],
  ['shoe\nParis 38', [[2, 'shoe', 'not_a_scale']]],
  ['shoe\nUS 8', [[2, 'shoe', 'us_which']]],
  ['US\n8', [[2, 'US', 'us_which']]],
  ['gauge;rounds\n28;36', [[2, 'gauge', 'over_what']]],
  ['gauge per 10 cm\n28', [[2, 'gauge per 10 cm', 'half_gauge']]],
  ['rounds per 10 cm\n36', [[2, 'rounds per 10 cm', 'half_gauge']]],
  ['gauge\n28 per 10', [[2, 'gauge', 'over_what']]],
  ['foot cm;girth;shoe\n24;;EU 38', [[2, 'shoe', 'half_taped']]],
  // A decimal comma between commas would move all that stands behind it.
  ['seat,foot cm,girth cm\n1,24,5,22', [[2, '', 'too_many_cells']]],
  ['seat;name;foot cm;girth cm\n1;;24;22', [[1, '', 'unknown_head']]],
  ['seat;foot cm;foot length;girth cm\n1;24;25;22', [[1, '', 'repeated_head']]],
  // Rows keep the numbers they have in the spreadsheet, and all that is wrong in one is told.
  [
    'seat;yarn;foot cm;girth cm\n\n1;4;24;22\n2;x;24;y\n\n3;9;24;22\n4;z;;',
    [
      [4, 'yarn', 'not_a_yarn'],
      [4, 'girth cm', 'not_a_number'],
      [7, 'yarn', 'not_a_yarn'],
    ],
  ],
];

describe('a fault', () => {
  for (const [text, faults] of faulty)
    it(`${JSON.stringify(text)} is told by row and column`, () =>
      assert.deepEqual(faultsIn(text), faults));

  it('stops no other row', () => {
    const { seats, rows: all } = readRoster('seat;yarn\n1;4\n2;x\n3;2');
    assert.deepEqual(
      seats.map(({ row, seat, part }) => [row, seat, part.yarn.category]),
      [
        [2, '1', 4],
        [4, '3', 2],
      ],
    );
    assert.deepEqual(
      all.map(({ row, part }) => [row, part !== undefined]),
      [
        [2, true],
        [3, false],
        [4, true],
      ],
    );
  });

  it('of a column that comes twice leaves the first to count', () =>
    assert.deepEqual(partsIn('foot cm;foot length cm;girth cm\n24;25;22'), [foot(240, 220)]));
});

describe('a table', () => {
  for (const text of ['', '\n\n', '1;24;22\n2;25;23', 'name;e-mail\nx;y'])
    it(`${JSON.stringify(text)} has no heading row`, () => {
      const { heads: found, seats, faults } = readRoster(text);
      assert.deepEqual([found, seats, faults], [[], [], []]);
    });

  it('without a column of seats numbers them by their rows', () =>
    assert.deepEqual(
      readRoster('yarn\n4\n2').seats.map(({ seat }) => seat),
      ['2', '3'],
    ));

  it('as long as the field holds may have lost its end, and one sign less has not', () => {
    const start = 'seat\n';
    const full = (length) => readRoster(start + 'x'.repeat(length - start.length)).isFull;
    assert.equal(full(mostRoster), true);
    assert.equal(full(mostRoster - 1), false);
  });
});

/** Names of columns that mean the same, one for each way of writing a table. */
const columns = {
  seat: ['seat', 'No.', '#'],
  yarn: ['yarn', 'weight', 'yarn category'],
  stitches: ['sts per 10 cm', 'gauge', 'stitches over 10 cm'],
  rounds: ['rounds per 10 cm', 'rows', 'rnds/10 cm'],
  length: ['foot cm', 'Foot length', 'foot (mm)'],
  girth: ['ball girth cm', 'girth of the ball', 'girth in mm'],
  leg: ['leg cm', 'leg height', 'leg, mm'],
  pace: ['pace', 'st/min', 'stitches a minute'],
  grams: ['grams', 'yarn in hand (g)', 'g in hand'],
};
const comma = (value) => String(value).replace('.', ',');
const ofLength = new Set(['length', 'girth', 'leg']);
const ofGauge = new Set(['stitches', 'rounds']);

/** The same cell by each way: points and units in the heads; commas and units in the cells; millimetres. */
const ways = [
  (name, value) => String(ofLength.has(name) ? value / 10 : value),
  (name, value) =>
    ofLength.has(name)
      ? `${comma(value / 10)} cm`
      : ofGauge.has(name)
        ? `${comma(value)} per 10 cm`
        : comma(value),
  (_name, value) => String(value),
];

describe('a class', () => {
  it('written in three ways, its columns in any order, is the same seats', () => {
    const seed = Number(process.env.TWINROUND_SEED ?? Date.now() % 1e9);
    console.log(`TWINROUND_SEED=${seed}`);
    const random = randomFrom(seed);
    for (let i = 0; i < 100; i += 1) {
      const seats = randomSeats(random.between(1, 12), random);
      const expected = seats.map(partOf);
      ['\t', ';', ','].forEach((delimiter, way) => {
        const names = Object.keys(columns);
        const order = Object.keys(columns).map(
          () => names.splice(random.between(0, names.length - 1), 1)[0],
        );
        const table = [
          order.map((name) => columns[name][way]),
          ...seats.map((seat) => order.map((name) => ways[way](name, seat[name]))),
        ];
        const text = Papa.unparse(table, { delimiter });
        assert.deepEqual(faultsIn(text), [], text);
        assert.deepEqual(partsIn(text), expected, text);
      });
      assert.deepEqual(partsIn(withTabs(seats)), expected);
    }
  });
});
