// A swatch read in several places: rows added, told as one, taken away.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { openBrowser, readNote, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

test('a second reading is pooled with the first, and can be taken away again', async () => {
  const { page } = await open();
  const atFirst = await readNote(page);
  await page.getByRole('button', { name: 'another reading' }).click();
  assert.equal(
    await page.evaluate(() => document.activeElement.id),
    'f-swatch-readings-1-stitches',
  );
  assert.deepEqual(await readNote(page), atFirst);
  await page.keyboard.type('24');
  assert.match(await page.textContent('#f-swatch-readings-1-widthMm-problem'), /needed/);
  await typeInto(page, 'f-swatch-readings-1-widthMm', '4');
  assert.notEqual((await readNote(page))['stitches a round'], '40');
  await page.getByRole('button', { name: 'remove reading 2' }).click();
  assert.deepEqual(await readNote(page), atFirst);
});

test('twelve readings are told as one, and a thirteenth is refused in words', async () => {
  const { page } = await open();
  const add = page.locator('[data-add-reading]');
  for (let i = 1; i < 12; i += 1) {
    await add.click();
    await page.locator(`#f-swatch-readings-${i}-stitches`).fill('21');
    await page.locator(`#f-swatch-readings-${i}-widthMm`).fill('4');
  }
  assert.equal(await add.isVisible(), false);
  assert.equal(await page.getByText('At most 12 readings').isVisible(), true);
  // (20 + 11 x 21) / 12 over 4 in.
  assert.match(
    await page.textContent('[data-view="sentence"]'),
    /^12 readings, mean 20\.9 stitches over 4.in;/,
  );
  // A unit written behind the number is the row's, though it has no control for it.
  await page.locator('#f-swatch-readings-3-widthMm').fill('10 cm');
  assert.equal(
    await page.textContent('[data-field="/swatch/readings/3/widthMm"] [data-unit-word]'),
    'cm',
  );
});
