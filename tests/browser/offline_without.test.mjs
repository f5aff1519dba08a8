// Where there is no worker: an engine without, a file, a frame. A copy to keep is the way there, or is what one has.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { test } from 'node:test';

import { eachWithHost, versionOf } from './host.mjs';
import { fileUrl, visit } from './open_page.mjs';

const at = eachWithHost();

test('a browser that has no workers is told so, and the copy is the way', async () => {
  await at.context.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined });
  });
  const page = await at.context.newPage();
  await visit(page, at.host.url);
  await page.waitForFunction(() =>
    document.querySelector('[data-view="offline"]').textContent.includes('only with a signal'),
  );
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'keep a copy of this page' }).click();
  const kept = await (await download).path();
  assert.equal(readFileSync(kept, 'utf8'), versionOf('Twinround'));
});

test('a file has no worker, no link to what it is already, and nothing to complain of', async () => {
  const page = await at.context.newPage();
  const errors = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => errors.push(message.text()));
  await visit(page, fileUrl);
  await page.waitForTimeout(500);
  assert.match(await page.textContent('[data-view="offline"]'), /^This is a copy kept on a disk/);
  assert.equal(await page.locator('[data-view="offline"] a').count(), 0);
  assert.deepEqual(errors, []);
});

test('in a frame, sandboxed or not, no worker is asked for', async () => {
  writeFileSync(
    path.join(at.host.folder, 'course.html'),
    '<!doctype html><iframe src="./"></iframe><iframe src="./" sandbox="allow-scripts"></iframe>',
  );
  const page = await at.context.newPage();
  const errors = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(`${at.host.url}course.html`);
  for (const frame of page.frames().slice(1)) {
    await frame.waitForFunction(() =>
      document.querySelector('[data-view="offline"]')?.textContent.includes('only with a signal'),
    );
  }
  assert.deepEqual(errors, []);
  assert.ok(!at.host.asked.includes('/sw.js'));
});
