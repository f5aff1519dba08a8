// Measured on the needles and weighed: what the page says of it, held against the core asked by itself.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { kept } from '../golden/kept.mjs';
import { begin, tapOften } from './knitting.mjs';
import { again, goTo, openBrowser, press, readNote, typeInto, unitOf } from './open_page.mjs';

const core = await loadCore();
const example = JSON.parse(
  kept.find(({ name }) => name === 'contract-example').read('request.json'),
);
/** The core's answer for the page's example with this on its needles: its swatch is nobody's own. */
function answerTo(measures) {
  const isToe = (measures.stitches ?? measures.rounds) !== undefined;
  const needles = isToe ? { toeAlone: true, ...measures } : measures;
  const reply = JSON.parse(core.answer('adjust', JSON.stringify({ ...example, needles })));
  return reply.adjust ?? reply;
}

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const id = (name) => `f-needles-${name}`;
const fold = { measured: '#measured', yarn: '#yarn-left' };

/** The folds of a sock on the needles, as a reader opens them. */
async function atTheNeedles(options) {
  const { page, seen } = await open(options);
  await goTo(page, 'Knit');
  await page.locator(`${fold.measured} > summary`).click();
  await page.locator(`${fold.yarn} > summary`).click();
  return { page, seen };
}

/** By name, in the order of the form. */
async function typeNeedles(page, typed) {
  for (const [name, text] of Object.entries(typed)) await typeInto(page, id(name), text);
}

const textsOf = (page, selector) =>
  page.locator(selector).evaluateAll((nodes) => nodes.map((node) => node.textContent.trim()));
const problemAt = (page, name) =>
  page.locator(`[data-field="/needles/${name}"] .problem`).textContent();
const wayOf = async (page, way) => {
  const figures = await textsOf(page, `[data-key="${way}"] dd`);
  return { text: await page.locator(`[data-key="${way}"]`).innerText(), figures };
};

const looser = {
  roundsDone: '13',
  stitches: '16',
  widthMm: '4 in',
  rounds: '13',
  lengthMm: '5 cm',
};
/** The example's swatch, or one near it, knit by the reader. */
async function ownSwatch(page, stitches = '20') {
  await goTo(page, 'Count');
  await typeInto(page, 'f-swatch-readings-0-stitches', stitches);
  await goTo(page, 'Knit');
}

const nearer = { ...looser, stitches: '23', rounds: '13.5', roundsDone: '14' };
const looserAsked = { roundsDone: 13, stitches: 16, widthMm: 101.6, rounds: 13, lengthMm: 50 };

test('a toe in inches and centimetres stands beside the swatch with both errors, and three ways with what they cost', async () => {
  const { page, seen } = await atTheNeedles();
  await typeNeedles(page, looser);
  const { measured } = answerTo(looserAsked);
  const over = (perMm, error) =>
    `${Number((perMm * 101.6).toFixed(1))} ± ${Number((perMm * 101.6 * error).toFixed(1))}`;
  assert.deepEqual(
    await textsOf(page, `${fold.measured} td`),
    ['swatch', 'toe', 'together'].flatMap((name) => [
      over(measured[name].stitchesPerMm, measured[name].relativeError),
      over(measured[name].roundsPerMm, measured[name].roundsRelativeError),
    ]),
  );
  assert.match(await page.locator(`${fold.measured} caption`).textContent(), /over 4.in/);
  assert.equal(measured.byToeAlone, true);
  assert.match(
    await page.locator(`${fold.measured} .doubt`).first().textContent(),
    /^Your swatch is still the example’s: only the toe counts\.$/,
  );
  for (const way of measured.ways) {
    const { text, figures } = await wayOf(page, way.way);
    assert.deepEqual(figures.slice(0, 3), [
      String(way.roundsLost),
      String(way.roundsToGo),
      `${Number((way.finishedGirthMm / 10).toFixed(1))} cm`,
    ]);
    assert.match(figures[5], new RegExp(`^${Math.round(way.mPerPair)} m$`));
    assert.equal(/\badvised\b/.test(text), way.way === measured.advised, way.way);
  }
  // 436.2 mm at 13 rounds over 5 cm are 113.4.
  assert.match((await wayOf(page, 'keep')).text, /113 rounds in place of 120/);
  const change = (await wayOf(page, 'change')).text;
  assert.match(change, /Unpick 6 rounds, to the end of round 7\./);
  assert.match(change, /Round 8: leave the increases out; 32 stitches\./);
  assert.match(change, /Round 11: leave the increases out; 32 stitches\./);
  assert.match(change, /The rib begins with round 18/);
  assert.deepEqual(seen.errors, []);
});

