// Typed measures, read and written: comma and point, fractions, units behind the number, and what is
// refused because it could mean two things.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import {
  formatCount,
  formatLength,
  formatLimit,
  formatMass,
  formatNumber,
  formatPercent,
  formatPercentAway,
  formatTime,
  formatWholeTime,
  formatYarn,
  fromBase,
  inputText,
  otherUnit,
  parseQuantity,
  toBase,
  unitIn,
  withoutUnit,
} from '../../web/script/units.js';

const lengths = ['cm', 'in', 'mm'];

test('a number is read with a comma or a point', () => {
  for (const [typed, value] of [
    ['24.6', 24.6],
    ['24,6', 24.6],
    [' 24,6 ', 24.6],
    ['.5', 0.5],
    [',5', 0.5],
    ['20', 20],
    ['20.', 20],
    ['007', 7],
    ['0,125', 0.125],
    ['9.375', 9.375],
    ['-10', -10],
    ['−10', -10],
    ['+3', 3],
  ]) {
    assert.deepEqual(parseQuantity(typed, lengths), { ok: true, value, unit: '' }, typed);
  }
});

test('a fraction is read as knitters write it', () => {
  for (const [typed, value] of [
    ['9 1/2', 9.5],
    ['9-1/2', 9.5],
    ['9½', 9.5],
    ['9 ½', 9.5],
    ['½', 0.5],
    ['3/4', 0.75],
    ['9 1⁄2', 9.5],
    ['22 5/8', 22.625],
    ['9\u00a01/2', 9.5],
  ]) {
    assert.deepEqual(parseQuantity(typed, lengths), { ok: true, value, unit: '' }, typed);
  }
});

test('a unit behind the number is read by every way it is written', () => {
  for (const [typed, value, unit] of [
    ['9 1/2 in', 9.5, 'in'],
    ['9½"', 9.5, 'in'],
    ['9.5”', 9.5, 'in'],
    ["9.5''", 9.5, 'in'],
    ['9.5 inches', 9.5, 'in'],
    ['24cm', 24, 'cm'],
    ['24,6 CM', 24.6, 'cm'],
    ['246 mm', 246, 'mm'],
  ]) {
    assert.deepEqual(parseQuantity(typed, lengths), { ok: true, value, unit }, typed);
  }
  assert.deepEqual(parseQuantity('218 yds', ['m', 'yd']), { ok: true, value: 218, unit: 'yd' });
  assert.deepEqual(parseQuantity('3.5 oz.', ['g', 'oz']), { ok: true, value: 3.5, unit: 'oz' });
  assert.deepEqual(parseQuantity('22 sts', ['st']), { ok: true, value: 22, unit: 'st' });
  assert.deepEqual(parseQuantity('-10 %', ['%']), { ok: true, value: -10, unit: '%' });
});

test('what could mean two numbers, or none, is refused by name', () => {
  for (const [typed, code] of [
    ['1.234,5', 'ambiguous_number'],
    ['1,234.5', 'ambiguous_number'],
    ['1,234', 'ambiguous_number'],
    ['1.2.3', 'ambiguous_number'],
    ['24 6', 'two_numbers'],
    ['abc', 'not_a_number'],
    ['.', 'not_a_number'],
    ['-', 'not_a_number'],
    ['cm', 'not_a_number'],
    ['1/0', 'not_a_number'],
    ['9 11/2', 'not_a_number'],
    ['9'.repeat(400), 'number_too_large'],
    ['1e3', 'not_a_number'],
    ['24 furlongs', 'unknown_unit'],
    ['24 oz', 'wrong_unit'],
    ['5%', 'wrong_unit'],
  ]) {
    assert.deepEqual(parseQuantity(typed, lengths), { ok: false, code }, typed);
  }
});

