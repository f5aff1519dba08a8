// What was typed stays the truth: the draft, the units it is shown in, and the request made from it.
import assert from 'node:assert/strict';
import { test } from 'node:test';

import { gatherProblems, readDraft } from '../../web/script/form/request.js';
import { alsoOf, examplesLeft, isStranger, textOf, valuesOf } from '../../web/script/form/tell.js';
import { fieldsOf } from '../../web/script/form/fields.js';
import {
  countReadings,
  mostReadings,
  reduce,
  shownUnit,
  startState,
} from '../../web/script/state.js';

const foot = '/foot/lengthMm';
const type = (state, pointer, typed, unit = 'cm') =>
  reduce(state, { type: 'typed', pointer, typed, unit });
const unitTo = (state, pointer, unit) =>
  reduce(state, { type: 'unit', pointer, unit, typed: state.draft[pointer].typed });
const fieldAt = (state, pointer) =>
  fieldsOf(state.draft).find((field) => field.pointer === pointer);
const shownText = (state, pointer) => textOf(state, fieldAt(state, pointer));
const requestOf = (state) => readDraft(state.draft).request;

const inInches = (state) => {
  const shown = Object.fromEntries(
    fieldsOf(state.draft)
      .filter(({ kind }) => kind === 'length')
      .map(({ pointer }) => [pointer, 'in']),
  );
  return reduce(state, { type: 'system', system: 'inch', shown });
};

test('the example is the whole request, in the core’s units', () => {
  assert.deepEqual(requestOf(startState()), {
    version: 1,
    swatch: {
      readings: [{ stitches: 20, widthMm: 101.6, rounds: 28, heightMm: 101.6 }],
      washed: true,
      fabric: 'stockinette',
      needleMm: 4.5,
    },
    yarn: { category: 4, ballG: 100, ballM: 200 },
    foot: {
      ballGirthMm: 228,
      lengthMm: 246,
      heelAnkleGirthMm: 310,
      ankleGirthMm: 216,
      calfGirthMm: 373,
    },
    legHeightMm: 200,
    cuffMm: 30,
    rib: { knit: 2, purl: 2, roundsPerShift: 4, lean: 'left' },
    girthEase: -0.1,
    lengthEase: -0.04,
    toe: { shape: 'round', share: 0.25, tipShare: 0.4 },
    pace: { stitchesPerMinute: 15 },
    yarnMargin: 0.1,
  });
});

test('the page’s units change what is shown and never the request', () => {
  const start = startState();
  const inches = inInches(start);
  assert.equal(shownText(inches, foot), '9 5/8');
  // A swatch stays in what it was counted over.
  assert.equal(shownText(inches, '/swatch/readings/0/widthMm'), '4');
  assert.equal(alsoOf(inches, fieldAt(inches, foot)), '= 24.6 cm');
  assert.deepEqual(requestOf(inches), requestOf(start));
  assert.equal(inches.draft, start.draft);
});

test('a unit changed just after typing is the unit that was meant', () => {
  const typed = type(startState(), foot, '9.5');
  const meant = unitTo(typed, foot, 'in');
  assert.equal(requestOf(meant).foot.lengthMm, 241.3);
  assert.equal(shownText(meant, foot), '9.5');
});

test('a unit written behind the number stays, whatever it is then read in', () => {
  const typed = type(startState(), foot, '246mm', 'mm');
  const read = reduce(typed, {
    type: 'unit',
    pointer: foot,
    unit: 'in',
    typed: '246',
    isWritten: true,
  });
  assert.equal(requestOf(read).foot.lengthMm, 246);
});

test('a unit changed on coming back only shows the measure in it', () => {
  const left = reduce(type(startState(), foot, '24.1'), { type: 'left' });
  const shown = unitTo(left, foot, 'in');
  assert.equal(requestOf(shown).foot.lengthMm, 241);
  assert.equal(shownText(shown, foot), '9 1/2');
  const back = unitTo(shown, foot, 'cm');
  assert.equal(shownText(back, foot), '24.1');
  assert.equal(requestOf(back).foot.lengthMm, 241);
});

