// Opens the built page in Chromium as a reader would, and watches what it does behind her back.
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

import { serve } from '../../tools/js/serve.mjs';
import { launchChromium } from './chromium.mjs';

const site = fileURLToPath(new URL('../../build/site/', import.meta.url));
export const fileUrl = pathToFileURL(path.join(site, 'index.html')).href;

/** One browser and one server for a file of tests. */
export async function openBrowser() {
  const { url, close } = await serve({ folder: site });
  const browser = await launchChromium();

  /**
   * @param {{ url?: string, before?: () => void, wait?: boolean } & Record<string, unknown>} [options]
   *   `before` runs in the page ahead of its own script; `wait` for its first answer; the rest goes to
   *   the browser's context
   */
  async function open({ url: where = url, before, wait = true, ...context } = {}) {
    const viewport = { width: 1280, height: 900 };
    const page = await (await browser.newContext({ viewport, ...context })).newPage();
    const seen = { requests: [], errors: [], violations: [] };
    page.on('request', (request) => seen.requests.push(request.url()));
    page.on('pageerror', (error) => seen.errors.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') seen.errors.push(message.text());
    });
    await page.exposeFunction('tellViolation', (text) => seen.violations.push(text));
    await page.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', (violation) => {
        window.tellViolation(`${violation.violatedDirective}: ${violation.blockedURI}`);
      });
    });
    if (before) await page.addInitScript(before);
    await page.goto(where);
    if (wait) await page.waitForFunction(answered);
    return { page, seen };
  }

  const end = async () => {
    await browser.close();
    await close();
  };
  return { open, end };
}

export const answered = () => performance.getEntriesByName('first-answer').length > 0;

/** Goes there and waits for the page's first answer. */
export async function visit(page, url) {
  await page.goto(url);
  await page.waitForFunction(answered);
}

/** The same as a reader who comes from elsewhere, so that another # alone loads the page too. */
export async function follow(page, url) {
  await page.goto('about:blank');
  await visit(page, url);
}

export async function again(page) {
  await page.reload();
  await page.waitForFunction(answered);
}

/** The first button of that name. */
export const press = (page, name) =>
  page.getByRole('button', { name, exact: true }).first().click();

/** Opens the place where all socks stand. */
export const openShelf = (page) => page.locator('#socks').evaluate((fold) => (fold.open = true));

/** To a moment of the page, as a reader goes: Buy, Count, Knit or Class. */
export const goTo = (page, moment) =>
  page.getByRole('navigation').getByRole('link', { name: moment, exact: true }).click();

/** Clears a field and types into it, key by key. */
export async function typeInto(page, id, text) {
  await page.locator(`#${id}`).click();
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await page.keyboard.type(text);
}

/** The unit control beside a field. */
export const unitOf = (page, id) => page.locator(`[data-field]:has(#${id}) [data-unit]`);

/** Changes what is kept of the sock behind the page's back: `change` is a statement about its `sheet`. */
export const changeKept = (page, change) =>
  page.evaluate(`{
    const name = Object.keys(localStorage).find((one) => one.startsWith('twinround/sock/'));
    const sheet = JSON.parse(localStorage.getItem(name));
    ${change}
    localStorage.setItem(name, JSON.stringify(sheet));
  }`);

/** The five figures of the hand note, by what they are. */
export const readNote = (page) =>
  page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll('.hand div')].map((line) => [
        line.querySelector('dt').textContent,
        line.querySelector('.figure').textContent,
      ]),
    ),
  );

/** Everything of the plan that is a count, so that no unit is in it: of Count, and of Knit. */
export async function readCounts(page) {
  const count = await page.evaluate(() => {
    const texts = (selector) =>
      [...document.querySelectorAll(selector)].map((node) => node.textContent);
    return {
      note: texts('.hand .figure').slice(0, 4),
      choices: texts('.choice .count'),
      ribs: [...document.querySelectorAll('.pair .purl')].map((ribs) => ribs.getAttribute('d')),
    };
  });
  await goTo(page, 'Knit');
  const knit = await page.evaluate(() => {
    const texts = (selector) =>
      [...document.querySelectorAll(selector)].map((node) => node.textContent);
    return { toe: texts('.toe tbody tr'), lines: texts('.lines tbody tr') };
  });
  await goTo(page, 'Count');
  return { ...count, ...knit };
}
