// Takes a file from the page as a reader does.
import { readFileSync } from 'node:fs';

/** What each kind of file is called on its button. */
export const names = {
  csv: 'the rounds as a table (CSV)',
  json: 'the plan as data (JSON)',
  txt: 'the pattern as text',
};
export const button = (page, name) => page.getByRole('button', { name, exact: true });
export const unfold = (page) => page.locator('#along > details > summary').click();

/** Presses a kind's button and takes what is handed over. */
export async function take(page, kind) {
  const waiting = page.waitForEvent('download');
  await button(page, names[kind]).click();
  const download = await waiting;
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}