test('what is typed over a converted measure is in the unit shown', () => {
  const inches = inInches(startState());
  const typed = type(inches, foot, '9 1/2', shownUnit(inches, foot));
  assert.equal(requestOf(typed).foot.lengthMm, 241.3);
});

test('inches and centimetres are mixed as one likes', () => {
  let state = type(startState(), '/swatch/readings/0/stitches', '22', '');
  state = type(state, foot, '24', 'cm');
  state = type(state, '/legHeightMm', '8', 'in');
  const request = requestOf(state);
  assert.equal(request.swatch.readings[0].widthMm, 101.6);
  assert.equal(request.foot.lengthMm, 240);
  assert.equal(request.legHeightMm, 203.2);
});

test('only what was typed loses the mark of the example', () => {
  const state = type(startState(), foot, '25');
  assert.equal(foot in state.example, false);
  assert.equal('/foot/ballGirthMm' in state.example, true);
});

test('a sentence says each value as it stands in its field', () => {
  const values = valuesOf(type(startState(), foot, '9 1/2 in', 'in'));
  assert.equal(values[foot], '9 1/2\u00a0in');
  assert.equal(values['/foot/ballGirthMm'], '22.8\u00a0cm');
  assert.equal('/foot/shoe/size' in values, false);
});

test('a foot of the reader’s own drops the example’s girths, and a child its leg', () => {
  const heel = '/foot/heelAnkleGirthMm';
  const own = type(startState(), foot, '12');
  assert.deepEqual(requestOf(own).foot, { ballGirthMm: 228, lengthMm: 120 });
  // What she measured herself stays hers.
  const measured = type(type(startState(), heel, '28'), foot, '23');
  assert.equal(requestOf(measured).foot.heelAnkleGirthMm, 280);
  assert.equal('legHeightMm' in requestOf(own), true);
  assert.equal('legHeightMm' in requestOf(type(own, '/foot/body', 'child', '')), false);
});

test('another weight of yarn, or none swatched yet, drops the example’s ball and needle', () => {
  for (const state of [
    type(startState(), '/yarn/category', '1', ''),
    type(startState(), '/swatch', 'label', ''),
  ]) {
    const { yarn, swatch } = requestOf(state);
    assert.equal('ballG' in yarn || 'ballM' in yarn, false);
    assert.equal(swatch?.needleMm, undefined);
  }
});

test('a gauge of the reader’s own leaves the weight of the yarn to the swatch', () => {
  const { yarn, swatch } = requestOf(type(startState(), '/swatch/readings/0/stitches', '32', ''));
  assert.equal(yarn, undefined);
  assert.equal(swatch.needleMm, undefined);
  // A ball she told herself stays.
  const ball = type(type(startState(), '/yarn/ballG', '50', 'g'), '/yarn/ballM', '210', 'm');
  const own = requestOf(type(ball, '/swatch/readings/0/stitches', '32', ''));
  assert.deepEqual(own.yarn, { ballG: 50, ballM: 210 });
  assert.deepEqual(requestOf(type(startState(), '/swatch/readings/0/rounds', '30', '')).yarn, {
    category: 4,
    ballG: 100,
    ballM: 200,
  });
});

test('what is left of the example in a part begun is told by its field, and marked there', () => {
  const own = type(startState(), '/foot/ballGirthMm', '20');
  assert.deepEqual(examplesLeft(own), ['swatch', 'yarn', 'foot', 'leg']);
  const left = (state) =>
    ['/foot/lengthMm', '/legHeightMm', '/yarn/ballG'].map((pointer) =>
      isStranger(state, fieldAt(state, pointer)),
    );
  assert.deepEqual(left(startState()), [false, false, false]);
  assert.deepEqual(left(own), [true, true, false]);
  const shoe = type(type(startState(), '/foot', 'shoe', ''), '/foot/shoe/size', '27', '');
  assert.deepEqual(examplesLeft(shoe), ['swatch', 'yarn', 'leg']);
});

