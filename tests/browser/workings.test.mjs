// How each figure came about: the lines can be done again on paper, the entries open, the sheet prints.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { tellLines } from '../../web/script/view/working/working.js';
import { figureWords, fitLines, makingLines, ruleWords } from '../../web/words/en.js';
import { goTo, openBrowser, typeInto } from './open_page.mjs';
import { doOnPaper } from './paper.mjs';
import { print } from './pdf.mjs';

let open;
let end;
let answer;
before(async () => {
  ({ open, end } = await openBrowser());
  ({ answer } = await loadCore());
});
after(() => end());

const asked = JSON.parse(
  readFileSync(new URL('../golden/contract-example/request.json', import.meta.url), 'utf8'),
);
const [reading] = asked.swatch.readings;
const requests = {
  'one reading': asked,
  'three readings': {
    ...asked,
    swatch: {
      readings: [reading, { stitches: 21.25, widthMm: 100 }, { ...reading, stitches: 20.5 }],
    },
    girthEase: 0.05,
    yarnMargin: 0.2,
  },
  'a swatch in the rib, unwashed and weighed, and a wide calf': {
    ...asked,
    swatch: {
      readings: [reading],
      fabric: 'rib',
      washed: false,
      massG: 5.6,
      massStitches: 560,
    },
    yarn: { ...asked.yarn, substitute: { ballG: 50, ballM: 110 } },
    foot: { ...asked.foot, calfGirthMm: 452 },
    legHeightMm: 350,
  },
  'a label and a shoe': {
    version: 1,
    yarn: { category: 1 },
    foot: { shoe: { scale: 'eu', size: 39 }, body: 'woman' },
    legHeightMm: 200,
  },
  'her own count, and a left and right toe': {
    ...asked,
    stitchCount: 48,
    toe: { shape: 'left-right' },
    rib: { roundsPerShift: 3 },
  },
};

function planOf(request) {
  const reply = JSON.parse(answer('plan', JSON.stringify(request)));
  assert.ok(reply.ok, JSON.stringify(reply.problems));
  return reply.plan;
}

// A count is right or wrong; a measure may be off by what was rounded on the way.
const near = ({ told, done, last }) =>
  last === 0 ? told === done : Math.abs(told - done) <= Math.max(2e-4 * Math.abs(told), 0.6 * last);

test('every line done again on paper comes out as the figure, in either system', () => {
  const done = new Set();
  for (const [name, request] of Object.entries(requests)) {
    const plan = planOf(request);
    for (const system of ['metric', 'inch']) {
      for (const working of plan.working) {
        for (const line of tellLines(working, { plan, request, system }).said) {
          assert.doesNotMatch(line, /undefined|NaN/, `${name}: ${line}`);
          const sum = doOnPaper(line);
          if (!sum) continue;
          done.add(working.rule);
          assert.ok(near(sum), `${name}, ${system}: ${line} (comes to ${sum.done})`);
        }
      }
    }
  }
  // Told without a sum, for there is none to do.
  const without = ['needle'];
  assert.deepEqual(
    Object.keys(ruleWords).filter((rule) => !done.has(rule) && !without.includes(rule)),
    [],
  );
});

test('every rule has its lines, and a number that no line holds is told beside them', () => {
  assert.deepEqual(
    Object.keys(ruleWords).filter((rule) => !(rule in fitLines) && !(rule in makingLines)),
    [],
  );
  const request = { ...asked, swatch: { readings: [reading], washed: false } };
  const plan = planOf(request);
  const showing = { plan, request, system: 'metric' };
  const error = plan.working.find(({ rule }) => rule === 'gauge_error');
  const { said, rest } = tellLines(error, showing);
  assert.match(said.join(), /washing 2\.19\d*.%²\) = 3\.14.%/);
  assert.deepEqual(rest, []);
  // One that no line holds is told by its name.
  const odd = { ...error, numbers: { ...error.numbers, spreadMm: 20 } };
  assert.deepEqual(tellLines(odd, showing).rest, [['give or take', '2\u00a0cm']]);
});

