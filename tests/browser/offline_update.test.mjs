// A newer version waits for a yes, and whatever happens on its way the one there was stays whole.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { beforeEach, test } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';

import { eachWithHost, isInstall, nameOf, spoilKept, untilReady, versionOf } from './host.mjs';
import { openKillable } from './killable.mjs';
import { begin, stepShown, tapOften } from './knitting.mjs';
import { typeInto, visit } from './open_page.mjs';

const at = eachWithHost();
beforeEach(() => at.host.publish(versionOf('First')));

const foot = 'f-foot-lengthMm';
const notice = (page) => page.locator('[data-view="update"]');
const yes = (page) => page.getByRole('button', { name: 'take the new one' });
const told = (page) => yes(page).waitFor();
const keptNames = (page) => page.evaluate(() => caches.keys());

async function open(where = at.context) {
  const page = await where.newPage();
  await visit(page, at.host.url);
  await untilReady(page);
  return page;
}

/** Says yes, and waits until the page has begun anew. */
async function take(page) {
  await Promise.all([page.waitForEvent('load'), yes(page).click()]);
  await untilReady(page);
}

/** Lets the browser look for a newer version, and says what became of it: installed, or redundant. */
const update = (page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    const found = new Promise((resolve) => {
      registration.addEventListener('updatefound', () => resolve(registration.installing));
    });
    await registration.update();
    const worker = await found;
    while (worker.state === 'installing') {
      await new Promise((resolve) => {
        worker.addEventListener('statechange', resolve, { once: true });
      });
    }
    return worker.state;
  });

test('a sock on the needles is at the same pass in the newer page', async () => {
  const page = await open();
  await begin(page);
  await tapOften(page, 57);
  at.host.publish(versionOf('Second'));
  await visit(page, at.host.url);
  await told(page);
  assert.equal(await stepShown(page), 57);
  await tapOften(page, 1);
  await take(page);
  assert.equal(await nameOf(page), 'Second');
  assert.equal(await stepShown(page), 58);
});

test('a newer version waits, is told, and comes with the yes; what was typed stays', async () => {
  const page = await open();
  await typeInto(page, foot, '27');
  assert.equal(await notice(page).textContent(), '');
  at.host.publish(versionOf('Second'));
  await visit(page, at.host.url);
  await told(page);
  assert.match(await notice(page).textContent(), /newer version of this page is here.*stays kept/);
  assert.equal(await nameOf(page), 'First');
  await visit(page, at.host.url);
  assert.equal(await nameOf(page), 'First');
  await told(page);
  await take(page);
  assert.equal(await nameOf(page), 'Second');
  assert.equal(await page.inputValue(`#${foot}`), '27');
  assert.equal(await notice(page).textContent(), '');
  at.host.isGone = true;
  await visit(page, at.host.url);
  assert.equal(await nameOf(page), 'Second');
  assert.equal((await keptNames(page)).length, 1);
});

test('without a yes the old one stays, when every tab was closed and the browser has gone over by itself', async () => {
  const page = await open();
  at.host.publish(versionOf('Second'));
  await visit(page, at.host.url);
  await told(page);
  await page.close();
  const next = await open();
  await next.waitForFunction(async () => {
    const { waiting } = await navigator.serviceWorker.getRegistration();
    return !waiting;
  });
  at.host.isGone = true;
  await visit(next, at.host.url);
  assert.equal(await nameOf(next), 'First');
  await told(next);
  await take(next);
  assert.equal(await nameOf(next), 'Second');
});

test('of several that she did not take, the last one is offered', async () => {
  const page = await open();
  for (const name of ['Second', 'Third']) {
    at.host.publish(versionOf(name));
    assert.equal(await update(page), 'installed');
    await told(page);
  }
  assert.equal((await keptNames(page)).length, 2);
  await take(page);
  assert.equal(await nameOf(page), 'Third');
});

