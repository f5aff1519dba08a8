// The teacher's weeks: what stands on the page, against the core asked without it.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { again, goTo, openBrowser, press, typeInto } from './open_page.mjs';
import {
  askWeeks,
  course,
  endsOn,
  openWeeks,
  place,
  requestOn,
  tableOn,
  texts,
  tick,
} from './weeks_fold.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const ofYarn = (category) => ({ yarn: { category } });

// What a reader looks for, by the core's word for it.
const said = {
  castOn: /^cast on$/,
  toe: /toe done after (\d+)/,
  firstShift: /rib’s first step after (\d+)/,
  tryOn: /try on after (\d+)/,
  cuff: /cuff begins after (\d+)/,
  bindOff: /bind off \(cast off\) after (\d+)/,
};

/** Of every milestone where it stands in the table: the row's head, and whether at home. */
function standing(rows, column) {
  const found = {};
  for (const { head, cells } of rows)
    for (const line of cells[column]) {
      const isHome = line.startsWith('at home: ');
      for (const part of line.replace('at home: ', '').split(', '))
        for (const [name, pattern] of Object.entries(said)) {
          const match = pattern.exec(part);
          if (!match) continue;
          assert.ok(!(name in found), `${name} stands twice`);
          found[name] = [head, isHome, Number(match[1] ?? 0)];
        }
    }
  return found;
}

const whereOf = ({ when, meeting, rounds }) => [
  when === 'late' ? 'After the last' : `Meeting ${meeting}`,
  when === 'home',
  rounds,
];

const classes = {
  'the sock of the sheet': { yarns: [], asked: course },
  'three yarns, one of them too fine': { yarns: [1, 4, 7], asked: course },
  'one meeting': { yarns: [4], asked: { meetings: 1, minutesInClass: 240 } },
  'a long cast-on and no homework': {
    yarns: [5],
    asked: { meetings: 30, minutesInClass: 20, castOnMinutes: 45 },
  },
  'all eight yarns': {
    yarns: [0, 1, 2, 3, 4, 5, 6, 7],
    asked: { meetings: 12, minutesInClass: 75, minutesAtHome: 240 },
  },
};

for (const [name, { yarns, asked }] of Object.entries(classes)) {
  test(`of ${name} every meeting has the core’s own rounds and milestones`, async () => {
    const { page, seen } = await open();
    const request = await requestOn(page);
    await goTo(page, 'Class');
    await tick(page, yarns);
    await openWeeks(page, texts(asked));
    const knitters = yarns.length > 0 ? yarns.map(ofYarn) : [{}];
    const { weeks } = askWeeks({ class: request, knitters, ...asked });
    const rows = await tableOn(page);
    const isLate = weeks.knitters.some((one) => !one.weeks.finishes);
    assert.equal(rows.length, asked.meetings + (isLate ? 1 : 0));
    weeks.knitters.forEach(({ weeks: one }, column) => {
      one.meetings.forEach(({ roundsAtStart, roundsAtEnd }, at) => {
        const told = roundsAtStart === one.totalRounds ? 'done' : `${roundsAtStart}–${roundsAtEnd}`;
        assert.equal(rows[at].cells[column][0], told, `meeting ${at + 1} of ${column}`);
      });
      const expected = Object.fromEntries(
        one.milestones.map((milestone) => [milestone.milestone, whereOf(milestone)]),
      );
      assert.deepEqual(standing(rows, column), expected);
    });
    assert.deepEqual(seen.errors, []);
    assert.deepEqual(seen.violations, []);
  });
}

/** "9 h", "2 h 50 min", "15 min" in minutes. */
function minutesIn(text) {
  const [, hours = 0] = /(\d+) h/.exec(text) ?? [];
  const [, minutes = 0] = /(\d+) min/.exec(text) ?? [];
  return Number(hours) * 60 + Number(minutes);
}

