// The states that the page is looked at in: as delivered, wrong, long, and before any swatch; and on the needles.
import { begin } from './knitting.mjs';
import { goTo } from './open_page.mjs';

const fill = async (page, fields) => {
  for (const [id, text] of Object.entries(fields)) await page.locator(`#f-${id}`).fill(text);
};

/** Each begins where the one before has left the page. */
export const states = {
  example: async () => {},
  wrong: (page) => fill(page, { 'foot-ballGirthMm': '500' }),
  long: (page) =>
    fill(page, {
      'swatch-readings-0-stitches': '60',
      'swatch-readings-0-rounds': '84',
      'foot-ballGirthMm': '26',
      'foot-lengthMm': '29',
      'foot-heelAnkleGirthMm': '36',
      legHeightMm: '40',
      'foot-calfGirthMm': '42',
      'rib-knit': '3',
      'rib-roundsPerShift': '1',
    }),
  guessed: async (page) => {
    await page.getByRole('radio', { name: 'not yet' }).check();
    await page.getByRole('radio', { name: 'by shoe' }).check();
    await page.locator('#f-yarn-category').selectOption('1');
    await page.locator('#f-foot-shoe-size').fill('43');
  },
  begun: async (page) => {
    await page.getByRole('radio', { name: 'by tape' }).check();
    await begin(page);
    // In mid-round, one pass done and one taken back.
    for (const pass of [0, 1, 2, 2]) await page.locator('.work-pass').nth(pass).click();
  },
};

const moments = ['Buy', 'Count', 'Knit', 'Class'];

/** Every moment in every state, with all folds open but those that lie over the page. */
export async function inEveryState(page, look) {
  for (const [state, make] of Object.entries(states)) {
    await goTo(page, 'Count');
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details:not(.how-to)')) fold.open = true;
    });
    await make(page);
    for (const moment of moments) {
      await goTo(page, moment);
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details:not(.how-to)')) fold.open = true;
      });
      await look(`${moment}, ${state}`);
    }
  }
}
