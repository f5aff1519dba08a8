// Stripes and leftovers: typed as a knitter writes them, drawn on both socks, and said how the two come to match.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { after, before, test } from 'node:test';

import { again, goTo, openBrowser, press, typeInto } from './open_page.mjs';
import { answer, drawn, fields, from, openStripes, wrong } from './stripes_fold.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const openFold = (options) => openStripes(open, options);

test('a self-striping yarn is drawn on both socks, and what to pull off makes them alike', async () => {
  const { page, seen } = await openFold();
  assert.equal(await answer(page, 'repeat').locator('svg').count(), 0);
  await typeInto(page, fields.repeat, 'white 3.5 m, red 2 m, 8 m');
  let socks = await drawn(page, 'repeat');
  assert.equal(socks.length, 2);
  assert.deepEqual(socks[0], socks[1]);
  // White and red by their names, the third in a dye that no name has taken.
  assert.deepEqual(
    socks[0].slice(0, 3).map(([dye]) => dye),
    ['dye-4', 'dye-0', 'dye-1'],
  );
  // One band begins where the last one ends, from the tip to the edge.
  socks[0].forEach(([, begins], i) =>
    assert.ok(Math.abs(begins - (i === 0 ? 0 : socks[0][i - 1][2])) < 0.002),
  );
  assert.ok(Math.abs(socks[0].at(-1)[2] - 1) < 0.002);
  assert.match(await answer(page, 'repeat').innerText(), /both socks come out alike/);

  await typeInto(page, fields.startB, '5.5');
  socks = await drawn(page, 'repeat');
  assert.equal(socks.length, 3);
  assert.notDeepEqual(socks[0], socks[1]);
  assert.deepEqual(socks[0], socks[2]);
  const said = await answer(page, 'repeat').innerText();
  assert.match(said, /do not match/);
  // The repeat is 13.5 m: 8 m on to where A begins, or 5.5 m off A's.
  assert.match(said, /Pull 8 m \(4 g\) off B’s yarn .* or 5\.5 m \(2\.8 g\) off A’s/);
  assert.match(said, /One repeat is 14 m long/);

  await typeInto(page, fields.startA, '5.5');
  assert.match(await answer(page, 'repeat').innerText(), /come out alike/);
  assert.deepEqual(seen.errors, []);
  assert.deepEqual(seen.violations, []);
});

test('both ends of one ball run opposite ways, and match only where the repeat is its own mirror', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.repeat, 'white 3.5 m, red 2 m, 8 m');
  await from(page, 'two-ends');
  await typeInto(page, fields.ball, '240');
  let said = await answer(page, 'repeat').innerText();
  assert.match(said, /opposite ways/);
  assert.match(said, /No start makes the socks match/);
  const [a, b] = await drawn(page, 'repeat');
  const order = (bands) => bands.slice(1, 4).map(([dye]) => dye);
  const opposite = order(b).reverse();
  assert.ok(
    [...order(a), ...order(a)].join().includes(opposite.join()),
    `${order(a)} and ${order(b)}`,
  );

  await typeInto(page, fields.repeat, 'white 3.5 m, red 2 m, white 3.5 m, 8 m');
  said = await answer(page, 'repeat').innerText();
  assert.match(said, /reads alike both ways/);
  assert.match(said, /Pull [\d.]+ m .* off B’s yarn before you cast on, and they do\./);
  const socks = await drawn(page, 'repeat');
  assert.deepEqual(socks[2], socks[0]);
});

test('a ball is cut by weight, and too small a one is said to be', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.repeat, '3.5 m, 2 m, 8 m');
  await from(page, 'halves');
  await typeInto(page, fields.ball, '260');
  // 260 m hold 19.3 repeats of 13.5 m: 10 of them are 135 m, which is 5 from the half; 9 are 121.5.
  let said = await answer(page, 'repeat').innerText();
  assert.match(said, /Cut the ball after 68 g \(135 m\)/);
  assert.match(said, /come out alike/);
  await typeInto(page, fields.ball, '120');
  said = await answer(page, 'repeat').innerText();
  assert.match(said, /does not last: \d+ m are missing/);
});

test('the yarn of one’s own stripes is told by colour', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.own, 'blue 3, white 2');
  const rows = await answer(page, 'own').locator('.figures tbody tr').allInnerTexts();
  const parts = rows.map((row) => row.split(/\t/).map((cell) => cell.trim()));
  // 120 rounds: 24 stripes of each.
  assert.deepEqual(
    parts.map(([name, times]) => [name, times]),
    [
      ['1 blue', '24'],
      ['2 white', '24'],
    ],
  );
  const metres = parts.map(([, , yarn]) => parseFloat(yarn));
  // The example's pair takes 190 m; each figure is told to a metre.
  assert.ok(Math.abs(metres[0] + metres[1] - 190) <= 1, metres.join());
  const [a, b] = await drawn(page, 'own');
  assert.equal(a.length, 48);
  assert.deepEqual(a, b);
});

