// The journal beside the sheets: as quick as a tap, read before anything is tapped, and no more than what it is needed for.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { begin, untilDone, keptPlace, stepShown, tap, tapOften, untilKept } from './knitting.mjs';
import { again, answered, openBrowser, typeInto, visit } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

test('it stands in the sheet at once, before anything else happens', async () => {
  const { page } = await open();
  await begin(page);
  const kept = await page.evaluate(() => {
    document.querySelector('[data-hand="tapped"]').click();
    const [, text] = Object.entries(localStorage).find(([name]) =>
      name.startsWith('twinround/sock/'),
    );
    return JSON.parse(text).started.taps;
  });
  assert.equal(kept, 1);
});

test('a full disk takes every tap, and is read again', async () => {
  const { page } = await open();
  await begin(page);
  await tap(page);
  await page.evaluate(() => {
    // To the last letter.
    for (let size = 1 << 22, i = 0; size > 0; i += 1) {
      try {
        localStorage.setItem(`full${i}`, 'x'.repeat(size));
      } catch {
        size >>= 1;
      }
    }
    // The place must not hang on the journal here.
    indexedDB.open = () => {
      throw new Error('full');
    };
  });
  await assert.rejects(
    page.evaluate(() => localStorage.setItem('more', 'x'.repeat(20))),
    /exceeded the quota/,
  );
  await tapOften(page, 12);
  assert.deepEqual(await keptPlace(page), { round: 3, pass: 1, taps: 13 });
  await again(page);
  assert.equal(await stepShown(page), 13);
  await tap(page);
  assert.deepEqual(await keptPlace(page), { round: 3, pass: 2, taps: 14 });
});

test('whoever has begun nothing has no journal either', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', '24');
  await again(page);
  assert.deepEqual(await page.evaluate(() => indexedDB.databases()), []);
});

test('a browser whose journal never answers shows the page all the same', async () => {
  const { page } = await open({ before: () => (indexedDB.open = () => ({})) });
  assert.equal(await page.evaluate(answered), true);
  await begin(page);
  await tapOften(page, 2);
  await again(page);
  assert.equal(await stepShown(page), 2);
});

test('a journal that answers late is heard, and what was tapped meanwhile counts no second time', async () => {
  const { page } = await open();
  await begin(page);
  await tapOften(page, 3);
  await untilKept(page);
  // As after a kill: the sheet stands further back.
  await page.evaluate(() => {
    const [name, text] = Object.entries(localStorage).find(([one]) =>
      one.startsWith('twinround/sock/'),
    );
    const sheet = JSON.parse(text);
    Object.assign(sheet.started, { pass: 1, taps: 1 });
    localStorage.setItem(name, JSON.stringify(sheet));
  });
  const late = await page.context().newPage();
  await page.close();
  await late.addInitScript(() => {
    const openNow = indexedDB.open.bind(indexedDB);
    indexedDB.open = (...asked) => {
      const request = {};
      setTimeout(() => {
        const real = openNow(...asked);
        for (const on of ['onsuccess', 'onerror', 'onupgradeneeded'])
          real[on] = (event) => {
            Object.assign(request, { result: real.result, transaction: real.transaction });
            request[on](event);
          };
      }, 6000);
      return request;
    };
  });
  await visit(late, page.url());
  assert.equal(await stepShown(late), 1);
  await tap(late);
  assert.equal(await stepShown(late), 2);
  await untilDone(late, 3);
  await untilKept(late);
  assert.equal(await stepShown(late), 3);
  await tap(late);
  await untilKept(late);
  assert.deepEqual(await keptPlace(late), { round: 1, pass: 0, taps: 4 });
});