test('the units of the page change its figures, and not what was counted', async () => {
  const { page } = await atTheNeedles();
  await typeNeedles(page, looser);
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  assert.equal(await page.locator(`#${id('widthMm')}`).inputValue(), '4');
  assert.equal(await unitOf(page, id('lengthMm')).inputValue(), 'cm');
  const { ways } = answerTo(looserAsked).measured;
  const { figures } = await wayOf(page, 'change');
  assert.equal(figures[2], '8 in');
  assert.equal(figures[5], `${Math.round(ways[1].mPerPair / 0.9144)} yd`);
});

test('a toe like its swatch leaves one way, and no word of doubt', async () => {
  const { page } = await atTheNeedles();
  await ownSwatch(page);
  await typeNeedles(page, { roundsDone: '14', stitches: '20', widthMm: '4 in' });
  assert.deepEqual(await textsOf(page, '.ways-on h4'), ['Keep on with 40']);
  assert.equal(await page.locator(`${fold.measured} .doubt`).count(), 0);
  assert.equal(await page.locator('[data-toe-to-swatch]').count(), 0);
  // Only the stitches were counted.
  assert.equal((await textsOf(page, `${fold.measured} td`))[3], 'not measured');
});

test('increases are added where more stitches are wanted', async () => {
  const { page } = await atTheNeedles();
  await typeNeedles(page, { roundsDone: '17', stitches: '22', widthMm: '10,16' });
  const { text } = await wayOf(page, 'change');
  assert.match(text, /^Change to 44/);
  assert.match(
    text,
    /Round 18: increase as in the toe’s other rounds; 44 stitches\. It is one more than/,
  );
  assert.match(text, /The rib begins with round 19/);
});

for (const [what, typed, at, says] of [
  ['no rounds', { stitches: '20', widthMm: '4 in' }, 'roundsDone', /^How many rounds are done/],
  [
    'past the plan',
    { roundsDone: '121', gramsLeftA: '20' },
    'roundsDone',
    /^The plan has 120 rounds/,
  ],
  ['half a round', { roundsDone: '13.5', gramsLeftA: '20' }, 'roundsDone', /^A whole number/],
  ['stitches over nothing', { roundsDone: '13', stitches: '20' }, 'stitches', /“toe width”/],
  ['rounds over nothing', { roundsDone: '13', rounds: '13' }, 'rounds', /“length of the toe”/],
  [
    'a width too small',
    { roundsDone: '13', stitches: '2', widthMm: '0.3 in' },
    'widthMm',
    /^Between 0\.4 in/,
  ],
  [
    'both layers and more',
    { roundsDone: '13', stitches: '100', widthMm: '8 cm' },
    'stitches',
    /^One layer of the tube, laid flat, has 20 stitches at most\. Count one layer only\.$/,
  ],
  [
    'more rounds counted than done',
    { roundsDone: '12', stitches: '20', widthMm: '4 in', rounds: '12.25', lengthMm: '5 cm' },
    'rounds',
    /^Only 12 rounds are done\. Count again/,
  ],
  ['no number', { roundsDone: '13', gramsLeftA: 'half' }, 'gramsLeftA', /^“half” is no number/],
  ['a length for a weight', { roundsDone: '13', gramsLeftB: '20 m' }, 'gramsLeftB', /^That unit/],
]) {
  test(`${what}: told at its field, while the plan stands`, async () => {
    const { page } = await atTheNeedles();
    await typeNeedles(page, typed);
    assert.match(await problemAt(page, at), says);
    assert.equal(await page.locator(`#${id(at)}`).getAttribute('aria-invalid'), 'true');
    assert.equal(await page.locator('[data-view="measured"] > *').count(), 0);
    assert.deepEqual(
      await textsOf(page, '[data-view="yarn-left"] > *'),
      what === 'no rounds'
        ? ['Say above how many rounds are done: without them this cannot be told.']
        : [],
    );
    assert.equal(await page.locator('.mend').count(), 0);
  });
}

