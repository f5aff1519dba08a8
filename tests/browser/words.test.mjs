// Every code the core may send has its words, and the words say the numbers in the reader's units.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';

import {
  besideFields,
  fixedFields,
  readingFields,
  wordsKey,
} from '../../web/script/form/fields.js';
import { writeNamed } from '../../web/script/view/figures.js';
import { cautionText } from '../../web/script/view/count/cautions.js';
import * as words from '../../web/words/en.js';

const schema = JSON.parse(
  readFileSync(new URL('../../core/wire/schema.json', import.meta.url), 'utf8'),
);
const codes = (definition, name) => schema.$defs[definition].properties[name].enum;

// Of the plan, and of what is asked beside it.
const problemCodes = [
  'problem',
  'foundProblem',
  'adjustProblem',
  'stripesProblem',
  'driveProblem',
].flatMap((name) => codes(name, 'code'));

const missing = (all, said) => all.filter((code) => !(code in said));

test('every problem, caution, figure, rule and source has words', () => {
  assert.deepEqual(missing(codes('caution', 'code'), words.cautionWords), []);
  assert.deepEqual(missing(codes('working', 'figure'), words.figureWords), []);
  assert.deepEqual(missing(codes('working', 'rule'), words.ruleWords), []);
  assert.deepEqual(missing(codes('working', 'source'), words.sourceWords), []);
  // The page asks no question but those there are.
  const problems = problemCodes.filter((code) => code !== 'unknown_question');
  assert.deepEqual(missing(problems, words.problemWords), []);
});

test('no words are left over for codes that are gone', () => {
  const typed = [
    'not_a_number',
    'not_in_list',
    'not_a_day',
    'not_a_time',
    'ambiguous_number',
    'two_numbers',
    'unknown_unit',
    'wrong_unit',
  ];
  const problems = Object.keys(words.problemWords).filter((code) => !typed.includes(code));
  assert.deepEqual(
    problems.filter((code) => !problemCodes.includes(code)),
    [],
  );
  assert.deepEqual(
    missing(
      Object.keys(words.cautionWords),
      Object.fromEntries(codes('caution', 'code').map((code) => [code, true])),
    ),
    [],
  );
});

test('every field has a label, every choice a word, and every field of the request is asked for', () => {
  const fields = [...readingFields(0), ...fixedFields, ...besideFields];
  for (const { pointer, as, options = [] } of fields) {
    if (as !== 'mode') assert.ok(words.fieldWords[wordsKey(pointer)]?.label, pointer);
    for (const option of options)
      assert.ok(words.optionWords[pointer]?.[option], `${pointer} ${option}`);
  }
  const leaves = (node, at) => {
    if (node.properties) {
      return Object.entries(node.properties).flatMap(([name, child]) =>
        leaves(child, `${at}/${name}`),
      );
    }
    if (node.items) return leaves(node.items, `${at}/0`);
    return [at];
  };
  const asked = new Set(fields.map(({ pointer }) => pointer));
  // The page knows by itself whether the swatch is still the example's.
  const ofThePage = new Set(['/version', '/needles/toeAlone']);
  const unasked = leaves(schema.$defs.adjustRequest, '').filter(
    (pointer) => !ofThePage.has(pointer) && !asked.has(pointer),
  );
  assert.deepEqual(unasked, []);
});

test('numbers are written in the reader’s units by what they are called', () => {
  for (const [name, value, metric, inch] of [
    ['lengthMm', 246, '24.6 cm', '9⅝ in'],
    ['m', 209.9, '210 m', '230 yd'],
    ['mPerSock', 95.4, '95 m', '104 yd'],
    ['ballG', 100, '100 g', '3.5 oz'],
    ['stitchesPerMm', 20 / 101.6, '19.69', '20'],
    ['mmPerStitch', 19.954, '19.95 mm', '19.95 mm'],
    ['heelUse', 0.883, '88\u00a0%', '88\u00a0%'],
    ['stitches', 40, '40', '40'],
    ['minutes', 683, '11 h', '11 h'],
  ]) {
    assert.equal(writeNamed(name, value, 'metric'), metric, name);
    assert.equal(writeNamed(name, value, 'inch'), inch, name);
  }
});

test('a caution says its numbers, and one without words says the core’s own message', () => {
  const moved = {
    code: 'heel_moved_count',
    field: '',
    from: 40,
    to: 50,
    heelUse: 0.883,
    message: 'm',
  };
  assert.equal(
    cautionText(moved, 'metric'),
    '40 stitches would use 88\u00a0% of their stretch to pass the heel, so 50 are advised.',
  );
  assert.equal(
    cautionText({ code: 'of tomorrow', field: '', message: 'Mind the gap.' }, 'metric'),
    'Mind the gap.',
  );
  for (const code of codes('caution', 'code')) {
    const text = cautionText({ code, field: '', message: 'm' }, 'inch');
    assert.ok(text.length > 10, code);
  }
});