test('only measures count as the example’s, and each part is told once', () => {
  assert.deepEqual(examplesLeft(startState()), ['swatch', 'yarn', 'foot', 'leg']);
  const leg = type(startState(), '/legHeightMm', '18', 'cm');
  assert.deepEqual(examplesLeft(leg), ['swatch', 'yarn', 'foot']);
});

test('a rib that fits takes the place of the other, and of a count named for it', () => {
  const named = type(startState(), '/stitchCount', '42', '');
  const { rib, stitchCount } = requestOf(reduce(named, { type: 'rib', knit: '3', purl: '1' }));
  assert.deepEqual([rib.knit, rib.purl, stitchCount], [3, 1, undefined]);
});

test('a foot by its shoe leaves the tape’s measures out, and keeps them typed', () => {
  const shoe = type(startState(), '/foot', 'shoe', '');
  const request = requestOf(shoe);
  assert.deepEqual(request.foot.shoe, { scale: 'eu', size: 39 });
  assert.equal(request.foot.body, 'woman');
  assert.equal('lengthMm' in request.foot, false);
  assert.equal(requestOf(type(shoe, '/foot', 'tape', '')).foot.lengthMm, 246);
});

test('without a swatch the request has none', () => {
  const request = requestOf(type(startState(), '/swatch', 'label', ''));
  assert.equal('swatch' in request, false);
  assert.equal(request.yarn.category, 4);
});

test('a text that is no number is told and left out, and the rest is asked', () => {
  const { request, problems } = readDraft(type(startState(), foot, '1.234,5').draft);
  assert.deepEqual(problems, [{ field: foot, code: 'ambiguous_number' }]);
  assert.equal('lengthMm' in request.foot, false);
  assert.equal(request.foot.ballGirthMm, 228);
});

test('what the core misses only because it could not be read is not told twice', () => {
  const unread = [{ field: foot, code: 'not_a_number' }];
  const refused = [
    { field: foot, code: 'required' },
    { field: '/foot/ballGirthMm', code: 'needs_partner', partner: foot },
    { field: '/legHeightMm', code: 'out_of_range', min: 40, max: 700 },
  ];
  const all = gatherProblems(unread, refused, (pointer) => pointer);
  assert.deepEqual(
    all.map(({ field, code }) => [field, code]),
    [
      [foot, 'not_a_number'],
      ['/legHeightMm', 'out_of_range'],
    ],
  );
});

test('readings are added up to twelve, and an empty row asks nothing', () => {
  let state = startState();
  for (let i = 0; i < 20; i += 1) state = reduce(state, { type: 'reading added' });
  assert.equal(countReadings(state.draft), mostReadings);
  assert.equal(requestOf(state).swatch.readings.length, 1);
  assert.equal(shownUnit(state, '/swatch/readings/5/widthMm'), 'in');
});

test('a problem of the core finds its row though empty rows are left out', () => {
  let state = startState();
  state = reduce(state, { type: 'reading added' });
  state = reduce(state, { type: 'reading added' });
  state = type(state, '/swatch/readings/2/stitches', '21', '');
  const { request, locate } = readDraft(state.draft);
  assert.deepEqual(request.swatch.readings[1], { stitches: 21 });
  assert.equal(locate('/swatch/readings/1/widthMm'), '/swatch/readings/2/widthMm');
  assert.equal(locate('/foot/lengthMm'), '/foot/lengthMm');
});

test('a reading taken away lets the later ones move up', () => {
  let state = reduce(startState(), { type: 'reading added' });
  state = type(state, '/swatch/readings/1/stitches', '21', '');
  state = type(state, '/swatch/readings/1/widthMm', '10', 'cm');
  state = reduce(state, { type: 'reading removed', index: 0 });
  assert.equal(countReadings(state.draft), 1);
  assert.deepEqual(requestOf(state).swatch.readings, [{ stitches: 21, widthMm: 100 }]);
  assert.equal('/swatch/readings/0/stitches' in state.example, false);
  assert.equal(reduce(state, { type: 'reading removed', index: 0 }), state);
});
