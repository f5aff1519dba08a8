// A knitter's hands for the tests: begins a sock, taps, and reads where she is.
import { answered, goTo, press } from './open_page.mjs';

export async function begin(page) {
  await goTo(page, 'Knit');
  await press(page, 'I have cast on: begin this sock');
  await page.locator('[data-hand="tapped"]').waitFor();
}

/** The page opened and the sock begun. */
export async function openBegun(open, options) {
  const { page, seen } = await open(options);
  await begin(page);
  return { page, seen };
}

export const tap = (page) => page.locator('[data-hand="tapped"]').click();

/** Many at once, faster than any hand. */
export const tapOften = (page, times) =>
  page.evaluate((count) => {
    for (let i = 0; i < count; i += 1) document.querySelector('[data-hand="tapped"]').click();
  }, times);

/** Passes from the beginning, as the page shows them: of the finished sock all. */
export const stepShown = (page) =>
  page.evaluate(() => {
    const [round, all] = document.querySelector('.work-round').textContent.match(/\d+/g) ?? [];
    const done = document.querySelectorAll('.work-pass[aria-pressed="true"]').length;
    return all === undefined ? Infinity : (Number(round) - 1) * 4 + done;
  });

/** The number of the last change of the place that is on the disk. */
export const noted = (page) =>
  page.evaluate(() => Number(document.documentElement.getAttribute('data-noted')));

export const untilNoted = (page, taps) =>
  page.waitForFunction(
    (count) => Number(document.documentElement.getAttribute('data-noted')) >= count,
    taps,
  );

/** Opened again, and come to rest: what was noted is looked up a moment after the first answer. */
export async function settled(page) {
  await page.waitForFunction(answered);
  await page.waitForFunction(() => document.documentElement.hasAttribute('data-noted'));
  await page.locator('.work-round').waitFor();
}

/** What is kept of the sock on the needles, be it on the disk or not; nothing where there is none. */
export const readKept = (page) =>
  page.evaluate(() => {
    const name = Object.keys(localStorage).find((one) => one.startsWith('twinround/sock/'));
    return name && JSON.parse(localStorage.getItem(name)).started;
  });

export async function keptPlace(page) {
  const started = await readKept(page);
  return started && { round: started.round, pass: started.pass, taps: started.taps };
}

/** Until so many passes of the round in hand are done. */
export const untilDone = (page, passes) =>
  page.waitForFunction(
    (count) => document.querySelectorAll('.work-pass[aria-pressed="true"]').length === count,
    passes,
  );

/** Until the last tap is on the disk. */
export const untilKept = (page) =>
  page.waitForFunction(() => !document.documentElement.hasAttribute('data-unnoted'));
