// Wool for the class: every yarn by every size, from the same core as the plan, so that a cell opens as that plan.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import papa from 'papaparse';

import { formatYarn } from '../../web/script/units.js';
import { askCore, openDesk, wrongIn } from './desk.mjs';
import { again, goTo, openBrowser, readNote, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const tick = (page, weight) =>
  page.locator(`#wool input[type="checkbox"][value="${weight}"]`).check();

async function openTable(options) {
  const opened = await openDesk(open, 'wool', options);
  for (const weight of [1, 3, 4]) await tick(opened.page, weight);
  await typeInto(opened.page, 'f-supply-sizes', '36, 38.5, 42');
  return opened;
}

/** The table as texts: heads, and of each row its name and its cells' lines. */
const readTable = (page) =>
  page.evaluate(() => {
    const table = document.querySelector('[data-view="supply"] table');
    const texts = (nodes) => [...nodes].map((node) => node.textContent);
    return {
      heads: texts(table.querySelectorAll('thead th')),
      rows: [...table.querySelectorAll('tbody tr')].map((row) => ({
        name: row.querySelector('th').textContent,
        cells: [...row.querySelectorAll('td')].map((cell) =>
          texts(cell.querySelectorAll('.pair-cell > *')),
        ),
      })),
    };
  });

const shoe = (size) => ({ foot: { shoe: { scale: 'eu', size }, body: 'woman' } });
const common = { legHeightMm: 200, rib: { knit: 2, purl: 2 } };
const plain = (text) => text.replace(/[\u00a0\u202f]/g, ' ');

test('every yarn by every size says what the core says of that pair', async () => {
  const { page, seen } = await openTable();
  const { heads, rows } = await readTable(page);
  assert.deepEqual(heads, ['Yarn', 'EU 36', 'EU 38.5', 'EU 42']);
  assert.deepEqual(
    rows.map(({ name }) => name.slice(0, 1)),
    ['1', '3', '4'],
  );
  for (const [i, category] of [1, 3, 4].entries()) {
    for (const [j, size] of [36, 38.5, 42].entries()) {
      const plan = askCore('plan', { version: 1, ...common, yarn: { category }, ...shoe(size) });
      const [stitches, yarn, balls, sock, needle, cable] = rows[i].cells[j].map(plain);
      assert.equal(stitches, `${plan.stitchCount} st`);
      const { mWithMargin, relativeError, gPerPair } = plan.yarn;
      const metres = (value) => plain(formatYarn(value, 'm'));
      assert.equal(yarn, `${metres(mWithMargin)} ± ${metres(mWithMargin * relativeError)}`);
      // A tenth to spare, in whole balls of 100 g, for there is no label.
      const count = Math.ceil((gPerPair * 1.1) / 100);
      assert.match(balls, new RegExp(`^${count} balls? of 100 g`));
      assert.ok(Math.abs(parseFloat(sock) - plan.yarn.gPerSock) < 1, sock);
      assert.ok(needle.startsWith(`${plan.needle.mm} mm`), needle);
      assert.equal(cable, `${plan.needle.cableBuyMm / 10} cm cable`);
    }
  }
  assert.deepEqual(seen.errors, []);
});

test('a cell opens as that very plan', async () => {
  const { page } = await openTable();
  const [, , medium] = (await readTable(page)).rows;
  const link = page.locator('[data-view="supply"] tbody tr:last-child td:last-child a');
  assert.equal(await link.textContent(), medium.cells[2][0]);
  const other = await open({ url: await link.getAttribute('href') });
  const plan = askCore('plan', { version: 1, ...common, yarn: { category: 4 }, ...shoe(42) });
  const note = await readNote(other.page);
  assert.deepEqual(
    [note['stitches a round'], note['rounds in all']],
    [String(plan.stitchCount), String(plan.totalRounds)],
  );
  assert.match(await other.page.locator('[data-view="sentence"]').innerText(), /42/);
});

test('what is typed at the desk stays: over a reload, and whichever sock is on the page', async () => {
  const { page } = await openTable();
  const was = await readTable(page);
  await again(page);
  await goTo(page, 'Class');
  await page.locator('#wool > summary').click();
  assert.deepEqual(await readTable(page), was);
  await page.locator('#socks').evaluate((fold) => (fold.open = true));
  await page.getByRole('button', { name: 'a new sock', exact: true }).click();
  await goTo(page, 'Class');
  assert.deepEqual(await readTable(page), was);
});

test('feet by tape stand beside shoes, in the units she teaches in', async () => {
  const { page } = await openDesk(open, 'wool');
  await tick(page, 4);
  await typeInto(page, 'f-supply-feet', '9 1/2 x 9 in, 24.6 x 22.8 cm');
  await page.locator('input[name="system"][value="inch"]').check();
  const { heads, rows } = await readTable(page);
  assert.deepEqual(heads.slice(1).map(plain), ['9½ in long, 9 in round', '9⅝ in long, 9 in round']);
  const plan = askCore('plan', {
    version: 1,
    ...common,
    yarn: { category: 4 },
    foot: { lengthMm: 246, ballGirthMm: 228 },
  });
  const [stitches, yarn] = rows[0].cells[1].map(plain);
  assert.equal(stitches, `${plan.stitchCount} st`);
  assert.ok(yarn.startsWith(plain(formatYarn(plan.yarn.mWithMargin, 'yd'))), yarn);
});

test('what cannot be is told at its field, with the remedy, and the table stays', async () => {
  const { page } = await openTable();
  await typeInto(page, 'f-supply-sizes', '36, 99');
  assert.match((await wrongIn(page, 'wool')).join(), /60/);
  await typeInto(page, 'f-supply-sizes', '36, middling');
  assert.match((await wrongIn(page, 'wool')).join(), /middling/);
  await typeInto(page, 'f-supply-sizes', '36, 38');
  assert.deepEqual(await wrongIn(page, 'wool'), []);
  await typeInto(page, 'f-supply-feet', '24');
  assert.equal((await wrongIn(page, 'wool')).length, 1);
});

test('it goes into a mail as text and into a spreadsheet as CSV', async () => {
  const { page } = await openTable({ permissions: ['clipboard-read', 'clipboard-write'] });
  await page.getByRole('button', { name: 'copy as text' }).click();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  assert.equal(text.split('\n').length, 1 + 9);
  const { rows } = await readTable(page);
  assert.ok(text.includes(`EU 38.5: ${rows[1].cells[1].join('; ')}`), text);

  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'as a table (CSV)' }).click();
  const file = readFileSync(await (await waiting).path(), 'utf8');
  const { data } = papa.parse(file.trim());
  assert.equal(data.length, 10);
  assert.equal(data[5][1], 'EU 38.5');
  assert.equal(`${data[5][2]} st`, rows[1].cells[1][0]);
});

