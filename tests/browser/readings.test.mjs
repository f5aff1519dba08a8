// A swatch read in several places: rows added, told as one, drawn as they scatter, taken away.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { openBrowser, readNote, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const add = (page) => page.getByRole('button', { name: 'another reading' });
const focused = (page) => page.evaluate(() => document.activeElement.id);
const unitOf = (page, row, part) =>
  page.locator(`[data-field="/swatch/readings/${row}/${part}"] select`);

/** Adds a reading after the last, typed with the keyboard alone. */
async function addReading(page, row, ...texts) {
  await add(page).click();
  for (const [i, part] of ['stitches', 'widthMm', 'rounds', 'heightMm'].entries()) {
    if (texts[i]) await typeInto(page, `f-swatch-readings-${row}-${part}`, texts[i]);
  }
}

/** Where the marks of a strip stand, and its scale and band, in the drawing's units. */
const readStrip = (page, which) =>
  page.evaluate((i) => {
    const of = (selector) => document.querySelectorAll(`.scatter ${selector}`)[i];
    const xs = (selector) =>
      [
        ...of(selector)
          .getAttribute('d')
          .matchAll(/M(-?[\d.]+)/g),
      ].map(([, x]) => Number(x));
    const radius = 4;
    return {
      marks: xs('.scatter-marks').map((x) => x + radius),
      scale: [xs('.scatter-scale')[0], xs('.scatter-scale').at(-1)],
      mean: xs('.scatter-line')[0],
      band: Number(of('.scatter-band').getAttribute('width')),
    };
  }, which);

test('a second reading is pooled with the first, and can be taken away again', async () => {
  const { page } = await open();
  const atFirst = await readNote(page);
  await add(page).click();
  assert.equal(await focused(page), 'f-swatch-readings-1-stitches');
  assert.deepEqual(await readNote(page), atFirst);
  await page.keyboard.type('24');
  assert.match(await page.textContent('#f-swatch-readings-1-widthMm-problem'), /needed/);
  await typeInto(page, 'f-swatch-readings-1-widthMm', '4');
  assert.notEqual((await readNote(page))['stitches a round'], '40');
  await page.getByRole('button', { name: 'remove reading 2' }).click();
  assert.deepEqual(await readNote(page), atFirst);
});

test('the first reading can be taken away too, once there is another', async () => {
  const { page } = await open();
  const remove = page.getByRole('button', { name: 'remove reading 1' });
  assert.equal(await remove.isVisible(), false);
  await addReading(page, 1, '44', '20 cm', '60', '20 cm');
  await remove.click();
  assert.equal(await page.locator('[data-reading]').count(), 1);
  assert.equal(await page.inputValue('#f-swatch-readings-0-stitches'), '44');
  assert.equal(await unitOf(page, 0, 'widthMm').inputValue(), 'cm');
  assert.match(await page.textContent('[data-view="sentence"]'), /^44 stitches over 20.cm;/);
  assert.equal(await remove.isVisible(), false);
});

test('each reading has its own units, by its control or written behind the number', async () => {
  const { page } = await open();
  await addReading(page, 1, '20', '10,16 cm');
  assert.equal(await unitOf(page, 1, 'widthMm').inputValue(), 'cm');
  assert.equal(await unitOf(page, 0, 'widthMm').inputValue(), 'in');
  // Of the one 20 over 4 in, of the other 20 over 10.16 cm: the same.
  assert.match(
    await page.textContent('.mean'),
    /^2 readings: 20 stitches and 28 rounds over 4.in$/,
  );
  await addReading(page, 2, '40', '8');
  await unitOf(page, 2, 'widthMm').selectOption('in');
  assert.match(await page.textContent('.mean'), /^3 readings: 20 stitches/);
});

test('twelve readings are told as one, and a thirteenth is refused in words', async () => {
  const { page } = await open();
  for (let i = 1; i < 12; i += 1) {
    await add(page).click();
    assert.equal(await focused(page), `f-swatch-readings-${i}-stitches`);
    await page.locator(`#f-swatch-readings-${i}-stitches`).fill('21');
    await page.locator(`#f-swatch-readings-${i}-widthMm`).fill('4');
  }
  assert.equal(await page.locator('[data-add-reading]').isVisible(), false);
  assert.equal(await page.getByText('Twelve is the most a page takes').isVisible(), true);
  // (20 + 11 x 21) / 12 over 4 in.
  assert.match(
    await page.textContent('[data-view="sentence"]'),
    /^12 readings, mean 20\.9 stitches over 4.in;/,
  );
  assert.match(await page.textContent('.mean'), /^12 readings: 20\.9 stitches and 28 rounds/);
  assert.equal((await readStrip(page, 0)).marks.length, 12);
  // Rounds were counted once.
  assert.equal((await readStrip(page, 1)).marks.length, 1);
  // One more is asked for after one is taken away.
  await page.getByRole('button', { name: 'remove reading 5' }).click();
  assert.equal(await page.locator('[data-add-reading]').isVisible(), true);
  assert.match(await page.textContent('.mean'), /^11 readings/);
});