test('another tab stays as it is, half a word and all, until it is asked for there', async () => {
  const [page, other] = [await open(), await open()];
  at.host.publish(versionOf('Second'));
  await visit(page, at.host.url);
  await told(page);
  await told(other);
  await other.locator(`#${foot}`).click();
  await other.keyboard.press('End');
  await other.keyboard.type('x');
  await take(page);
  assert.equal(await nameOf(page), 'Second');
  await wait(500);
  assert.equal(await nameOf(other), 'First');
  assert.equal(await other.evaluate(() => document.activeElement.id), foot);
  assert.equal(await other.inputValue(`#${foot}`), '24.6x');
  await take(other);
  assert.equal(await nameOf(other), 'Second');
});

test('where the browser keeps nothing, the notice says what a yes would cost', async () => {
  await at.context.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  const page = await open();
  at.host.publish(versionOf('Second'));
  await visit(page, at.host.url);
  await told(page);
  assert.match(await notice(page).textContent(), /loses what you typed/);
});

test('a line lost in mid-install leaves the old one whole, and the new one comes another time', async () => {
  const page = await open();
  at.host.publish(versionOf('Second'));
  at.host.cuts = isInstall;
  assert.equal(await update(page), 'redundant');
  assert.equal(await notice(page).textContent(), '');
  at.host.isGone = true;
  await visit(page, at.host.url);
  assert.equal(await nameOf(page), 'First');
  await untilReady(page);
  at.host.isGone = false;
  at.host.cuts = () => false;
  await visit(page, at.host.url);
  await told(page);
  await take(page);
  assert.equal(await nameOf(page), 'Second');
});

test('a page that is not the worker’s own, half a publication, is refused', async () => {
  const page = await open();
  for (const [served, stamped] of [
    ['First', 'Second'],
    ['Third', 'Second'],
  ]) {
    at.host.publish(versionOf(served), versionOf(stamped));
    assert.equal(await update(page), 'redundant');
    assert.equal(await notice(page).textContent(), '');
  }
  at.host.isGone = true;
  await visit(page, at.host.url);
  assert.equal(await nameOf(page), 'First');
});

test('where the old one is damaged the new one stands in, whole', async () => {
  const page = await open();
  await spoilKept(page);
  at.host.publish(versionOf('Second'));
  assert.equal(await update(page), 'installed');
  at.host.isGone = true;
  await visit(page, at.host.url);
  assert.equal(await nameOf(page), 'Second');
});

test('what another page of the same host keeps is left alone', async () => {
  const page = await open();
  const others = ['twinround /elsewhere/ 1', 'of somebody else'];
  await page.evaluate((names) => Promise.all(names.map((name) => caches.open(name))), others);
  at.host.publish(versionOf('Second'));
  assert.equal(await update(page), 'installed');
  await told(page);
  await take(page);
  const names = await keptNames(page);
  assert.deepEqual(names.filter((name) => others.includes(name)).sort(), [...others].sort());
  assert.equal(names.length, 3);
});

test('a browser killed in mid-install opens the old one, whole, and takes the new one later', async () => {
  const profile = mkdtempSync(path.join(os.tmpdir(), 'twinround-profile-'));
  let killable = await openKillable(profile);
  try {
    let page = await open(killable.window);
    await typeInto(page, foot, '27');
    // Browsers write what a page keeps to the disk some seconds later.
    await wait(6000);
    at.host.publish(versionOf('Second'));
    at.host.cutAfterMs = 60000;
    let isHalfway;
    const halfway = new Promise((resolve) => (isHalfway = resolve));
    at.host.cuts = (request) => {
      if (isInstall(request)) isHalfway();
      return isInstall(request);
    };
    await visit(page, at.host.url);
    await halfway;
    await wait(200);
    await killable.kill();
    at.host.cuts = () => false;
    at.host.isGone = true;
    killable = await openKillable(profile);
    page = await open(killable.window);
    assert.equal(await nameOf(page), 'First');
    assert.equal(await page.inputValue(`#${foot}`), '27');
    at.host.isGone = false;
    await visit(page, at.host.url);
    await told(page);
    await take(page);
    assert.equal(await nameOf(page), 'Second');
  } finally {
    await killable.kill();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
});
