// The long table of a class: a row opens as its plan, a thousand of them stand at once, and all of it can be read aloud.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { after, before, test } from 'node:test';

import { readDraft } from '../../web/script/form.js';
import { startState } from '../../web/script/state.js';
import { askCore } from './desk.mjs';
import { openBrowser, readNote } from './open_page.mjs';
import { print } from './pdf.mjs';
import {
  faultsOf,
  kinds,
  openSeats,
  paste,
  planOf,
  randomFrom,
  randomSeats,
  seatsOf,
  withTabs,
} from './seats.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

for (const seat of ['1', '2', '3', '4', '5', '6'])
  test(`the link of seat ${seat} opens that very plan`, async () => {
    const { page, seen } = await openSeats(open);
    await paste(page, kinds);
    assert.deepEqual(await faultsOf(page), []);
    const rows = await seatsOf(page);
    const [, stitches, rounds, yarn] = rows.find(([name]) => name === seat);
    await page.locator('.roster').getByRole('button', { name: seat, exact: true }).click();
    const more = page.locator('.seat-more');
    await more.getByRole('button', { name: 'copy its link' }).click();
    const link = await more.getByRole('link').getAttribute('href');
    assert.equal(await page.evaluate(() => navigator.clipboard.readText()), link);
    await more.getByRole('link').click();
    await page.waitForFunction(() => document.documentElement.dataset.moment === 'count');
    const shown = async (on) => Object.values(await readNote(on));
    const note = await shown(page);
    for (const figure of [stitches, rounds, yarn.split(' ±')[0]])
      assert.ok(note.includes(figure), `${figure} in ${note}`);
    // And for whoever gets it by mail.
    const { page: other } = await open({ url: link });
    assert.deepEqual(await shown(other), note);
    assert.deepEqual(seen.errors, []);
  });

test('a row is closed again by its button, and only open rows have links', async () => {
  const { page } = await openSeats(open);
  await paste(page, kinds);
  assert.equal(await page.locator('.roster a').count(), 0);
  const button = page.locator('.roster').getByRole('button', { name: '3', exact: true });
  await button.click();
  assert.equal(await button.getAttribute('aria-expanded'), 'true');
  assert.equal(await page.locator('.roster a').count(), 1);
  // It stays open while something else is typed at the desk.
  await page.locator('#f-supply-sizes').evaluate((field) => {
    field.value = '38';
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
  assert.equal(await page.locator('.roster a').count(), 1);
  await button.click();
  assert.equal(await button.getAttribute('aria-expanded'), 'false');
  assert.equal(await page.locator('.roster a').count(), 0);
});

for (const colorScheme of ['light', 'dark'])
  test(`whoever sees little or nothing can read it, in a ${colorScheme} room`, async () => {
    const { page } = await openSeats(open, { colorScheme });
    await paste(page, `${kinds}\n7\tthick\n8\t4\t12\t16\t24 cm\t22 cm`);
    await page.locator('.roster').getByRole('button', { name: '8', exact: true }).click();
    assert.match(await page.locator('.seat-more').innerText(), /fewer stitches in a width/);
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => window.axe.run('#roster'));
    assert.deepEqual(
      violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`),
      [],
    );
  });

test('a thousand seats are shown, one more is refused in words', async () => {
  const seats = randomSeats(1001, randomFrom(11));
  const { page, seen } = await openSeats(open);
  await page.evaluate(() => {
    const place = document.querySelector('#roster output');
    window.said = [];
    new MutationObserver(() => window.said.push(place.textContent)).observe(place, {
      childList: true,
      characterData: true,
      subtree: true,
    });
  });
  await paste(page, withTabs(seats.slice(0, 1000)));
  assert.match((await page.evaluate(() => window.said))[0], /^Reckoning 1000 socks/);
  const rows = await seatsOf(page);
  assert.equal(rows.length, 1000);
  for (const i of [0, 499, 999]) {
    const { stitchCount, totalRounds } = planOf(seats[i]);
    assert.deepEqual(rows[i].slice(0, 3), [
      String(i + 1),
      String(stitchCount),
      String(totalRounds),
    ]);
  }
  // The page stays as wide as the window: the table moves in itself.
  await page.setViewportSize({ width: 360, height: 780 });
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= 360));

  await paste(page, withTabs(seats));
  assert.match((await faultsOf(page)).join(), /At most 1000/);
  assert.equal(await page.locator('.roster').count(), 0);
  assert.deepEqual(seen.errors, []);
});

test('a sheet is printed for every seat, each on a side of its own', async () => {
  const { page } = await openSeats(open);
  await paste(
    page,
    ['seat\tyarn\tfoot cm\tball girth cm', '7\t4\t24,6\t22,8', '8\t3\t26\t24', '9\tx\t26\t24'].join(
      '\n',
    ),
  );
  await page.evaluate(() => (window.print = () => {}));
  await page.getByRole('button', { name: 'print a sheet for every seat' }).click();
  const { words } = await print(page, 'A4');
  assert.equal(words.length, 2);
  for (const [i, [seat, category, lengthMm, ballGirthMm]] of [
    ['7', 4, 246, 228],
    ['8', 3, 260, 240],
  ].entries()) {
    const { request } = readDraft(startState().draft);
    const { swatch: _swatch, stitchCount: _count, ...common } = request;
    const plan = askCore('plan', {
      ...common,
      yarn: { category },
      foot: { lengthMm, ballGirthMm },
    });
    assert.match(words[i], new RegExp(`seat ${seat}\\b`));
    assert.match(words[i], new RegExp(`\\b${plan.stitchCount}\\b`));
    assert.match(words[i], new RegExp(`\\b${plan.totalRounds}\\b`));
  }
});

test('a measured heel counts, and balls and grams together are refused', async () => {
  const { page } = await openSeats(open);
  await paste(
    page,
    [
      'seat\tyarn\tfoot cm\tball girth cm\theel cm\tballs\tgrams in hand',
      '1\t4\t24,6\t22,8\t31\t2\t',
      '2\t4\t24,6\t22,8\t36\t\t300',
      '3\t4\t24,6\t22,8\t31\t2\t50',
    ].join('\n'),
  );
  const { request } = readDraft(startState().draft);
  const { swatch: _swatch, stitchCount: _count, ...common } = request;
  const count = (heelAnkleGirthMm) =>
    askCore('plan', {
      ...common,
      yarn: { category: 4 },
      foot: { lengthMm: 246, ballGirthMm: 228, heelAnkleGirthMm },
    }).stitchCount;
  const seats = await seatsOf(page);
  assert.notEqual(count(310), count(360));
  assert.deepEqual(
    seats.slice(0, 2).map(([, stitches]) => Number(stitches)),
    [count(310), count(360)],
  );
  assert.match((await faultsOf(page)).join(), /Row 4, seat 3, “grams in hand”: balls or grams/);
});