test('a spread is seen as large as it is: one scale, never narrower than a tenth either way', async () => {
  const { page } = await open();
  assert.equal(await page.locator('.scatter').count(), 0);
  assert.match(await page.textContent('[data-view="scatter"]'), /^One reading: give or take 0\.4/);
  await addReading(page, 1, '20.2', '4', '28', '4');
  const close = await readStrip(page, 0);
  const wide = close.scale[1] - close.scale[0];
  // 20 and 20.2 are 1 % apart: a twentieth of a scale of 20 %.
  const apart = Math.abs(close.marks[1] - close.marks[0]);
  assert.ok(Math.abs(apart / wide - 0.01 / 0.2) < 0.005, `${apart} of ${wide}`);
  await typeInto(page, 'f-swatch-readings-1-stitches', '30');
  const far = await readStrip(page, 0);
  for (const x of far.marks) assert.ok(x >= far.scale[0] && x <= far.scale[1], String(x));
  assert.ok(Math.max(...far.marks) - Math.min(...far.marks) > wide / 2);
  // The band grows with the scatter, beyond what the scale has been drawn out by.
  assert.ok(far.band > close.band);
  // Both strips are on one scale of shares: the mean stands in one place.
  assert.equal((await readStrip(page, 1)).mean, far.mean);
});

test('the drawn swatch is what all readings say, and the table has every one of them', async () => {
  const { page } = await open();
  await addReading(page, 1, '22', '4', '30', '4');
  assert.match(
    await page.getAttribute('.swatch-drawing', 'aria-label'),
    /by all readings: 21 stitches wide and 29 rounds high, over 4.in/,
  );
  await page.getByText('The readings as a table').click();
  const rows = await page.$$eval('.readings-table tbody tr', (all) =>
    all.map((row) => [...row.children].map((cell) => cell.textContent)),
  );
  assert.deepEqual(rows.slice(0, 3), [
    ['1', '20', '28'],
    ['2', '22', '30'],
    ['mean', '21', '29'],
  ]);
  assert.equal(rows[3][0], 'give or take');
  // In the sock's own rib the same counts are another gauge, and it is said.
  await page.getByRole('link', { name: 'More about this swatch' }).click();
  await page.getByLabel('the sock’s own rib').check();
  assert.match(await page.textContent('[data-view="scatter"]'), /from the rib to stockinette/);
  assert.match(await page.textContent('.mean'), /^2 readings: 14\.7 stitches and 29 rounds/);
});

for (const width of [1280, 360, 320]) {
  test(`a reading is one row, and nothing in it is cut, at ${width} px`, async () => {
    const { page } = await open({ viewport: { width, height: 800 } });
    await addReading(page, 1, '20.25', '10.5 cm', '28.75', '10.5 cm');
    // Left, a field has its unit in the control beside it.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    const boxes = await page.$$eval('[data-reading="1"] :is(input, select, button)', (all) =>
      all.map((node) => {
        const { left, right, top, bottom } = node.getBoundingClientRect();
        const isCut = node.localName === 'input' && node.scrollWidth > node.clientWidth;
        return { left, right, top, bottom, isCut };
      }),
    );
    assert.equal(boxes.length, 7);
    const place = await page.locator('.swatch').boundingBox();
    boxes.forEach(({ left, right, top, bottom, isCut }, i) => {
      assert.equal(isCut, false, `${i} is cut`);
      assert.ok(
        right - left >= 24 && bottom - top >= 24,
        `${i}: ${right - left} x ${bottom - top}`,
      );
      assert.ok(Math.abs(top - boxes[0].top) < 8, `${i} stands lower`);
      assert.ok(right <= place.x + place.width + 0.5, `${i} stands out`);
      if (i > 0) assert.ok(left >= boxes[i - 1].right - 0.5, `${i} covers the one before`);
    });
  });
}