test('time to spare, time missing and the least pace are the core’s', async () => {
  const { page } = await open();
  const request = await requestOn(page);
  await goTo(page, 'Class');
  await tick(page, [1, 3, 4]);
  await openWeeks(page, texts(course));
  const { weeks } = askWeeks({ class: request, knitters: [1, 3, 4].map(ofYarn), ...course });
  const told = await endsOn(page);
  assert.deepEqual(
    weeks.knitters.map((one) => one.weeks.finishes),
    [false, true, true],
  );
  weeks.knitters.forEach(({ weeks: one }, at) => {
    const text = told[at];
    assert.match(
      text,
      new RegExp(`^${one.stitchCount} stitches, ${one.totalRounds} rounds a sock`),
    );
    const [, time] = /(?:with|meeting:) ([\dhmin ]+) (?:to spare|missing)/.exec(text);
    const slack = Math.abs(one.slackMinutes);
    // Told to five minutes, from three hours on to thirty, from ten to the hour.
    const near = slack < 177.5 ? 2.5 : slack < 585 ? 15 : 45;
    assert.ok(Math.abs(minutesIn(time) - slack) <= near, `${time} of ${slack}`);
    const pace = one.finishes
      ? /Under (\d+) stitches a minute the socks are not done/
      : /It takes (\d+) stitches a minute/;
    assert.equal(Number(pace.exec(text)[1]), one.leastPace);
  });
  assert.match(await place(page).innerText(), /fewer rounds \(a lower leg\), or more homework/);
});

test('who knits at the least pace is done in time, and who is slower is told to be late', async () => {
  const { page } = await open();
  await openWeeks(page, texts(course));
  const [, least] = /Under (\d+) stitches a minute/.exec((await endsOn(page))[0]);
  for (const [pace, expected] of [
    [Number(least), new RegExp(`At ${least} stitches a minute the last round is knit .* to spare`)],
    [Number(least) - 1, /not done by the last meeting: .* missing/],
  ]) {
    await goTo(page, 'Count');
    await page.locator('.finer').evaluate((fold) => (fold.open = true));
    await typeInto(page, 'f-pace-stitchesPerMinute', String(pace));
    await goTo(page, 'Class');
    assert.match((await endsOn(page))[0], expected);
  }
});

test('where no hand is fast enough it is said, and no homework is advised for a single meeting', async () => {
  const { page } = await open();
  await openWeeks(page, { meetings: '1', minutesInClass: '5' });
  assert.match((await endsOn(page))[0], /No hand is fast enough/);
  const all = await place(page).innerText();
  assert.match(all, /or more time/);
  assert.doesNotMatch(all, /more homework/);
});

test('a yarn of which no sock comes is said to be one, and the others stand', async () => {
  const { page } = await open();
  await goTo(page, 'Count');
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('form details')) fold.open = true;
  });
  // An infant's foot: in the thickest yarn it would take four stitches.
  for (const [id, text] of Object.entries({
    'foot-ballGirthMm': '10',
    'foot-lengthMm': '10',
    legHeightMm: '9',
    cuffMm: '2',
  }))
    await page.locator(`#f-${id}`).fill(text);
  const request = await requestOn(page);
  const asked = { class: request, knitters: [7, 4].map(ofYarn), ...course };
  const { weeks } = askWeeks(asked);
  await goTo(page, 'Class');
  await tick(page, [7, 4]);
  await openWeeks(page, texts(course));
  const told = await endsOn(page);
  // Ticked boxes stand in their own order.
  const isNone = [weeks.knitters[1], weeks.knitters[0]].map((one) => !one.weeks);
  assert.deepEqual(isNone, [false, true]);
  assert.deepEqual(
    told.map((text) => text.startsWith('no sock')),
    isNone,
  );
  assert.equal((await tableOn(page))[0].cells.length, 1);
});

test('a sock on the needles is told as it was begun', async () => {
  const { page } = await open();
  await goTo(page, 'Count');
  await page.locator('.finer').evaluate((fold) => (fold.open = true));
  await typeInto(page, 'f-pace-stitchesPerMinute', '11');
  const request = await requestOn(page);
  await press(page, 'I have cast on: begin this sock');
  await openWeeks(page, texts(course));
  const { weeks } = askWeeks({ class: request, knitters: [{}], ...course });
  const [one] = weeks.knitters;
  const expected = one.weeks.meetings.map(({ roundsAtStart, roundsAtEnd }) =>
    roundsAtStart === one.weeks.totalRounds ? 'done' : `${roundsAtStart}–${roundsAtEnd}`,
  );
  const told = async () => (await tableOn(page)).slice(0, 8).map(({ cells }) => cells[0][0]);
  assert.deepEqual(await told(), expected);
  assert.match((await endsOn(page))[0], /At 11 stitches a minute/);
  // Her class is hers: it is open while the sock is settled, and is there again.
  await again(page);
  await openWeeks(page);
  assert.deepEqual(await told(), expected);
});
