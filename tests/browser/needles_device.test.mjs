// What the device does while one knits: screen, letters, light, voice, a clock, a headset's keys; each by a stand-in that
// tells what it was asked.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { next, placeIn, placeOf, planOf, readView, wish } from './at_needles.mjs';
import { begin, openBegun, readKept } from './knitting.mjs';
import { again, goTo, openBrowser, press } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const isOn = async (page, name) => (await wish(page, name).getAttribute('aria-pressed')) === 'true';
const sizeOf = (page, css) =>
  page.evaluate((one) => parseFloat(getComputedStyle(document.querySelector(one)).fontSize), css);

for (const width of [320, 1280]) {
  test(`${width} px: the line now is large enough for arm's length, and larger when that is wished`, async () => {
    const { page } = await openBegun(open, { viewport: { width, height: 740 } });
    const line = '.work-pass.now .work';
    const size = await sizeOf(page, line);
    assert.ok(size >= 28, `${size}`);
    await wish(page, 'larger letters').click();
    assert.ok((await sizeOf(page, line)) >= size * 1.25);
    await wish(page, 'larger letters').click();
    assert.equal(await sizeOf(page, line), size);
  });
}

test('wishes are the device’s: kept over a reload, whatever the sock; timing is not kept', async () => {
  const { page } = await openBegun(open);
  for (const name of ['larger letters', 'dark', 'time my rounds']) await wish(page, name).click();
  await again(page);
  for (const [name, is] of Object.entries({
    'larger letters': true,
    dark: true,
    'keep the screen awake': false,
    'read aloud': false,
    'time my rounds': false,
  }))
    assert.equal(await isOn(page, name), is, name);
  assert.equal(await page.locator('html[data-large]').count(), 1);
  await goTo(page, 'Count');
  await press(page, 'another sock from this one');
  await begin(page);
  assert.equal(await isOn(page, 'larger letters'), true);
});

/** Lightness of a computed colour, as WCAG 2.2 reckons it; and the contrast of two. */
function lightness(colour) {
  const [r, g, b] = colour.match(/[\d.]+/g).map((part) => {
    const x = Number(part) / 255;
    return x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
const contrast = (one, other) => {
  const [dark, light] = [lightness(one), lightness(other)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
};

const colours = (page) =>
  page.evaluate(() => {
    const of = (css) => getComputedStyle(document.querySelector(css));
    return {
      paper: of('body').backgroundColor,
      ink: of('body').color,
      sheet: of('.work-pass.now').backgroundColor,
      line: of('.work-pass.now').color,
      later: of('.work-pass.later').color,
      button: of('.work-bar .next').backgroundColor,
      onButton: of('.work-bar .next').color,
      scheme: of(':root').colorScheme,
    };
  });

test('dark by choice in a light system: the dark colours, readable; on paper black on white as ever', async () => {
  const { page } = await openBegun(open, { colorScheme: 'light' });
  const light = await colours(page);
  await wish(page, 'dark').click();
  const dark = await colours(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  // The very ones of a dark system.
  assert.deepEqual(await colours(page), dark);
  await page.emulateMedia({ colorScheme: 'light' });
  assert.ok(lightness(dark.paper) < 0.05 && lightness(light.paper) > 0.8);
  for (const [one, other] of [
    ['ink', 'paper'],
    ['line', 'sheet'],
    ['later', 'paper'],
    ['onButton', 'button'],
  ])
    assert.ok(contrast(dark[one], dark[other]) >= 4.5, `${one} on ${other}`);
  assert.equal(dark.scheme, 'dark');
  await page.emulateMedia({ media: 'print' });
  const printed = await colours(page);
  assert.ok(lightness(printed.paper) > 0.99, printed.paper);
  assert.ok(lightness(printed.ink) < 0.01, printed.ink);
  assert.equal(printed.scheme, 'light');
  await page.emulateMedia({ media: 'screen' });
  await wish(page, 'dark').click();
  assert.deepEqual(await colours(page), light);
});

function fakeClock() {
  const start = Date.now();
  globalThis.later = 0;
  Date.now = () => start + globalThis.later * 1000;
}
const wait = (page, seconds) => page.evaluate((more) => (globalThis.later += more), seconds);
async function knitRound(page, seconds) {
  for (let pass = 0; pass < 4; pass += 1) {
    await wait(page, seconds / 4);
    await next(page);
  }
}
const lapsIn = async (page) => (await readKept(page)).laps;

test('a round that is timed is a lap of its stitches, and the hours to go follow it', async () => {
  const { page } = await openBegun(open, { before: fakeClock });
  const plan = await planOf(page);
  await wish(page, 'time my rounds').click();
  await knitRound(page, 200);
  const stitches = 2 * plan.rounds[0].stitches;
  assert.deepEqual(await lapsIn(page), [[stitches, 200]]);
  const place = placeOf(plan, [1, 0], { laps: [{ stitches, seconds: 200 }] });
  assert.equal(place.pace.from, 'laps');
  const told = (await readView(page)).facts['time still to go'];
  assert.match(
    told,
    new RegExp(
      `at ${Math.round(place.pace.stitchesPerMinute)} stitches a minute, timed over 1 round$`,
    ),
  );
  assert.notEqual(place.pace.stitchesPerMinute, 15);
  await knitRound(page, 260);
  assert.equal((await lapsIn(page)).length, 2);
});

test('a step back, a jump and a late beginning spoil the lap, and the next round is one again', async () => {
  const { page } = await openBegun(open, { before: fakeClock });
  await next(page);
  // Begun in mid-round: nobody knows when.
  await wish(page, 'time my rounds').click();
  for (let pass = 1; pass < 4; pass += 1) await next(page);
  assert.deepEqual(await lapsIn(page), []);
  await wait(page, 100);
  await next(page);
  await page.locator('.work-bar .back').click();
  await knitRound(page, 200);
  assert.deepEqual(await lapsIn(page), []);
  await page.locator('.work-pass').nth(3).click();
  await wait(page, 200);
  await knitRound(page, 200);
  assert.deepEqual(await lapsIn(page), []);
  await knitRound(page, 220);
  assert.equal((await lapsIn(page)).length, 1);
  assert.equal((await lapsIn(page))[0][1], 220);
});

test('a headset’s keys go on and back, while a begun sock is in sight', async () => {
  const { page } = await openBegun(open, {
    before: () => {
      globalThis.keys = {};
      const setActionHandler = (key, does) => (globalThis.keys[key] = does);
      Object.defineProperty(navigator, 'mediaSession', { value: { setActionHandler } });
    },
  });
  const pressKey = (key) => page.evaluate((one) => globalThis.keys[one]({ action: one }), key);
  await pressKey('nexttrack');
  await pressKey('nexttrack');
  assert.deepEqual(await placeIn(page), [0, 2]);
  await pressKey('previoustrack');
  assert.deepEqual(await placeIn(page), [0, 1]);
  await goTo(page, 'Buy');
  await pressKey('nexttrack');
  assert.deepEqual(await placeIn(page), [0, 1]);
});
