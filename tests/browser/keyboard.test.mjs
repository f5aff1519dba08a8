// The whole job without a pointer: every control is come to once, in sight, and does what it says.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { openBrowser } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

/** What holds the focus, and what is in its way: the bar at the top, the strip or the plan at the foot. */
const focused = (page) =>
  page.evaluate(() => {
    const node = document.activeElement;
    const box = node.getBoundingClientRect();
    const [x, y] = [box.left + box.width / 2, box.top + Math.min(box.height / 2, 40)];
    const top = document.elementFromPoint(x, y);
    const related = (one, other) => one.contains(other) || other.contains(one);
    return {
      name: node.id || node.getAttribute('aria-label') || node.textContent.trim().slice(0, 40),
      id: node.id,
      tag: node.localName,
      type: node.type,
      isBody: node === document.body,
      isInView: y >= 0 && y <= innerHeight && x >= 0 && x <= innerWidth,
      isCovered:
        top !== null && !related(node, top) && top.closest('.top, .summary, .strip') !== null,
    };
  });

const press = async (page, ...keys) => {
  for (const key of keys) await page.keyboard.press(key);
};

/** Tabs on until a control that is wanted has the focus. */
async function tabTo(page, isWanted, what, key = 'Tab') {
  for (let times = 0; times < 250; times += 1) {
    await press(page, key);
    const at = await focused(page);
    if (isWanted(at)) return at;
  }
  return assert.fail(`no way to ${what}`);
}
const tabToId = (page, id, key) => tabTo(page, (at) => at.id === id, id, key);
const tabToName = (page, name, key) => tabTo(page, (at) => name.test(at.name), String(name), key);

async function type(page, text) {
  await press(page, 'Control+A');
  await page.keyboard.type(text);
}

for (const viewport of [
  { width: 1280, height: 860 },
  { width: 360, height: 740 },
]) {
  test(`${viewport.width} px: the Tab key comes to every control once, in sight and uncovered`, async () => {
    const { page } = await open({ viewport });
    for (const moment of ['Count', 'Buy', 'Knit', 'Class']) {
      await page.getByRole('navigation').getByRole('link', { name: moment }).click();
      const all = await page.evaluate(() => {
        const css =
          'a[href], button:not(:disabled), input, select, textarea, summary, [tabindex="0"]';
        const controls = [...document.querySelectorAll(css)].filter((node) => {
          if (!node.checkVisibility({ visibilityProperty: true }) || node.closest('[hidden]'))
            return false;
          const fold = node.parentElement.closest('details:not([open])');
          if (fold && !(node.localName === 'summary' && node.parentElement === fold)) return false;
          // Of a set of radio buttons one is come to; the arrow keys go to the others.
          return node.type !== 'radio' || node.checked;
        });
        globalThis.numberOf = new Map(controls.map((node, i) => [node, i]));
        document.activeElement.blur();
        scrollTo(0, 0);
        return controls.length;
      });
      await page.evaluate(() => document.querySelector('h1').setAttribute('tabindex', '-1'));
      await page.locator('h1').focus();
      const order = [];
      for (let times = 0; times < all + 5; times += 1) {
        await press(page, 'Tab');
        const at = await focused(page);
        if (at.isBody) break;
        const seen = await page.evaluate(() => globalThis.numberOf.get(document.activeElement));
        if (seen === order[0]) break;
        assert.notEqual(seen, undefined, `${moment}: ${at.name} is not among them`);
        assert.ok(at.isInView, `${moment}: ${at.name} is out of sight`);
        assert.ok(!at.isCovered, `${moment}: ${at.name} is covered`);
        order.push(seen);
      }
      assert.equal(new Set(order).size, order.length, `${moment}: one is come to twice`);
      assert.equal(order.length, all, `${moment}: not all are come to`);
    }
  });

  test(`${viewport.width} px: a pair is planned, bought for and read round by round by keys alone`, async () => {
    const { page } = await open({ viewport });
    await tabToId(page, 'f-swatch-readings-0-stitches');
    await type(page, '22');
    await tabToId(page, 'f-swatch-readings-0-rounds');
    await type(page, '30');
    // The list of weights comes before the foot, at every width.
    await tabToId(page, 'f-yarn-category');
    await press(page, 'ArrowUp');
    await tabToId(page, 'f-foot-ballGirthMm');
    await type(page, '24,13');
    await tabToId(page, 'f-foot-lengthMm');
    await type(page, '25,4');
    await tabToId(page, 'f-rib-roundsPerShift');
    await type(page, '3');
    const figures = () => page.locator('.hand .figure').allTextContents();
    // Girth 241.3 mm less a tenth at 22 stitches over 101.6 mm is 47.0: 48.
    assert.equal((await figures())[1], '48');
    // Back to the stretch line: its handle answers the arrow keys.
    const toHandle = (at) => at.tag === 'g';
    await tabTo(page, toHandle, 'the stretch line', 'Shift+Tab');
    await press(page, 'ArrowRight');
    assert.notEqual((await figures())[1], '48');
    await tabToName(page, /^back to the advised 48/);
    await press(page, 'Enter');
    assert.equal((await figures())[1], '48');
    // A figure opens to its working, and a fold opens and closes.
    await tabTo(page, (at) => /how it came about/.test(at.name), 'a figure', 'Shift+Tab');
    await press(page, 'Enter');
    assert.equal(await page.locator('details.working[open]').count(), 1);
    await press(page, 'Enter');
    assert.equal(await page.locator('details.working[open]').count(), 0);
    // To the shop.
    await tabTo(page, (at) => at.name === 'Buy', 'Buy', 'Shift+Tab');
    await press(page, 'Enter');
    await tabTo(page, (at) => at.type === 'checkbox', 'the first tick');
    await press(page, 'Space');
    assert.equal(await page.locator('.ticks input:checked').count(), 1);
    // To the needles.
    await tabTo(page, (at) => at.name === 'Knit', 'Knit', 'Shift+Tab');
    await press(page, 'Enter');
    await tabToId(page, 'chart-from');
    await type(page, '25');
    await press(page, 'Enter');
    assert.match(await page.locator('.chart').first().getAttribute('aria-label'), /rounds 25–/);
    await tabToName(page, /^higher rounds/);
    await press(page, 'Space');
    assert.notEqual(await page.inputValue('#chart-from'), '25');
  });
}
