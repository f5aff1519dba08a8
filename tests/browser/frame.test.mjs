// Inside a course page, as the snippet puts it there: from another site, with storage denied, and in a frame that allows
// script alone.
import assert from 'node:assert/strict';
import http from 'node:http';
import { after, before, describe, it, test } from 'node:test';

import { launchChromium } from './chromium.mjs';
import { goTo, openBrowser } from './open_page.mjs';

let open;
let end;
let browser;
let host;
/** What the course page holds, as a teacher pasted it. */
let pasted = '';
before(async () => {
  ({ open, end } = await openBrowser());
  browser = await launchChromium();
  host = http.createServer((_request, response) => {
    response.setHeader('Content-Type', 'text/html; charset=utf-8');
    response.end(
      `<!doctype html><title>Course</title><h1>Lesson 3</h1><label>Search <input id="search" autofocus></label>
       <p style="height: 1200px">Read this first.</p>${pasted}<p style="height: 1200px">And this after.</p>`,
    );
  });
  await new Promise((resolve) => host.listen(0, resolve));
});
after(async () => {
  host.close();
  await browser.close();
  await end();
});

/** The snippet and the lines for the host, as the page gives them. */
async function snippet() {
  const { page } = await open();
  await goTo(page, 'Class');
  await page.getByText('In a course page').click();
  const [frame, lines] = [
    await page.inputValue('#lesson-frame'),
    await page.inputValue('#lesson-lines'),
  ];
  await page.context().close();
  return { frame, lines };
}

/** The course page, of another site than the page in it: localhost against 127.0.0.1. */
async function openCourse(html, { init } = {}) {
  pasted = html;
  const context = await browser.newContext({ viewport: { width: 1000, height: 700 } });
  const page = await context.newPage();
  const seen = { errors: [], violations: [] };
  page.on('pageerror', (error) => seen.errors.push(error.message));
  await page.exposeFunction('tellViolation', (text) => seen.violations.push(text));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      window.tellViolation(`${violatedDirective}: ${blockedURI}`),
    );
  });
  if (init) await page.addInitScript(init);
  await page.goto(`http://localhost:${host.address().port}/`);
  const frame = await (await page.locator('iframe').elementHandle()).contentFrame();
  await page.locator('iframe').scrollIntoViewIfNeeded();
  await frame.waitForFunction(() => performance.getEntriesByName('first-answer').length > 0);
  await page.evaluate(() => scrollTo(0, 0));
  return { page, frame, seen };
}

const sentence = (frame) => frame.textContent('.sentence');

test('the snippet gives the page the freedoms it needs and no others', async () => {
  const { frame } = await snippet();
  assert.match(
    frame,
    /sandbox="allow-scripts allow-same-origin allow-forms allow-popups allow-modals allow-downloads"/,
  );
  assert.match(frame, /allow="web-share; clipboard-write; screen-wake-lock"/);
  assert.match(frame, /height: \d+px/);
});

test('in a course page it works, takes no focus, and leaves the course page where it was', async () => {
  const { page, frame, seen } = await openCourse((await snippet()).frame);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'search');
  await page.locator('iframe').scrollIntoViewIfNeeded();
  await frame.locator('#f-foot-lengthMm').fill('26');
  assert.match(await sentence(frame), /a foot 26.cm/);
  // Pressed without the test's own scrolling to what it presses.
  await page.evaluate(() => scrollTo(0, 900));
  for (const link of ['nav a[href="#buy"]', 'nav a[href="#knit"]', 'a[href="#socks"]'])
    await frame.evaluate((css) => document.querySelector(css).click(), link);
  assert.equal(await page.evaluate(() => scrollY), 900);
  assert.deepEqual(seen, { errors: [], violations: [] });
});

