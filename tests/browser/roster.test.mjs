// A teacher's class on the page: a pasted table becomes a row of figures for each seat, and totals that are the sum of them.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import Papa from 'papaparse';

import { askCore } from './desk.mjs';
import { again, answered, goTo, openBrowser, press } from './open_page.mjs';
import {
  common,
  faultsOf,
  kinds,
  openSeats,
  partOf,
  paste,
  planOf,
  randomFrom,
  randomSeats,
  rowsOf,
  seatsOf,
  settled,
  toSeats,
  withTabs,
} from './seats.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const someSeats = randomSeats(6, randomFrom(7));

test('a table reads the same from a spreadsheet, with semicolons and decimal commas, and with commas', async () => {
  const { page, seen } = await openSeats(open);
  await paste(page, withTabs(someSeats));
  const expected = await seatsOf(page);
  assert.deepEqual(
    expected.map(([seat, stitches, rounds]) => [seat, stitches, rounds]),
    someSeats.map((seat) => {
      const { stitchCount, totalRounds } = planOf(seat);
      return [seat.seat, String(stitchCount), String(totalRounds)];
    }),
  );
  const cells = withTabs(someSeats)
    .split('\n')
    .map((row) => row.split('\t'));
  for (const delimiter of [';', ',']) {
    const written = cells.map((row) => row.map((cell) => cell.replace('.', ',')));
    // Another table first, so that what is looked at is this one's.
    await paste(page, 'seat\n1');
    await paste(page, Papa.unparse(written, { delimiter }));
    assert.deepEqual(await seatsOf(page), expected, delimiter);
  }
  assert.deepEqual(await faultsOf(page), []);
  assert.deepEqual(seen.errors, []);
  assert.deepEqual(seen.violations, []);
});

test('what is wrong is told by row and column, and stops no other row', async () => {
  const { page } = await openSeats(open);
  await paste(
    page,
    [
      'seat\tname\tyarn\tgauge st per 10 cm\trounds\tfoot cm\tball girth cm\tleg cm',
      '1\t\t4\t19\t26\t24,5\t22 cm\t20',
      '2\t\tthick\t19\t26\t1,245\t22\t20',
      '3\t\t9\t19\t26\t24\t22\t20',
      '4\t\t4\t19\t26\t24\t',
      // A gauge is stitches and rounds.
      '5\t\t4\t19\t\t24\t22\t20',
      '6\t\t4\t19\t26\t24\t8 3/4 in\t4',
      '7\t\t4\t19\t26\t24\t22\t20',
    ].join('\n'),
  );
  const faults = await faultsOf(page);
  assert.deepEqual(
    faults.map((text) => text.split(': ')[0]),
    [
      'Row 1',
      'Row 3, seat 2, “yarn”',
      'Row 3, seat 2, “foot cm”',
      'Row 4, seat 3, “yarn”',
      'Row 5, seat 4, “ball girth cm”',
      'Row 6, seat 5, “gauge st per 10 cm”',
      'Row 7, seat 6, “leg cm”',
    ],
  );
  assert.match(faults[0], /“name” is not known here/);
  assert.match(faults[2], /“1,245” can be read two ways/);
  assert.match(faults[3], /Between 0 and 7/);
  assert.match(faults[4], /needed/);
  assert.match(faults[5], /both needed/);
  assert.match(faults[6], /At least [\d.]+ cm/);
  assert.match(await page.locator('#roster .planned').innerText(), /^2 of 7 seats planned/);
  const rows = await seatsOf(page);
  assert.deepEqual(
    rows.map((cells) => cells.length),
    [6, 2, 2, 2, 2, 2, 6],
  );
  assert.match(rows[1][1], /“thick” is no yarn weight/);
  // The limit is told in the units of the page.
  await page.locator('input[name="system"][value="inch"]').check();
  await settled(page);
  const inInches = await faultsOf(page);
  assert.match(inInches.at(-1), /At least [\d.]+ in/);
});

test('without a heading row it says what is expected, and its sample is a table that is read whole', async () => {
  const { page } = await openSeats(open);
  await paste(page, '1;24,5;22\n2;25;23');
  assert.match(await page.locator('#roster').innerText(), /The first row has to say/);
  assert.equal(await page.locator('.roster').count(), 0);
  await press(page, 'copy this table');
  const sample = await page.evaluate(() => navigator.clipboard.readText());
  await paste(page, sample);
  assert.deepEqual(await faultsOf(page), []);
  assert.match(await page.locator('#roster .planned').innerText(), /^4 seats, all planned/);
  assert.doesNotMatch(await page.locator('#roster').innerText(), /The first row has to say/);
});

test('a seat with nothing of its own is the class’s own sock, and follows it', async () => {
  const { page } = await openSeats(open);
  await paste(page, 'seat\n1');
  const { stitchCount, totalRounds } = askCore('plan', common);
  assert.deepEqual((await seatsOf(page))[0].slice(0, 3), [
    '1',
    String(stitchCount),
    String(totalRounds),
  ]);
  await goTo(page, 'Count');
  await page.locator('#f-foot-lengthMm').fill('21');
  await toSeats(page);
  await settled(page);
  const shorter = askCore('plan', { ...common, foot: { ...common.foot, lengthMm: 210 } });
  assert.ok(shorter.totalRounds < totalRounds);
  assert.equal((await seatsOf(page))[0][2], String(shorter.totalRounds));
});

const numberOf = (text) => Number.parseFloat(text.replace(/\s/g, '').replace('\u2212', '-'));
const sumOf = (numbers) => numbers.reduce((sum, one) => sum + one, 0);

