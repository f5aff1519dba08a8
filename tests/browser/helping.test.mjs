// A student asks for help: her link or file on the teacher's desk, what is odd about her sock, and what to send back.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { after, before, test } from 'node:test';

import { oddWords } from '../../web/words/en.js';
import { at } from '../../tools/js/paths.mjs';
import { openDesk, wrongIn } from './desk.mjs';
import { begin } from './knitting.mjs';
import { goTo, openBrowser, openShelf, press, readNote, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const answer = (page) => page.locator('[data-view="helping"]');
const harms = (page) => answer(page).locator('h3').allInnerTexts();
const glances = (page) => answer(page).locator('dt').allInnerTexts();

/** A student's page with her own measures typed in. */
async function student(fields) {
  const { page } = await open();
  for (const [id, text] of Object.entries(fields)) await typeInto(page, id, text);
  return page;
}

async function linkOf(page) {
  await press(page, 'share this sock');
  return page.locator('#shared-link').inputValue();
}

// Heel far too large for so few stitches, a swatch denser than worsted is knit, little yarn.
const tight = {
  'f-foot-heelAnkleGirthMm': '36',
  'f-swatch-readings-0-stitches': '24',
  'f-foot-lengthMm': '25',
};

test('what is odd about a student’s sock is listed with the worst first', async () => {
  const hers = await student(tight);
  await hers.locator('details.finer').evaluate((fold) => (fold.open = true));
  await typeInto(hers, 'f-stitchCount', '40');
  await hers.selectOption('#f-yarn-category', '4');
  await typeInto(hers, 'f-yarn-ballG', '100');
  await typeInto(hers, 'f-yarn-ballM', '120');
  const link = await linkOf(hers);
  const { page, seen } = await openDesk(open, 'helping');
  await typeInto(page, 'helping-link', link);
  await typeInto(page, 'f-inHand-balls', '1');
  assert.deepEqual((await harms(page)).slice(0, 3), [
    'On the foot',
    'Yarn and needles',
    'The sock itself',
  ]);
  const all = await glances(page);
  assert.equal(all[0], 'Will not go over the heel');
  assert.ok(all.includes('Not enough yarn'), all.join());
  assert.ok(all.includes('Denser than such yarn is knit'), all.join());
  assert.match(await answer(page).innerText(), /here as in the example: .*leg/);
  // Nothing of it is the teacher's own sock.
  assert.equal((await readNote(page))['stitches a round'], '40');
  await goTo(page, 'Count');
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '24.6');
  assert.deepEqual(seen.errors, []);
});

test('each sentence is copied to be sent back, and all at once', async () => {
  const link = await linkOf(await student(tight));
  const permissions = ['clipboard-read', 'clipboard-write'];
  const { page } = await openDesk(open, 'helping', { permissions });
  await typeInto(page, 'helping-link', link);
  const first = answer(page).locator('dd').first();
  await first.getByRole('button').click();
  const one = await page.evaluate(() => navigator.clipboard.readText());
  assert.equal(one, await first.locator('span').innerText());
  await page.getByRole('button', { name: 'copy all that is to be sent back' }).click();
  const all = await page.evaluate(() => navigator.clipboard.readText());
  assert.equal(
    all.split('\n\n').length,
    new Set(await answer(page).locator('dd > span').allInnerTexts()).size,
  );
  assert.ok(all.startsWith(one));
});

test('a saved file does as well as a link, begun or not', async () => {
  const hers = await student({ 'f-foot-lengthMm': '25' });
  await openShelf(hers);
  const waiting = hers.waitForEvent('download');
  await press(hers, 'save this one to a file');
  const { page } = await openDesk(open, 'helping');
  await page.setInputFiles('#helping-file', await (await waiting).path());
  await answer(page)
    .getByText(/a foot 25\scm long/)
    .waitFor();

  await begin(hers);
  await openShelf(hers);
  const begun = hers.waitForEvent('download');
  await press(hers, 'save this one to a file');
  await page.setInputFiles('#helping-file', await (await begun).path());
  await answer(page).getByText('It is on the needles').waitFor();

  const torn = path.join(tmpdir(), `torn-${process.pid}.json`);
  writeFileSync(torn, '{"kind":"sheet"');
  await page.setInputFiles('#helping-file', torn);
  await answer(page).getByText('no save file').waitFor();
});

test('a sheet that comes to no sock says why, in words to send back', async () => {
  const link = await linkOf(await student({ 'f-legHeightMm': '5' }));
  const { page } = await openDesk(open, 'helping');
  await typeInto(page, 'helping-link', link);
  assert.match(await answer(page).innerText(), /comes to no sock yet:\s*leg: /i);
  // At the teacher's own fields nothing is wrong.
  assert.deepEqual(await wrongIn(page, 'desk'), []);
  assert.equal(await page.locator('.wrong').count(), 0);
});

test('a link that was cut, and what is no link, are said to be', async () => {
  const link = await linkOf(await student(tight));
  const { page } = await openDesk(open, 'helping');
  await typeInto(page, 'helping-link', link.slice(0, -3));
  assert.match(await answer(page).innerText(), /cut|changed|missing/i);
  await typeInto(page, 'helping-link', 'good morning');
  assert.ok((await answer(page).innerText()).length > 20);
  await typeInto(page, 'helping-link', '');
  assert.match(await answer(page).innerText(), /Paste the link/);
  await typeInto(page, 'f-inHand-balls', 'two');
  assert.equal((await wrongIn(page, 'helping')).length, 1);
});

test('nothing of a student’s sock is kept', async () => {
  const link = await linkOf(await student(tight));
  const { page } = await openDesk(open, 'helping');
  await typeInto(page, 'helping-link', link);
  await answer(page).locator('dt').first().waitFor();
  const kept = await page.evaluate(() => JSON.stringify({ ...localStorage, ...sessionStorage }));
  assert.ok(!kept.includes(link.split('#')[1]));
  assert.ok(!kept.includes('"36"'));
});

test('every oddity the core may name has words', () => {
  const schema = JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8'));
  const codes = schema.$defs.oddity.properties.code.enum;
  assert.deepEqual(
    codes.filter((code) => !oddWords.glance[code]),
    [],
  );
});
