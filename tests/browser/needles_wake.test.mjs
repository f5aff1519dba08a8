// The screen kept awake and the pass read aloud: by stand-ins for lock and voices that tell what they were asked.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { next, placeIn, standAt, wish } from './at_needles.mjs';
import { openBegun } from './knitting.mjs';
import { again, goTo, openBrowser, press } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

/** Stands in for the lock: `isRefusing` is the browser's mind. */
function fakeLock() {
  globalThis.lock = { asked: 0, held: 0, isRefusing: sessionStorage.getItem('refuse') !== null };
  const { lock } = globalThis;
  globalThis.setSeen = (isSeen) => {
    Object.defineProperty(document, 'visibilityState', {
      configurable: true,
      get: () => (isSeen ? 'visible' : 'hidden'),
    });
    if (!isSeen) globalThis.lock.takeBack?.();
    document.dispatchEvent(new Event('visibilitychange'));
  };
  Object.defineProperty(navigator, 'wakeLock', {
    value: {
      async request(kind) {
        lock.asked += 1;
        if (kind !== 'screen') throw new TypeError(kind);
        if (lock.isRefusing) throw new DOMException('', 'NotAllowedError');
        const one = new EventTarget();
        lock.held += 1;
        let isHeld = true;
        one.release = async () => {
          if (!isHeld) return;
          isHeld = false;
          lock.held -= 1;
          one.dispatchEvent(new Event('release'));
        };
        lock.takeBack = one.release;
        return one;
      },
    },
  });
}
const lockNow = (page) =>
  page.evaluate(async () => {
    await new Promise((resolve) => setTimeout(resolve));
    const { asked, held } = globalThis.lock;
    return { asked, held };
  });

test('the screen is kept awake while a begun sock is in sight, and asked for again after it was covered', async () => {
  const { page } = await openBegun(open, { before: fakeLock });
  assert.deepEqual(await lockNow(page), { asked: 0, held: 0 });
  await wish(page, 'keep the screen awake').click();
  assert.deepEqual(await lockNow(page), { asked: 1, held: 1 });
  await next(page);
  assert.deepEqual(await lockNow(page), { asked: 1, held: 1 });
  await page.evaluate(() => globalThis.setSeen(false));
  assert.deepEqual(await lockNow(page), { asked: 1, held: 0 });
  await page.evaluate(() => globalThis.setSeen(true));
  assert.deepEqual(await lockNow(page), { asked: 2, held: 1 });
  await goTo(page, 'Count');
  assert.deepEqual(await lockNow(page), { asked: 2, held: 0 });
  await page.evaluate(() => (globalThis.setSeen(false), globalThis.setSeen(true)));
  assert.deepEqual(await lockNow(page), { asked: 2, held: 0 });
  await goTo(page, 'Knit');
  assert.deepEqual(await lockNow(page), { asked: 3, held: 1 });
  await wish(page, 'keep the screen awake').click();
  assert.deepEqual(await lockNow(page), { asked: 3, held: 0 });
  // On, off and on while the browser thinks: one lock, and one that is let go.
  await page.evaluate(() => {
    for (let times = 0; times < 3; times += 1) document.querySelector('[data-wish="wake"]').click();
  });
  assert.equal((await lockNow(page)).held, 1);
  const fold = page.locator('[data-key="not-begun"] summary');
  if (await fold.count()) await fold.click();
  await press(page, 'not begun after all');
  assert.equal((await lockNow(page)).held, 0);
});

test('the wish is fulfilled anew when the page is opened with the sock in sight', async () => {
  const { page } = await openBegun(open, { before: fakeLock });
  await wish(page, 'keep the screen awake').click();
  await again(page);
  assert.deepEqual(await lockNow(page), { asked: 1, held: 1 });
});

test('a lock that is refused, or taken back in sight, is told', async () => {
  const { page, seen } = await openBegun(open, { before: fakeLock });
  const told = page.getByText('would not keep the screen awake');
  await page.evaluate(() => (globalThis.lock.isRefusing = true));
  await wish(page, 'keep the screen awake').click();
  await told.waitFor();
  await page.evaluate(() => {
    globalThis.lock.isRefusing = false;
    globalThis.setSeen(false);
    globalThis.setSeen(true);
  });
  await told.waitFor({ state: 'detached' });
  await page.evaluate(() => globalThis.lock.takeBack());
  await told.waitFor();
  await wish(page, 'keep the screen awake').click();
  await told.waitFor({ state: 'detached' });
  assert.deepEqual(seen.errors, []);
});

