// On the needles: the round in hand pass by pass, held against the lines of the reply.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { linesOf, next, placeIn, planOf, readView, workOf, workTold } from './at_needles.mjs';
import { begin } from './knitting.mjs';
import { again, goTo, openBrowser, press } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

async function openBegun(options, fields = {}) {
  const { page, seen } = await open(options);
  await page.locator('.finer > summary').click();
  for (const [id, value] of Object.entries(fields)) await page.locator(id).selectOption(value);
  await begin(page);
  assert.equal(await page.evaluate(() => scrollY), 0);
  return { page, seen };
}

const back = (page) => page.locator('.work-bar .back').click();
const tapPass = (page, pass) => page.locator('.work-pass').nth(pass).click();

/** Every round from here on by the arrow key, as it stands there. */
const walk = (page, rounds) =>
  page.evaluate((count) => {
    const key = { key: 'ArrowRight', bubbles: true, cancelable: true };
    return Array.from({ length: count }, () => {
      const works = [...document.querySelectorAll('.work-pass .work')].map(
        (work) => work.textContent,
      );
      for (let pass = 0; pass < 4; pass += 1)
        document.body.dispatchEvent(new KeyboardEvent('keydown', key));
      return works;
    });
  }, rounds);

for (const [name, fields] of Object.entries({
  'the example': {},
  'a mirrored pair': { '#f-rib-lean': 'mirrored' },
  'a left and a right toe': { '#f-toe-shape': 'left-right' },
})) {
  test(`${name}: each pass of the toe and of the rib's first moves is its half of the reply's line`, async () => {
    const { page, seen } = await openBegun({}, fields);
    const plan = await planOf(page);
    const lines = linesOf(plan);
    assert.equal(lines.length, plan.totalRounds);
    const rounds = plan.toe.rounds + 3 * plan.rib.roundsPerShift;
    const told = await walk(page, rounds);
    told.forEach((works, round) => {
      const is = workOf(lines[round]);
      const worked = works.map((text, pass) => workTold(text, is[pass].length));
      assert.deepEqual(worked, is, `round ${round + 1}: ${works.join(' | ')}`);
    });
    // What the table claims to hold is in these rounds.
    assert.ok(told.some(([first]) => /M1R/.test(first)));
    assert.ok(told.some(([first]) => /p2/.test(first)));
    const areTwo = told.some(([a, b, b2, a2]) => a !== b || a2 !== b2);
    assert.equal(areTwo, name !== 'the example');
    assert.deepEqual(await placeIn(page), [rounds, 0]);
    assert.deepEqual(seen.errors, []);
    assert.deepEqual(seen.violations, []);
  });
}

test('the passes stand in the order they are worked, a turn after each two', async () => {
  const { page } = await openBegun();
  const view = await readView(page);
  assert.deepEqual(
    view.passes.map(({ which }) => which),
    ['A first half', 'B first half', 'B second half', 'A second half'],
  );
  assert.deepEqual(view.order, ['A', 'B', 'turn', 'B', 'A', 'turn']);
  assert.equal(view.round, 'Round 1 of 120');
});

test('nothing of it is there before a sock is begun, nor once it is not begun after all', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  assert.equal(await page.locator('.needles').isVisible(), false);
  await page.keyboard.press('ArrowRight');
  await begin(page);
  assert.deepEqual(await placeIn(page), [0, 0]);
  const fold = page.locator('[data-key="not-begun"] summary');
  if (await fold.count()) await fold.click();
  await press(page, 'not begun after all');
  assert.equal(await page.locator('.needles').isVisible(), false);
});

