// A whole pair, knit by a script as a person would: every pass of every round, without a signal from the first stitch on,
// by thumb and by keys, with steps back, reloads, and a browser that is killed now and then.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { test } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';

import { openHost, untilReady } from './host.mjs';
import { openKillable } from './killable.mjs';
import { begin, noted, settled, stepShown } from './knitting.mjs';
import { again, visit } from './open_page.mjs';

const seed = Number(process.env.TWINROUND_SEED ?? Date.now() % 1e9);
let random = seed;
/** A whole number below `most`. */
const any = (most) => {
  random = (random * 1103515245 + 12345) % 2147483648;
  return Math.floor((random / 2147483648) * most);
};
const oneIn = (times) => any(times) === 0;

/** One pass on, by whatever hand is free. */
const tapping = [
  (page) => page.locator('[data-hand="tapped"]').click(),
  (page) => page.locator('.pass.now').click(),
  async (page) => {
    await page.evaluate(() => document.activeElement.blur());
    await page.keyboard.press('Space');
  },
  async (page) => {
    await page.evaluate(() => document.activeElement.blur());
    await page.keyboard.press('ArrowRight');
  },
];

test('every pass of every round, and not one tap lost or doubled', async (t) => {
  t.diagnostic(`TWINROUND_SEED=${seed}`);
  const host = await openHost();
  const profile = mkdtempSync(path.join(os.tmpdir(), 'twinround-knitter-'));
  let browser = await openKillable(profile);
  const count = { kills: 0, reloads: 0, backs: 0, unwritten: 0 };
  try {
    let page = await browser.window.newPage();
    await visit(page, host.url);
    await untilReady(page);
    host.isGone = true;
    await begin(page);
    const plan = await page.evaluate(() => {
      const name = Object.keys(localStorage).find((one) => one.startsWith('twinround/sock/'));
      return JSON.parse(localStorage.getItem(name)).started.reply.plan;
    });
    const all = plan.totalRounds * 4;
    let taps = 0;
    for (let step = 0; step < all;) {
      await tapping[any(tapping.length)](page);
      step += 1;
      taps += 1;
      if (oneIn(60)) {
        const isOnDisk = (await noted(page)) >= taps;
        await wait(any(20));
        await browser.kill();
        count.kills += 1;
        browser = await openKillable(profile);
        page = await browser.window.newPage();
        await visit(page, host.url);
        await settled(page);
        const shown = await stepShown(page);
        // What had not come to the disk was not yet said to be there, and she sees where she is.
        if (!isOnDisk && shown === step - 1) {
          step -= 1;
          taps -= 1;
          count.unwritten += 1;
        }
      } else if (oneIn(50)) {
        await again(page);
        await settled(page);
        count.reloads += 1;
      } else if (oneIn(40) && step < all) {
        await page.getByRole('button', { name: 'back', exact: true }).click();
        step -= 1;
        taps += 1;
        count.backs += 1;
      }
      if (step < all) assert.equal(await stepShown(page), step);
    }
    assert.match(await page.textContent('.work-round'), /All rounds are knit/);
    assert.equal(await page.locator('[data-hand="tapped"]').count(), 0);
    const started = await page.evaluate(() => {
      const name = Object.keys(localStorage).find((one) => one.startsWith('twinround/sock/'));
      return JSON.parse(localStorage.getItem(name)).started;
    });
    assert.deepEqual([started.round, started.pass, started.taps], [plan.totalRounds, 0, taps]);
    assert.ok(count.kills + count.reloads > 0);
    t.diagnostic(JSON.stringify(count));
  } finally {
    await browser.kill();
    await host.close();
    rmSync(profile, { recursive: true, force: true });
  }
});
