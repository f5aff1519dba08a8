// The class's meetings as they come out of the page as a calendar file, read back by ical.js: the same hours in every
// time zone, and the same entries whenever they are taken anew.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import ICAL from 'ical.js';

import { again, goTo, openBrowser } from './open_page.mjs';
import {
  buttonOf,
  field,
  openWeeks,
  place,
  tableOn,
  takeCalendar,
  tick,
  type,
  wrongAt,
} from './weeks_fold.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const eventsIn = (text) =>
  new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents('vevent')
    .map((one) => new ICAL.Event(one));
const uidsIn = (text) => eventsIn(text).map(({ uid }) => uid);
const startsIn = (text) => eventsIn(text).map(({ startDate }) => startDate.toString());

// Summer time ends on 31 October 2027 in Berlin and on 7 November in New York; in Auckland it begins on 26 September.
const autumn = {
  meetings: '8',
  minutesInClass: '90',
  minutesAtHome: '60',
  day: '2027-09-21',
  time: '19:00',
};
const tuesdays = [
  '2027-09-21',
  '2027-09-28',
  '2027-10-05',
  '2027-10-12',
  '2027-10-19',
  '2027-10-26',
  '2027-11-02',
  '2027-11-09',
];

async function openClass({ title = 'Tuesday socks', yarns = [], typed = autumn, ...context } = {}) {
  const { page } = await open(context);
  await goTo(page, 'Class');
  await page.locator('[data-lesson="title"]').fill(title);
  await tick(page, yarns);
  await openWeeks(page, typed);
  return page;
}

test('across the end of summer time it is the same file in Berlin, New York and Auckland', async () => {
  const files = [];
  for (const timezoneId of ['Europe/Berlin', 'America/New_York', 'Pacific/Auckland']) {
    const page = await openClass({ timezoneId });
    const zone = await page.evaluate(() => Intl.DateTimeFormat().resolvedOptions().timeZone);
    assert.equal(zone, timezoneId);
    const heads = (await tableOn(page)).map(({ when }) => when);
    assert.deepEqual(heads.slice(0, 8), [
      'Tuesday, 21 September 2027, 19:00',
      'Tuesday, 28 September 2027, 19:00',
      'Tuesday, 5 October 2027, 19:00',
      'Tuesday, 12 October 2027, 19:00',
      'Tuesday, 19 October 2027, 19:00',
      'Tuesday, 26 October 2027, 19:00',
      'Tuesday, 2 November 2027, 19:00',
      'Tuesday, 9 November 2027, 19:00',
    ]);
    const { name, text } = await takeCalendar(page);
    assert.equal(name, 'twinround-weeks.ics');
    assert.deepEqual(
      startsIn(text),
      tuesdays.map((day) => `${day}T19:00:00`),
    );
    for (const { startDate } of eventsIn(text))
      assert.equal(startDate.zone, ICAL.Timezone.localTimezone);
    // When it was written, and each browser's own number, are all that differs.
    files.push(text.replace(/DTSTAMP:.*/g, '').replace(/UID:[0-9a-f]+/g, ''));
  }
  assert.equal(new Set(files).size, 1);
});

test('each entry says which meeting it is, and its rounds and milestones', async () => {
  const page = await openClass({ title: 'Socks, at last; twice', yarns: [1, 4] });
  const rows = await tableOn(page);
  const events = eventsIn((await takeCalendar(page)).text);
  assert.equal(events.length, 8);
  events.forEach(({ summary, description, startDate, endDate }, at) => {
    assert.equal(summary, `Socks, at last; twice: meeting ${at + 1} of 8`);
    assert.equal(endDate.subtractDate(startDate).toSeconds(), 90 * 60);
    const lines = description.split('\n');
    assert.deepEqual(
      lines.map((line) => line.split(':')[0]),
      ['1 super fine (fingering, 4-ply)', '4 medium (worsted, aran)'],
    );
    rows[at].cells.forEach((cell, column) => {
      for (const part of cell)
        assert.ok(lines[column].includes(part), `${part} in ${lines[column]}`);
    });
  });
});

test('typed by keys, a day and an hour are read', async () => {
  const page = await openClass({ typed: { ...autumn, day: '', time: '' } });
  await page.locator(`#${field('day')}`).focus();
  await page.keyboard.type('09212027');
  await page.locator(`#${field('time')}`).focus();
  await page.keyboard.type('0700PM');
  assert.deepEqual(startsIn((await takeCalendar(page)).text)[7], '2027-11-09T19:00:00');
});

