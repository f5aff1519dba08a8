// The teacher's desk: its folds, and the core that answers it, asked directly.
import { loadCore } from '../../tools/js/load_core.mjs';
import { goTo } from './open_page.mjs';

const core = await loadCore();

/** The core's answer to a question, as data. */
export function askCore(question, request) {
  const reply = JSON.parse(core.answer(question, JSON.stringify(request)));
  if (!reply.ok) throw new Error(JSON.stringify(reply.problems));
  return reply[question];
}

/** The desk with one of its folds open: wool, weeks, roster, helping or many. */
export async function openDesk(open, fold, options) {
  const opened = await open(options);
  await goTo(opened.page, 'Class');
  await opened.page.locator(`#${fold} > summary`).click();
  return opened;
}

/** What is wrong, of all fields of a fold. */
export const wrongIn = async (page, fold) =>
  (await page.locator(`#${fold} .problem`).allInnerTexts()).filter((text) => text !== '');

/** The example's request, as the page's first plan was made from it. */
export const exampleRequest = {
  version: 1,
  swatch: {
    readings: [{ stitches: 20, widthMm: 101.6, rounds: 28, heightMm: 101.6 }],
  },
  foot: { lengthMm: 246, ballGirthMm: 228 },
  legHeightMm: 200,
};
