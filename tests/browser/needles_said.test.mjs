// At the needles: how long it takes, by the rounds that were timed; and the pass said to whoever hears the page.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { begin, tap, tapOften, untilKept } from './knitting.mjs';
import { again, openBrowser } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

test('rounds are timed on request, a pause is no part of them, and the hours follow', async () => {
  const { page } = await open({
    before: () => {
      globalThis.clock = 1_800_000_000_000;
      Date.now = () => globalThis.clock;
    },
  });
  await begin(page);
  const pass = async (seconds) => {
    await page.evaluate((more) => (globalThis.clock += more * 1000), seconds);
    await tap(page);
  };
  const time = () => page.locator('.work-facts div').last().textContent();
  assert.doesNotMatch(await time(), /timed/);
  await page.locator('[data-wish="timed"]').click();
  await page.getByText('This round is timed').waitFor();
  for (let i = 0; i < 4; i += 1) await pass(20);
  assert.match(await time(), /timed over 1 round/);
  await pass(20);
  await page.locator('[data-wish="paused"]').click();
  await page.getByText('Paused').waitFor();
  await page.evaluate(() => (globalThis.clock += 3600 * 1000));
  await page.locator('[data-wish="paused"]').click();
  for (let i = 0; i < 3; i += 1) await pass(20);
  const two = await time();
  assert.match(two, /timed over 2 rounds$/);
  // A call that nobody told the page of.
  for (let i = 0; i < 4; i += 1) await pass(900);
  assert.match(await time(), /timed over 2 rounds, 1 too long or short to count$/);
  // One so quick that the core takes it for none: its turns alone take longer.
  for (let i = 0; i < 4; i += 1) await pass(4.9);
  assert.match(await time(), /timed over 2 rounds, 2 too long or short to count$/);
  await page.locator('.work-bar .back').click();
  await page.getByText('The next round will be timed').waitFor();
  await page.locator('[data-wish="timed"]').click();
  await untilKept(page);
  await again(page);
  assert.match(await time(), /timed over 2 rounds/);
});

test('whoever hears the page hears the pass that comes', async () => {
  const { page } = await open();
  await begin(page);
  await tap(page);
  assert.equal(await page.textContent('[data-said]'), 'B, first half: knit all.');
  await tapOften(page, 3);
  assert.match(
    await page.textContent('[data-said]'),
    /^Turn\. Round 2\. A, first half: knit one, make one right, knit \w+, make one left, knit one\.$/,
  );
});
