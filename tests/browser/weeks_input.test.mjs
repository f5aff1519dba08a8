// What is typed for the teacher's weeks: what is missing or wrong is told at its field, with what would do.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { again, openBrowser } from './open_page.mjs';
import {
  askWeeks,
  course,
  field,
  openWeeks,
  place,
  requestOn,
  tableOn,
  texts,
  type,
  wrongAt,
} from './weeks_fold.mjs';

let open;
let end;
let shared;
before(async () => {
  ({ open, end } = await openBrowser());
  shared = (await open()).page;
  await openWeeks(shared, texts(course));
});
after(() => end());

test('nothing is asked before it is known how often and how long', async () => {
  const { page } = await open();
  await openWeeks(page);
  assert.match(await place(page).innerText(), /Type how often the class meets/);
  await type(page, { meetings: '8' });
  assert.equal(await place(page).locator('table').count(), 0);
  await type(page, { minutesInClass: '90' });
  assert.equal((await tableOn(page)).length, 8);
  await type(page, { meetings: '' });
  assert.equal(await place(page).locator('table').count(), 0);
  assert.equal(await wrongAt(page, 'meetings'), '');
});

for (const [name, text, expected] of [
  ['meetings', '0', /^Between 1 and 30, please\.$/],
  ['meetings', '31', /^Between 1 and 30, please\.$/],
  ['meetings', '2.5', /^A whole number, please\.$/],
  ['meetings', 'many', /“many” is no number/],
  ['minutesInClass', '4.5', /^Between 5 and 1440, please\.$/],
  ['minutesInClass', '1441', /^Between 5 and 1440, please\.$/],
  ['minutesInClass', '90 cm', /What fits: min\./],
  ['minutesInClass', '1.5 h', /Known: min\./],
  ['minutesAtHome', '-0.5', /^Between 0 and 10080, please\.$/],
  ['minutesAtHome', 'none', /“none” is no number/],
  ['castOnMinutes', '1440.5', /^Between 0 and 1440, please\.$/],
]) {
  test(`${text} in ${name} is told there, with what would do, and nothing is told of the weeks`, async () => {
    const page = shared;
    await type(page, { [name]: text });
    assert.match(await wrongAt(page, name), expected);
    assert.equal(await page.locator(`#${field(name)}`).getAttribute('aria-invalid'), 'true');
    assert.equal(await place(page).locator('table').count(), 0);
    assert.match(await place(page).innerText(), /Mend what is marked/);
    // The sock's own plan stands, whatever is wrong here.
    assert.equal(await page.locator('html[data-last-good]').count(), 0);
    await type(page, { [name]: String(course[name] ?? 20) });
    assert.equal(await wrongAt(page, name), '');
    assert.equal((await tableOn(page)).length, 8);
  });
}

test('minutes may be written out, and are still there after a reload', async () => {
  const { page } = await open();
  await openWeeks(page, { meetings: '8', minutesInClass: '90 min', minutesAtHome: '60' });
  const rows = await tableOn(page);
  assert.equal(rows.length, 8);
  await again(page);
  await openWeeks(page);
  assert.deepEqual(await tableOn(page), rows);
  await type(page, { minutesInClass: '90' });
  assert.deepEqual(await tableOn(page), rows);
});

test('half a minute is as good as any', async () => {
  const { page } = await open();
  const request = await requestOn(page);
  const asked = { ...course, minutesInClass: 67.5 };
  await openWeeks(page, texts(asked));
  const { weeks } = askWeeks({ class: request, knitters: [{}], ...asked });
  const rows = await tableOn(page);
  weeks.knitters[0].weeks.meetings.forEach(({ roundsAtStart, roundsAtEnd }, at) => {
    if (rows[at].cells[0][0] === 'done') return;
    assert.equal(rows[at].cells[0][0], `${roundsAtStart}–${roundsAtEnd}`);
  });
  assert.match(await place(page).innerText(), /8 meetings of 67\.5 min/);
});
