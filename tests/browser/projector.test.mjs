// The pair for a whole room: only it, its five figures and the class's title; in and out; kept nowhere.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import { again, goTo, openBrowser, press, readNote, typeInto } from './open_page.mjs';
import { states } from './states.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const longTitle = 'Wide-sleeved Wednesday evening workshop for heel-less socks';
const room = 'show it to the whole room';
const back = 'back to the page';

/** No browser without a screen goes full: this one notes what it was asked, and does it on paper. */
function fakeFullScreen() {
  const tell = () => document.dispatchEvent(new Event('fullscreenchange'));
  const set = (/** @type {Element | null} */ element) => {
    Object.defineProperty(document, 'fullscreenElement', {
      configurable: true,
      get: () => element,
    });
    tell();
  };
  globalThis.full = { asked: 0, leaveByItself: () => set(null) };
  Element.prototype.requestFullscreen = async function () {
    globalThis.full.asked += 1;
    set(this);
  };
  document.exitFullscreen = async () => {
    set(null);
  };
}

async function openRoom({ title = 'Tuesday class', make, ...options } = {}) {
  const { page, seen } = await open({ before: fakeFullScreen, ...options });
  await make?.(page);
  const note = await readNote(page);
  await goTo(page, 'Class');
  await page.locator('#lesson-title').fill(title);
  await press(page, room);
  return { page, seen, note };
}

const isOn = (page) => page.evaluate(() => document.documentElement.hasAttribute('data-projector'));

/** What can be seen: the texts, and how the whole lies on the screen. */
const look = (page) =>
  page.evaluate(() => {
    const root = document.documentElement;
    const seen = [...document.querySelectorAll('body *')].filter(
      (node) => node.checkVisibility() && !node.closest('.unseen'),
    );
    const own = (node) =>
      [...node.childNodes]
        .filter((one) => one.nodeType === 3)
        .map((one) => one.nodeValue.trim())
        .join('');
    return {
      texts: seen.map(own).filter((text) => text !== ''),
      drawings: seen.filter((node) => node.localName === 'svg').length,
      scrolls: [root.scrollWidth > innerWidth, root.scrollHeight > innerHeight],
      out: seen
        .filter((node) => !node.closest('svg svg, g, defs'))
        .filter((node) => {
          const { left, top, right, bottom } = node.getBoundingClientRect();
          return left < 0 || top < 0 || right > innerWidth + 0.5 || bottom > innerHeight + 0.5;
        })
        .map((node) => node.outerHTML.slice(0, 80)),
      figures: [...document.querySelectorAll('.large-figures dd')].map((node) => ({
        text: node.textContent,
        vh: (parseFloat(getComputedStyle(node).fontSize) / innerHeight) * 100,
        isCut: node.scrollWidth > node.clientWidth + 1,
      })),
    };
  });

const screens = [
  [1280, 720],
  [1920, 1080],
  [1024, 768],
  [360, 740],
  [360, 560],
  [740, 360],
];

for (const [width, height] of screens) {
  for (const state of ['example', 'long', 'guessed']) {
    test(`${width} x ${height}, ${state}: all on the screen, the figures 6 % of its height and more`, async () => {
      const { page } = await openRoom({
        viewport: { width, height },
        title: longTitle,
        make: async (made) => {
          await made.evaluate(() => {
            for (const fold of document.querySelectorAll('form details')) fold.open = true;
          });
          await states[state](made);
        },
      });
      const { scrolls, out, figures } = await look(page);
      assert.deepEqual(scrolls, [false, false]);
      assert.deepEqual(out, []);
      assert.equal(figures.length, 5);
      for (const { text, vh, isCut } of figures) {
        assert.ok(vh >= 6, `${text}: ${vh}`);
        assert.ok(!isCut, text);
      }
      // The socks are no stamp beside them.
      const { height: drawn } = await page.locator('.projector svg').boundingBox();
      assert.ok(drawn / height > 0.3, `pair: ${drawn} of ${height}`);
    });
  }
}

test('the pair, the five figures of the hand note and the title are there, and nothing else', async () => {
  const { page, seen, note } = await openRoom();
  const { texts, drawings } = await look(page);
  const figures = Object.entries(note).slice(0, 5).flat();
  assert.deepEqual(texts.sort(), [back, 'Tuesday class', 'A', 'B', ...figures].sort());
  assert.equal(drawings, 1);
  // Nothing else is come to by keys: the browser's own bar is next.
  const come = new Set();
  for (let i = 0; i < 4; i += 1) {
    come.add(await page.evaluate(() => document.activeElement.localName));
    await page.keyboard.press('Tab');
  }
  assert.ok(come.delete('button'));
  assert.deepEqual([...come], ['body']);
  assert.deepEqual(seen.errors, []);
});

