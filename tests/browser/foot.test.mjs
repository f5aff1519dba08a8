// A foot told by its shoe, and a child's: nothing of the example's grown woman steers them unseen.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { readDraft } from '../../web/script/form/request.js';
import { isStranger } from '../../web/script/form/tell.js';
import { fieldsOf } from '../../web/script/form/fields.js';
import { reduce, startState } from '../../web/script/state.js';
import { openBrowser, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const type = (state, pointer, typed) =>
  reduce(state, { type: 'typed', pointer, typed, unit: 'cm' });
const footOf = (state) => readDraft(state.draft).request.foot;

async function byShoe(page, scale, size, body) {
  await page.getByRole('radio', { name: 'by shoe' }).check();
  await page.locator('#f-foot-shoe-scale').selectOption(scale);
  await typeInto(page, 'f-foot-shoe-size', size);
  if (body) await page.locator('#f-foot-body').selectOption(body);
}

const estimate = (page) => page.locator('[data-view="foot"]').textContent();

test('a child’s sock keeps no measure of the example’s', () => {
  const child = type(startState(), '/foot/body', 'child');
  assert.deepEqual(footOf(child), {});
  assert.equal('legHeightMm' in readDraft(child.draft).request, false);
  // What was measured on the child before it was said to be one stays.
  const told = type(type(startState(), '/foot/lengthMm', '14'), '/legHeightMm', '9');
  const named = type(told, '/foot/body', 'child');
  assert.deepEqual(footOf(named), { lengthMm: 140 });
  assert.equal(readDraft(named.draft).request.legHeightMm, 90);
});

test('by tape the wearer is no part of the request, and is not held against the reader', () => {
  const own = type(startState(), '/foot/lengthMm', '23');
  assert.equal('body' in footOf(own), false);
  const body = fieldsOf(own.draft).find(({ pointer }) => pointer === '/foot/body');
  assert.equal(isStranger(own, body), false);
  const shoe = type(startState(), '/foot', 'shoe');
  assert.equal(footOf(shoe).body, 'woman');
});

test('a child told by tape is asked for its foot and its leg again', async () => {
  const { page } = await open();
  await page.locator('#f-foot-body').selectOption('child');
  for (const id of ['f-foot-ballGirthMm', 'f-foot-lengthMm', 'f-legHeightMm']) {
    assert.equal(await page.inputValue(`#${id}`), '', id);
    assert.match(await page.textContent(`#${id}-problem`), /needed/, id);
  }
  assert.equal(await page.inputValue('#f-foot-calfGirthMm'), '');
  await typeInto(page, 'f-foot-ballGirthMm', '13');
  await typeInto(page, 'f-foot-lengthMm', '14');
  await typeInto(page, 'f-legHeightMm', '9');
  assert.equal(await page.locator('html[data-last-good]').count(), 0);
  assert.match(await page.textContent('[data-view="sentence"]'), /14.cm long and 13.cm round/);
});

test('a size asks whose foot it is, at the field that says so', async () => {
  const { page } = await open();
  await byShoe(page, 'eu', '42');
  assert.equal(await page.inputValue('#f-foot-body'), '');
  assert.match(await page.textContent('#f-foot-body-problem'), /Whose foot is it\?/);
  assert.equal(await page.locator('.mend a').getAttribute('data-goto'), '/foot/body');
  // Nothing is said of a foot while it is not known whose it is.
  assert.equal(await estimate(page), '');
  await page.locator('#f-foot-body').selectOption('man');
  assert.equal(await page.textContent('#f-foot-body-problem'), '');
  // (42 - 2) x 6.67 mm; 92.2 + 0.590 x 266.8 mm, residual and carried error in quadrature.
  assert.equal(
    await estimate(page),
    'Estimated: 26.7 cm long, give or take 0.7 cm; 25 cm round the ball, give or take 1.1 cm.',
  );
  assert.match(
    await page.textContent('[data-view="sentence"]'),
    /EU.42 \(estimated: 26\.7 cm long and 25 cm round\)/,
  );
});

test('a UK size is told as a band, mondopoint as a length, a child’s girth as an assumption', async () => {
  const { page } = await open();
  // (6 + 23.5)/3 in is 249.8 mm, and a size and a half of 8.47 mm either way.
  await byShoe(page, 'uk', '6', 'woman');
  assert.match(await estimate(page), /UK size is a band.*23\.7 cm to 26\.2 cm/);
  assert.doesNotMatch(await estimate(page), /assumption/);
  await byShoe(page, 'mondopoint', '245', 'woman');
  assert.match(await estimate(page), /245 mm exactly/);
  assert.doesNotMatch(await estimate(page), /band/);
  await byShoe(page, 'eu', '27', 'child');
  await typeInto(page, 'f-legHeightMm', '12');
  assert.match(await estimate(page), /an assumption/);
});
