// Several socks, each by its name and with its own past; one that is begun; files of them, out and in.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import {
  again,
  answered,
  goTo,
  openBrowser,
  openShelf,
  press,
  readNote,
  typeInto,
} from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const foot = 'f-foot-lengthMm';
const names = (page) => page.locator('#socks li strong').allTextContents();
const kept = (page) =>
  page.evaluate(() =>
    Object.entries(localStorage)
      .filter(([name]) => name.startsWith('twinround/sock/'))
      .sort(),
  );

/** A sock of this name and foot, on the page. */
async function make(page, name, length) {
  await typeInto(page, foot, length);
  await openShelf(page);
  await page.locator('#sock-name').fill(name);
}

test('socks stand side by side, each as it was left, its notes and its past with it', async () => {
  const { page } = await open();
  await make(page, 'for Ilse', '23');
  await page.locator('#sock-note').fill('loose\nat the top');
  await press(page, 'a new sock');
  assert.equal(await page.inputValue(`#${foot}`), '24.6');
  assert.equal(await page.inputValue('#sock-note'), '');
  await make(page, 'for Bo', '28');
  assert.deepEqual(await names(page), ['for Ilse', 'for Bo']);
  await press(page, 'open for Ilse');
  assert.equal(await page.inputValue(`#${foot}`), '23');
  assert.equal(await page.inputValue('#sock-note'), 'loose\nat the top');
  await press(page, 'undo');
  assert.equal(await page.inputValue(`#${foot}`), '24.6');
  await press(page, 'redo');
  await again(page);
  assert.equal(await page.inputValue(`#${foot}`), '23');
  await openShelf(page);
  await press(page, 'open for Bo');
  assert.equal(await page.inputValue(`#${foot}`), '28');
  assert.equal((await kept(page)).length, 2);
});

test('each is shown with a picture of its own, and what it comes to', async () => {
  const { page } = await open();
  await make(page, 'one', '23');
  await press(page, 'another from this one');
  await typeInto(page, 'f-rib-knit', '3');
  await page.locator('#sock-name').fill('two');
  await typeInto(page, 'f-foot-ballGirthMm', 'x');
  await press(page, 'another from this one');
  const told = await page.locator('#socks li .said .aside').allTextContents();
  assert.match(told[0], /^\d+ stitches, \d+ rounds$/);
  assert.equal(told[1], 'not a plan yet');
  const bands = await page
    .locator('#socks li .bands')
    .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')));
  assert.equal(bands.length, 1);
  await typeInto(page, 'f-foot-ballGirthMm', '24');
  const both = await page
    .locator('#socks li .bands')
    .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')));
  assert.notEqual(both[0], both[1]);
});

test('one removed can be put back, and the one on the page gives way to another', async () => {
  const { page } = await open();
  await make(page, 'one', '23');
  await press(page, 'a new sock');
  await make(page, 'two', '28');
  await press(page, 'remove two');
  assert.equal(await page.inputValue(`#${foot}`), '23');
  assert.deepEqual(await names(page), ['one']);
  await press(page, 'put it back');
  assert.deepEqual(await names(page), ['one', 'two']);
  await press(page, 'open two');
  assert.equal(await page.inputValue(`#${foot}`), '28');
});

test('two tabs on two socks leave each other alone', async () => {
  const { page } = await open();
  await make(page, 'one', '23');
  const other = await page.context().newPage();
  await other.goto(page.url());
  await other.waitForFunction(answered);
  await openShelf(other);
  await press(other, 'a new sock');
  await make(other, 'two', '28');
  await typeInto(page, 'f-legHeightMm', '22');
  assert.equal(await page.getByText('changed in another tab').count(), 0);
  await page.locator('#socks li strong', { hasText: 'two' }).waitFor();
  assert.equal(await other.inputValue(`#${foot}`), '28');
  const drafts = (await kept(page)).map(([, text]) => JSON.parse(text));
  assert.deepEqual(
    drafts.map(({ name, draft }) => [name, draft['/foot/lengthMm'].typed]),
    [
      ['one', '23'],
      ['two', '28'],
    ],
  );
});

