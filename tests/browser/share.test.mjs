// A sock as a link: it opens to the same plan, leaves what is the reader's own alone, and says what is wrong with it.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { answered, follow, goTo, openBrowser, readCounts, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const foot = 'f-foot-lengthMm';

/** The link that the page's own button makes. */
async function linkOf(page) {
  await goTo(page, 'Count');
  await page.getByRole('button', { name: 'share this sock' }).click();
  await page.locator('#shared-link').waitFor();
  return page.inputValue('#shared-link');
}

test('a link opens to the very sock it was made of, example marks and all', async () => {
  const { page } = await open();
  await typeInto(page, foot, '9 1/2 in');
  await typeInto(page, 'f-foot-ballGirthMm', '23,5');
  await page.locator('.finer > summary').click();
  await page.locator('#f-rib-lean').selectOption('right');
  await page.locator('.choice').last().click();
  const url = await linkOf(page);
  const [, text] = url.split('#');
  assert.ok(text.length <= 70, `${text.length} letters`);
  const { page: other } = await open({ url });
  assert.equal(await other.inputValue(`#${foot}`), '9 1/2');
  assert.equal(await other.inputValue('#f-foot-ballGirthMm'), '23.5');
  assert.equal(await other.textContent(`#${foot}-mark`), '');
  assert.match(await other.textContent('#f-yarn-ballG-mark'), /example/);
  assert.deepEqual(await readCounts(other), await readCounts(page));
  // Nothing of her own stood there: the sock is hers now, and the address is the page's.
  assert.equal(await other.locator('[data-kept="makeMine"]').count(), 0);
  assert.equal(new URL(other.url()).hash, '');
});

test('it carries the moment and the units', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  const url = await linkOf(page);
  const { page: other } = await open({ url });
  assert.equal(await other.getByRole('radio', { name: 'in', exact: true }).isChecked(), true);
});

test('one’s own sock stays kept beside a link’s, until one says otherwise', async () => {
  const teacher = (await open()).page;
  await typeInto(teacher, foot, '28');
  const url = await linkOf(teacher);

  const { page } = await open();
  await typeInto(page, foot, '22');
  await follow(page, url);
  assert.equal(await page.inputValue(`#${foot}`), '28');
  assert.match(await page.textContent('[data-key="visit"]'), /Your own sock is kept/);
  // What she tries on the link's sock is there again when she comes back to the link…
  await typeInto(page, 'f-legHeightMm', '18');
  await follow(page, url);
  assert.equal(await page.inputValue('#f-legHeightMm'), '18');
  // …and her own without it.
  await follow(page, url.split('#')[0]);
  assert.equal(await page.inputValue(`#${foot}`), '22');
  await follow(page, url);
  await page.getByRole('button', { name: 'back to my own' }).click();
  assert.equal(await page.inputValue(`#${foot}`), '22');
  assert.equal(new URL(page.url()).hash, '');
  await follow(page, url);
  await page.getByRole('button', { name: 'add it to my socks' }).click();
  assert.equal(new URL(page.url()).hash, '');
  await page.reload();
  await page.waitForFunction(answered);
  assert.equal(await page.inputValue(`#${foot}`), '28');
});

test('a link followed while the page is open is opened too, and Back goes back', async () => {
  const teacher = (await open()).page;
  await typeInto(teacher, foot, '28');
  const url = await linkOf(teacher);
  const { page } = await open();
  await typeInto(page, foot, '22');
  await page.evaluate((hash) => (location.hash = hash), url.split('#')[1]);
  await page.locator('[data-key="visit"]').waitFor();
  assert.equal(await page.inputValue(`#${foot}`), '28');
  // Her own steps are not the link's to take back.
  assert.equal(await page.getByRole('button', { name: 'undo' }).count(), 0);
  await page.goBack();
  await page.locator('[data-key="visit"]').waitFor({ state: 'detached' });
  assert.equal(await page.inputValue(`#${foot}`), '22');
});

for (const [name, spoil, words] of [
  ['cut', (text) => text.slice(0, -6), /cut short/],
  [
    'with a letter changed',
    (text) => `${text.slice(0, 20)}${text[20] === 'a' ? 'b' : 'a'}${text.slice(21)}`,
    /letter in it is wrong/,
  ],
  ['of a newer page', (text) => `9${text.slice(1)}`, /newer page/],
  ['far too long', (text) => text + 'a'.repeat(5000), /too long|cut short|no link|wrong/],
  ['that is none', () => '%3Cscript%3Ealert(1)%3C/script%3E', /no link to a sock/],
]) {
  test(`a link ${name} is told in words, and nothing of one’s own is touched`, async () => {
    const teacher = (await open()).page;
    await typeInto(teacher, foot, '28');
    const [address, text] = (await linkOf(teacher)).split('#');
    const { page, seen } = await open();
    await typeInto(page, foot, '22');
    const kept = await page.evaluate(() => localStorage.getItem('twinround/sheet'));
    await follow(page, `${address}#${spoil(text)}`);
    assert.match(await page.textContent('[data-key="bad-link"]'), words);
    assert.equal(await page.inputValue(`#${foot}`), '22');
    assert.equal(await page.evaluate(() => localStorage.getItem('twinround/sheet')), kept);
    assert.deepEqual(seen.errors, []);
    assert.deepEqual(seen.violations, []);
  });
}

test('where the device shares, it is asked; where copying is allowed, it is copied', async () => {
  const { page } = await open({
    before: () => {
      globalThis.shared = [];
      Object.defineProperty(navigator, 'share', {
        value: async (what) => globalThis.shared.push(what.url),
      });
    },
  });
  const url = await linkOf(page);
  assert.deepEqual(await page.evaluate(() => globalThis.shared), [url]);
  const other = await open({ permissions: ['clipboard-read', 'clipboard-write'] });
  const copied = await linkOf(other.page);
  assert.match(await other.page.textContent('.shared'), /Copied/);
  assert.equal(await other.page.evaluate(() => navigator.clipboard.readText()), copied);
});
