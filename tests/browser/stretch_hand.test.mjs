// The count is dragged, stepped and keyed along the stretch line, and everything follows.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { openBrowser, readNote } from './open_page.mjs';
import { countNow, handle, line, openFiner, phone } from './stretch_line.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

test('dragging the marker snaps to counts that can be knit, and pair, yarn and rounds follow', async () => {
  for (const options of [{}, phone]) {
    const { page } = await open(options);
    await handle(page).scrollIntoViewIfNeeded();
    const only = options === phone ? 'narrow-only' : 'wide-only';
    const widthOfSock = () =>
      page.evaluate((selector) => {
        const { width, height } = document.querySelector(`.pair.${selector} .edge`).getBBox();
        return { width, height };
      }, only);
    const [before_, note, sock] = [await line(page), await readNote(page), await widthOfSock()];
    await page.mouse.move(before_.x, before_.y);
    await page.mouse.down();
    // 40 stitches are 203.2 mm, 44 are 223.5: just short of half way nothing moves, just past it does.
    await page.mouse.move(before_.x + 9 * before_.perMm, before_.y, { steps: 3 });
    assert.equal(await countNow(page), 40);
    await page.mouse.move(before_.x + 12 * before_.perMm, before_.y, { steps: 3 });
    await page.waitForFunction(() => document.querySelector('.hand').textContent.includes('44'));
    assert.equal(await countNow(page), 44);
    // The scale holds still under the hand.
    const during = await line(page);
    assert.deepEqual([during.from, during.to], [before_.from, before_.to]);
    assert.ok(Math.abs(during.x - before_.x - 20.32 * before_.perMm) < 1);
    await page.mouse.up();
    const now = await readNote(page);
    assert.equal(now['stitches a round'], '44');
    assert.notEqual(now['of yarn, the pair'], note['of yarn, the pair']);
    // 44 stitches at 20 over 4 in and 120 rounds at 28 over 4 in, half of them across.
    const after_ = await widthOfSock();
    assert.ok(Math.abs(after_.width / after_.height / (sock.width / sock.height) - 44 / 40) < 1e-3);
    await page.context().close();
  }
});

test('a drag goes on past the five counts, in either direction, and back to the advised one', async () => {
  const { page } = await open();
  await handle(page).scrollIntoViewIfNeeded();
  const start = await line(page);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x + 101.6 * start.perMm, start.y, { steps: 2 });
  await page.waitForFunction(
    () => document.querySelector('.hand').textContent.includes('60'),
    undefined,
    { timeout: 5000 },
  );
  const far = await line(page);
  assert.deepEqual([far.from, far.to], [start.from, start.to]);
  await page.mouse.move(start.x, start.y, { steps: 2 });
  await page.mouse.up();
  assert.equal(await countNow(page), 40);
  assert.equal(await page.inputValue('#f-stitchCount'), '');
});

test('a quick pull that ends before the next frame still counts', async () => {
  const { page } = await open();
  await handle(page).scrollIntoViewIfNeeded();
  const { x, y, perMm } = await line(page);
  await page.evaluate(
    ([from, top, to]) => {
      const target = document.elementFromPoint(from, top);
      const say = (type, clientX) =>
        target.dispatchEvent(
          new PointerEvent(type, {
            bubbles: true,
            cancelable: true,
            pointerId: 1,
            clientX,
            clientY: top,
            isPrimary: true,
          }),
        );
      // No real pointer stands behind these events, so there is none to capture.
      Element.prototype.setPointerCapture = () => {};
      say('pointerdown', from);
      say('pointermove', to);
      say('pointerup', to);
    },
    [x, y, x + 61 * perMm],
  );
  assert.equal(await countNow(page), 52);
});

test('Escape in the middle of a drag puts the count back', async () => {
  const { page } = await open();
  await handle(page).scrollIntoViewIfNeeded();
  const { x, y, perMm } = await line(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 21 * perMm, y, { steps: 3 });
  await page.waitForFunction(() => document.querySelector('.hand').textContent.includes('44'));
  await page.keyboard.press('Escape');
  assert.equal(await countNow(page), 40);
  await page.mouse.move(x + 60 * perMm, y, { steps: 3 });
  await page.mouse.up();
  assert.equal(await countNow(page), 40);
});

