// Several tabs, a full disk, a link beside one's own: whatever happens, nothing of anybody's work is gone unasked.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { answered, follow, goTo, openBrowser, openShelf, press, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const foot = 'f-foot-lengthMm';

/** Another tab beside this one. */
async function openTab(page, url = page.url()) {
  const other = await page.context().newPage();
  await other.goto(url);
  await other.waitForFunction(answered);
  return other;
}
/** The feet of all socks that are kept, in the order of the shelf. */
const keptFeet = (page) =>
  page.evaluate(() =>
    Object.entries(localStorage)
      .filter(([name]) => name.startsWith('twinround/sock/'))
      .sort()
      .map(([, text]) => JSON.parse(text).draft['/foot/lengthMm'].typed),
  );

async function linkOf(length) {
  const { page } = await open();
  await typeInto(page, foot, length);
  await press(page, 'share this sock');
  return page.inputValue('#shared-link');
}

test('two tabs on one sock ask, and neither writes over the other unasked', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  const other = await openTab(page);
  assert.equal(await other.inputValue(`#${foot}`), '25');
  await typeInto(other, foot, '28');
  await page.getByText('changed in another tab').waitFor();
  // What is typed meanwhile is kept beside the other's, be this tab closed now.
  await typeInto(page, foot, '22');
  assert.deepEqual(await keptFeet(page), ['28', '22']);
  await press(page, 'take that one');
  assert.equal(await page.inputValue(`#${foot}`), '28');
  assert.deepEqual(await keptFeet(page), ['28']);
  await press(page, 'put it back');
  assert.deepEqual(await keptFeet(page), ['28', '22']);
});

test('“keep this one” keeps it, and the other can be put back', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  const other = await openTab(page);
  await typeInto(other, foot, '28');
  await page.getByText('changed in another tab').waitFor();
  await press(page, 'keep this one');
  assert.deepEqual(await keptFeet(page), ['25']);
  await press(page, 'put it back');
  assert.deepEqual(await keptFeet(page), ['25', '28']);
  await other.getByText('changed in another tab').waitFor();
});

test('another moment or other units in another tab raise no question', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  const other = await openTab(page);
  await goTo(other, 'Knit');
  await other.getByRole('radio', { name: 'in', exact: true }).check();
  await page.waitForTimeout(200);
  assert.equal(await page.getByText('changed in another tab').count(), 0);
  await typeInto(page, foot, '26');
  assert.deepEqual(await keptFeet(page), ['26']);
});

test('turning away while the question stands leaves both socks on the shelf', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  const other = await openTab(page);
  await typeInto(other, foot, '28');
  await page.getByText('changed in another tab').waitFor();
  await typeInto(page, foot, '26');
  await openShelf(page);
  await press(page, 'a new sock');
  assert.deepEqual(await keptFeet(page), ['28', '26']);
});

test('a tab in which nothing was typed removes nothing that another has made', async () => {
  const { page } = await open();
  await page.reload();
  await page.waitForFunction(answered);
  const other = await openTab(page);
  await typeInto(other, foot, '28');
  await other.close();
  await openShelf(page);
  await press(page, 'a new sock');
  await typeInto(page, foot, '22');
  assert.deepEqual((await keptFeet(page)).sort(), ['22', '28']);
});

test('a sock removed in another tab is gone from the list here too', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  await openShelf(page);
  await press(page, 'a new sock');
  await typeInto(page, foot, '28');
  const other = await openTab(page);
  await openShelf(other);
  await other.locator('[data-kept="remove"]').first().click();
  await page.waitForFunction(() => document.querySelectorAll('#socks li').length === 1);
  // Put back where the sock lives on in another tab, it stands beside it.
  await typeInto(page, foot, '29');
  await press(other, 'put it back');
  assert.deepEqual(await keptFeet(page), ['25', '29']);
});

test('a reload opens the sock that this tab was on', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  const other = await openTab(page);
  await openShelf(other);
  await press(other, 'a new sock');
  await typeInto(other, foot, '28');
  for (const [tab, length] of [
    [page, '25'],
    [other, '28'],
  ]) {
    await tab.reload();
    await tab.waitForFunction(answered);
    assert.equal(await tab.inputValue(`#${foot}`), length);
  }
});

test('what another tab makes of one’s own during a visit is not written over', async () => {
  const url = await linkOf('31');
  const { page } = await open();
  await typeInto(page, foot, '22');
  const address = page.url();
  await follow(page, url);
  const other = await openTab(page, address);
  assert.equal(await other.inputValue(`#${foot}`), '22');
  await typeInto(other, foot, '25');
  await press(page, 'back to my own');
  await page.getByText('changed in another tab').waitFor();
  assert.deepEqual(await keptFeet(page), ['25', '22']);
});

