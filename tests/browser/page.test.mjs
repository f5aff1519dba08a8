// The main job, as a person does it: type a swatch and a foot, read what to knit.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { openBrowser, readCounts, readNote, typeInto, unitOf } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const example = {
  'wraps a sock': '8',
  'stitches a round': '40',
  'toe rounds': '17',
  'rounds in all': '120',
  'of yarn, the pair': '210 m',
};

test('opens on the worked example, marked as one', async () => {
  const { page } = await open();
  assert.deepEqual(await readNote(page), example);
  assert.match(await page.textContent('[data-view="standing"]'), /Example numbers.*Harrow Quay/);
  assert.equal(await page.textContent('#f-foot-lengthMm-mark'), 'example');
  assert.match(
    await page.textContent('[data-view="sentence"]'),
    /^20 stitches over 4.in; a foot 24\.6.cm long and 22\.8.cm round; a leg 20.cm high; ribbed k2, p2, leaning to the left\.$/,
  );
});

test('reads the same counts from inches as from centimetres with a decimal comma', async () => {
  const inInches = await open();
  await inInches.page.getByRole('radio', { name: 'in', exact: true }).check();
  for (const [id, text] of [
    ['f-swatch-readings-0-stitches', '22'],
    ['f-swatch-readings-0-widthMm', '4'],
    ['f-swatch-readings-0-rounds', '30'],
    ['f-swatch-readings-0-heightMm', '4'],
    ['f-foot-ballGirthMm', '9 1/2'],
    ['f-foot-lengthMm', '10'],
    ['f-foot-heelAnkleGirthMm', '12½'],
    ['f-legHeightMm', '7.5'],
  ]) {
    await typeInto(inInches.page, id, text);
  }
  const inCentimetres = await open();
  for (const [id, text] of [
    ['f-swatch-readings-0-stitches', '22'],
    ['f-swatch-readings-0-widthMm', '10,16 cm'],
    ['f-swatch-readings-0-rounds', '30'],
    ['f-swatch-readings-0-heightMm', '10,16 cm'],
    ['f-foot-ballGirthMm', '24,13'],
    ['f-foot-lengthMm', '25,4'],
    ['f-foot-heelAnkleGirthMm', '31,75'],
    ['f-legHeightMm', '19,05'],
  ]) {
    await typeInto(inCentimetres.page, id, text);
  }
  const counts = await readCounts(inInches.page);
  assert.deepEqual(await readCounts(inCentimetres.page), counts);
  // Girth 241.3 mm less a tenth at 22 stitches over 101.6 mm is 47.0: 48, both halves alike, two repeats of 4.
  assert.equal(counts.note[1], '48');
  assert.equal((await readNote(inInches.page))['of yarn, the pair'].endsWith(' yd'), true);
});

test('answers at every key, without a button', async () => {
  const { page } = await open();
  await page.locator('#f-foot-ballGirthMm').click();
  await page.keyboard.press('End');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
  assert.match(await page.textContent('[data-view="sentence"]'), /22.cm round/);
  await page.keyboard.type(',9');
  assert.match(await page.textContent('[data-view="sentence"]'), /22,9.cm round/);
  await page.keyboard.press('Enter');
  assert.equal(await page.inputValue('#f-foot-ballGirthMm'), '22,9');
});

test('a wrong field keeps the last good plan in view, and says so', async () => {
  const { page } = await open();
  const counts = await readCounts(page);
  await typeInto(page, 'f-foot-lengthMm', '1,234');
  const input = page.locator('#f-foot-lengthMm');
  assert.equal(await input.getAttribute('aria-invalid'), 'true');
  const describedBy = await input.getAttribute('aria-describedby');
  assert.ok(describedBy.split(' ').includes('f-foot-lengthMm-problem'));
  assert.match(await page.textContent('#f-foot-lengthMm-problem'), /two ways/);
  assert.match(await page.textContent('figcaption'), /last good: foot 24\.6.cm/);
  assert.equal(await page.locator('html[data-last-good]').count(), 1);
  assert.deepEqual(await readCounts(page), counts);
  await page.locator('.mend a').click();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-foot-lengthMm');

  await typeInto(page, 'f-foot-lengthMm', '25');
  assert.equal(await input.getAttribute('aria-invalid'), null);
  assert.equal(await page.textContent('#f-foot-lengthMm-problem'), '');
  assert.equal(await page.locator('html[data-last-good]').count(), 0);
  assert.notDeepEqual(await readCounts(page), counts);
});

test('a refusal of the core stands at its field, in the field’s own unit', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', '500');
  assert.equal(
    await page.textContent('#f-foot-ballGirthMm-problem'),
    'Between 8 cm and 40 cm, please.',
  );
  await unitOf(page, 'f-foot-ballGirthMm').selectOption('in');
  assert.equal(
    await page.textContent('#f-foot-ballGirthMm-problem'),
    'Between 3.15 in and 15.74 in, please.',
  );
  await typeInto(page, 'f-foot-ballGirthMm', '9');
  await typeInto(page, 'f-legHeightMm', '4');
  assert.match(
    await page.textContent('#f-legHeightMm-problem'),
    /^The leg would end below the bend of the ankle\. At least \d+\.?\d* cm, with this cuff\.$/,
  );
});

