// On the needles there is room: what to do now on a phone's first screen, nothing sticking out, everything under a thumb.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { standAt } from './at_needles.mjs';
import { openBegun as beginIn } from './knitting.mjs';
import { goTo, openBrowser, press } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const openBegun = async (options) => (await beginIn(open, options)).page;

// Plain, with increases, the measuring, the first rib, a rib that moves, the trying on, the cuff, the last and the end.
const rounds = [0, 1, 2, 17, 21, 79, 112, 119, 120];

test('360 x 740: the round, the pass now and the big button are on the first screen of every round', async () => {
  const page = await openBegun({ viewport: { width: 360, height: 740 } });
  for (const round of rounds) {
    for (const pass of round === 120 ? [0] : [0, 3]) {
      await standAt(page, round, pass);
      const out = await page.evaluate(() => {
        scrollTo(0, 0);
        const all = ['.work-round', '.work-pass.now', '.work-bar .next, .work-bar .back'];
        const bar = document.querySelector('.work-bar').getBoundingClientRect();
        return all.flatMap((css) => {
          const node = document.querySelector(css);
          if (!node) return [];
          const { top, bottom } = node.getBoundingClientRect();
          const limit = node.closest('.work-bar') ? innerHeight : bar.top;
          return top >= 0 && bottom <= limit ? [] : [`${css}: ${top}–${bottom}, of ${limit}`];
        });
      });
      assert.deepEqual(out, [], `round ${round + 1}, pass ${pass}`);
    }
  }
});

for (const width of [320, 360, 768, 1280]) {
  test(`${width} px: nothing sticks out, in any round and in larger letters`, async () => {
    const page = await openBegun({ viewport: { width, height: 740 } });
    await press(page, 'larger letters');
    for (const round of rounds) {
      await standAt(page, round);
      const out = await page.evaluate(() => ({
        page: document.documentElement.scrollWidth - innerWidth,
        parts: [...document.querySelectorAll('.needles *')]
          .filter((node) => node.checkVisibility() && !node.closest('.unseen'))
          .filter((node) => {
            const { left, right } = node.getBoundingClientRect();
            return left < 0 || right > innerWidth || node.scrollWidth > node.clientWidth + 1;
          })
          .filter((node) => getComputedStyle(node).display !== 'inline')
          .map((node) => node.outerHTML.slice(0, 80)),
      }));
      assert.ok(out.page <= 0, `round ${round + 1}: ${out.page} px too wide`);
      assert.deepEqual(out.parts, [], `round ${round + 1}`);
    }
  });

  test(`${width} px: everything that is pressed there is at least 44 px each way`, async () => {
    const page = await openBegun({ viewport: { width, height: 740 } });
    for (const round of [2, 120]) {
      await standAt(page, round);
      if (round < 120) await page.locator('.work-bar .next').click();
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('.needles button')]
          .map((node) => [node.textContent, node.getBoundingClientRect()])
          .filter(([, box]) => box.width < 44 || box.height < 44)
          .map(([name, box]) => `${name}: ${box.width} x ${box.height}`),
      );
      assert.deepEqual(small, []);
      assert.ok((await page.locator('.needles button').count()) >= 6);
    }
  });
}

test('the big button stays under the thumb while the page is scrolled within the round', async () => {
  const page = await openBegun({ viewport: { width: 360, height: 560 } });
  const bar = page.locator('.work-bar .next');
  for (const y of [0, 60, 120]) {
    await page.evaluate((to) => scrollTo(0, to), y);
    const { y: top, height } = await bar.boundingBox();
    assert.ok(top >= 0 && top + height <= 560, `${y}: ${top}`);
  }
  await goTo(page, 'Count');
  assert.equal(await bar.isVisible(), false);
});
