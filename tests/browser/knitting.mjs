// A knitter's hands for the tests: begins a sock, taps, and reads where she is.
import { answered, goTo, press } from './open_page.mjs';

export async function begin(page) {
  await goTo(page, 'Knit');
  await press(page, 'I have cast on: begin this sock');
  await page.locator('[data-hand="tapped"]').waitFor();
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
    const done = document.querySelectorAll('.pass[aria-pressed="true"]').length;
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
