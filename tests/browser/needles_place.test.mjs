// What is told of the place a sock is knit to: held against the core’s own, on the strip, and at the end.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { next, placeIn, placeOf, planOf, readView, standAt } from './at_needles.mjs';
import { openBegun, readKept } from './knitting.mjs';
import { openBrowser } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const back = (page) => page.locator('.work-bar .back').click();

/** The first number in a text. */
const numberIn = (text) => Number(/[\d.]+/.exec(text.replace(',', ''))[0]);
const hours = (text) =>
  Number(/(\d+) h/.exec(text)?.[1] ?? 0) * 60 + Number(/(\d+) min/.exec(text)?.[1] ?? 0);

test('counts, metres, hours and what comes next are what the core says of the place', async () => {
  const { page } = await openBegun(open);
  const plan = await planOf(page);
  for (const place of [
    [0, 0],
    [6, 1],
    [16, 3],
    [40, 2],
    [111, 0],
    [119, 3],
    [120, 0],
  ]) {
    await standAt(page, ...place);
    const is = placeOf(plan, place);
    const { facts, ahead } = await readView(page);
    const [a, b = a] = facts['yarn used, A and B'].split(', ').map(numberIn);
    assert.ok(Math.abs(a - is.usedM.a) <= 0.5, `${place}: ${a}, ${is.usedM.a}`);
    assert.ok(Math.abs(b - is.usedM.b) <= 0.5, `${place}: ${b}, ${is.usedM.b}`);
    const toGo = numberIn(facts['yarn still to go, the pair']);
    assert.ok(Math.abs(toGo - is.toGoM.pair) <= 1, `${place}: ${toGo}, ${is.toGoM.pair}`);
    const stitches = facts['stitches on each sock'];
    assert.equal(stitches, is.allDone ? undefined : String(is.stitches));
    const time = facts['time still to go'];
    if (is.allDone) assert.equal(time, undefined);
    else {
      assert.match(time, new RegExp(`at ${is.pace.stitchesPerMinute} stitches a minute`));
      // Told to 5 minutes and no less, from 3 hours on to half an hour, from 10 on to the hour.
      const least = is.pace.minutesToGo < 180 ? 5 : is.pace.minutesToGo < 570 ? 15 : 30;
      assert.ok(Math.abs(hours(time) - is.pace.minutesToGo) <= least, `${place}: ${time}`);
    }
    const when = { bindOff: /now|after (this|\d+)/ };
    assert.equal(ahead.length, is.next.length);
    is.next.forEach(({ kind, round, inRounds }, i) => {
      if (kind === 'bindOff') {
        assert.match(ahead[i], when.bindOff);
        if (inRounds > 1) assert.match(ahead[i], new RegExp(`after ${inRounds} more rounds`));
      } else if (inRounds > 1)
        assert.match(ahead[i], new RegExp(`in ${inRounds} rounds, at round ${round}$`));
      else
        assert.match(
          ahead[i],
          inRounds === 0 ? /this round$/ : new RegExp(`next round, ${round}$`),
        );
    });
  }
});

test('the strip is marked where the knitting stands', async () => {
  const { page } = await openBegun(open);
  const mark = () =>
    page.evaluate(() => {
      const strip = [...document.querySelectorAll('.strip')].find((one) => one.checkVisibility());
      return {
        part: strip.querySelector('.knit').getAttribute('width') / strip.viewBox.baseVal.width,
        x: Number(/M([\d.]+)/.exec(strip.querySelector('.here').getAttribute('d'))[1]),
        wide: strip.viewBox.baseVal.width,
        name: strip.getAttribute('aria-label'),
      };
    });
  for (const [round, pass] of [
    [0, 3],
    [30, 0],
    [120, 0],
  ]) {
    await standAt(page, round, pass);
    const { part, x, wide, name } = await mark();
    assert.ok(Math.abs(part - round / 120) < 1e-3);
    assert.ok(Math.abs(x / wide - round / 120) < 1e-3);
    assert.match(name, new RegExp(`\\b${round} are knit`));
  }
});

test('once all is knit there is no pass to go on to; the bind-off is said, and a tap too many taken back', async () => {
  const { page, seen } = await openBegun(open);
  await standAt(page, 119, 3);
  await next(page);
  assert.deepEqual(await placeIn(page), [120, 0]);
  const view = await readView(page);
  assert.match(view.round, /^All rounds are knit: bind off/);
  assert.notEqual(view.stage, '');
  assert.deepEqual(view.passes, []);
  assert.equal(view.next, '');
  await page.evaluate(() => document.activeElement.blur());
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press(' ');
  assert.deepEqual(await placeIn(page), [120, 0]);
  const { taps } = await readKept(page);
  assert.equal(taps, 1);
  await back(page);
  assert.deepEqual(await placeIn(page), [119, 3]);
  assert.equal((await readView(page)).passes.length, 4);
  assert.deepEqual(seen.errors, []);
});
