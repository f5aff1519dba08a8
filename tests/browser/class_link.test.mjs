// A teacher's link: what it settles, what it says, and how a student leaves it.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { answered, follow, goTo, openBrowser, press, readNote, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

/** A class's link, made as a teacher makes it. */
async function teach({ rib = '3', title = 'Tuesday class', note = 'Wash the swatch.', locks }) {
  const { page } = await open();
  await typeInto(page, 'f-rib-knit', rib);
  await typeInto(page, 'f-foot-lengthMm', '29');
  await goTo(page, 'Class');
  await page.locator('#lesson-title').fill(title);
  await page.locator('#lesson-note').fill(note);
  for (const lock of locks ?? []) await page.locator(`[data-lesson="${lock}"]`).check();
  return { page, url: await page.inputValue('#lesson-link') };
}

test('what the class settles is seen, is not to be changed, and is left with one tap', async () => {
  const { url } = await teach({ locks: ['rib', 'yarn'] });
  const { page } = await open({ url });
  const course = page.locator('[data-key="course"]');
  assert.match(
    await course.textContent(),
    /Tuesday class.*Wash the swatch\..*Set by the class: rib, yarn/,
  );
  assert.equal(await page.inputValue('#f-rib-knit'), '3');
  assert.equal(await page.locator('#f-rib-knit').isDisabled(), true);
  assert.match(await page.textContent('#f-rib-knit-mark'), /set by the class/);
  assert.equal(await page.locator('#f-yarn-ballG').isDisabled(), true);
  assert.equal(await page.locator('#f-toe-share').isDisabled(), false);
  // The teacher's foot and swatch are not the class's.
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '24.6');
  assert.match(await page.textContent('#f-foot-lengthMm-mark'), /example/);
  await typeInto(page, 'f-foot-lengthMm', '23');
  await press(page, 'begin anew');
  assert.equal(await page.inputValue('#f-rib-knit'), '3');
  await press(page, 'leave the class’s settings');
  assert.equal(await course.count(), 0);
  assert.equal(await page.locator('#f-rib-knit').isDisabled(), false);
  assert.equal(await page.inputValue('#f-rib-knit'), '3');
  await press(page, 'undo');
  assert.equal(await course.count(), 1);
});

test('a student keeps her own foot and swatch under the class’s settings', async () => {
  const { url } = await teach({ locks: ['rib'] });
  const { page } = await open();
  await typeInto(page, 'f-foot-lengthMm', '22');
  await typeInto(page, 'f-swatch-readings-0-stitches', '24');
  await follow(page, url);
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '22');
  assert.equal(await page.inputValue('#f-swatch-readings-0-stitches'), '24');
  assert.equal(await page.inputValue('#f-rib-knit'), '3');
  await press(page, 'add it to my socks');
  await page.reload();
  await page.waitForFunction(answered);
  assert.equal(await page.locator('#f-rib-knit').isDisabled(), true);
  await page.locator('#socks').evaluate((fold) => (fold.open = true));
  assert.equal(await page.locator('#socks li').count(), 2);
});

test('it opens in the moment and the units that the teacher chose', async () => {
  const { page: teacher } = await teach({ locks: [] });
  await teacher.getByRole('radio', { name: 'Buy', exact: true }).check();
  await teacher.getByRole('radio', { name: 'in', exact: true }).check();
  const { page } = await open({ url: await teacher.inputValue('#lesson-link') });
  assert.equal(await page.getAttribute('html', 'data-moment'), 'buy');
  assert.equal(await page.getByRole('radio', { name: 'in', exact: true }).isChecked(), true);
});

test('a class’s link says a settled part though it stands as in the example', async () => {
  const { page: teacher } = await open();
  await goTo(teacher, 'Class');
  await teacher.locator('[data-lesson="yarn"]').check();
  const url = await teacher.inputValue('#lesson-link');
  const { page } = await open();
  await typeInto(page, 'f-yarn-ballG', '50');
  await follow(page, url);
  assert.equal(await page.inputValue('#f-yarn-ballG'), '100');
  assert.equal(await page.locator('#f-yarn-ballG').isDisabled(), true);
});