test('what was tried on one link’s sock is kept when another link is followed, or one goes back', async () => {
  const [first, second] = [await linkOf('31'), await linkOf('30')];
  const { page } = await open();
  await typeInto(page, foot, '22');
  await follow(page, first);
  await typeInto(page, foot, '31.5');
  await page.evaluate((hash) => (location.hash = hash), second.split('#')[1]);
  await page.waitForFunction((id) => document.getElementById(id).value === '30', foot);
  await press(page, 'back to my own');
  assert.deepEqual(await keptFeet(page), ['22', '31.5']);
  // Followed again, a link says what it says.
  await follow(page, first);
  assert.equal(await page.inputValue(`#${foot}`), '31');
});

test('a link’s sock that is begun is one’s own', async () => {
  const url = await linkOf('31');
  const { page } = await open();
  await typeInto(page, foot, '22');
  await follow(page, url);
  await goTo(page, 'Knit');
  await press(page, 'I have cast on: begin this sock');
  assert.equal(await page.locator('[data-key="visit"]').count(), 0);
  assert.equal(new URL(page.url()).hash, '');
  assert.deepEqual(await keptFeet(page), ['22', '31']);
});

test('the example itself, once begun, is kept beside another sock', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  await press(page, 'I have cast on: begin this sock');
  await openShelf(page);
  await press(page, 'a new sock');
  assert.match(await page.locator('#socks li').first().textContent(), /, begun/);
});

test('“not begun after all” can be taken back', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  await goTo(page, 'Knit');
  await press(page, 'I have cast on: begin this sock');
  await press(page, 'not begun after all');
  await press(page, 'undo');
  assert.equal(await page.locator('[data-key="begun"]').count(), 1);
});

test('a link’s sock does not take one’s name and notes', async () => {
  const url = await linkOf('31');
  const { page } = await open();
  await typeInto(page, foot, '22');
  await openShelf(page);
  await page.locator('#sock-name').fill('for Ilse');
  await follow(page, url);
  assert.equal(await page.inputValue('#sock-name'), '');
});

test('on a full disk a sock turned away from is there still while the page is open', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await typeInto(page, foot, '27');
  await openShelf(page);
  await press(page, 'a new sock');
  assert.match(await page.textContent('.not-kept'), /Not saved here/);
  await typeInto(page, foot, '29');
  await page.locator('[data-kept="turn"]').first().click();
  assert.equal(await page.inputValue(`#${foot}`), '27');
});

test('“your socks” leaves the address alone', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  await page.getByRole('link', { name: 'your socks' }).click();
  assert.equal(new URL(page.url()).hash, '');
  assert.equal(await page.locator('[data-key="bad-link"]').count(), 0);
  assert.equal(await page.locator('#socks').evaluate((fold) => fold.open), true);
});

test('a sock with a field that is wrong is not shown with the plan of the last one', async () => {
  const { page } = await open();
  await typeInto(page, foot, '25');
  await openShelf(page);
  await press(page, 'another from this one');
  await typeInto(page, foot, 'x');
  await page.locator('[data-kept="turn"]').first().click();
  await typeInto(page, foot, '31');
  await page.locator('[data-kept="turn"]').first().click();
  assert.equal(await page.inputValue(`#${foot}`), 'x');
  assert.match(await page.textContent('[data-view="note"]'), /last good: foot 24.6/);
});

test('a text of any length can be typed, and is there again', async () => {
  const { page } = await open();
  await page.locator(`#${foot}`).fill('2'.repeat(500));
  const typed = await page.inputValue(`#${foot}`);
  await page.reload();
  await page.waitForFunction(answered);
  assert.equal(await page.inputValue(`#${foot}`), typed);
});

test('two tabs at the teacher’s words agree', async () => {
  const { page } = await open();
  await goTo(page, 'Class');
  const other = await openTab(page);
  await goTo(other, 'Class');
  await page.locator('#lesson-note').fill('Wash the swatch.');
  await other.waitForFunction(() => document.getElementById('lesson-note').value !== '');
  await other.locator('#lesson-title').fill('Quay evenings');
  await page.waitForFunction(() => document.getElementById('lesson-title').value !== '');
  assert.equal(await page.inputValue('#lesson-note'), 'Wash the swatch.');
});
