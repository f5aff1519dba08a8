// The fold of many feet: its fields, its answer, and the core asked the same beside it.
import { loadCore } from '../../tools/js/load_core.mjs';
import { goTo, typeInto } from './open_page.mjs';

/** The fold, open. */
export async function openDrive(open, options) {
  const opened = await open(options);
  await goTo(opened.page, 'Class');
  await opened.page.locator('#many > summary').click();
  return opened;
}

const late = 'Being reckoned anew';

/** Types into the fields by name, key by key, and waits until the answer is the one to them. */
export async function typeDrive(page, fields) {
  for (const [name, text] of Object.entries(fields)) await typeInto(page, `f-drive-${name}`, text);
  await rested(page);
}

export async function rested(page) {
  await page.waitForFunction(
    (text) => !document.querySelector('[data-view="drive"]').textContent.includes(text),
    late,
  );
}

export const squeeze = (text) => text.replace(/[\s\u00a0\u202f]+/g, ' ').trim();

/** All that the fold answers. */
export const said = async (page) => squeeze(await page.locator('[data-view="drive"]').innerText());

/** What is wrong, by the field it stands at. */
export const wrong = (page) =>
  page.locator('#many .field').evaluateAll((all) =>
    Object.fromEntries(
      all.flatMap((field) => {
        const text = field.querySelector('.problem').textContent;
        return text === '' ? [] : [[field.dataset.field.replace('/drive/', ''), text]];
      }),
    ),
  );

/** A table's cells as lines, row by row. */
export const rowsOf = (page, table) =>
  page
    .locator(`[data-view="drive"] .${table} tbody tr`)
    .evaluateAll((rows) =>
      rows.map((row) => [...row.children].map((cell) => cell.innerText.split('\n'))),
    );

// The example's sock, as core/wire wants it, written down by hand.
const sock = {
  version: 1,
  swatch: {
    fabric: 'stockinette',
    washed: true,
    needleMm: 4.5,
    readings: [{ stitches: 20, widthMm: 101.6, rounds: 28, heightMm: 101.6 }],
  },
  yarn: { category: 4, ballG: 100, ballM: 200 },
  cuffMm: 30,
  rib: { knit: 2, purl: 2, roundsPerShift: 4, lean: 'left' },
  lengthEase: -0.04,
  toe: { share: 0.25, tipShare: 0.4, shape: 'round' },
  pace: { stitchesPerMinute: 15 },
  yarnMargin: 0.1,
};

/** The core's own answer for the example's sock. @param {object} drive */
export async function askCore(drive) {
  const { answer } = await loadCore();
  const reply = JSON.parse(answer('drive', JSON.stringify({ ...sock, drive })));
  if (!reply.ok) throw new Error(JSON.stringify(reply.problems));
  return reply.drive;
}
