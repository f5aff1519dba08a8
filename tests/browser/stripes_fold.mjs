// The fold of stripes and leftovers: its fields, its answers, and what is drawn in them.
import { goTo } from './open_page.mjs';

export const fields = {
  repeat: 'f-stripes-repeat-stripes',
  ball: 'f-stripes-repeat-ballM',
  startA: 'f-stripes-repeat-startAM',
  startB: 'f-stripes-repeat-startBM',
  own: 'f-stripes-own-stripes',
  lots: 'f-stripes-leftovers-lots',
};

/** The fold, open. */
export async function openStripes(open, options) {
  const opened = await open(options);
  await goTo(opened.page, 'Knit');
  await opened.page.locator('#stripes > summary').click();
  return opened;
}

export const answer = (page, what) => page.locator(`[data-view="stripes-${what}"]`);
export const from = (page, value) => page.selectOption('#f-stripes-repeat-from', value);

/** Of each drawn sock its bands from the toe up: the dye, where it begins and ends as a share of the sock. */
export const drawn = (page, what) =>
  page.evaluate((name) => {
    const socks = document.querySelectorAll(`[data-view="stripes-${name}"] .striped`);
    return [...socks].map((sock) => {
      const tall = sock.querySelector('.edge').getBBox().height;
      return [...sock.querySelectorAll('rect[class^="dye"]')].map((rect) => {
        const { y, height } = rect.getBBox();
        return [rect.getAttribute('class'), 1 - (y + height) / tall, 1 - y / tall];
      });
    });
  }, what);

/** What is wrong, of all fields of the fold. */
export const wrong = (page) =>
  page
    .locator('#stripes .problem')
    .evaluateAll((all) => all.map((one) => one.textContent).join(''));
