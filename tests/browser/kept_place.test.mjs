// The place in the knitting is never lost: a kill, a reload, a full storage, a second tab, a browser that keeps nothing.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';

import { serve } from '../../tools/js/serve.mjs';
import { openKillable } from './killable.mjs';
import { begin, settled, stepShown, tap, tapOften, untilNoted } from './knitting.mjs';
import { again, goTo, openBrowser, press, visit } from './open_page.mjs';

const site = fileURLToPath(new URL('../../build/site/', import.meta.url));
let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

test('a reload opens the same round and pass', async () => {
  const { page } = await open();
  await begin(page);
  await tapOften(page, 231);
  await again(page);
  await settled(page);
  assert.equal(await stepShown(page), 231);
  await tap(page);
  assert.equal(await stepShown(page), 232);
});

/** A browser of its own on a disk of its own. */
async function withKillable(work) {
  const profile = mkdtempSync(path.join(os.tmpdir(), 'twinround-knit-'));
  const { url, close } = await serve({ folder: site });
  let browser = await openKillable(profile);
  try {
    await work({
      url,
      page: await browser.window.newPage(),
      reopen: async () => {
        await browser.kill();
        browser = await openKillable(profile);
        const page = await browser.window.newPage();
        await visit(page, url);
        return page;
      },
    });
  } finally {
    await browser.kill();
    await close();
    rmSync(profile, { recursive: true, force: true });
  }
}

test('a browser that is killed right after a tap opens at that tap', async () => {
  await withKillable(async ({ page, url, reopen }) => {
    await visit(page, url);
    await begin(page);
    await tapOften(page, 77);
    await untilNoted(page, 77);
    const next = await reopen();
    await settled(next);
    assert.equal(await stepShown(next), 77);
    // And back: the later change holds, not the further round.
    await press(next, 'back');
    await untilNoted(next, 78);
    const last = await reopen();
    await settled(last);
    assert.equal(await stepShown(last), 76);
  });
});

test('a sock begun a moment before the kill is begun, with what was typed for it', async () => {
  await withKillable(async ({ page, url, reopen }) => {
    await visit(page, url);
    await page.locator('#f-foot-lengthMm').fill('27');
    await begin(page);
    await tap(page);
    await untilNoted(page, 1);
    const next = await reopen();
    await settled(next);
    assert.equal(await stepShown(next), 1);
    await goTo(next, 'Count');
    assert.equal(await next.inputValue('#f-foot-lengthMm'), '27');
  });
});

test('a sock that was removed stays removed, and one not begun after all is not', async () => {
  const { page } = await open();
  await begin(page);
  await tapOften(page, 9);
  await untilNoted(page, 9);
  await page.locator('[data-key="not-begun"] summary').click();
  await press(page, 'not begun after all');
  await page.waitForTimeout(200);
  await again(page);
  await page.waitForTimeout(200);
  assert.equal(await page.locator('.work-round').count(), 0);
  await begin(page);
  await tapOften(page, 2);
  await untilNoted(page, 2);
  assert.equal(await stepShown(page), 2);
  await page.locator('#socks').evaluate((fold) => (fold.open = true));
  await page.locator('#socks [data-kept="remove"]').first().click();
  await page.waitForTimeout(200);
  await again(page);
  await page.waitForTimeout(200);
  assert.equal(await page.locator('.work-round').count(), 0);
});

test('a disk without room for one more letter still takes the place', async () => {
  const { page } = await open();
  await begin(page);
  await page.evaluate(() => {
    let long = 1 << 20;
    let i = 0;
    while (long > 0) {
      try {
        localStorage.setItem(`filler/${(i += 1)}`, 'x'.repeat(long));
      } catch {
        long >>= 1;
      }
    }
  });
  await assert.rejects(page.evaluate(() => localStorage.setItem('one', 'more')));
  await tapOften(page, 150);
  await page.evaluate(() => indexedDB.deleteDatabase('twinround'));
  await again(page);
  await settled(page);
  assert.equal(await stepShown(page), 150);
});

test('a second tab follows, and a tap on a page that is behind counts nowhere', async () => {
  const { page } = await open();
  await begin(page);
  await tapOften(page, 10);
  const other = await page.context().newPage();
  // Word of the other tab may come late: before the page's own listener, for it is added later.
  await other.addInitScript(() => {
    addEventListener('storage', (event) => globalThis.isDeaf && event.stopImmediatePropagation());
  });
  await visit(other, page.url());
  await settled(other);
  assert.equal(await stepShown(other), 10);
  await tap(page);
  await other.waitForFunction(
    () => document.querySelectorAll('.pass[aria-pressed="true"]').length === 3,
  );
  await tap(other);
  assert.equal(await stepShown(other), 12);
  await page.waitForFunction(() =>
    /Round 4/.test(document.querySelector('.work-round').textContent),
  );
  assert.equal(await page.getByText('changed in another tab').count(), 0);

  await other.evaluate(() => {
    globalThis.isDeaf = true;
  });
  await tapOften(page, 5);
  await tap(other);
  assert.equal(await stepShown(other), 17);
  assert.match(await other.textContent('#needles'), /knit on in another window/);
  await tap(other);
  assert.equal(await stepShown(other), 18);
  assert.doesNotMatch(await other.textContent('#needles'), /knit on in another window/);
});

test('a browser that keeps nothing says so, and knits on as long as it is open', async () => {
  const { page } = await open({
    before: () => {
      const denied = () => {
        throw new DOMException('denied', 'SecurityError');
      };
      Object.defineProperty(window, 'localStorage', { get: denied });
      Object.defineProperty(window, 'indexedDB', { get: denied });
    },
  });
  await begin(page);
  await tapOften(page, 6);
  assert.equal(await stepShown(page), 6);
  assert.match(await page.textContent('#needles'), /keeps nothing here/);
});

test('a save file carries the place', async () => {
  const { page } = await open();
  await begin(page);
  await tapOften(page, 42);
  await page.locator('#socks').evaluate((fold) => (fold.open = true));
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    press(page, 'save this one to a file'),
  ]);
  const { page: fresh } = await open();
  await fresh.locator('#socks').evaluate((fold) => (fold.open = true));
  await fresh.locator('#open-file').setInputFiles(await download.path());
  await goTo(fresh, 'Knit');
  await fresh.locator('.work-round').waitFor();
  assert.equal(await stepShown(fresh), 42);
  assert.match(await fresh.textContent('#socks'), /begun, in round 11/);
  // The same once more is no other sock; knit on elsewhere it is.
  await fresh.locator('#open-file').setInputFiles([]);
  await fresh.locator('#open-file').setInputFiles(await download.path());
  await fresh.waitForFunction(() => /already/.test(document.body.textContent));
  assert.equal(await fresh.locator('#socks li').count(), 1);
});
