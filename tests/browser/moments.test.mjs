// The four moments: each a tap from the others, one in sight at a time, and every link arrives.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { goTo, openBrowser, readCounts, typeInto } from './open_page.mjs';
import { inEveryState } from './states.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const moments = ['Buy', 'Count', 'Knit', 'Class'];

/** The moments of everything that is seen, each place of them once. */
const inSight = async (page) => {
  const seen = await page.evaluate(() =>
    [...document.querySelectorAll('main [data-in], main [data-in] *')]
      .filter((node) => node.checkVisibility())
      .map((node) => node.closest('[data-in]').getAttribute('data-in')),
  );
  return [...new Set(seen)].map((all) => all.split(' '));
};

test('each is one tap from every other, and shows its own places alone', async () => {
  for (const viewport of [
    { width: 1280, height: 860 },
    { width: 360, height: 740 },
  ]) {
    const { page } = await open({ viewport });
    for (const from of moments) {
      for (const to of moments) {
        await goTo(page, from);
        await goTo(page, to);
        const current = await page.locator('nav [aria-current]').allTextContents();
        assert.deepEqual(current, [to]);
        const places = await inSight(page);
        assert.ok(places.length > 0);
        for (const all of places) assert.ok(all.includes(to.toLowerCase()), `${to}: ${all}`);
        assert.equal(await page.evaluate(() => scrollY), 0);
        assert.equal(new URL(page.url()).hash, '');
      }
    }
  }
});

test('whatever the plan, a moment shows its own places alone', async () => {
  for (const width of [360, 1280]) {
    const { page } = await open({ viewport: { width, height: 860 } });
    await inEveryState(page, async (where) => {
      const [moment] = where.toLowerCase().split(',');
      for (const all of await inSight(page)) assert.ok(all.includes(moment), `${where}: ${all}`);
    });
  }
});

test('the way to the others stays at hand when the page is scrolled', async () => {
  const { page } = await open({ viewport: { width: 360, height: 740 } });
  await page.evaluate(() => scrollTo(0, 2500));
  const box = await page.getByRole('link', { name: 'Knit', exact: true }).boundingBox();
  assert.ok(box.y >= 0 && box.y + box.height < 60, JSON.stringify(box));
});

test('a word of the sentence leads to its field from any moment', async () => {
  const { page } = await open();
  for (const moment of ['Buy', 'Knit', 'Class']) {
    await goTo(page, moment);
    await page.locator('.sentence a', { hasText: '24.6' }).click();
    assert.equal(await page.evaluate(() => document.activeElement.id), 'f-foot-lengthMm');
    assert.equal(await page.getAttribute('html', 'data-moment'), 'count');
  }
});

test('what is to be mended leads to its field from any moment', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', 'x');
  await goTo(page, 'Knit');
  await page.locator('.mend a').click();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-foot-ballGirthMm');
});

test('what is typed in one moment is drawn in the next, as on a page fresh from it', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  await goTo(page, 'Buy');
  await typeInto(page, 'f-yarn-ballM', '150');
  await goTo(page, 'Count');
  await typeInto(page, 'f-foot-lengthMm', '27');
  const other = (await open()).page;
  await typeInto(other, 'f-foot-lengthMm', '27');
  assert.deepEqual(await readCounts(page), await readCounts(other));
  await goTo(page, 'Buy');
  assert.match(await page.textContent('[data-view="buy"]'), /of 100 g and 150 m/);
});

test('the moment come to is said, and no answer talks over it', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  assert.equal(await page.textContent('[role="status"]'), 'Knit');
  await page.waitForTimeout(1200);
  assert.equal(await page.textContent('[role="status"]'), 'Knit');
});

test('quick typing is answered aloud once, when the hand rests', async () => {
  const { page } = await open();
  await page.evaluate(() => {
    globalThis.heard = [];
    new MutationObserver(() => {
      globalThis.heard.push(document.querySelector('[role="status"]').textContent);
    }).observe(document.querySelector('[role="status"]'), { childList: true, subtree: true });
  });
  await typeInto(page, 'f-foot-lengthMm', '26.75');
  await page.waitForTimeout(1300);
  const heard = await page.evaluate(() => globalThis.heard);
  assert.equal(heard.length, 1, heard.join(' | '));
  assert.match(heard[0], /^40 stitches, \d+ rounds, \d+ m of yarn\.$/);
  await typeInto(page, 'f-foot-lengthMm', '2x');
  await page.waitForTimeout(1300);
  assert.match((await page.evaluate(() => globalThis.heard)).at(-1), /One thing to mend: .*foot/i);
});

test('without script every moment is there to be read', async () => {
  const { page } = await open({ javaScriptEnabled: false, wait: false });
  for (const id of ['count', 'works', 'class']) {
    assert.equal(await page.locator(`#${id}`).isVisible(), true, id);
  }
});

test('the document goes the way the eye does, and follows the page’s width', async () => {
  const { page } = await open();
  const order = () =>
    page.evaluate(() => {
      const places = ['.swatch-place', '.foot', '.note-place', '.choices-place', '.rib'];
      return [...document.querySelector('.stage').children]
        .filter((place) => place.matches(places.join()))
        .map((place) => `.${place.classList[0]}`);
    });
  const wide = ['.swatch-place', '.foot', '.note-place', '.choices-place', '.rib'];
  const narrow = ['.choices-place', '.note-place', '.swatch-place', '.foot', '.rib'];
  assert.deepEqual(await order(), wide);
  await page.locator('.step').last().focus();
  await page.setViewportSize({ width: 360, height: 740 });
  await page.waitForFunction(() =>
    document.querySelector('.stage').children[1].matches('.choices-place'),
  );
  assert.deepEqual(await order(), narrow);
  assert.equal(await page.evaluate(() => document.activeElement.classList[0]), 'step');
  await page.setViewportSize({ width: 1280, height: 860 });
  await page.waitForFunction(
    () => !document.querySelector('.stage').children[1].matches('.choices-place'),
  );
  assert.deepEqual(await order(), wide);
});

test('on a phone a field comes over the drawing it was touched in, and goes again', async () => {
  const { page } = await open({ viewport: { width: 360, height: 780 } });
  await page.locator('.pair.narrow-only [data-goto="/legHeightMm"] text').click();
  const field = page.locator('[data-field="/legHeightMm"]');
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-legHeightMm');
  assert.ok((await field.boundingBox()).y < 5);
  assert.equal(await page.evaluate(() => scrollY), 0);
  await page.keyboard.type('22');
  assert.match(await page.textContent('.sentence'), /a leg 22.cm high/);
  await page.keyboard.press('Enter');
  assert.equal(await page.locator('.at-hand').count(), 0);
  await page.locator('.sentence a', { hasText: '24.6' }).click();
  await page.locator('.note').click();
  assert.equal(await page.locator('.at-hand').count(), 0);
});