test('yarn on a scale needs no measured toe: rounds, leg, where to stop and to join', async () => {
  const { page } = await atTheNeedles();
  await begin(page);
  await tapOften(page, 60 * 4);
  await typeNeedles(page, { gramsLeftA: '30', gramsLeftB: '0.7 oz' });
  const [a, b] = answerTo({
    roundsDone: 60,
    gramsLeftA: 30,
    gramsLeftB: 0.7 * 28.349523125,
  }).yarnLeft;
  const text = await page.locator('[data-view="yarn-left"]').textContent();
  assert.equal(a.roundsShort, 0);
  assert.match(
    text,
    new RegExp(
      `Sock A: 60 m left\\s*It lasts for the 60 rounds to go.* ${Math.round(a.leftOverM)} m will be left over: yarn for ${a.roundsOver} rounds more than the plan asks for\\.`,
    ),
  );
  assert.ok(b.roundsShort > 0);
  assert.match(
    text,
    new RegExp(
      `${b.rounds} rounds more, to round ${b.lastRound}, ${b.roundsShort} short of the plan`,
    ),
  );
  assert.ok(text.includes(`the leg is ${Number((b.legHeightMm / 10).toFixed(1))} cm high`));
  assert.match(text, /Stop when 0\.7 g are left, 1\.4 m/);
  assert.match(
    text,
    new RegExp(`at the latest where round ${b.roundToJoin} begins: at the start of a half`),
  );
  assert.match(text, new RegExp(`Both socks alike: bind off the two after round ${b.lastRound}`));
  assert.equal(await page.locator('[data-view="measured"] > *').count(), 0);
  await again(page);
  assert.equal(await page.locator('[data-view="yarn-left"]').textContent(), text);
});

test('yarn under one bind-off: unpick, and from there bind off', async () => {
  const { page } = await atTheNeedles();
  await typeNeedles(page, { roundsDone: '112', gramsLeftA: '0.5' });
  const [a] = answerTo({ roundsDone: 112, gramsLeftA: 0.5 }).yarnLeft;
  assert.deepEqual([a.roundsToUnpick, a.lastRound], [1, 111]);
  assert.match(
    await page.locator('[data-view="yarn-left"]').innerText(),
    /Unpick the last round and bind off after round 111\./,
  );
});

test('the toe goes into the swatch as a reading, and can be taken out again', async () => {
  const { page } = await atTheNeedles();
  await ownSwatch(page, '22.5');
  await typeNeedles(page, { ...nearer, stitches: '24' });
  assert.match(await page.locator(fold.measured).innerText(), /pools them all alike/);
  await press(page, 'put the toe’s reading into the swatch');
  const row = '#f-swatch-readings-1-';
  assert.equal(await page.locator(`${row}stitches`).inputValue(), '24');
  assert.equal(await page.locator(`${row}widthMm`).inputValue(), '4');
  assert.equal(await page.locator(`${row}heightMm`).inputValue(), '5');
  assert.equal(await page.locator(`${row}stitches`).isVisible(), true);
  // 46.5 stitches over 8 in.
  assert.match(await page.textContent('.scatter-place'), /2 readings: 23\.3 stitches/);
  await goTo(page, 'Knit');
  assert.equal(await page.locator(`#${id('stitches')}`).inputValue(), '');
  await press(page, 'undo');
  assert.equal(await page.locator(`#${id('stitches')}`).inputValue(), '24');
  assert.equal(await page.locator(`${row}stitches`).count(), 0);
});

