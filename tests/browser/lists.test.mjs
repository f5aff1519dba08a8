// A list in one field, as a knitter writes it: its items, its colours, and what the core is asked.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { readList } from '../../web/script/form/lists.js';
import { coloursOf, parseList } from '../../web/script/units.js';

const read = (kind, typed, unit = '') => readList({ kind }, { typed, unit });

test('lengths of colours are read with their names, their units, and either decimal sign', () => {
  for (const [typed, unit, expected] of [
    ['3.5 m, 2 m', 'm', ['1 3.5', '2 2']],
    ['3,5 m, 2 m', 'm', ['1 3.5', '2 2']],
    ['3,5; 2', 'm', ['1 3.5', '2 2']],
    ['white 3.5 m, red 2 m, White 3 m', 'm', ['1 3.5', '2 2', '1 3']],
    ['3.5 m white, 2m red,8 m', 'm', ['1 3.5', '2 2', '3 8']],
    ['A 3.5, B 2, A 3.5 m', 'm', ['1 3.5', '2 2', '1 3.5']],
    ['10 yd, 1/2 yd', 'm', ['1 9.144', '2 0.4572']],
    // A bare number has the unit that stands behind another, or else the field’s.
    ['10, 5 yd', 'm', ['1 9.144', '2 4.572']],
    ['10', 'yd', ['1 9.144']],
    ['3½ m', 'm', ['1 3.5']],
    ['blue-green 3 m, sea blue: 2 m, blue-green 1', 'm', ['1 3', '2 2', '1 1']],
  ]) {
    const list = read('yarn', typed, unit);
    assert.ok(list.ok, typed);
    assert.deepEqual(
      list.value.map(({ colour, m }) => `${colour} ${m}`),
      expected,
      typed,
    );
  }
});

test('rounds of colours are read as they are written', () => {
  const { value } = read('rounds', 'blue 3, white 2 rounds, blue 1');
  assert.deepEqual(value, [
    { colour: 1, rounds: 3 },
    { colour: 2, rounds: 2 },
    { colour: 1, rounds: 1 },
  ]);
});

test('a lot is told by its weight, its length, or by its label', () => {
  for (const [typed, unit, expected] of [
    ['35 g', 'g', { g: 35 }],
    ['35', 'g', { g: 35 }],
    ['2 oz', 'g', { g: 56.69904625 }],
    ['2.5 kg', 'g', { g: 2500 }],
    ['1 lb of 200 m per 100 g', 'g', { g: 453.59237, mPer100G: 200 }],
    ['2', 'oz', { g: 56.69904625 }],
    ['red 60 m', 'g', { m: 60 }],
    ['60 yd', 'g', { m: 54.864 }],
    ['35 g of 210 m per 100 g', 'g', { g: 35, mPer100G: 210 }],
    ['35 g (210 m/100 g)', 'g', { g: 35, mPer100G: 210 }],
    ['blue 35 g of 105 m per 50 g', 'g', { g: 35, mPer100G: 210 }],
    ['20 m of 200 m per 100 g', 'g', { m: 20, g: 10 }],
    ['35 g 70 m', 'g', { g: 35, m: 70 }],
  ]) {
    const list = read('mass', typed, unit);
    assert.ok(list.ok, typed);
    const [lot] = list.value;
    assert.deepEqual(Object.keys(lot).sort(), Object.keys(expected).sort(), typed);
    for (const [key, value] of Object.entries(expected))
      assert.ok(Math.abs(lot[key] - value) < 1e-9, `${typed}: ${key} ${lot[key]}`);
  }
});

test('numbers of one row have a sign between them: without it a comma was left out', () => {
  for (const [kind, typed, expected] of [
    ['number', '6, 8, 10 x 2', [[6], [8], [10, 2]]],
    [
      'number',
      '6: 2; 8 × 3',
      [
        [6, 2],
        [8, 3],
      ],
    ],
    ['number', '36 1/2', [[36.5]]],
    [
      'length',
      '22 x 20 cm, 24 x 22 cm',
      [
        [220, 200],
        [240, 220],
      ],
    ],
  ])
    assert.deepEqual(read(kind, typed, kind === 'length' ? 'cm' : '').value, expected, typed);
  for (const typed of ['36 38 40', '6 8', '6 x 8 x 10']) {
    const { ok, code, item } = read('number', typed);
    assert.deepEqual([ok, code, item], [false, 'not_in_list', typed]);
  }
});

test('what is no such item is told by itself', () => {
  for (const [kind, typed, code, item] of [
    ['yarn', '3.5 m, red', 'not_in_list', 'red'],
    ['yarn', ',', 'not_in_list', ','],
    ['yarn', '3 m 4 m', 'not_in_list', '3 m 4 m'],
    ['yarn', '3.5.1 m', 'ambiguous_number', '3.5.1 m'],
    ['mass', '35 g of 210 m per 100 m', 'not_in_list', '35 g of 210 m per 100 m'],
    ['mass', '35 g 20 g', 'not_in_list', '35 g 20 g'],
    ['rounds', '-3', 'not_in_list', '-3'],
    ['rounds', 'blue 3, red −3', 'not_in_list', 'red −3'],
    ['rounds', 'blue-3', 'not_in_list', 'blue-3'],
    ['rounds', '* 3', 'not_in_list', '* 3'],
    ['rounds', 'blue 3 m', 'wrong_unit', 'blue 3 m'],
    ['yarn', '12 1/2 in', 'wrong_unit', '12 1/2 in'],
    ['yarn', '12"', 'not_in_list', '12"'],
    ['yarn', '2 m, 3 g', 'wrong_unit', '3 g'],
    ['mass', '35 cm', 'wrong_unit', '35 cm'],
    ['rounds', 'blue 3, white', 'not_in_list', 'white'],
  ]) {
    const list = read(kind, typed, 'g');
    assert.ok(!list.ok, typed);
    assert.deepEqual([list.code, list.item], [code, item], typed);
  }
});

test('a colour is marked by its number, or by the letter it was named by', () => {
  const signs = (text, isEach) =>
    coloursOf(parseList(text, ['m']).items, isEach).colours.map(({ sign, name }) =>
      `${sign} ${name}`.trim(),
    );
  assert.deepEqual(signs('white 3, red 2, white 1, 4'), ['1 white', '2 red', '3']);
  assert.deepEqual(signs('B 3, a 2, B 1'), ['B', 'A']);
  // Two lots of one name are two lots.
  assert.deepEqual(signs('red 3, red 2', true), ['1 red', '2 red']);
});