test('a finger drags the marker, and scrolls the page anywhere else', async () => {
  const { page } = await open({ ...phone, hasTouch: true, isMobile: true });
  await page.locator('.stretch.phone-only').scrollIntoViewIfNeeded();
  await page.evaluate(() => {
    const { top } = document.querySelector('.stretch.phone-only').getBoundingClientRect();
    window.scrollBy(0, top - 250);
  });
  const touch = await page.context().newCDPSession(page);
  const finger = async (type, x, y) =>
    touch.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x, y }],
    });
  const scrolled = () => page.evaluate(() => window.scrollY);
  const { x, y, perMm } = await line(page);
  const top = await scrolled();
  await finger('touchStart', x, y);
  for (let i = 1; i <= 6; i += 1) await finger('touchMove', x + i * 4 * perMm, y + i * 12);
  await page.waitForFunction(() => document.querySelector('.hand').textContent.includes('44'));
  // The pair above grows; the marker stays at its height under the finger, though that has wandered.
  const held = await line(page);
  assert.ok(Math.abs(held.y - y) < 1.5, `${held.y} ${y}`);
  await finger('touchEnd');
  assert.equal(await countNow(page), 44);

  const rest = await line(page);
  const from = await scrolled();
  assert.ok(Math.abs(from - top) < 60);
  const below = rest.y + 60;
  await finger('touchStart', 300, below);
  for (let i = 1; i <= 8; i += 1) await finger('touchMove', 300, below - i * 20);
  await finger('touchEnd');
  await page.waitForFunction((was) => window.scrollY > was + 50, from);
  assert.equal(await countNow(page), 44);
});

test('the arrow keys step, Home and End go to the outermost, and the focus stays', async () => {
  const { page } = await open();
  await handle(page).focus();
  const focused = () => page.evaluate(() => document.activeElement.hasAttribute('data-handle'));
  const sayNow = () => handle(page).getAttribute('aria-valuetext');
  assert.match(
    await sayNow(),
    /^40 stitches, 20\.3.cm round with the rib eased open, give or take 0\.5.cm\. Both halves .* same\. .* 78.% of the stretch\.$/,
  );
  for (const [key, count] of [
    ['ArrowRight', 44],
    ['ArrowUp', 48],
    ['ArrowLeft', 44],
    ['ArrowDown', 40],
    ['End', 48],
    ['End', 56],
    ['Home', 48],
  ]) {
    await page.keyboard.press(key);
    assert.equal(await countNow(page), count, key);
    assert.equal(await focused(), true, key);
    assert.equal((await readNote(page))['stitches a round'], String(count));
  }
  const [least, most] = await Promise.all(
    ['aria-valuemin', 'aria-valuemax'].map((name) => handle(page).getAttribute(name)),
  );
  assert.deepEqual([least, most], ['40', '56']);
  await page.keyboard.press('Home');
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  assert.equal(await countNow(page), 36);
  assert.match(await sayNow(), /read differently\. Too tight for the heel/);
});

test('minus and plus step under a hand that stays, and end where no count is left', async () => {
  const { page } = await open(phone);
  const more = page.locator('.step').nth(1);
  const fewer = page.locator('.step').nth(0);
  assert.equal(await more.getAttribute('aria-label'), 'more: 44 stitches');
  await more.click();
  await page.keyboard.press('Enter');
  assert.equal(await countNow(page), 48);
  await fewer.click();
  assert.equal(await countNow(page), 44);
  assert.equal(await page.inputValue('#f-stitchCount'), '44');
  // The choice buttons stay, and the chosen one is pressed.
  assert.equal(await page.textContent('.choice[aria-pressed="true"] .count'), '44');
  assert.equal(await page.locator('.choice').count(), 5);
  await openFiner(page);
  await page.locator('#f-stitchCount').fill('400');
  await page.locator('#f-swatch-readings-0-stitches').fill('200');
  await page.locator('#f-swatch-readings-0-rounds').fill('200');
  assert.equal(await more.getAttribute('aria-disabled'), 'true');
  await more.click({ force: true });
  assert.equal(await countNow(page), 400);
});
