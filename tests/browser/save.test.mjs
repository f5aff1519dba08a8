// Nothing that was entered is lost: kept at every change, come back to as typed, taken back step by step.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import { again, answered, fileUrl, goTo, openBrowser, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const kept = (page) => page.evaluate(() => Object.entries(localStorage));
const foot = 'f-foot-lengthMm';

test('what was typed is there again, as it was typed, in its moment and its units', async () => {
  for (const url of [undefined, fileUrl]) {
    const { page } = await open({ url });
    await typeInto(page, foot, '9 1/2 in');
    await typeInto(page, 'f-foot-ballGirthMm', '');
    await page.getByRole('radio', { name: 'in', exact: true }).check();
    await goTo(page, 'Knit');
    await again(page);
    assert.equal(await page.getAttribute('html', 'data-moment'), 'knit');
    await goTo(page, 'Count');
    assert.equal(await page.inputValue(`#${foot}`), '9 1/2');
    assert.equal(await page.inputValue('#f-foot-ballGirthMm'), '');
    assert.equal(await page.getByRole('radio', { name: 'in', exact: true }).isChecked(), true);
    // Its own are marked as such still, and the rest as the example's.
    assert.equal(await page.textContent(`#${foot}-mark`), '');
    assert.match(await page.textContent('#f-yarn-ballG-mark'), /example/);
  }
});

test('a kill right after a key loses nothing', async () => {
  const { page } = await open();
  await typeInto(page, foot, '26');
  const context = page.context();
  await page.close({ runBeforeUnload: false });
  const next = await context.newPage();
  await next.goto(page.url());
  await next.waitForFunction(answered);
  assert.equal(await next.inputValue(`#${foot}`), '26');
});

test('steps are taken back and forth, a field a step, whatever moment one is in', async () => {
  const { page } = await open();
  const press = (name) => page.getByRole('button', { name, exact: true }).click();
  assert.equal(await page.getByRole('button', { name: 'undo' }).count(), 0);
  await typeInto(page, foot, '26.5');
  await page.locator('.choice').first().click();
  await typeInto(page, 'f-rib-knit', '3');
  await press('undo');
  assert.equal(await page.inputValue('#f-rib-knit'), '2');
  await goTo(page, 'Buy');
  await press('undo');
  await press('undo');
  await goTo(page, 'Count');
  assert.equal(await page.inputValue(`#${foot}`), '24.6');
  assert.match(await page.textContent(`#${foot}-mark`), /example/);
  assert.equal(
    await page.getByRole('button', { name: 'undo' }).getAttribute('aria-disabled'),
    'true',
  );
  for (let times = 0; times < 3; times += 1) await press('redo');
  assert.equal(await page.inputValue('#f-rib-knit'), '3');
  assert.equal(await page.inputValue(`#${foot}`), '26.5');
  await press('begin anew');
  assert.equal(await page.inputValue(`#${foot}`), '24.6');
  await press('undo');
  assert.equal(await page.inputValue(`#${foot}`), '26.5');
});

test('where storage is denied the page works, and says that it keeps nothing', async () => {
  const { page, seen } = await open({
    before: () => {
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('denied', 'SecurityError');
        },
      });
    },
  });
  await typeInto(page, foot, '26');
  assert.match(await page.textContent('.not-kept'), /Not saved here/);
  assert.match(await page.textContent('.sentence'), /a foot 26.cm/);
  assert.deepEqual(seen.errors, []);
});

test('a store that is full says so, and keeps again when there is room', async () => {
  const { page } = await open();
  await page.evaluate(() => {
    const { setItem } = Storage.prototype;
    globalThis.makeRoom = () => (Storage.prototype.setItem = setItem);
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await typeInto(page, foot, '26');
  assert.match(await page.textContent('.not-kept'), /Not saved here/);
  await page.evaluate(() => globalThis.makeRoom());
  await typeInto(page, foot, '27');
  assert.equal(await page.locator('.not-kept').count(), 0);
  await again(page);
  assert.equal(await page.inputValue(`#${foot}`), '27');
});

for (const [name, text] of Object.entries({
  'cut off': '{"kind":"sheet","version":1,"draft":{"/foot',
  'of a later version': '{"kind":"sheet","version":99,"draft":{}}',
  'of something else': '[1,2,3]',
  'with a draft that is none':
    '{"kind":"sheet","version":1,"draft":{"/x":7},"example":[],"shown":{}}',
})) {
  test(`a kept text ${name} is set aside, offered as a file, and never deleted`, async () => {
    const { page } = await open();
    await page.evaluate((bad) => localStorage.setItem('twinround/sheet', bad), text);
    await again(page);
    assert.equal(await page.inputValue(`#${foot}`), '24.6');
    await typeInto(page, foot, '26');
    const aside = (await kept(page)).filter(([key]) => key.startsWith('twinround/aside/'));
    assert.deepEqual(
      aside.map(([, value]) => value),
      [text],
    );
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'download it' }).click();
    assert.equal(readFileSync(await (await waiting).path(), 'utf8'), text);
  });
}

test('the page keeps nothing under any name but its own', async () => {
  const { page } = await open();
  await typeInto(page, foot, '26');
  for (const [key] of await kept(page)) assert.match(key, /^twinround\//);
  assert.equal(await page.evaluate(() => document.cookie), '');
  assert.equal(await page.evaluate(() => sessionStorage.length), 0);
});