test('a browser that knows no lock is told of, and nothing else fails', async () => {
  const { page, seen } = await openBegun(open, {
    before: () => Object.defineProperty(navigator, 'wakeLock', { value: undefined }),
  });
  await wish(page, 'keep the screen awake').click();
  await page.getByText('would not keep the screen awake').waitFor();
  await next(page);
  assert.deepEqual(await placeIn(page), [0, 1]);
  assert.deepEqual(seen.errors, []);
});

/** Stands in for the voices: one that asks somebody else, one of the device's own, one of another tongue. */
function fakeVoice() {
  const speech = new EventTarget();
  globalThis.speech = Object.assign(speech, { said: [], hushed: 0, isLate: false });
  const voices = [
    { name: 'far', lang: 'en-GB', localService: false },
    { name: 'other', lang: 'de-DE', localService: true },
    { name: 'own', lang: 'en-US', localService: true },
  ];
  Object.assign(speech, {
    voices,
    getVoices: () => speech.voices,
    speak: ({ text, voice }) => speech.said.push([voice?.name, text]),
    cancel: () => (speech.hushed += 1),
  });
  Object.defineProperty(globalThis, 'speechSynthesis', { value: speech });
  globalThis.SpeechSynthesisUtterance = class {
    constructor(text) {
      this.text = text;
    }
  };
}
const saidBy = (page) => page.evaluate(() => globalThis.speech.said);

test('a pass is read aloud once, by a voice of the device’s own, and hushed when that is switched off', async () => {
  const { page, seen } = await openBegun(open, { before: fakeVoice });
  await standAt(page, 1);
  assert.deepEqual(await saidBy(page), []);
  const all = [
    'Turn. Round 2. A, first half: knit one, make one right, knit six, make one left, knit one.',
    'B, first half: knit one, make one right, knit six, make one left, knit one.',
    'Turn. B, second half: knit one, make one right, knit six, make one left, knit one.',
    'A, second half: knit one, make one right, knit six, make one left, knit one.',
  ];
  await wish(page, 'read aloud').click();
  for (const [pass, text] of all.entries()) {
    assert.deepEqual((await saidBy(page)).slice(pass), [['own', text]]);
    // Whatever else is drawn, it is not said again.
    await wish(page, 'larger letters').click();
    if (pass < 3) await next(page);
  }
  assert.equal((await saidBy(page)).length, 4);
  const hushed = () => page.evaluate(() => globalThis.speech.hushed);
  const earlier = await hushed();
  await wish(page, 'read aloud').click();
  assert.equal(await hushed(), earlier + 1);
  await next(page);
  assert.equal((await saidBy(page)).length, 4);
  await wish(page, 'read aloud').click();
  assert.match(
    (await saidBy(page)).at(-1)[1],
    /^Turn\. Round 3\. A, first half: knit one, make one right, knit eight,/,
  );
  // Elsewhere there is nothing to read.
  await goTo(page, 'Buy');
  assert.ok((await hushed()) > earlier + 1);
  assert.deepEqual(seen.errors, []);
});

test('at the end the bind-off is read', async () => {
  const { page } = await openBegun(open, { before: fakeVoice });
  await standAt(page, 119, 3);
  await wish(page, 'read aloud').click();
  await next(page);
  assert.match((await saidBy(page)).at(-1)[1], /^All rounds are knit: bind off/);
});

test('without a voice of its own the device says so, until one is known', async () => {
  const { page } = await openBegun(open, { before: fakeVoice });
  const told = page.getByText('no voice of its own');
  await page.evaluate(() => {
    globalThis.speech.all = globalThis.speech.voices;
    globalThis.speech.voices = globalThis.speech.voices.slice(0, 2);
  });
  await wish(page, 'read aloud').click();
  await told.waitFor();
  assert.deepEqual(await saidBy(page), []);
  await page.evaluate(() => {
    globalThis.speech.voices = globalThis.speech.all;
    globalThis.speech.dispatchEvent(new Event('voiceschanged'));
  });
  await told.waitFor({ state: 'detached' });
  assert.equal((await saidBy(page)).length, 1);
});

test('a browser that cannot speak says so, and nothing else fails', async () => {
  const { page, seen } = await openBegun(open, {
    before: () => Object.defineProperty(globalThis, 'speechSynthesis', { value: undefined }),
  });
  await wish(page, 'read aloud').click();
  await page.getByText('no voice of its own').waitFor();
  await wish(page, 'read aloud').click();
  assert.equal(await page.getByText('no voice of its own').count(), 0);
  assert.deepEqual(seen.errors, []);
});