test('where the frame ends the course page scrolls on', async () => {
  const { page, frame } = await openCourse((await snippet()).frame);
  await page.locator('iframe').scrollIntoViewIfNeeded();
  const box = await page.locator('iframe').boundingBox();
  await page.mouse.move(box.x + 100, box.y + 200);
  const from = await page.evaluate(() => scrollY);
  // From within the frame: first its own end, then the course page's.
  for (let times = 0; times < 40; times += 1) {
    await page.mouse.wheel(0, 600);
    await page.waitForTimeout(30);
  }
  assert.ok((await frame.evaluate(() => scrollY)) > 0);
  assert.ok((await page.evaluate(() => scrollY)) > from);
});

test('with the lines for the host the frame is as tall as what is in it, and settles', async () => {
  const { frame: html, lines } = await snippet();
  const { page, frame } = await openCourse(html + lines);
  const height = () => page.locator('iframe').evaluate((node) => node.clientHeight);
  const inside = () => frame.evaluate(() => document.documentElement.scrollHeight);
  const settle = async () => {
    let last = 0;
    for (let times = 0; times < 20; times += 1) {
      await page.waitForTimeout(150);
      const now = await height();
      if (now === last) return now;
      last = now;
    }
    return assert.fail('the frame grows without end');
  };
  const inCount = await settle();
  assert.ok(Math.abs(inCount - (await inside())) <= 1, `${inCount} ${await inside()}`);
  await frame.locator('nav a[href="#buy"]').click();
  const inBuy = await settle();
  assert.notEqual(inBuy, inCount);
  assert.ok(Math.abs(inBuy - (await inside())) <= 1);
});

test('where a frame of another site may keep nothing, the page says so and gives the link', async () => {
  const { frame } = await openCourse((await snippet()).frame, {
    init: () => {
      if (window === top) return;
      for (const name of ['localStorage', 'sessionStorage', 'indexedDB'])
        Object.defineProperty(window, name, {
          get() {
            throw new DOMException('denied', 'SecurityError');
          },
        });
    },
  });
  assert.match(await frame.textContent('.not-kept'), /Not saved here.*Take the link/);
  await frame.locator('#f-foot-lengthMm').fill('26');
  await frame.locator('.not-kept [data-share]').click();
  await frame.locator('#shared-link').waitFor();
  const { page: other } = await open({ url: await frame.inputValue('#shared-link') });
  assert.equal(await other.inputValue('#f-foot-lengthMm'), '26');
});

describe('in a frame that allows script and nothing else', () => {
  const opaque = async () => {
    const { frame } = await snippet();
    return openCourse(frame.replace(/sandbox="[^"]*"/, 'sandbox="allow-scripts"'));
  };

  it('plans, switches moments and units, and makes links', async () => {
    const { frame, seen } = await opaque();
    assert.equal(await frame.evaluate(() => origin), 'null');
    await frame.locator('#f-foot-lengthMm').fill('26');
    assert.match(await sentence(frame), /a foot 26.cm/);
    await frame.locator('input[name="system"][value="inch"]').check();
    assert.match(await sentence(frame), /in long/);
    await frame.locator('nav a[href="#knit"]').click();
    assert.ok((await frame.locator('.lines tbody tr').count()) > 3);
    await frame.locator('[data-key="opaque"] [data-share]').click();
    const { page: other } = await open({ url: await frame.inputValue('#shared-link') });
    assert.equal(await other.inputValue('#f-foot-lengthMm'), '26');
    assert.deepEqual(seen.errors, []);
  });

  it('keeps several socks while it is open, and says what it cannot do', async () => {
    const { frame } = await opaque();
    assert.match(
      await frame.textContent('[data-key="opaque"]'),
      /Not saved here, and no printing or files.*Take the link/,
    );
    for (const button of await frame.locator('[data-print], [data-save]').all())
      assert.equal(await button.isVisible(), false);
    await frame.locator('#f-foot-lengthMm').fill('26');
    await frame.locator('#socks > summary').click();
    await frame.getByRole('button', { name: 'a new sock' }).click();
    assert.equal(await frame.inputValue('#f-foot-lengthMm'), '24.6');
    await frame.getByRole('button', { name: /^open / }).click();
    assert.equal(await frame.inputValue('#f-foot-lengthMm'), '26');
  });
});
