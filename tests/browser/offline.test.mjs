// After one visit the page opens with the network off: whole, with what was typed, or with words where it cannot.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { after, afterEach, before, beforeEach, test } from 'node:test';

import { PNG } from 'pngjs';

import { launchChromium } from './chromium.mjs';
import { nameOf, openHost, spoilKept, untilReady, versionOf, visit } from './host.mjs';
import { fileUrl, readNote, typeInto } from './open_page.mjs';

let browser;
before(async () => (browser = await launchChromium()));
after(() => browser.close());

let host;
let context;
beforeEach(async () => {
  host = await openHost();
  context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
});
afterEach(async () => {
  await context.close();
  await host.close();
});

const said = (page) => page.textContent('[data-view="offline"]');
const foot = 'f-foot-lengthMm';

/** A first visit, as long as it takes to be ready. */
async function firstVisit() {
  const page = await context.newPage();
  await visit(page, host.url);
  await untilReady(page);
  return page;
}

test('after one visit it says that it is ready, and opens without a network, with what was typed', async () => {
  const page = await firstVisit();
  assert.match(await said(page), /^Ready: from now on this page opens without a signal\./);
  await typeInto(page, foot, '27');
  const note = await readNote(page);
  await page.close();
  host.isGone = true;
  const next = await context.newPage();
  await visit(next, host.url);
  assert.equal(await next.inputValue(`#${foot}`), '27');
  assert.deepEqual(await readNote(next), note);
  await typeInto(next, foot, '22');
  assert.notDeepEqual(await readNote(next), note);
  await untilReady(next);
});

test('the first answer does not wait for it', async () => {
  host.cuts = ({ url }) => url === '/sw.js';
  host.cutAfterMs = 1e6;
  const page = await context.newPage();
  await visit(page, host.url);
  await typeInto(page, foot, '27');
  assert.notEqual((await readNote(page))['rounds in all'], '120');
  assert.doesNotMatch(await said(page), /Ready/);
});

test('it opens where the browser says that it is offline, at a link, with a ? and as index.html', async () => {
  const page = await firstVisit();
  await typeInto(page, foot, '27');
  await page.locator('[data-share]').first().click();
  const { hash } = new URL(await page.inputValue('#shared-link'));
  await typeInto(page, foot, '22');
  await context.setOffline(true);
  host.isGone = true;
  for (const there of ['', '?from=class', 'index.html']) {
    await visit(page, `${host.url}${there}${hash}`);
    assert.equal(page.url(), `${host.url}${there}${hash}`);
    assert.equal(await page.inputValue(`#${foot}`), '27', there);
    await page.getByRole('button', { name: 'back to mine' }).click();
    assert.equal(await page.inputValue(`#${foot}`), '22', there);
  }
});

test('a visit asks for the page, its worker and what that keeps, and nobody for anything else', async () => {
  const seen = [];
  context.on('request', (request) => seen.push(request.url()));
  const page = await firstVisit();
  await typeInto(page, foot, '27');
  await page.waitForTimeout(1500);
  const { icons } = JSON.parse(readFileSync(path.join(host.folder, 'app.webmanifest'), 'utf8'));
  const kept = ['/', '/app.webmanifest', ...icons.map(({ src }) => `/${src}`)];
  assert.deepEqual([...host.asked].sort(), ['/', '/sw.js', ...kept].sort());
  assert.deepEqual(
    seen.map((url) => url.replace(host.url, '/')).filter((url) => !host.asked.includes(url)),
    [],
  );
  host.asked.length = 0;
  await visit(page, host.url);
  await untilReady(page);
  await page.waitForTimeout(3000);
  assert.deepEqual(host.asked, ['/sw.js']);
});

test('without a network it has the policy that it came with', async () => {
  const page = await context.newPage();
  const online = await page.goto(host.url);
  await untilReady(page);
  host.isGone = true;
  const offline = await page.goto(host.url);
  for (const name of ['content-security-policy', 'content-type', 'x-content-type-options']) {
    assert.ok(offline.headers()[name], name);
    assert.equal(offline.headers()[name], online.headers()[name]);
  }
  assert.match(offline.headers()['content-security-policy'], /frame-ancestors \*/);
});

test('a damaged copy is mended from the network, unnoticed', async () => {
  const page = await firstVisit();
  await spoilKept(page);
  await visit(page, host.url);
  await untilReady(page);
  host.isGone = true;
  await visit(page, host.url);
  assert.equal(await nameOf(page), 'Twinround');
});

