// Taking the sock along by hand: copied or not, by keys alone, and never while something is to be mended.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import { goTo, openBrowser, typeInto } from './open_page.mjs';
import { button, names, take, unfold } from './take_along.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

test('where copying is allowed the text is copied, and that is said', async () => {
  const { page } = await open({ permissions: ['clipboard-read', 'clipboard-write'] });
  await unfold(page);
  const { bytes } = await take(page, 'txt');
  await button(page, 'copy the text').click();
  await page.locator('#along-said', { hasText: 'Copied' }).waitFor();
  assert.match(await page.getByRole('status').textContent(), /^Copied/);
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), bytes.toString('utf8'));
  assert.equal(await page.locator('#copied-text').count(), 0);
});

const refusals = {
  refused: () => {
    navigator.clipboard.writeText = () => Promise.reject(new DOMException('', 'NotAllowedError'));
  },
  'not there': () => Object.defineProperty(navigator, 'clipboard', { value: undefined }),
};
for (const [how, refuse] of Object.entries(refusals)) {
  test(`where copying is ${how} the text stands there, selected, until the sock is another`, async () => {
    const { page, seen } = await open({ before: refuse });
    await unfold(page);
    const { bytes } = await take(page, 'txt');
    await button(page, 'copy the text').click();
    const text = page.getByRole('textbox', { name: 'The pattern as text' });
    await text.waitFor();
    const state = await text.evaluate((node) => ({
      hasFocus: node === document.activeElement,
      selected: node.value.slice(node.selectionStart, node.selectionEnd),
      isReadOnly: node.readOnly,
    }));
    assert.deepEqual(state, {
      hasFocus: true,
      selected: bytes.toString('utf8'),
      isReadOnly: true,
    });
    assert.match(await page.textContent('#along-said'), /copy it by hand/);
    await typeInto(page, 'f-foot-lengthMm', '25');
    assert.equal(await text.count(), 0);
    assert.equal(await page.textContent('#along-said'), '');
    assert.deepEqual(seen.errors, []);
  });
}

test('while something is to be mended no file is made, and what was chosen stays', async () => {
  const { page } = await open();
  await unfold(page);
  await page.getByRole('radio', { name: 'semicolon' }).check();
  await typeInto(page, 'f-foot-lengthMm', '30x');
  let files = 0;
  page.on('download', () => (files += 1));
  const all = [...Object.values(names), 'copy the text'].map((name) => button(page, name));
  for (const one of all) {
    assert.equal(await one.getAttribute('aria-disabled'), 'true');
    // Playwright waits for such a button to be enabled; a hand does not.
    await one.click({ force: true });
  }
  await page.waitForTimeout(300);
  assert.equal(files, 0);
  assert.equal(await page.locator('#copied-text').count(), 0);
  assert.match(await page.textContent('#along-said'), /files wait/);
  await typeInto(page, 'f-foot-lengthMm', '25');
  const { bytes } = await take(page, 'csv');
  assert.match(bytes.toString('utf8'), /^\ufeffround;part;/);
  assert.equal(JSON.parse((await take(page, 'json')).bytes).request.foot.lengthMm, 250);
  assert.equal(files, 2);
});

test('by keys alone, from both moments that have it', async () => {
  const { page } = await open({ viewport: { width: 360, height: 740 } });
  for (const moment of ['Count', 'Knit']) {
    await goTo(page, moment);
    await page.locator('#along > details > summary').focus();
    if (moment === 'Count') await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press(moment === 'Count' ? 'ArrowRight' : 'ArrowLeft');
    for (const kind of ['csv', 'json', 'txt']) {
      await page.keyboard.press('Tab');
      const waiting = page.waitForEvent('download');
      await page.keyboard.press('Enter');
      const download = await waiting;
      assert.ok(download.suggestedFilename().endsWith(`.${kind}`));
      if (kind !== 'csv') continue;
      const separator = moment === 'Count' ? ';' : ',';
      const text = readFileSync(await download.path(), 'utf8');
      assert.ok(text.includes(`round${separator}part${separator}`), moment);
    }
  }
});
