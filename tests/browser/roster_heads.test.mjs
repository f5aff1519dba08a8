// The heads of a class's table, in whatever words, with their units and what a gauge was counted over.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';

import { readHead } from '../../web/script/form/roster_heads.js';

const heads = [
  ['seat', 'Seat', 'seat no.', 'No.', '#', 'place'],
  ['yarn', 'yarn', 'Yarn weight', 'weight', 'category'],
  ['stitches', 'stitches', 'sts', 'gauge', 'Tension', 'gauge (sts)'],
  ['width', 'width', 'counted over', 'swatch width'],
  ['rounds', 'rounds', 'rows', 'Rnds'],
  ['length', 'foot', 'Foot length', 'length of the foot', 'length'],
  ['girth', 'ball girth', 'girth', 'Girth of the ball', 'foot circumference', 'ball of the foot'],
  ['scale', 'scale', 'shoe scale'],
  ['size', 'shoe size', 'Size', 'shoes', 'EU size', 'size (UK)', 'US women', 'US women’s size'],
  ['body', 'worn by', 'Wearer'],
  ['leg', 'leg', 'leg height', 'height of the leg'],
  ['pace', 'pace', 'stitches a minute', 'st/min', 'pace (stitches per minute)'],
  ['balls', 'balls', 'balls in hand', 'skeins'],
  ['grams', 'grams', 'grams in hand', 'g', 'yarn in hand', 'ounces in hand'],
  // A name is nobody's business here, and a ball alone could be yarn or foot.
  ['', 'name', 'student', 'ball', 'height', 'e-mail', 'stitches and rounds', 'foot per 10 cm'],
];

describe('a head', () => {
  for (const [column, ...texts] of heads)
    for (const text of texts)
      it(`“${text}” is ${column || 'none that is known'}`, () =>
        assert.equal(readHead(text).column, column));

  for (const [text, unit] of [
    ['foot', ''],
    ['foot cm', 'cm'],
    ['foot (mm)', 'mm'],
    ['foot in', 'in'],
    ['foot in cm', 'cm'],
    ['foot length, inches', 'in'],
    ['foot "', 'in'],
    ['grams in hand', 'g'],
    ['yarn in hand oz', 'oz'],
  ])
    it(`“${text}” gives its cells ${unit || 'no unit'}`, () =>
      assert.equal(readHead(text).unit, unit));

  for (const [text, overMm] of [
    ['stitches', undefined],
    ['stitches over 10 cm', 100],
    ['sts/10cm', 100],
    ['gauge st per 4 in', 101.6],
    ['gauge (sts to 4")', 101.6],
    ['st per inch', 25.4],
    ['rounds per 10 cm', 100],
    ['rows in 2 1/2 inches', 63.5],
    ['rows over 3,5 cm', 35],
  ])
    it(`“${text}” is counted over ${overMm ?? 'nothing that is said'}`, () =>
      assert.equal(readHead(text).overMm, overMm));

  for (const [text, scale] of [
    ['shoe size', ''],
    ['EU', 'eu'],
    ['US women', 'us-women'],
    ['US men’s size', 'us-men'],
    ['UK size', 'uk'],
    ['mondopoint', 'mondopoint'],
    ['US size', 'us'],
  ])
    it(`“${text}” names ${scale || 'no scale'}`, () => assert.equal(readHead(text).scale, scale));
});