test('a toe that is another fabric takes the swatch’s place, and the plan keeps what was told', async () => {
  const { page } = await atTheNeedles();
  await ownSwatch(page);
  await typeNeedles(page, looser);
  const text = await page.locator(fold.measured).innerText();
  assert.match(text, /They lie 5\.8 times .* What follows goes by the toe alone/);
  assert.match(text, /takes the place of your swatch’s/);
  const told = await textsOf(page, '[data-key="restart"] dd');
  const [title] = await textsOf(page, '[data-key="restart"] h4');
  await press(page, 'put the toe’s reading into the swatch');
  const row = '#f-swatch-readings-0-';
  assert.equal(await page.locator(`${row}stitches`).inputValue(), '16');
  assert.equal(await page.locator('#f-swatch-readings-1-stitches').count(), 0);
  const shown = await page.evaluate(() => document.body.innerText);
  const count = /Start again with (\d+)/.exec(title)[1];
  assert.ok(Object.values(await readNote(page)).includes(count), count);
  assert.ok(shown.includes(told[5]), told[5]);
});

for (const [what, typed, says, never] of [
  [
    'all knit: bind off, and no ball is joined',
    { roundsDone: '120', gramsLeftA: '20' },
    /All rounds are knit: bind off \(cast off\) now\. .* will be left over/,
    /high|0 rounds|under the ball/,
  ],
  [
    'all knit and no yarn to bind off: nothing is said of the ball of the foot',
    { roundsDone: '120', gramsLeftA: '0' },
    /Unpick the last 2 rounds and bind off after round 118\./,
    /under the ball/,
  ],
  [
    'no more rounds to be had',
    { roundsDone: '100', gramsLeftA: '0.8' },
    /bind off \(cast off\) now, 20 short of the plan/,
    /for 0 rounds/,
  ],
  [
    'two alike',
    { roundsDone: '100', gramsLeftA: '5', gramsLeftB: '5' },
    /Both socks alike: bind off the two after round \d+\./,
    /even out/,
  ],
  [
    'under the bend of the ankle',
    { roundsDone: '60', gramsLeftA: '10' },
    /it would not even reach the leg/,
    /high/,
  ],
  [
    'far too much',
    { roundsDone: '60', gramsLeftA: '2000' },
    /will be left over: yarn for \d+ rounds more than the plan asks for/,
    /high/,
  ],
]) {
  test(`yarn left, ${what}`, async () => {
    const { page } = await atTheNeedles();
    await typeNeedles(page, typed);
    const text = await page.locator('[data-view="yarn-left"]').innerText();
    assert.match(text, says);
    assert.doesNotMatch(text, never);
  });
}

test('knit to the end of a plan that the toe makes shorter: a longer cuff, and bind off', async () => {
  const { page } = await atTheNeedles();
  await typeNeedles(page, { ...looser, stitches: '20', roundsDone: '120' });
  const { text, figures } = await wayOf(page, 'keep');
  assert.match(
    text,
    /the cuff is 7 rounds longer than you asked for\. There is nothing to unpick: bind off/,
  );
  assert.deepEqual(figures.slice(0, 2), ['0', '0']);
});

test('of a begun sock another is made for it', async () => {
  const { page } = await atTheNeedles();
  await typeNeedles(page, looser);
  await begin(page);
  await tapOften(page, 13 * 4);
  assert.equal(await page.locator('[data-toe-to-swatch]').count(), 0);
  await page.locator(`${fold.measured} [data-kept="another"]`).click();
  await press(page, 'put the toe’s reading into the swatch');
  // Nothing was swatched before but the example.
  assert.equal(await page.locator('#f-swatch-readings-0-stitches').inputValue(), '16');
  assert.equal(await page.locator('#f-swatch-readings-1-stitches').count(), 0);
});

for (const width of [360, 1280]) {
  test(`nothing of it is wider than a screen of ${width}`, async () => {
    const { page } = await atTheNeedles({ viewport: { width, height: 780 } });
    await typeNeedles(page, { ...looser, gramsLeftA: '45' });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(wide <= width, String(wide));
  });
}

test('of a sock that is knit by the page the rounds done are known, and asked no more', async () => {
  const { page } = await open();
  await begin(page);
  await tapOften(page, 17 * 4);
  await page.locator('#yarn-left > summary').click();
  await typeInto(page, 'f-needles-gramsLeftA', '30');
  assert.equal(await page.locator('#f-needles-roundsDone').isVisible(), false);
  const early = await page.textContent('[data-view="yarn-left"]');
  await tapOften(page, 4 * 4);
  const later = await page.textContent('[data-view="yarn-left"]');
  assert.notEqual(later, early);
});