test('it prints, and nothing else with it', async () => {
  const { page } = await openTable();
  await page.evaluate(() => (window.print = () => {}));
  await page.locator('[data-print="supply"]').click();
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print' });
  const shown = await page.evaluate(() =>
    [...document.querySelectorAll('table, h1, h2')]
      .filter((node) => node.checkVisibility())
      .map((node) => node.localName),
  );
  assert.deepEqual(shown, ['h1', 'table']);
});

test('an answer to what stood there before says so, and is not handed out', async () => {
  const { page } = await openTable();
  const was = await readTable(page);
  await page.locator('#f-supply-sizes').press('End');
  await page.keyboard.type(', middling');
  assert.deepEqual(await readTable(page), was);
  assert.match(await page.locator('[data-view="supply"]').innerText(), /Mend what is marked/);
  let isTaken = false;
  page.on('download', () => (isTaken = true));
  await page.getByRole('button', { name: 'as a table (CSV)' }).click();
  await page.waitForFunction(() => /waits/.test(document.querySelector('[data-said]').textContent));
  assert.equal(isTaken, false);
  await page.evaluate(() => (window.print = () => {}));
  await page.locator('[data-print="supply"]').click();
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  assert.match(await page.locator('.sheet').textContent(), /waits until then/);
});

test('two tabs that are typed in by turns end alike, and then rest', async () => {
  const context = await openTable();
  const { page } = context;
  const other = await page.context().newPage();
  await other.goto(page.url());
  await other.waitForFunction(() => performance.getEntriesByName('first-answer').length > 0);
  await goTo(other, 'Class');
  const text = 'seat, yarn, foot cm, ball girth cm, and whatever else there is';
  await page.locator('#roster').evaluate((fold) => (fold.open = true));
  await page.locator('#lesson-roster').click();
  await page.evaluate(() => {
    window.writes = 0;
    addEventListener('storage', () => (window.writes += 1));
  });
  // No delay between the keys: each is on its way to the other tab when the next comes.
  await page.keyboard.type(text);
  await other.waitForFunction(
    (all) => document.querySelector('#lesson-roster').value === all,
    text,
  );
  assert.equal(await page.inputValue('#lesson-roster'), text);
  assert.equal(await page.evaluate(() => window.writes), 0, 'nothing comes back');
  await typeInto(other, 'lesson-title', 'Tuesday');
  await page.waitForFunction(() => document.querySelector('#lesson-title').value === 'Tuesday');
  assert.equal(await page.inputValue('#lesson-roster'), text);
});