test('a number put in later makes its line', () => {
  const plan = planOf(asked);
  const showing = { plan, request: asked, system: 'metric' };
  const lineOf = (rule, numbers) => tellLines({ rule, numbers }, showing).said[0];
  for (const [rule, numbers] of [
    ['shoe_length', { stepMm: 6.67, size: 39, offset: -2, lengthMm: 246.79, spreadMm: 6.67 }],
    [
      'ball_girth_estimate',
      { constantMm: 86.9, perLength: 0.573, lengthMm: 246.79, girthMm: 228.31 },
    ],
    ['leg_fit', { girthMm: 452, stitches: 60, widestStitchMm: 9.5, use: 0.79298, passUse: 0.85 }],
    ['widening', { repeats: 10, knit: 2, purl: 3, stitches: 50, round: 106, neededFromMm: 214 }],
    [
      'strains',
      {
        heelGirthMm: 310,
        stadium: 0.571,
        breadthShare: 0.25,
        footLengthMm: 246,
        heelDepthMm: 119.8835,
      },
    ],
    [
      'time',
      {
        stitchesOfPair: 9368,
        stitchesPerMinute: 15,
        rounds: 120,
        turnSeconds: 10,
        minutes: 664.533,
      },
    ],
  ]) {
    const sum = doOnPaper(lineOf(rule, numbers).replace(/ min$| stitches$/, ''));
    assert.ok(sum && near(sum), `${rule}: ${lineOf(rule, numbers)}`);
  }
});

test('the paper of these tests notices a wrong sum', () => {
  assert.ok(!near(doOnPaper('22.8 cm × (1 − 10 %) × 1.9685 stitches a cm = 44.9')));
  assert.ok(!near(doOnPaper('436.16 mm × 0.2756 rounds a mm, to whole rounds: 121')));
});

test('an entry shows its line with the reader’s numbers, and says where it assumes', async () => {
  const { page } = await open();
  const entry = page.locator('details.working[data-key="stitchCount"]');
  await entry.locator('summary').click();
  assert.match(
    await entry.locator('.line').first().textContent(),
    /^ball of the foot 22\.8\scm × \(1 − 10\s%\) × 1\.9685 stitches a cm = 40\.394$/,
  );
  await page.locator('input[name="system"][value="inch"]').check();
  assert.match(
    await entry.locator('.line').first().textContent(),
    /8\.9764\sin .* 5 stitches an inch/,
  );
  const marked = await page.$$eval('.source strong', (all) =>
    all.map((node) => node.closest('details').dataset.key),
  );
  assert.ok(marked.includes('gaugeError') && marked.includes('cable'), marked.join());
  assert.ok(!marked.includes('stitchCount'));
});

test('every big figure opens to its working', async () => {
  const { page } = await open();
  const inCount = page.locator('.hand a, .hand-more a');
  assert.equal(await inCount.count(), 7);
  await goTo(page, 'Buy');
  const inBuy = page.locator('.sum strong a');
  assert.equal(await inBuy.count(), 3);
  const links = [
    ...(await inBuy.all()).map((link) => ['Buy', link]),
    ...(await inCount.all()).map((link) => ['Count', link]),
  ];
  for (const [moment, link] of links) {
    await goTo(page, moment);
    const id = (await link.getAttribute('href')).slice(1);
    assert.match(await link.getAttribute('aria-label'), /: how it came about$/);
    await link.click();
    const entry = page.locator('.working', { has: page.locator(`#${id}`) });
    assert.equal(await entry.getAttribute('open'), '', id);
    const name = await entry.locator('.figure-name').innerText();
    const at = await page.evaluate(
      () => document.activeElement.querySelector('.figure-name')?.textContent,
    );
    assert.equal(at, name);
  }
});