test('units are the exact ones of 1959', () => {
  assert.equal(toBase(1, 'in'), 25.4);
  assert.equal(toBase(4, 'in'), 101.6);
  assert.equal(toBase(1, 'cm'), 10);
  assert.equal(toBase(1, 'yd'), 0.9144);
  assert.equal(toBase(1, 'oz'), 28.349523125);
  assert.equal(toBase(-10, '%'), -0.1);
  assert.equal(toBase(40, ''), 40);
});

test('a conversion leaves no dust behind', () => {
  for (let tenths = 80; tenths <= 4000; tenths += 1) {
    const mm = toBase(tenths / 100, 'cm');
    assert.ok(String(mm).length <= 6, `${tenths / 100} cm became ${mm}`);
    assert.ok(Math.abs(fromBase(mm, 'cm') - tenths / 100) < 1e-12);
  }
});

test('lengths are written to a millimetre or an eighth of an inch', () => {
  assert.equal(formatLength(246, 'cm'), '24.6 cm');
  assert.equal(formatLength(310, 'cm'), '31 cm');
  assert.equal(formatLength(246, 'in'), '9⅝ in');
  assert.equal(formatLength(101.6, 'in'), '4 in');
  assert.equal(formatLength(3.2, 'in'), '⅛ in');
  assert.equal(formatLength(0, 'in'), '0 in');
  assert.equal(formatLength(25.3, 'in'), '1 in');
});

test('yarn, mass, shares, time and counts are written plainly', () => {
  assert.equal(formatYarn(209.9, 'm'), '210 m');
  assert.equal(formatYarn(209.9, 'yd'), '230 yd');
  assert.equal(formatYarn(1.23, 'm'), '1.2 m');
  assert.equal(formatMass(104.96, 'g'), '105 g');
  assert.equal(formatMass(104.96, 'oz'), '3.7 oz');
  assert.equal(formatPercent(-0.109), '−11\u00a0%');
  assert.equal(formatNumber(-0.2), '0');
  assert.equal(formatCount(12000), '12\u202f000');
  assert.equal(formatCount(1200), '1200');
  assert.equal(formatTime(58), '1 h');
  assert.equal(formatTime(683), '11 h');
  assert.equal(formatTime(90), '1 h 30 min');
});

test('a time that is no estimate is told to the minute, and its half', () => {
  assert.equal(formatWholeTime(225), '3 h 45 min');
  assert.equal(formatWholeTime(1080), '18 h');
  assert.equal(formatWholeTime(7.5), '7.5 min');
});

test('a limit told is never rounded past itself', () => {
  assert.equal(formatLimit('length', 80, 'in', true), '3.15 in');
  assert.equal(formatLimit('length', 400, 'in', false), '15.74 in');
  assert.equal(formatLimit('length', 115.03, 'cm', true), '11.6 cm');
  assert.equal(formatLimit('mass', 2000, 'oz', false), '70.54 oz');
  assert.equal(formatPercentAway(-0.2004, true), '\u221220.1\u00a0%');
  assert.equal(formatPercentAway(-0.0196, false), '\u22121.9\u00a0%');
});

test('a converted field is text as one types it', () => {
  assert.equal(inputText('length', 246, 'in'), '9 5/8');
  assert.equal(inputText('length', 12.7, 'in'), '1/2');
  assert.equal(inputText('length', 25.4, 'in'), '1');
  assert.equal(inputText('length', 241.3, 'cm'), '24.1');
  assert.equal(inputText('yarn', 200, 'yd'), '219');
  assert.equal(inputText('mass', 100, 'oz'), '3.53');
});

test('each kind of measure has two units, one for each system', () => {
  assert.equal(unitIn('length', 'inch'), 'in');
  assert.equal(unitIn('yarn', 'metric'), 'm');
  assert.equal(unitIn('percent', 'inch'), '');
  assert.equal(otherUnit('length', 'in'), 'cm');
  assert.equal(otherUnit('mass', 'g'), 'oz');
  assert.equal(withoutUnit('9 1/2 in'), '9 1/2');
  assert.equal(withoutUnit('24,6cm'), '24,6');
  assert.equal(withoutUnit('24'), '24');
});
