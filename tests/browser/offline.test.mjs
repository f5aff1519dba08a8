// After one visit the page opens with the network off: whole, with what was typed, or with words where it cannot.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';

import { PNG } from 'pngjs';

import { eachWithHost, nameOf, spoilKept, untilReady, versionOf } from './host.mjs';
import { readNote, typeInto, visit } from './open_page.mjs';

const at = eachWithHost();

const said = (page) => page.textContent('[data-view="offline"]');
const foot = 'f-foot-lengthMm';

test('after one visit it says that it is ready, and opens without a network, with what was typed', async () => {
  const page = await at.firstVisit();
  assert.match(await said(page), /^Ready: from now on this page opens without a signal\./);
  await typeInto(page, foot, '27');
  const note = await readNote(page);
  await page.close();
  at.host.isGone = true;
  const next = await at.context.newPage();
  await visit(next, at.host.url);
  assert.equal(await next.inputValue(`#${foot}`), '27');
  assert.deepEqual(await readNote(next), note);
  await typeInto(next, foot, '22');
  assert.notDeepEqual(await readNote(next), note);
  await untilReady(next);
});

test('the hand on the link to keep a copy stays there as the page becomes ready', async () => {
  await at.context.addInitScript(() => {
    const register = ServiceWorkerContainer.prototype.register;
    ServiceWorkerContainer.prototype.register = async function later(...all) {
      await new Promise((resolve) => {
        globalThis.letItStart = resolve;
      });
      return register.apply(this, all);
    };
  });
  const page = await at.context.newPage();
  await visit(page, at.host.url);
  await page.getByRole('link', { name: 'keep a copy of this page' }).focus();
  await page.evaluate(() => globalThis.letItStart());
  await untilReady(page);
  assert.equal(
    await page.evaluate(() => document.activeElement.textContent),
    'keep a copy of this page',
  );
});

test('the first answer does not wait for it', async () => {
  at.host.cuts = ({ url }) => url === '/sw.js';
  at.host.cutAfterMs = 1e6;
  const page = await at.context.newPage();
  await visit(page, at.host.url);
  await typeInto(page, foot, '27');
  assert.notEqual((await readNote(page))['rounds in all'], '120');
  assert.doesNotMatch(await said(page), /Ready/);
});

test('it opens where the browser says that it is offline, at a link, with a ? and as index.html', async () => {
  const page = await at.firstVisit();
  await typeInto(page, foot, '27');
  await page.locator('[data-share]').first().click();
  const { hash } = new URL(await page.inputValue('#shared-link'));
  await typeInto(page, foot, '22');
  await at.context.setOffline(true);
  at.host.isGone = true;
  for (const there of ['', '?from=class', 'index.html']) {
    await visit(page, `${at.host.url}${there}${hash}`);
    assert.equal(page.url(), `${at.host.url}${there}${hash}`);
    assert.equal(await page.inputValue(`#${foot}`), '27', there);
    await page.getByRole('button', { name: 'back to my own' }).click();
    assert.equal(await page.inputValue(`#${foot}`), '22', there);
  }
});

test('a visit asks for the page, its worker and what that keeps, and nobody for anything else', async () => {
  const seen = [];
  at.context.on('request', (request) => seen.push(request.url()));
  const page = await at.firstVisit();
  await typeInto(page, foot, '27');
  await page.waitForTimeout(1500);
  const { icons } = JSON.parse(readFileSync(path.join(at.host.folder, 'app.webmanifest'), 'utf8'));
  const kept = ['/', '/app.webmanifest', ...icons.map(({ src }) => `/${src}`)];
  assert.deepEqual([...at.host.asked].sort(), ['/', '/sw.js', ...kept].sort());
  assert.deepEqual(
    seen.map((url) => url.replace(at.host.url, '/')).filter((url) => !at.host.asked.includes(url)),
    [],
  );
  at.host.asked.length = 0;
  await visit(page, at.host.url);
  await untilReady(page);
  await page.waitForTimeout(3000);
  // When the browser looks for a newer worker is its own affair.
  assert.deepEqual(
    at.host.asked.filter((asked) => asked !== '/sw.js'),
    [],
  );
});

test('without a network it has the policy that it came with', async () => {
  const page = await at.context.newPage();
  const online = await page.goto(at.host.url);
  await untilReady(page);
  at.host.isGone = true;
  const offline = await page.goto(at.host.url);
  for (const name of ['content-security-policy', 'content-type', 'x-content-type-options']) {
    assert.ok(offline.headers()[name], name);
    assert.equal(offline.headers()[name], online.headers()[name]);
  }
  assert.match(offline.headers()['content-security-policy'], /frame-ancestors \*/);
});

test('a damaged copy is mended from the network, unnoticed', async () => {
  const page = await at.firstVisit();
  const kept = () => page.evaluate(async () => (await caches.match('./')).text());
  await spoilKept(page);
  assert.notEqual(await kept(), versionOf('Twinround'));
  await visit(page, at.host.url);
  await untilReady(page);
  assert.equal(await kept(), versionOf('Twinround'));
  at.host.isGone = true;
  await visit(page, at.host.url);
  assert.equal(await nameOf(page), 'Twinround');
});

test('a damaged or deleted copy without a network is told in words, and mended once there is one', async () => {
  const page = await at.firstVisit();
  const drop = () =>
    page.evaluate(async () => {
      for (const name of await caches.keys()) await caches.delete(name);
    });
  for (const harm of [() => spoilKept(page), drop]) {
    await harm();
    at.host.isGone = true;
    const reply = await page.goto(at.host.url);
    assert.equal(reply.status(), 503);
    assert.match(await page.textContent('body'), /damaged or gone.*no signal.*not touched/s);
    assert.match(await page.title(), /Twinround/);
    at.host.isGone = false;
    await visit(page, at.host.url);
    await untilReady(page);
  }
});

test('what comes from a network in place of the page is shown and never kept', async () => {
  const page = await at.firstVisit();
  await spoilKept(page);
  writeFileSync(path.join(at.host.folder, 'index.html'), '<!doctype html><h1>Sign in first</h1>');
  await page.goto(at.host.url);
  assert.equal(await nameOf(page), 'Sign in first');
  at.host.isGone = true;
  assert.equal((await page.goto(at.host.url)).status(), 503);
});

test('the copy to keep is the very page, without a network too', async () => {
  const page = await at.firstVisit();
  at.host.isGone = true;
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'keep a copy of this page' }).click();
  const copy = await download;
  assert.equal(copy.suggestedFilename(), 'twinround.html');
  assert.equal(readFileSync(await copy.path(), 'utf8'), versionOf('Twinround'));
  await untilReady(page);
});

test('no other script becomes a worker of this page', async () => {
  const page = await at.firstVisit();
  const refused = await page.evaluate(() =>
    navigator.serviceWorker.register('other.js').then(
      () => 'registered',
      (error) => error.name,
    ),
  );
  assert.equal(refused, 'TypeError');
});

test('it can be installed, with an icon of its own at every size it names', async () => {
  const page = await at.firstVisit();
  const devtools = await at.context.newCDPSession(page);
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
    const bytes = readFileSync(path.join(at.host.folder, src));
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
