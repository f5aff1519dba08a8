// A sock on the needles keeps what it was cast on with, whatever the page's rules become.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { again, changeKept, goTo, openBrowser, press, readNote, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const foot = '#f-foot-lengthMm';

async function begin(page) {
  await goTo(page, 'Knit');
  await press(page, 'I have cast on: begin this sock');
  await goTo(page, 'Count');
}

test('once begun it cannot be changed, and can be gone back from, or gone on from with another', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', '25');
  const note = await readNote(page);
  await begin(page);
  assert.match(await page.textContent('[data-key="begun"]'), /numbers stay as they were cast on/);
  assert.equal(await page.locator(foot).isDisabled(), true);
  assert.equal(await page.locator('.choices-place').isVisible(), false);
  assert.equal(await page.locator('[data-kept="undo"]').count(), 0);
  await again(page);
  assert.equal(await page.locator(foot).isDisabled(), true);
  assert.deepEqual(await readNote(page), note);
  await press(page, 'another sock from this one');
  assert.equal(await page.locator(foot).isDisabled(), false);
  assert.deepEqual(await readNote(page), note);
  await page.locator('#socks').evaluate((fold) => (fold.open = true));
  assert.match(await page.locator('#socks li').first().textContent(), /, begun/);
  await press(page, 'open a sock without a name');
  await press(page, 'not begun after all');
  await typeInto(page, 'f-foot-ballGirthMm', '30');
  assert.notDeepEqual(await readNote(page), note);
});

test('its units can still be read either way', async () => {
  const { page } = await open();
  await begin(page);
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  assert.match(await page.textContent('.sentence'), /9 [^ ]+in/);
});

test('nothing is begun while a field is wrong', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', 'x');
  await goTo(page, 'Knit');
  const button = page.locator('[data-kept="begin"]');
  assert.equal(await button.getAttribute('aria-disabled'), 'true');
  await button.click({ force: true });
  assert.equal(await page.locator('[data-key="begun"]').count(), 0);
});

test('of older rules it keeps the older numbers', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', '25');
  const today = await readNote(page);
  await begin(page);
  // As if the older rules had advised one count more.
  const core = await loadCore();
  const ask = (request) => JSON.parse(core.answer('plan', JSON.stringify(request)));
  const kept = await page.evaluate(
    () => Object.entries(localStorage).find(([name]) => name.startsWith('twinround/sock/'))[1],
  );
  const { request } = JSON.parse(kept).started;
  const older = ask({ ...request, stitchCount: Number(today['stitches a round']) + 4 });
  await changeKept(page, `sheet.started.reply = ${JSON.stringify({ ...older, rules: 1 })};`);
  await again(page);
  const note = await readNote(page);
  assert.equal(note['stitches a round'], String(older.plan.stitchCount));
  assert.equal(note['wraps a sock'], String(older.plan.castOn.wraps));
  await goTo(page, 'Knit');
  const last = page.locator('.toe tbody tr').last();
  assert.match(await last.textContent(), new RegExp(String(older.plan.stitchCount)));
});

for (const [name, change] of Object.entries({
  'of these rules but with other numbers': 'sheet.started.reply.plan.stitchCount = 48;',
  'without its lines': 'sheet.started.reply.rules = 1; delete sheet.started.reply.plan.lines;',
  'with text for a number':
    'sheet.started.reply.rules = 1; sheet.started.reply.plan.totalRounds = "<img>";',
  'with counts that contradict each other':
    'sheet.started.reply.rules = 1; sheet.started.reply.plan.stitchCount = 48;',
  'without end': 'sheet.started.reply.rules = 1; sheet.started.reply.plan.totalRounds = 900000;',
})) {
  test(`a begun sock changed by hand, ${name}, is shown by today’s rules`, async () => {
    const { page, seen } = await open();
    const asToday = await readNote(page);
    await typeInto(page, 'f-legHeightMm', '20');
    await begin(page);
    await changeKept(page, change);
    await again(page);
    assert.deepEqual(await readNote(page), asToday);
    const isTold = await page.getByText('hold it against what is on your needles').count();
    assert.equal(isTold, name.startsWith('of these rules') ? 0 : 1);
    assert.deepEqual(seen.errors, []);
    assert.deepEqual(seen.violations, []);
  });
}
