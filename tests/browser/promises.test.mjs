// What the page promises besides the job: no request, no violation, words when it cannot answer, room on
// every screen, and no barrier that a machine can find.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import { fileUrl, goTo, openBrowser, readCounts, readNote, typeInto } from './open_page.mjs';
import { inEveryState } from './states.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

/** Uses a bit of everything. */
async function useAll(page) {
  await typeInto(page, 'f-foot-lengthMm', '25,1');
  await typeInto(page, 'f-foot-ballGirthMm', 'x');
  await typeInto(page, 'f-foot-ballGirthMm', '23');
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  await page.getByRole('button', { name: 'another reading' }).click();
  await page.locator('.choice').last().click();
  await page.locator('.finer > summary').click();
  await page.locator('#f-rib-lean').selectOption('mirrored');
}

test('asks nobody for anything after it has loaded, and breaks no rule of its own policy', async () => {
  const { page, seen } = await open();
  await useAll(page);
  await page.waitForTimeout(1200);
  // Of the page's own; what its worker asks for, offline.test.mjs counts.
  assert.deepEqual(seen, { requests: [page.url()], errors: [], violations: [] });
});

test('the policy is in the page, and forbids what it should', async () => {
  const { page, seen } = await open();
  const policy = await page.getAttribute('meta[http-equiv="Content-Security-Policy"]', 'content');
  assert.match(policy, /default-src 'none'/);
  assert.doesNotMatch(policy, /'unsafe-eval'|'unsafe-inline'/);
  // The watch over violations sees one when there is one.
  await page.evaluate(() => {
    const style = document.createElement('style');
    style.textContent = 'body { color: red }';
    document.head.append(style);
  });
  await page.waitForTimeout(100);
  assert.ok(seen.violations.some((text) => text.startsWith('style-src')));
});

test('works by double click, from a file', async () => {
  const served = await open();
  const { page, seen } = await open({ url: fileUrl });
  await typeInto(page, 'f-foot-lengthMm', '27');
  await typeInto(served.page, 'f-foot-lengthMm', '27');
  assert.deepEqual(await readCounts(page), await readCounts(served.page));
  assert.deepEqual(seen.errors, []);
});

test('without script the example’s plan stands there, and the page says what is missing', async () => {
  const { page } = await open({ javaScriptEnabled: false, wait: false });
  const figures = await page.locator('.hand .figure').allTextContents();
  assert.deepEqual(figures, ['8', '40', '17', '120', '210 m']);
  assert.match(await page.locator('noscript').textContent(), /Script is switched off/);
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '24.6');
});

test('a browser without WebAssembly is told so in words, and the fields are closed', async () => {
  const { page } = await open({
    wait: false,
    before: () => {
      delete globalThis.WebAssembly;
    },
  });
  const alert = page.getByRole('alert');
  await alert.waitFor();
  assert.match(await alert.textContent(), /WebAssembly is missing/);
  assert.equal(await page.locator('#f-foot-lengthMm').isDisabled(), true);
  assert.equal((await readNote(page))['wraps a sock'], '8');
});

test('what is typed before the module has started is kept, and answered then', async () => {
  const { page } = await open({
    wait: false,
    before: () => {
      const start = WebAssembly.instantiate.bind(WebAssembly);
      WebAssembly.instantiate = (...all) =>
        new Promise((resolve) => {
          globalThis.letItStart = () => resolve(start(...all));
        });
    },
  });
  await page.waitForFunction(() => globalThis.letItStart);
  await typeInto(page, 'f-foot-lengthMm', '27');
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  await page.evaluate(() => globalThis.letItStart());
  await page.waitForFunction(() => performance.getEntriesByName('first-answer').length > 0);
  assert.match(await page.textContent('[data-view="sentence"]'), /a foot 10 5\/8.in long/);
  assert.notEqual((await readNote(page))['rounds in all'], '120');
});

test('while something is to be mended, every part says so and the printed sheet waits', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-lengthMm', '30x');
  for (const [part, moment] of Object.entries({
    pair: 'Count',
    note: 'Count',
    buy: 'Buy',
    knit: 'Knit',
  })) {
    await goTo(page, moment);
    assert.match(await page.textContent(`[data-view="${part}"]`), /last good: foot/, part);
  }
  await page.emulateMedia({ media: 'print' });
  assert.equal(await page.locator('#knit').isVisible(), false);
  assert.equal(await page.locator('.print-waits').isVisible(), true);
});

