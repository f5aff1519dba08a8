// A teacher's class on the page: a pasted table becomes a row of figures for each seat, and totals that are the sum of them.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import Papa from 'papaparse';

import { loadCore } from '../../tools/js/load_core.mjs';
import { readDraft } from '../../web/script/form.js';
import { startState } from '../../web/script/state.js';
import { again, answered, goTo, openBrowser, press, readNote } from './open_page.mjs';
import {
  faultsOf,
  openSeats,
  partOf,
  paste,
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
let core;
before(async () => {
  ({ open, end } = await openBrowser());
  core = await loadCore();
});
after(() => end());

const ask = (question, request) => JSON.parse(core.answer(question, JSON.stringify(request)));
/** The example's sock, which the page is delivered with: the class's, for whoever sets no other. */
const common = readDraft(startState().draft).request;

/** The plan of one seat asked alone: a yarn of its own takes neither swatch nor ball from the class. */
function planOf(seat) {
  const { inHand: _aside, ...part } = partOf(seat);
  return ask('plan', { ...common, ...part }).plan;
}

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
  const { stitchCount, totalRounds } = ask('plan', common).plan;
  assert.deepEqual((await seatsOf(page))[0].slice(0, 3), [
    '1',
    String(stitchCount),
    String(totalRounds),
  ]);
  await goTo(page, 'Count');
  await page.locator('#f-foot-lengthMm').fill('21');
  await toSeats(page);
  await settled(page);
  const shorter = ask('plan', { ...common, foot: { ...common.foot, lengthMm: 210 } }).plan;
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
  const { roster } = ask('roster', { version: 1, class: common, seats: seats.map(partOf) });
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

/** Seats told in all ways; what each row shows is what its plan comes to. */
const kinds = [
  'seat\tyarn\tstitches per 10 cm\trounds per 10 cm\tfoot\tball girth\tshoe\tworn by\tleg\tpace\tballs',
  '1\t1\t30\t42\t24,5 cm\t22 cm\t\t\t20 cm\t25\t2',
  '2\t4\t20 per 4 in\t28 per 4 in\t9 1/2 in\t8 3/4 in\t\t\t7 7/8 in\t\t',
  '3\t2\t\t\t\t\tEU 38\twoman\t\t\t',
  '4\t\t\t\t23,3 cm\t21,7 cm\t\t\t\t\t',
  '5\t\t28,25\t38\t\t\tUS men 9\tman\t22 cm\t12\t',
  '6',
].join('\n');

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