const keptBy = (version) =>
  readFileSync(new URL(`kept/version-${version}.json`, import.meta.url), 'utf8').trim();

/** As a page of that version has left it. */
async function leave(page, name, text) {
  await page.evaluate(
    ([where, what]) => {
      localStorage.clear();
      localStorage.setItem(where, what);
    },
    [name, text],
  );
  await again(page);
}

test('what a page of version 1 kept, one sock alone, is there still', async () => {
  const { page } = await open();
  await leave(page, 'twinround/sheet', keptBy(1));
  assert.equal(await page.getAttribute('html', 'data-moment'), 'knit');
  await goTo(page, 'Count');
  assert.equal(await page.inputValue(`#${foot}`), '9 1/2');
  assert.equal(await page.inputValue('#f-foot-ballGirthMm'), '');
  assert.equal(await page.evaluate(() => localStorage.getItem('twinround/sheet')), null);
  await again(page);
  assert.equal(await page.inputValue(`#${foot}`), '9 1/2');
  assert.equal((await kept(page)).length, 1);
});

test('what a page of version 2 kept, begun and under a class’s settings, is there still', async () => {
  const { page } = await open();
  await leave(page, 'twinround/sock/1', keptBy(2));
  assert.equal(await page.getAttribute('html', 'data-moment'), 'knit');
  assert.equal(await page.inputValue(`#${foot}`), '9 1/2');
  assert.equal(await page.inputValue('#f-rib-knit'), '3');
  assert.equal(await page.inputValue('#sock-name'), 'for Ilse');
  assert.equal(await page.inputValue('#sock-note'), 'loose\nat the top');
  assert.match(
    await page.textContent('[data-key="course"]'),
    /Quay evenings.*Set by the class: rib/,
  );
  assert.equal(await page.locator('[data-key="begun"]').count(), 1);
  assert.equal(await page.locator('[data-key="aside"]').count(), 0);
});

test('what a page of version 3 kept, in the middle of a round, is there still', async () => {
  const { page } = await open();
  await leave(page, 'twinround/sock/1', keptBy(3));
  assert.match(await page.textContent('.work-round'), /Round 58 of 119/);
  assert.equal(await page.locator('.work-pass[aria-pressed="true"]').count(), 2);
  assert.match(await page.textContent('.work-facts'), /timed over 2 rounds/);
  await press(page, 'undo the last tap');
  assert.equal(await page.locator('.work-pass[aria-pressed="true"]').count(), 1);
});

test('what a page of version 4 kept, under a class’s yarns, is there still', async () => {
  const { page } = await open();
  await leave(page, 'twinround/sock/1', keptBy(4));
  assert.equal(await page.inputValue(`#${foot}`), '9 1/2');
  assert.match(
    await page.textContent('[data-key="course"]'),
    /Quay evenings.*Set by the class: rib, which yarns/,
  );
  assert.match(await page.textContent('[data-view="class-yarns"]'), /3 light.*or 5 bulky/);
  assert.equal(await page.locator('[data-key="aside"]').count(), 0);
});

test('a full disk while an earlier page’s sock is brought over loses nothing', async () => {
  const { page } = await open({
    before: () => {
      const { setItem } = Storage.prototype;
      Storage.prototype.setItem = function put(name, text) {
        if (globalThis.isFull && name !== 'twinround/probe') throw new DOMException('full');
        return setItem.call(this, name, text);
      };
      globalThis.isFull = 'twinround/sheet' in localStorage;
    },
  });
  const old = keptBy(1);
  await leave(page, 'twinround/sheet', old);
  assert.equal(await page.evaluate(() => localStorage.getItem('twinround/sheet')), old);
});

