// The fold of the weeks: its fields, what stands in its table, and the core's own reply to the same question.
import { readFileSync } from 'node:fs';

import { loadCore } from '../../tools/js/load_core.mjs';
import { goTo, typeInto } from './open_page.mjs';
import { take, unfold } from './take_along.mjs';

const { answer } = await loadCore();

/** A class as many are. */
export const course = { meetings: 8, minutesInClass: 90, minutesAtHome: 60 };

/** The same as it is typed. */
export const texts = (numbers) =>
  Object.fromEntries(Object.entries(numbers).map(([name, value]) => [name, String(value)]));

export const field = (name) => `f-weeks-${name}`;
export const place = (page) => page.locator('[data-view="weeks"]');
export const buttonOf = (page, way) => place(page).locator(`[data-carry="weeks.${way}"]`);

/** The class's moment with the fold open, and what is typed in it key by key. */
export async function openWeeks(page, typed = {}) {
  await goTo(page, 'Class');
  const fold = page.locator('#weeks');
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click();
  await type(page, typed);
}

export async function type(page, typed) {
  for (const [name, text] of Object.entries(typed)) {
    // A day and an hour have parts of their own, in an order that hangs on the reader's language.
    if (name === 'day' || name === 'time') await page.locator(`#${field(name)}`).fill(text);
    else await typeInto(page, field(name), text);
  }
}

/** Ticks the yarns under the wool for the class. */
export async function tick(page, categories) {
  const wool = page.locator('#wool');
  if ((await wool.getAttribute('open')) === null) await wool.locator('summary').click();
  for (const one of categories)
    await wool.locator(`[data-field="/supply/yarns"] input[value="${one}"]`).check();
}

/** The request of the sock on the page, as the page hands it out. */
export async function requestOn(page) {
  await goTo(page, 'Knit');
  await unfold(page);
  const { bytes } = await take(page, 'json');
  return JSON.parse(bytes.toString('utf8')).request;
}

/** The core's reply, asked without the page. */
export const askWeeks = (request) =>
  JSON.parse(answer('weeks', JSON.stringify({ version: 1, ...request })));

/** Row by row: its head, and of each cell the lines in it. */
export const tableOn = (page) =>
  place(page)
    .locator('table.weeks tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => ({
        head: row.querySelector('th').firstChild.textContent,
        when: row.querySelector('th span')?.textContent ?? '',
        cells: [...row.querySelectorAll('td')].map((cell) =>
          [...cell.querySelectorAll('strong, span:not(.whose)')].map((line) => line.textContent),
        ),
      })),
    );

/** What is said of each knitter. */
export const endsOn = (page) => place(page).locator('.weeks-ends li span').allInnerTexts();

export const wrongAt = (page, name) =>
  page.locator(`.field:has(#${field(name)}) .problem`).innerText();

/** The calendar file that is handed over. */
export async function takeCalendar(page) {
  const waiting = page.waitForEvent('download');
  await buttonOf(page, 'ics').click();
  const download = await waiting;
  return {
    name: download.suggestedFilename(),
    text: readFileSync(await download.path(), 'utf8'),
  };
}