test('five faults at once are told at five fields', async () => {
  const { page } = await open();
  const wrong = {
    'f-swatch-readings-0-stitches': '0',
    'f-swatch-readings-0-widthMm': 'wide',
    'f-foot-ballGirthMm': '1.234,5',
    'f-foot-lengthMm': '',
    'f-yarn-ballG': '50',
  };
  for (const [id, text] of Object.entries(wrong)) await typeInto(page, id, text);
  const told = await page.evaluate(() =>
    [...document.querySelectorAll('[aria-invalid="true"]')].map((input) => input.id).sort(),
  );
  assert.deepEqual(told, Object.keys(wrong).sort());
  // A ball's grams and metres go together: the one that is there asks for the other.
  assert.match(await page.textContent('#f-yarn-ballG-problem'), /goes together/);
});

test('switching units never changes the plan', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-lengthMm', '24,7');
  await typeInto(page, 'f-yarn-ballM', '199');
  const counts = await readCounts(page);
  const note = await readNote(page);
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  assert.deepEqual(await readCounts(page), counts);
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '9 3/4');
  assert.equal(await page.inputValue('#f-swatch-readings-0-widthMm'), '4');
  await page.getByRole('radio', { name: 'cm', exact: true }).check();
  for (const id of [
    'f-foot-lengthMm',
    'f-legHeightMm',
    'f-swatch-readings-0-widthMm',
    'f-yarn-ballM',
  ]) {
    const unit = unitOf(page, id);
    const [first, second] = await unit
      .locator('option')
      .evaluateAll((all) => all.map(({ value }) => value));
    await unit.selectOption(second);
    await unit.selectOption(first);
  }
  assert.deepEqual(await readCounts(page), counts);
  assert.deepEqual(await readNote(page), note);
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '24,7');
});

test('a unit changed just after typing means the unit typed in', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-lengthMm', '10');
  await unitOf(page, 'f-foot-lengthMm').selectOption('in');
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '10');
  assert.match(await page.textContent('#f-foot-lengthMm-also'), /25\.4 cm/);
});

test('tapping another count tries it, and the advised one comes back', async () => {
  const { page } = await open();
  const button = page.locator('.choice[data-count="44"]');
  await button.focus();
  await page.keyboard.press('Enter');
  assert.equal((await readNote(page))['stitches a round'], '44');
  assert.equal(await page.inputValue('#f-stitchCount'), '44');
  // The five counts are now those around 44; the hand stays on it.
  assert.equal(await page.evaluate(() => document.activeElement.dataset.count), '44');
  assert.equal(await button.getAttribute('aria-pressed'), 'true');
  await page.getByRole('button', { name: 'back to the advised 40' }).click();
  assert.deepEqual(await readNote(page), example);
});

test('without a swatch it guesses from the label and says so; by shoe it says give or take', async () => {
  const { page } = await open();
  await page.getByRole('radio', { name: 'not yet' }).check();
  assert.match(await page.textContent('.cautions'), /guessed from the label/);
  assert.equal(await page.locator('#f-swatch-readings-0-stitches').isVisible(), false);
  await page.getByRole('radio', { name: 'by shoe' }).check();
  await page.locator('#f-foot-shoe-size').fill('27');
  await page.locator('#f-foot-body').selectOption('child');
  // A child's leg is not the example's: it is asked for before a plan is made.
  assert.match(await page.textContent('#f-legHeightMm-problem'), /needed/);
  await page.locator('#f-legHeightMm').fill('12');
  assert.match(await page.textContent('.cautions'), /Guessed from the shoe.*give or take/);
  assert.equal((await readNote(page))['stitches a round'], '28');
});

test('a rib that fits badly is said, with ribs that fit', async () => {
  const { page } = await open();
  await page.locator('.finer > summary').click();
  await page.locator('#f-swatch-readings-0-stitches').fill('18');
  await page.locator('#f-swatch-readings-0-rounds').fill('25');
  await page.locator('#f-rib-knit').fill('4');
  await page.locator('#f-rib-purl').fill('3');
  assert.match(await page.textContent('.cautions'), /4.% larger than the foot/);
  const fits = page.locator('.ribs button');
  assert.equal(await fits.count(), 3);
  await fits.first().click();
  assert.doesNotMatch(await page.textContent('.cautions'), /larger than the foot/);
});

test('a part once opened stays open while its figures change', async () => {
  const { page } = await open();
  const working = page.locator('.workings details', { hasText: 'Stitches a round' });
  await working.locator('summary').click();
  const numbers = await working.locator('.line').allTextContents();
  await typeInto(page, 'f-foot-ballGirthMm', '26');
  assert.equal(await working.getAttribute('open'), '');
  assert.notDeepEqual(await working.locator('.line').allTextContents(), numbers);
});

test('the answer is said once the hand rests', async () => {
  const { page } = await open();
  assert.equal(await page.textContent('[data-said]'), '');
  await typeInto(page, 'f-foot-ballGirthMm', '26');
  assert.equal(await page.textContent('[data-said]'), '');
  await page.waitForFunction(() => document.querySelector('[data-said]').textContent !== '');
  assert.match(
    await page.textContent('[data-said]'),
    /^\d+ stitches, \d+ rounds, \d+ m of yarn\.$/,
  );
});