test('the big button goes a pass on, over the end of a round, and back goes one back', async () => {
  const { page } = await openBegun();
  assert.equal(await page.locator('.work-bar .back').getAttribute('aria-disabled'), 'true');
  await page.locator('.work-bar .back').click({ force: true });
  assert.deepEqual(await placeIn(page), [0, 0]);
  for (const [pass, name] of ['A first half', 'B first half', 'B second half'].entries()) {
    assert.equal((await readView(page)).next, `${name} done, on`);
    await next(page);
    assert.deepEqual(await placeIn(page), [0, pass + 1]);
    const { passes } = await readView(page);
    const is = (one) => passes.map((shown) => shown[one]);
    assert.deepEqual(
      is('isPressed'),
      [0, 1, 2, 3].map((one) => one <= pass),
    );
    assert.deepEqual(
      is('isNow'),
      [0, 1, 2, 3].map((one) => one === pass + 1),
    );
    assert.deepEqual(
      is('state'),
      [0, 1, 2, 3].map((one) => (one <= pass ? 'done' : one === pass + 1 ? 'now' : '')),
    );
  }
  await next(page);
  assert.deepEqual(await placeIn(page), [1, 0]);
  assert.equal((await readView(page)).round, 'Round 2 of 120');
  await back(page);
  assert.deepEqual(await placeIn(page), [0, 3]);
  // The place is kept at every tap.
  await again(page);
  assert.deepEqual(await placeIn(page), [0, 3]);
  assert.equal((await readView(page)).passes[3].isNow, true);
});

test('a tap on a pass says it is done and all before it; on the last one done takes it back', async () => {
  const { page } = await openBegun();
  await tapPass(page, 2);
  assert.deepEqual(await placeIn(page), [0, 3]);
  await tapPass(page, 0);
  assert.deepEqual(await placeIn(page), [0, 1]);
  await tapPass(page, 0);
  assert.deepEqual(await placeIn(page), [0, 0]);
  await tapPass(page, 3);
  assert.deepEqual(await placeIn(page), [1, 0]);
  // Undone one by one, as they were made.
  for (const place of [
    [0, 0],
    [0, 1],
    [0, 3],
    [0, 0],
  ]) {
    await press(page, 'undo the last tap');
    assert.deepEqual(await placeIn(page), place);
  }
  assert.equal(await page.getByRole('button', { name: 'undo the last tap' }).count(), 0);
});

test('space and the arrows go on and back, and mean what they always do where they have a meaning', async () => {
  const { page } = await openBegun();
  const key = async (name, place) => {
    await page.keyboard.press(name);
    assert.deepEqual(await placeIn(page), place, name);
  };
  await page.evaluate(() => document.activeElement.blur());
  await key(' ', [0, 1]);
  assert.equal(await page.evaluate(() => scrollY), 0);
  await key('ArrowRight', [0, 2]);
  await key('ArrowLeft', [0, 1]);
  for (const name of ['Control+ArrowRight', 'Alt+ArrowUp', 'Shift+ArrowRight', 'Meta+ArrowLeft'])
    await key(name, [0, 1]);
  // A key held down is one tap.
  await page.keyboard.down('ArrowRight');
  await page.keyboard.down('ArrowRight');
  await page.keyboard.up('ArrowRight');
  assert.deepEqual(await placeIn(page), [0, 2]);
  await page.locator('#chart-from').focus();
  await key('ArrowLeft', [0, 2]);
  await key('ArrowRight', [0, 2]);
  await page.getByRole('navigation').getByRole('link', { name: 'Knit', exact: true }).focus();
  await key('ArrowRight', [0, 2]);
  await key(' ', [0, 2]);
  const fold = page.locator('#measured');
  await fold.locator('summary').first().focus();
  await key('ArrowRight', [0, 2]);
  await key(' ', [0, 2]);
  assert.equal(await fold.evaluate((one) => one.open), true);
  // Space presses the button that has the focus; an arrow means nothing to it.
  await page.locator('.work-bar .back').focus();
  await key(' ', [0, 1]);
  await key('ArrowRight', [0, 2]);
  await goTo(page, 'Count');
  await page.evaluate(() => document.activeElement.blur());
  await key('ArrowRight', [0, 2]);
  await key(' ', [0, 2]);
});