test('what the teacher wrote for her class is there when she comes back', async () => {
  const { page } = await teach({ title: 'Quay evenings', locks: ['toe'] });
  const url = await page.inputValue('#lesson-link');
  await page.reload();
  await page.waitForFunction(answered);
  assert.equal(await page.inputValue('#lesson-title'), 'Quay evenings');
  assert.equal(await page.inputValue('#lesson-link'), url);
});

test('words of a class are words: no markup in them is ever markup', async () => {
  const evil = '<img src=x onerror=alert(1)> "&\' {{7*7}} \u202Eabc';
  const { url } = await teach({ title: evil.slice(0, 60), note: evil });
  const { page, seen } = await open({ url });
  assert.match(await page.textContent('[data-key="course"]'), /<img src=x onerror=alert\(1\)>/);
  assert.equal(await page.locator('[data-key="course"] img').count(), 0);
  assert.deepEqual(seen.violations, []);
  assert.deepEqual(seen.errors, []);
});

test('a problem that a settled part makes offers what the student may change', async () => {
  const { url } = await teach({ rib: '12', locks: ['rib'] });
  const { page } = await open({ url });
  await typeInto(page, 'f-foot-ballGirthMm', '12');
  for (const button of await page.locator('button[data-rib]').all())
    assert.equal(await button.isVisible(), false);
  await press(page, 'leave the class’s settings');
  await typeInto(page, 'f-rib-knit', '2');
  assert.ok((await readNote(page))['stitches a round']);
});

test('her class’s link followed again finds the sock that she has', async () => {
  const { url } = await teach({ locks: ['rib'] });
  const { page } = await open({ url });
  await typeInto(page, 'f-foot-lengthMm', '22');
  await follow(page, url);
  assert.equal(await page.locator('[data-key="visit"]').count(), 0);
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '22');
  assert.equal(new URL(page.url()).hash, '');
  // So does one whose sock is begun, and it stays so.
  await goTo(page, 'Knit');
  await press(page, 'I have cast on: begin this sock');
  await follow(page, url);
  assert.equal(await page.locator('[data-key="visit"]').count(), 0);
  assert.equal(await page.locator('[data-key="begun"]').count(), 1);
});

test('a student’s own sock, shared, is hers to whoever opens it', async () => {
  const { url } = await teach({ locks: ['rib'] });
  const { page: student } = await open({ url });
  await typeInto(student, 'f-foot-lengthMm', '22');
  const note = await readNote(student);
  await press(student, 'share this sock');
  const shared = await student.inputValue('#shared-link');
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', '26');
  await typeInto(page, 'f-swatch-readings-0-stitches', '26');
  await follow(page, shared);
  assert.deepEqual(await readNote(page), note);
  assert.match(await page.textContent('[data-key="course"]'), /Tuesday class/);
});

test('a class’s link followed during a visit goes to one’s own sock, not the friend’s', async () => {
  const { url } = await teach({ locks: ['rib'] });
  const { page: friend } = await open();
  await typeInto(friend, 'f-foot-lengthMm', '31');
  await press(friend, 'share this sock');
  const shared = await friend.inputValue('#shared-link');
  const { page } = await open();
  await typeInto(page, 'f-foot-lengthMm', '22');
  await follow(page, shared);
  await page.evaluate((hash) => (location.hash = hash), url.split('#')[1]);
  await page.locator('[data-key="course"]').waitFor();
  assert.equal(await page.inputValue('#f-foot-lengthMm'), '22');
});

test('another yarn of her own is no matter of the class', async () => {
  const { url } = await teach({ locks: ['yarn'] });
  const { page } = await open({ url });
  await goTo(page, 'Buy');
  await page.getByText('Another yarn instead?').click();
  assert.equal(await page.locator('#f-yarn-substitute-ballG').isDisabled(), false);
});