test('a calendar has whole minutes alone: the nearest', async () => {
  const page = await openClass({ typed: { ...autumn, minutesInClass: '67.5' } });
  const [{ startDate, endDate }] = eventsIn((await takeCalendar(page)).text);
  assert.equal(endDate.subtractDate(startDate).toSeconds(), 68 * 60);
});

test('taken anew the entries are the same, whatever has moved', async () => {
  const page = await openClass();
  const { text } = await takeCalendar(page);
  const first = uidsIn(text);
  assert.equal(new Set(first).size, 8);
  await type(page, { day: '2027-09-23', time: '18:30', daysBetween: '14', minutesAtHome: '90' });
  const moved = (await takeCalendar(page)).text;
  assert.deepEqual(uidsIn(moved), first);
  assert.equal(startsIn(moved)[1], '2027-10-07T18:30:00');
  await again(page);
  await openWeeks(page, { meetings: '9' });
  const longer = uidsIn((await takeCalendar(page)).text);
  assert.deepEqual(longer.slice(0, 8), first);
  assert.equal(new Set(longer).size, 9);
  // The wool is another, the meetings are not.
  await tick(page, [3]);
  assert.deepEqual(uidsIn((await takeCalendar(page)).text), longer);
});

test('another class has other entries, and so has another teacher', async () => {
  const page = await openClass();
  const first = uidsIn((await takeCalendar(page)).text);
  await page.locator('[data-lesson="title"]').fill('Thursday socks');
  const second = uidsIn((await takeCalendar(page)).text);
  const other = uidsIn((await takeCalendar(await openClass())).text);
  assert.equal(new Set([...first, ...second, ...other]).size, 24);
  await page.locator('[data-lesson="title"]').fill('Tuesday socks');
  assert.deepEqual(uidsIn((await takeCalendar(page)).text), first);
  // RFC 7986, 5.3: not so long that a calendar cuts it, and no host in it.
  for (const uid of [...first, ...other]) assert.match(uid, /^[0-9a-f]{32}-[0-9a-f]{8}-\d$/);
});

test('without a day or an hour no calendar is offered, and it is said what is missing', async () => {
  const page = await openClass({ typed: { meetings: '3', minutesInClass: '90' } });
  const hint = async () => place(page).locator('.aside').last().innerText();
  assert.equal(await buttonOf(page, 'ics').count(), 0);
  assert.match(await hint(), /the first day and the time/);
  await type(page, { day: '2027-09-21' });
  assert.equal(await buttonOf(page, 'ics').count(), 0);
  assert.match(await hint(), /type the time of day too/);
  assert.equal((await tableOn(page))[0].when, 'Tuesday, 21 September 2027');
  await type(page, { day: '', time: '19:00' });
  assert.equal(await buttonOf(page, 'ics').count(), 0);
  assert.match(await hint(), /type the first day too/);
  assert.equal((await tableOn(page))[0].when, '');
  await type(page, { day: '2027-09-21' });
  assert.equal(await buttonOf(page, 'ics').count(), 1);
});

test('days between are whole and from 1 to 366; till then no day is told, and the rounds stand', async () => {
  const page = await openClass();
  for (const [text, expected] of [
    ['0', /Between 1 and 366/],
    ['367', /Between 1 and 366/],
    ['3.5', /A whole number/],
    ['weekly', /“weekly” is no number/],
  ]) {
    await type(page, { daysBetween: text });
    assert.match(await wrongAt(page, 'daysBetween'), expected);
    const rows = await tableOn(page);
    assert.deepEqual([rows.length, rows[1].when], [8, '']);
    assert.equal(await buttonOf(page, 'ics').count(), 0);
  }
  for (const [text, day] of [
    ['1', 'Wednesday, 22 September 2027, 19:00'],
    ['366', 'Thursday, 21 September 2028, 19:00'],
    ['', 'Tuesday, 28 September 2027, 19:00'],
  ]) {
    await type(page, { daysBetween: text });
    assert.equal(await wrongAt(page, 'daysBetween'), '');
    assert.equal((await tableOn(page))[1].when, day);
  }
});