test('a limit that is told is itself allowed', async () => {
  const { page } = await open();
  await typeInto(page, 'f-legHeightMm', '10');
  const [, least] = /At least ([\d.]+) cm/.exec(await page.textContent('#f-legHeightMm-problem'));
  await typeInto(page, 'f-legHeightMm', least);
  assert.equal(await page.textContent('#f-legHeightMm-problem'), '');
});

test('a module that does not start is told in words', async () => {
  const { page } = await open({
    wait: false,
    before: () => {
      WebAssembly.instantiate = () => Promise.reject(new Error('blocked'));
    },
  });
  const alert = page.getByRole('alert');
  await alert.waitFor();
  assert.match(await alert.textContent(), /did not start/);
});

test('nothing needs scrolling sideways, at any width and in any state', async () => {
  for (const width of [320, 360, 640, 900, 1247, 1248, 1280, 1920]) {
    const { page } = await open({ viewport: { width, height: 800 } });
    const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok((await sideways()) <= 0, `${width} px`);
    await useAll(page);
    // One that lies over the page may lie on the next; how.test.mjs opens those.
    for (const part of await page.locator('details:not([open], .how-to) > summary').all()) {
      if (await part.isVisible()) await part.click();
    }
    await typeInto(page, 'f-foot-ballGirthMm', '1.234,5');
    assert.ok((await sideways()) <= 0, `${width} px, all in use`);
    await page.context().close();
  }
});

test('text twice as large still fits a phone, and any text a very small one', async () => {
  for (const [width, size] of [
    [360, '200%'],
    [320, '100%'],
  ]) {
    const { page } = await open({ viewport: { width, height: 740 } });
    await page.evaluate(
      (large) => document.documentElement.style.setProperty('font-size', large),
      size,
    );
    await inEveryState(page, async (where) => {
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.ok(over <= 0, `${where}, ${size}: ${over} px too wide`);
    });
  }
});

test('everything that is pressed is at least 24 px each way', async () => {
  for (const width of [320, 1280]) {
    const { page } = await open({ viewport: { width, height: 800 } });
    await inEveryState(page, async (where) => {
      const small = await page.evaluate(() => {
        const target = (node) =>
          node.type === 'radio' || node.type === 'checkbox' ? node.closest('label') : node;
        return [...document.querySelectorAll('button, input, select, summary, nav a')]
          .filter((node) => node.checkVisibility())
          .map((node) => [node.id || node.textContent, target(node).getBoundingClientRect()])
          .filter(([, box]) => box.width < 24 || box.height < 24)
          .map(([name, box]) => `${name}: ${box.width} x ${box.height}`);
      });
      assert.deepEqual(small, [], `${where}, ${width} px`);
    });
  }
});

// Each width and each scheme once: no rule of axe looks at both together.
for (const [width, colorScheme] of [
  [360, 'dark'],
  [1280, 'light'],
]) {
  test(`no barrier that axe finds in any moment and state: ${width} px, ${colorScheme}`, async () => {
    const { page } = await open({ viewport: { width, height: 900 }, colorScheme });
    await page.evaluate(axe);
    await inEveryState(page, async (where) => {
      const { violations } = await page.evaluate(() => window.axe.run());
      const told = violations.flatMap(({ id, nodes }) =>
        nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`),
      );
      assert.deepEqual(told, [], where);
    });
  });
}

// Within a frame means before the browser paints again: the figures have changed by the time the key's own
// event is over. How long that takes is measured by tests/bench.
test('answers within the keystroke’s own event', async () => {
  const { page } = await open();
  const [shownBefore, shownAfter] = await page.evaluate(() => {
    const note = () => document.querySelector('[data-view="note"]').textContent;
    const input = document.getElementById('f-foot-ballGirthMm');
    const old = note();
    input.value = '30';
    input.dispatchEvent(new Event('input', { bubbles: true }));
    return [old, note()];
  });
  assert.notEqual(shownAfter, shownBefore);
});