test('a link to an entry opens it, takes the hand there, and leaves the address alone', async () => {
  const { page } = await open();
  await page.evaluate(() => {
    const link = document.createElement('a');
    link.href = '#working-cable';
    link.textContent = 'to the cable';
    document.querySelector('main').prepend(link);
  });
  const entry = page.locator('details.working[data-key="cable"]');
  assert.equal(await entry.getAttribute('open'), null);
  await page.getByRole('link', { name: 'to the cable' }).focus();
  await page.keyboard.press('Enter');
  assert.equal(await entry.getAttribute('open'), '');
  assert.match(await page.evaluate(() => document.activeElement.textContent), /^Cable/);
  assert.equal(new URL(page.url()).hash, '');
});

test('a weighed piece stands beside the gauge, and what to doubt is led to', async () => {
  const { page } = await open();
  const told = page.locator('[data-view="two-ways"]');
  assert.equal(await told.textContent(), '');
  await page.getByRole('link', { name: 'More about this swatch' }).click();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-swatch-fabric');
  await typeInto(page, 'f-swatch-massG', '5.6');
  await typeInto(page, 'f-swatch-massStitches', '560');
  assert.match(await told.textContent(), /20 mm.*19\.95 mm.*less than 15 %/);
  assert.equal(await told.locator('a').count(), 0);
  await typeInto(page, 'f-swatch-massG', '7.6');
  assert.match(await told.textContent(), /27\.14 mm.*19\.95 mm.*36\s% apart/);
  assert.match(
    await page.textContent('details.working[data-key="mmPerStitch"]'),
    /27\.14 mm.*19\.95 mm.*36\s% apart/,
  );
  await told.locator('a').click();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-swatch-readings-0-widthMm');
});

const printedText = async (page, format) => (await print(page, format)).words.join(' ');

const squeeze = (text) => text.replace(/\s+/g, ' ');

test('a sheet of all workings prints on A4 and Letter, and nothing else with it', async () => {
  const { page } = await open({ before: () => (window.print = () => {}) });
  const openEntries = () => page.locator('details.working[open]').count();
  await page.locator('details.working[data-key="cable"] summary').click();
  for (const format of ['A4', 'Letter']) {
    await page.getByRole('button', { name: 'print the workings' }).click();
    await page.emulateMedia({ media: 'print' });
    const all = page.locator('details.working');
    const lines = page.locator('details.working .line');
    assert.equal(await openEntries(), await all.count());
    for (const line of await lines.all()) assert.equal(await line.isVisible(), true);
    assert.equal(await page.locator('.came-from').isVisible(), true);
    for (const other of ['.top', 'form', '#buy', '#knit', '[data-print]', '.summary']) {
      assert.equal(await page.locator(other).first().isVisible(), false, other);
    }
    await page.emulateMedia({ media: null });
    const told = await lines.allTextContents();
    const text = await printedText(page, format);
    const sheet = squeeze(text);
    const names = await page.locator('details.working .figure-name').allTextContents();
    for (const words of [...names, ...told]) {
      assert.ok(sheet.includes(squeeze(words)), `${format}: ${words}`);
    }
    assert.doesNotMatch(sheet, /To buy|Cast on both|print the workings/);
    assert.match(sheet, /ball of the foot: 22\.8 cm/);
    // Printed, everything is as it was.
    assert.equal(await openEntries(), 1);
    assert.equal(await page.evaluate(() => document.documentElement.dataset.printing), undefined);
  }
  const usual = await printedText(page, 'A4');
  assert.doesNotMatch(usual, new RegExp(figureWords.gaugeError));
  await page.emulateMedia({ media: 'print' });
  assert.equal(await page.locator('[data-view="working"]').isVisible(), false);
});

test('no figure of the reply is without its entry on the sheet', async () => {
  const { page } = await open();
  const schema = JSON.parse(
    readFileSync(new URL('../../core/wire/schema.json', import.meta.url), 'utf8'),
  );
  const { groups } = await import('../../web/script/view/working/working_result.js');
  assert.deepEqual(
    Object.values(groups).flat().sort(),
    [...schema.$defs.working.properties.figure.enum].sort(),
  );
  const ids = await page.$$eval('[id^="working-"]', (all) => all.map(({ id }) => id));
  assert.equal(new Set(ids).size, ids.length);
  assert.equal(ids.length, planOf(requests['one reading']).working.length);
});