test('a class without a title has none on the screen, and a heading for those who hear it', async () => {
  const { page } = await openRoom({ title: '' });
  assert.equal((await look(page)).texts.length, 13);
  assert.equal(await page.locator('.projector h1').textContent(), 'The pair of socks');
});

test('opened from a class’s link it has that class’s title', async () => {
  const { page } = await openRoom({ title: 'The teacher’s' });
  await press(page, back);
  const url = await page.inputValue('#lesson-link');
  const { page: hers } = await open({ url, before: fakeFullScreen });
  await goTo(hers, 'Class');
  await press(hers, room);
  assert.equal(await hers.textContent('.projector h1'), 'The teacher’s');
});

const ways = {
  'the same button': (page) => press(page, back),
  'the key that is on it': (page) => page.keyboard.press('Enter'),
  Escape: (page) => page.keyboard.press('Escape'),
  Back: (page) => page.goBack(),
  'the browser’s own way out of a full screen': (page) =>
    page.evaluate(() => globalThis.full.leaveByItself()),
};
for (const [name, leave] of Object.entries(ways)) {
  test(`it is left by ${name}: the page stands as it stood, and nothing of it is kept`, async () => {
    const { page } = await open({ before: fakeFullScreen });
    await goTo(page, 'Class');
    await page.locator('#lesson-title').fill('Tuesday class');
    const kept = () => page.evaluate(() => JSON.stringify(Object.entries(localStorage).sort()));
    const address = page.url();
    const steps = await page.evaluate(() => history.length);
    await page.locator('[data-project]').focus();
    await page.evaluate(() => scrollTo(0, 150));
    const keptBefore = await kept();
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.fullscreenElement !== null);
    assert.equal(await isOn(page), true);
    assert.equal(await page.evaluate(() => scrollY), 0);
    assert.equal(
      await page.textContent('[data-said]'),
      'Only the pair and its figures, large. Escape leads back.',
    );
    await leave(page);
    await page.waitForFunction(() => !history.state?.isProjected);
    assert.equal(await isOn(page), false);
    assert.equal(await page.evaluate(() => document.activeElement.textContent), room);
    assert.equal(await page.evaluate(() => scrollY), 150);
    assert.equal(await page.evaluate(() => document.fullscreenElement), null);
    assert.equal(await page.evaluate(() => globalThis.full.asked), 1);
    assert.equal(await kept(), keptBefore);
    assert.equal(page.url(), address);
    // One step more, which Forward would go; and another time it is the same step.
    assert.equal(await page.evaluate(() => history.length), steps + 1);
    await press(page, room);
    await press(page, back);
    await page.waitForFunction(() => !history.state?.isProjected);
    assert.equal(await page.evaluate(() => history.length), steps + 1);
  });
}

test('where the browser refuses a full screen, or has none, it is as large as the window', async () => {
  for (const without of [
    () => {
      Element.prototype.requestFullscreen = async () => {
        throw new TypeError('refused');
      };
    },
    () => {
      delete Element.prototype.requestFullscreen;
    },
  ]) {
    const { page, seen } = await open({ before: without });
    await goTo(page, 'Class');
    await press(page, room);
    await page.waitForTimeout(50);
    assert.equal(await isOn(page), true);
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => !history.state?.isProjected);
    assert.equal(await isOn(page), false);
    assert.deepEqual(seen.errors, []);
  }
});

test('a reload comes back to it, and Back leads out still', async () => {
  const { page } = await openRoom({ make: (made) => typeInto(made, 'f-foot-lengthMm', '25') });
  await again(page);
  assert.equal(await isOn(page), true);
  assert.equal((await look(page)).figures.length, 5);
  await page.goBack();
  await page.waitForFunction(() => !history.state?.isProjected);
  assert.equal(await isOn(page), false);
  assert.ok(await page.locator('#lesson').isVisible());
});

test('while a field is wrong it says of what the figures are', async () => {
  const { page } = await openRoom({ make: states.wrong });
  const { texts } = await look(page);
  assert.equal(texts.filter((text) => text.startsWith('last good')).length, 1);
});

test('printed from there it is the sheet as ever', async () => {
  const { page } = await openRoom({ before: () => (window.print = () => {}) });
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  assert.equal(await page.locator('.sheet-figures').isVisible(), true);
  assert.equal(await page.locator('.projector').isVisible(), false);
});

for (const colorScheme of ['light', 'dark']) {
  test(`${colorScheme}: no barrier that a machine can find`, async () => {
    const { page } = await openRoom({ colorScheme });
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => globalThis.axe.run());
    assert.deepEqual(
      violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html.slice(0, 120))]),
      [],
    );
  });
}
