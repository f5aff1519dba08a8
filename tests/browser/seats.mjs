// Hands at the teacher's table of seats, and tables of classes that never were.
import { readDraft } from '../../web/script/form.js';
import { startState } from '../../web/script/state.js';
import { askCore } from './desk.mjs';
import { goTo } from './open_page.mjs';

/** At the desk, its fold of seats open. */
export async function openSeats(open, options = {}) {
  const { page, seen } = await open({
    permissions: ['clipboard-read', 'clipboard-write'],
    ...options,
  });
  await toSeats(page);
  return { page, seen };
}

export async function toSeats(page) {
  await goTo(page, 'Class');
  await page.locator('#roster').evaluate((fold) => (fold.open = true));
}

/** Pasted over what stands there, as a reader does it, and answered. */
export async function paste(page, text) {
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  await page.locator('#lesson-roster').click();
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Control+V');
  await settled(page);
}

/** Once nothing is being reckoned any more. */
export const settled = (page) =>
  page.waitForFunction(() => document.querySelector('#roster output')?.textContent === '');

export const faultsOf = (page) => page.locator('#roster .to-mend li').allInnerTexts();

/** The cells of a table of the desk, row by row. */
export const rowsOf = (page, css) =>
  page
    .locator(`#roster ${css} tbody tr`)
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent)));

/** The seats' figures; what does harm is left out. */
export const seatsOf = async (page) =>
  (await rowsOf(page, '.roster')).map((cells) => (cells.length > 2 ? cells.slice(0, 6) : cells));

/** Numbers that are the same for a seed. */
export function randomFrom(seed) {
  let x = seed;
  const next = () => {
    x = (x * 1103515245 + 12345) % 2147483648;
    return x / 2147483648;
  };
  return {
    between: (least, most) => least + Math.floor(next() * (most - least + 1)),
    oneOf: (all) => all[Math.floor(next() * all.length)],
  };
}

/** So many seats as a class may have them, lengths in millimetres. */
export function randomSeats(count, { between, oneOf }) {
  const usual = { 1: 30, 2: 25, 3: 22, 4: 19 };
  return Array.from({ length: count }, (_, i) => {
    const yarn = oneOf([1, 2, 3, 4]);
    const length = between(215, 285);
    return {
      seat: String(i + 1),
      yarn,
      stitches: usual[yarn] + between(-6, 6) / 4,
      rounds: usual[yarn] * 1.25 + between(-4, 4) / 4,
      length,
      girth: Math.round(length * 0.93) + between(-8, 8),
      leg: between(150, 220),
      pace: between(8, 30),
      grams: between(100, 300) / 2,
    };
  });
}

/** What the core is asked of such a seat. */
export const partOf = ({ yarn, stitches, rounds, length, girth, leg, pace, grams }) => ({
  swatch: { readings: [{ stitches, widthMm: 100, rounds, heightMm: 100 }] },
  yarn: { category: yarn },
  foot: { lengthMm: length, ballGirthMm: girth },
  legHeightMm: leg,
  pace: { stitchesPerMinute: pace },
  inHand: { g: grams },
});

/** The example's sock, which the page is delivered with: the class's, for whoever sets no other. */
export const common = readDraft(startState().draft).request;

/** The plan of one seat asked alone: a yarn of its own takes neither swatch nor ball from the class. */
export function planOf(seat) {
  const { inHand: _aside, ...part } = partOf(seat);
  return askCore('plan', { ...common, ...part });
}

/** As a spreadsheet gives it: tabs, decimal points, the units in the heads. */
export const withTabs = (seats) =>
  [
    'seat\tyarn\tstitches per 10 cm\trounds per 10 cm\tfoot cm\tball girth cm\tleg cm\tpace\tgrams in hand',
    ...seats.map((seat) =>
      [
        seat.seat,
        seat.yarn,
        seat.stitches,
        seat.rounds,
        seat.length / 10,
        seat.girth / 10,
        seat.leg / 10,
        seat.pace,
        seat.grams,
      ].join('\t'),
    ),
  ].join('\n');

/** Seats told in all ways; what each row shows is what its plan comes to. */
export const kinds = [
  'seat\tyarn\tstitches per 10 cm\trounds per 10 cm\tfoot\tball girth\tshoe\tworn by\tleg\tpace\tballs',
  '1\t1\t30\t42\t24,5 cm\t22 cm\t\t\t20 cm\t25\t2',
  '2\t4\t20 per 4 in\t28 per 4 in\t9 1/2 in\t8 3/4 in\t\t\t7 7/8 in\t\t',
  '3\t2\t\t\t\t\tEU 38\twoman\t\t\t',
  '4\t\t\t\t23,3 cm\t21,7 cm\t\t\t\t\t',
  '5\t\t28,25\t38\t\t\tUS men 9\tman\t22 cm\t12\t',
  '6',
].join('\n');