test('leftovers are laid from the toe up, and what is missing is said', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.lots, '35 g of 210 m per 100 g, red 60 m, yellow 50 g');
  const said = await answer(page, 'leftovers').innerText();
  assert.match(said, /They make the pair with 2 joins a sock/);
  const rows = await answer(page, 'leftovers')
    .locator('table')
    .first()
    .locator('tbody tr')
    .allInnerTexts();
  const spans = rows.map((row) => row.split(/\t/).map((cell) => cell.trim()));
  // From the first round to the last without a gap.
  const ends = spans.map(([, , span]) => span.split('–').map(Number));
  assert.equal(ends[0][0], 1);
  ends.slice(1).forEach(([first], i) => assert.equal(first, ends[i][1] + 1));
  assert.equal(ends.at(-1)[1], 120);
  const [a] = await drawn(page, 'leftovers');
  assert.equal(a.length, 3);

  await typeInto(page, fields.lots, '20 g, red 30 m of 400 m per 100 g');
  const short = await answer(page, 'leftovers').innerText();
  assert.match(short, /They do not make the pair: \d+ m are missing/);
  assert.match(short, /2 red is 50\s% thinner than the sock’s yarn/);
});

test('what cannot be read is told at its field, and leaves the rest as it is', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.own, 'blue 3');
  await typeInto(page, fields.lots, '35 g, red');
  assert.match(await wrong(page), /“red” is not understood/);
  assert.equal(await answer(page, 'own').locator('svg').count(), 1);
  await typeInto(page, fields.lots, '0.1 g');
  assert.match(await wrong(page), /Between 0\.5 g and 2000 g/);
  await typeInto(page, fields.lots, '0.1 m');
  assert.match(await wrong(page), /Between 0\.5 m and 20000 m/);
  await typeInto(page, fields.lots, '');
  await typeInto(page, fields.repeat, '3 m');
  await from(page, 'two-ends');
  await typeInto(page, fields.own, '2.5');
  assert.match(await wrong(page), /whole number/);
  await typeInto(page, fields.own, '');
  assert.equal(await wrong(page), '');
  // The plan stands, whatever is wrong here.
  await typeInto(page, fields.lots, 'nonsense');
  assert.equal(await page.locator('html[data-last-good]').count(), 0);
});

test('yards and ounces are read and told, and kept', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.repeat, '4 yd, 6 yd');
  assert.match(await answer(page, 'repeat').innerText(), /One repeat is 9\.1 m long/);
  await page.locator('input[name="system"][value="inch"]').check({ force: true });
  assert.match(await answer(page, 'repeat').innerText(), /One repeat is 10 yd long/);
  await typeInto(page, fields.lots, '1 oz');
  assert.equal(await wrong(page), '');
  await again(page);
  await goTo(page, 'Knit');
  await page.locator('#stripes > summary').click();
  assert.equal(await page.locator(`#${fields.repeat}`).inputValue(), '4 yd, 6 yd');
  assert.match(await answer(page, 'repeat').innerText(), /One repeat is 10 yd long/);
});

test('a sock that is begun is striped as it is knit, whatever the form says then', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.own, 'blue 3, white 2');
  await press(page, 'I have cast on: begin this sock');
  const bands = await drawn(page, 'own');
  assert.equal(bands[0].length, 48);
  await typeInto(page, fields.own, 'blue 60, white 60');
  assert.equal((await drawn(page, 'own'))[0].length, 2);
});

test('the fold has no barrier that axe knows of', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.repeat, 'white 3.5 m, red 2 m, 8 m');
  await typeInto(page, fields.own, 'blue 3, white 2');
  await typeInto(page, fields.lots, '20 g');
  for (const fold of await page.locator('#stripes details > summary').all()) await fold.click();
  await page.evaluate(axe);
  const found = await page.evaluate(async () => {
    const { violations } = await window.axe.run('#stripes');
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`);
  });
  assert.deepEqual(found, []);
});

test('it fits a narrow page', async () => {
  for (const width of [320, 360]) {
    const { page } = await openFold({ viewport: { width, height: 740 } });
    await typeInto(page, fields.repeat, '3.5 m, 2 m, 8 m');
    await typeInto(page, fields.startB, '5');
    const beyond = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    assert.equal(beyond, 0);
    const box = await answer(page, 'repeat').locator('svg').boundingBox();
    assert.ok(box.x >= 0 && box.x + box.width <= width);
  }
});