const saveTo = async (page, name) => {
  const waiting = page.waitForEvent('download');
  await press(page, name);
  return readFileSync(await (await waiting).path(), 'utf8');
};
const give = (page, name, text) =>
  page.locator('#open-file').setInputFiles({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });

test('a file holds the sock as typed and the request it makes, and opens as another sock', async () => {
  const { page } = await open();
  await make(page, 'for Ilse', '9 1/2 in');
  await typeInto(page, 'f-foot-heelAnkleGirthMm', '');
  await page.locator('#sock-note').fill('=1+1 <b>no</b>');
  const text = await saveTo(page, 'save this one to a file');
  const file = JSON.parse(text);
  assert.equal(file.request.foot.lengthMm, 241.3);
  assert.equal(file.draft['/foot/lengthMm'].typed, '9 1/2 in');
  const { page: other } = await open();
  await make(other, 'own', '22');
  await give(other, 'sock.json', text);
  await other.locator('#socks li strong', { hasText: 'for Ilse' }).waitFor();
  assert.deepEqual(await names(other), ['own', 'for Ilse']);
  assert.equal(await other.inputValue(`#${foot}`), '9 1/2');
  assert.equal(await other.inputValue('#sock-note'), '=1+1 <b>no</b>');
  // All of them in one file, to another device.
  const all = await saveTo(other, 'save all to a file');
  const { page: third } = await open();
  await openShelf(third);
  await give(third, 'all.json', all);
  await third.getByText('2 opened.').waitFor();
  assert.deepEqual(await names(third), ['own', 'for Ilse']);
  // The same file again brings nothing twice.
  await give(third, 'all.json', all);
  await third.getByText('0 opened; 2 here already.').waitFor();
  assert.deepEqual(await names(third), ['own', 'for Ilse']);
});

test('a plan taken along as data opens again', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', '26');
  const note = await readNote(page);
  await page.locator('#along summary').click();
  const waiting = page.waitForEvent('download');
  await page.locator('[data-export="json"]').click();
  const text = readFileSync(await (await waiting).path(), 'utf8');
  const { page: other } = await open();
  await openShelf(other);
  await give(other, 'plan.json', text);
  await other.getByText('1 opened.').waitFor();
  assert.deepEqual(await readNote(other), note);
});

test('the name of the sock on the page, and the way to the others, stand at the top', async () => {
  const { page } = await open();
  await make(page, 'for Ilse', '23');
  await again(page);
  assert.match(await page.textContent('[data-key="steps"]'), /^for Ilse.*your socks$/);
});

test('a request written by hand opens as a sock', async () => {
  const text = readFileSync(new URL('../golden/wide-calf/request.json', import.meta.url), 'utf8');
  const reply = JSON.parse(
    readFileSync(new URL('../golden/wide-calf/reply.json', import.meta.url), 'utf8'),
  );
  const { page } = await open();
  await openShelf(page);
  await give(page, 'request.json', text);
  await page.locator('#socks li').first().waitFor();
  assert.equal((await readNote(page))['rounds in all'], String(reply.plan.totalRounds));
});

for (const [what, text, words] of [
  ['that is cut', '{"kind":"sheet","version":2,"draft":{"/foot', /no save file, or was cut/],
  ['of a newer page', '{"kind":"sheet","version":99,"draft":{}}', /of a newer page/],
  ['of something else', '[1,2,3]', /no sock that this page can read/],
  ['that is empty', '', /no save file/],
  ['that is far too large', `"${'x'.repeat(30000001)}"`, /too large/],
]) {
  test(`a file ${what} is told in words, and nothing is changed`, async () => {
    const { page, seen } = await open();
    await make(page, 'own', '22');
    const own = await kept(page);
    await give(page, 'bad.json', text);
    await page.locator('[data-key="bad-file"]').waitFor();
    assert.match(await page.textContent('[data-key="bad-file"]'), words);
    assert.deepEqual(await kept(page), own);
    assert.equal(await page.inputValue(`#${foot}`), '22');
    assert.deepEqual(seen.errors, []);
  });
}