test('a damaged or deleted copy without a network is told in words, and mended once there is one', async () => {
  const page = await firstVisit();
  const drop = () =>
    page.evaluate(async () => {
      for (const name of await caches.keys()) await caches.delete(name);
    });
  for (const harm of [() => spoilKept(page), drop]) {
    await harm();
    host.isGone = true;
    const reply = await page.goto(host.url);
    assert.equal(reply.status(), 503);
    assert.match(await page.textContent('body'), /damaged or gone.*no signal.*not touched/s);
    assert.match(await page.title(), /Twinround/);
    host.isGone = false;
    await visit(page, host.url);
    await untilReady(page);
  }
});

test('what comes from a network in place of the page is shown and never kept', async () => {
  const page = await firstVisit();
  await spoilKept(page);
  writeFileSync(path.join(host.folder, 'index.html'), '<!doctype html><h1>Sign in first</h1>');
  await page.goto(host.url);
  assert.equal(await nameOf(page), 'Sign in first');
  host.isGone = true;
  assert.equal((await page.goto(host.url)).status(), 503);
});

test('the copy to keep is the very page, without a network too', async () => {
  const page = await firstVisit();
  host.isGone = true;
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'keep a copy' }).click();
  const copy = await download;
  assert.equal(copy.suggestedFilename(), 'twinround.html');
  assert.equal(readFileSync(await copy.path(), 'utf8'), versionOf('Twinround'));
  await untilReady(page);
});

test('a browser that has no workers is told so, and the copy is the way', async () => {
  await context.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined });
  });
  const page = await context.newPage();
  await visit(page, host.url);
  await page.waitForFunction(() =>
    document.querySelector('[data-view="offline"]').textContent.includes('only with a signal'),
  );
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'keep a copy' }).click();
  const kept = await (await download).path();
  assert.equal(readFileSync(kept, 'utf8'), versionOf('Twinround'));
});

test('a file has no worker, no link to what it is already, and nothing to complain of', async () => {
  const page = await context.newPage();
  const errors = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => errors.push(message.text()));
  await visit(page, fileUrl);
  await page.waitForTimeout(500);
  assert.match(await said(page), /^This is a copy kept on a disk/);
  assert.equal(await page.locator('[data-view="offline"] a').count(), 0);
  assert.deepEqual(errors, []);
});

test('in a frame, sandboxed or not, no worker is asked for', async () => {
  writeFileSync(
    path.join(host.folder, 'course.html'),
    '<!doctype html><iframe src="./"></iframe><iframe src="./" sandbox="allow-scripts"></iframe>',
  );
  const page = await context.newPage();
  const errors = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(`${host.url}course.html`);
  for (const frame of page.frames().slice(1)) {
    await frame.waitForFunction(() =>
      document.querySelector('[data-view="offline"]')?.textContent.includes('only with a signal'),
    );
  }
  assert.deepEqual(errors, []);
  assert.ok(!host.asked.includes('/sw.js'));
});

test('no other script becomes a worker of this page', async () => {
  const page = await firstVisit();
  const refused = await page.evaluate(() =>
    navigator.serviceWorker.register('other.js').then(
      () => 'registered',
      (error) => error.name,
    ),
  );
  assert.equal(refused, 'TypeError');
});

test('it can be installed, with an icon of its own at every size it names', async () => {
  const page = await firstVisit();
  const devtools = await context.newCDPSession(page);
  const { data, errors } = await devtools.send('Page.getAppManifest');
  assert.deepEqual(errors, []);
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // A window that is forgotten when it is closed installs nothing, whatever the page.
  assert.deepEqual(
    installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito'),
    [],
  );
  const manifest = JSON.parse(data);
  for (const { src, sizes, type } of manifest.icons) {
    const bytes = readFileSync(path.join(host.folder, src));
    if (type !== 'image/png') continue;
    const { width, height } = PNG.sync.read(bytes);
    assert.equal(`${width}x${height}`, sizes, src);
  }
  const paper = await page.evaluate(() =>
    getComputedStyle(document.documentElement).getPropertyValue('--paper').trim(),
  );
  assert.equal(manifest.background_color, paper);
  assert.equal(manifest.theme_color, paper);
});