test('the totals are the core’s, and the sum of as many single plans', async () => {
  const seed = Number(process.env.TWINROUND_SEED ?? Date.now() % 1e9);
  console.log(`TWINROUND_SEED=${seed}`);
  const seats = randomSeats(40, randomFrom(seed));
  const { page } = await openSeats(open);
  await paste(page, withTabs(seats));
  const roster = askCore('roster', { version: 1, class: common, seats: seats.map(partOf) });
  const planned = seats.map((seat) => ({ yarn: seat.yarn, plan: planOf(seat) }));
  assert.equal(roster.planned, seats.length);

  const wool = await rowsOf(page, '.roster-totals > :first-child');
  assert.equal(wool.length, roster.wool.length);
  wool.forEach(([name, pairs, metres, grams, balls], i) => {
    const total = roster.wool[i];
    const plans = planned.filter(({ yarn }) => yarn === total.category).map(({ plan }) => plan);
    assert.match(name, new RegExp(`^${total.category} `));
    assert.equal(numberOf(pairs), plans.length);
    assert.equal(numberOf(balls), total.balls);
    for (const [shown, ours, sum] of [
      [metres, total.m, sumOf(plans.map(({ yarn }) => yarn.mWithMargin))],
      [grams, total.g, sumOf(plans.map(({ yarn }) => yarn.gWithMargin))],
    ]) {
      assert.ok(Math.abs(ours - sum) < 1e-6 * sum, `${ours} and ${sum}`);
      assert.ok(Math.abs(numberOf(shown) - sum) <= 0.5 + 1e-9, `${shown} and ${sum}`);
    }
  });

  const needles = await rowsOf(page, '.roster-totals > :last-child');
  assert.deepEqual(
    needles.map(([mm, , , count]) => [numberOf(mm), numberOf(count)]),
    roster.needles.map(({ mm, count }) => [mm, count]),
  );
  assert.equal(sumOf(needles.map((cells) => numberOf(cells[3]))), seats.length);

  // Seats with an odd gauge come first, in words.
  const odd = roster.seats.flatMap(({ odd: all = [] }, i) =>
    all.some(({ field }) => field.startsWith('/swatch')) ? [`Seat ${i + 1}`] : [],
  );
  const told = await page.locator('#roster .odd-gauges li').allInnerTexts();
  assert.deepEqual(
    told.slice(0, 20).map((text) => text.split(':')[0]),
    odd.length > 20 ? [...odd.slice(0, 20)] : odd,
  );

  // The table as a file has the same figures, and reckons nothing.
  const waiting = page.waitForEvent('download');
  await page.locator('[data-carry="roster.csv"]').click();
  const download = await waiting;
  assert.equal(download.suggestedFilename(), 'twinround-roster.csv');
  const text = readFileSync(await download.path(), 'utf8').replace(/^\ufeff/, '');
  const { data } = Papa.parse(text, { skipEmptyLines: true });
  assert.equal(data.length, seats.length + 1);
  data.slice(1).forEach(([seat, stitches, rounds, metres], i) => {
    const { stitchCount, totalRounds, mWithMargin } = roster.seats[i].line;
    assert.deepEqual(
      [seat, stitches, rounds],
      [seats[i].seat, String(stitchCount), String(totalRounds)],
    );
    assert.ok(Math.abs(Number(metres) - mWithMargin) <= 0.05 + 1e-9);
  });

  await page.locator('[data-carry="roster.copy"]').click();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  for (const [name, pairs, metres, grams] of wool)
    assert.ok(
      copied.includes(`${name}: pairs ${pairs}; yarn ${metres}; weight ${grams}`),
      `${name} in ${copied}`,
    );
});

test('nothing of it is lost on reload', async () => {
  const { page } = await openSeats(open);
  await paste(page, kinds);
  const rows = await seatsOf(page);
  await again(page);
  await page.waitForFunction(answered);
  await toSeats(page);
  await page.waitForSelector('.roster tbody tr');
  assert.equal(await page.locator('#lesson-roster').inputValue(), kinds);
  assert.deepEqual(await seatsOf(page), rows);
});

test('what is wrong in a thousand rows is told once, and each row says why', async () => {
  const { page } = await openSeats(open);
  const rows = Array.from({ length: 1000 }, (_, i) => `${i + 1}\t24\t22`);
  await paste(page, `seat\tfoot\tball girth cm\n${rows.join('\n')}`);
  assert.deepEqual(await faultsOf(page), [
    'Rows 2, 3, 4 and 997 more, “foot”: cm or in? Say it in the head, as in “foot cm”, or behind each number.',
  ]);
  const shown = await seatsOf(page);
  assert.equal(shown.length, 1000);
  assert.match(shown[999][1], /no sock: foot: cm or in/);
});

test('a table longer than the field is cut there, and that is said', async () => {
  const { page } = await openSeats(open);
  await paste(page, withTabs(someSeats));
  assert.doesNotMatch(await page.locator('#roster').innerText(), /field is full/);
  const long = `seat\tyarn\n1\t4\n${' '.repeat(250_000)}`;
  await paste(page, long);
  assert.equal((await page.locator('#lesson-roster').inputValue()).length, 200_000);
  assert.match(await page.locator('#roster').innerText(), /field is full/);
  assert.equal((await seatsOf(page)).length, 1);
  await again(page);
  await toSeats(page);
  assert.equal((await page.locator('#lesson-roster').inputValue()).length, 200_000);
});
