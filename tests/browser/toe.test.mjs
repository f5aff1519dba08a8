// A left and a right toe: each other's mirror, and told alike by the drawing, the table, the lines and the strip.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { goTo, openBrowser } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

async function openSided() {
  const { page } = await open();
  await page.locator('.finer > summary').click();
  await page.locator('#f-toe-shape').selectOption('left-right');
  return page;
}

/** How far an outline reaches right and left at a share of the toe's height from the tip. */
const reach = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('.pair.wide-only .edge')].map((edge) => {
      const { height } = edge.getBBox();
      const toe = height * (17 / 120);
      const long = edge.getTotalLength();
      const points = Array.from({ length: 6001 }, (_, i) =>
        edge.getPointAtLength((long * i) / 6000),
      );
      const at = (y, sign) =>
        points
          .filter(({ x }) => Math.sign(x) === sign)
          .reduce((best, one) => (Math.abs(one.y - y) < Math.abs(best.y - y) ? one : best)).x;
      return [0.3, 0.5, 0.7].map((share) => {
        const y = height - toe * share;
        return { right: at(y, 1), left: -at(y, -1) };
      });
    }),
  );

test('A widens fast at its right, B at its left, and each is the other’s mirror', async () => {
  const page = await openSided();
  const [a, b] = await reach(page);
  a.forEach(({ right, left }, i) => {
    assert.ok(right > left + 3, `A at ${i}: ${right} and ${left}`);
    assert.ok(Math.abs(b[i].left - right) < 0.5 && Math.abs(b[i].right - left) < 0.5);
  });
});

test('a round toe is as wide on one side as on the other', async () => {
  const { page } = await open();
  for (const sock of await reach(page)) {
    for (const { right, left } of sock) assert.ok(Math.abs(right - left) < 0.3);
  }
});

test('each sock says whose foot it is for, and where the great toe lies', async () => {
  const page = await openSided();
  const texts = await page
    .locator('.pair.wide-only text')
    .evaluateAll((all) => all.map((one) => one.textContent));
  for (const text of ['A, right foot', 'B, left foot', 'great toes'])
    assert.ok(texts.includes(text));
  assert.match(await page.locator('.whose').innerText(), /A is for the right foot, B for the left/);
});

test('the table tells each round’s side, and its stitches follow', async () => {
  const page = await openSided();
  await goTo(page, 'Knit');
  const rows = await page
    .locator('table.toe tbody tr')
    .evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
  const adds = { knit: 0, 'increase both sides': 4, 'great-toe side': 2, 'other side': 2 };
  let last = 16;
  const kinds = new Set();
  for (const [, work, half, sock] of rows) {
    assert.equal(Number(sock) - last, adds[work], `${work}: ${last} to ${sock}`);
    assert.equal(Number(half) * 2, Number(sock));
    last = Number(sock);
    kinds.add(work);
  }
  assert.equal(last, 40);
  assert.deepEqual([...kinds].sort(), Object.keys(adds).sort());
  // Dots in the drawing and ticks in the strip are of the same rounds.
  await goTo(page, 'Count');
  const marks = await page.evaluate(() => {
    const count = (selector) =>
      [...document.querySelectorAll(selector)].map(
        (path) => (path.getAttribute('d').match(/M/g) ?? []).length,
      );
    return {
      dots: count('.pair.wide-only .increases'),
      ticks: count('.strip.wide-only .tick.increases'),
    };
  });
  const of = (...works) => rows.filter(([, work]) => works.includes(work)).length;
  const both = of('increase both sides');
  const one = of('great-toe side', 'other side');
  assert.deepEqual(marks.dots, [both * 2 + one, both * 2 + one]);
  assert.deepEqual(marks.ticks, [both, one]);
});

test('the sides are told in passes, B the mirror of A', async () => {
  const page = await openSided();
  await goTo(page, 'Knit');
  const told = await page.locator('#knit').innerText();
  const start = 'first half k1, M1R, knit to the end; second half knit to the last stitch, M1L, k1';
  const finish =
    'first half knit to the last stitch, M1L, k1; second half k1, M1R, knit to the end';
  assert.ok(told.includes(`Great-toe side. A: ${start}. B: ${finish}.`));
  assert.ok(told.includes(`Other side. A: ${finish}. B: ${start}.`));
  assert.match(
    told,
    /Increase both sides, on each half of each sock: k1, M1R, knit to the last stitch, M1L, k1\. That adds 4/,
  );
});
