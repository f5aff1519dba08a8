// Meetings as a calendar file, read back by ical.js (RFC 5545, a reader that is not ours), in several time zones.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { describe, it } from 'node:test';

import ICAL from 'ical.js';

import { writeCalendar } from '../../web/script/export/calendar.js';
import { dayAfter, isDay, writeDay } from '../../web/script/units/days.js';

const now = new Date('2027-01-02T03:04:05.678Z');
const meeting = {
  uid: 'a-1',
  day: '2027-01-12',
  time: '19:00',
  minutes: 90,
  title: 'First evening',
  text: 'Cast on.',
};
const eventsIn = (text) =>
  new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents('vevent')
    .map((one) => new ICAL.Event(one));

describe('a calendar', () => {
  it('is read back as it was meant', () => {
    const [event] = eventsIn(writeCalendar([meeting], now));
    assert.equal(event.uid, 'a-1');
    assert.equal(event.startDate.toString(), '2027-01-12T19:00:00');
    assert.equal(event.endDate.toString(), '2027-01-12T20:30:00');
    assert.equal(event.summary, 'First evening');
    assert.equal(event.description, 'Cast on.');
  });

  it('floats: no time zone stands in it', () => {
    const text = writeCalendar([meeting], now);
    const [event] = eventsIn(text);
    assert.equal(event.startDate.zone, ICAL.Timezone.localTimezone);
    assert.match(text, /\r\nDTSTART:20270112T190000\r\n/);
    assert.match(text, /\r\nDTSTAMP:20270102T030405Z\r\n/);
  });

  for (const text of [
    'a; b, c\\n and \\ and\nnext\r\nlast',
    'ends in a backslash \\',
    'ü'.repeat(200),
    '🧦🧶'.repeat(60),
    `a${'é'.repeat(100)}`,
    'BEGIN:VEVENT\r\nUID:forged',
    '',
  ]) {
    it(`keeps ${JSON.stringify(text.slice(0, 30))} in a title and a text`, () => {
      const written = writeCalendar([{ ...meeting, title: text, text }], now);
      const events = eventsIn(written);
      assert.equal(events.length, 1);
      const meant = text.replace(/\r\n|\r/g, '\n');
      assert.equal(events[0].summary ?? '', meant);
      assert.equal(events[0].description ?? '', meant);
      for (const line of written.split('\r\n')) assert.ok(Buffer.byteLength(line) <= 75, line);
      assert.ok(!/[^\r]\n/.test(written));
    });
  }

  it('holds every meeting, in order', () => {
    const days = ['2027-03-23', '2027-03-30', '2027-04-06'];
    const meetings = days.map((day, i) => ({ ...meeting, day, uid: `a-${i}` }));
    const starts = eventsIn(writeCalendar(meetings, now)).map(({ startDate }) =>
      startDate.toString(),
    );
    assert.deepEqual(starts, ['2027-03-23T19:00:00', '2027-03-30T19:00:00', '2027-04-06T19:00:00']);
  });
});

describe('a day', () => {
  for (const [day, days, then] of [
    ['2027-01-12', 7, '2027-01-19'],
    ['2027-12-28', 7, '2028-01-04'],
    ['2028-02-26', 7, '2028-03-04'],
    // The clocks change in Europe on 28 March, in America on 14 March 2027.
    ['2027-03-23', 7, '2027-03-30'],
    ['2027-03-09', 7, '2027-03-16'],
    ['2027-01-12', 0, '2027-01-12'],
  ]) {
    it(`${day} and ${days} days is ${then}`, () => assert.equal(dayAfter(day, days), then));
  }

  for (const none of ['', '2027-02-29', '2027-13-01', '2027-00-10', '12.1.2027', '2027-1-2']) {
    it(`${JSON.stringify(none)} is none`, () => {
      assert.equal(isDay(none), false);
      assert.equal(dayAfter(none, 7), '');
    });
  }

  it('is one in a leap year', () => assert.ok(isDay('2028-02-29')));

  it('is the same wherever the page is read', () => {
    const script = `import(${JSON.stringify(new URL('../../web/script/units/days.js', import.meta.url))})
      .then(({ dayAfter, writeDay }) => console.log(dayAfter('2027-03-23', 7), writeDay('2027-03-30')))`;
    const said = [
      'Pacific/Kiritimati',
      'Pacific/Pago_Pago',
      'Europe/Lisbon',
      'America/St_Johns',
    ].map(
      (TZ) => execFileSync(process.execPath, ['-e', script], { env: { ...process.env, TZ } }) + '',
    );
    assert.deepEqual([...new Set(said)], [`2027-03-30 ${writeDay('2027-03-30')}\n`]);
    assert.equal(writeDay('2027-03-30'), 'Tuesday, 30 March 2027');
  });
});
