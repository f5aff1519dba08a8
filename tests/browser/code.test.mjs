// The link as a code to photograph, read back by a reader that is not ours: off the screen and off paper.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { after, before, test } from 'node:test';

import { fileUrl, goTo, openBrowser, typeInto } from './open_page.mjs';
import { print } from './pdf.mjs';

const require = createRequire(import.meta.url);
const jsQR = require('jsqr');
const { PNG } = require('pngjs');

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const read = ({ data, width, height }) => jsQR(new Uint8ClampedArray(data), width, height)?.data;
const readCode = (png) => read(PNG.sync.read(png));

for (const colorScheme of ['light', 'dark']) {
  test(`the code beside a shared link says the link, ${colorScheme}`, async () => {
    const { page } = await open({ colorScheme, viewport: { width: 360, height: 740 } });
    await typeInto(page, 'f-foot-lengthMm', '25');
    await page.getByRole('button', { name: 'share this sock' }).click();
    const code = page.locator('.shared .qr');
    await code.waitFor();
    assert.equal(readCode(await code.screenshot()), await page.inputValue('#shared-link'));
  });
}

test('a class’s code says the class’s link, with its longest words', async () => {
  const { page } = await open();
  await goTo(page, 'Class');
  await page.locator('#lesson-title').fill('t'.repeat(60));
  await page.locator('#lesson-note').fill('Wash it; block it; then count twice. '.repeat(7));
  const code = page.locator('.lesson .qr');
  assert.equal(readCode(await code.screenshot()), await page.inputValue('#lesson-link'));
});

test('a printed sheet carries the code of its own sock', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-lengthMm', '25');
  await page.getByRole('button', { name: 'share this sock' }).click();
  const url = await page.inputValue('#shared-link');
  for (const format of ['A4', 'Letter']) {
    const { pictures } = await print(page, format, 200);
    assert.equal(read(pictures[0]), url, format);
  }
});

test('a copy on a disk has no address: it gives what stands behind the #, and no code', async () => {
  const { page } = await open({ url: fileUrl });
  await typeInto(page, 'f-foot-lengthMm', '25');
  await page.getByRole('button', { name: 'share this sock' }).click();
  assert.match(await page.inputValue('#shared-link'), /^#[0-9A-Za-z_-]+$/);
  assert.match(await page.textContent('.shared'), /no address that others could open/);
  assert.equal(await page.locator('.shared .qr').count(), 0);
});
