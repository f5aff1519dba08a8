// The yarns that a class may use: ticked by the teacher, carried by her link, offered to the student, and never in her way.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import {
  again,
  changeKept,
  follow,
  goTo,
  openBrowser,
  press,
  readNote,
  typeInto,
} from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const box = (page, yarn) => page.locator(`[data-lesson="yarns"][value="${yarn}"]`);
const told = (page) => page.textContent('[data-view="class-yarns"]');

/** A class's link, made as a teacher makes it. */
async function teach({ yarns = [], locks = [], title = '' } = {}) {
  const { page } = await open();
  await goTo(page, 'Class');
  await page.locator('#lesson-title').fill(title);
  for (const lock of locks) await page.locator(`[data-lesson="${lock}"]`).check();
  for (const yarn of yarns) await box(page, yarn).check();
  return { page, url: await page.inputValue('#lesson-link') };
}
const fragment = (url) => url.split('#')[1];

/** The choice of a yarn: those that are offered, and those shown that are not. */
const offered = (page) =>
  page.locator('#f-yarn-category').evaluate((choice) => {
    const part = (isOff) =>
      [...choice.options].filter(({ disabled }) => disabled === isOff).map(({ value }) => value);
    return { on: part(false), off: part(true), texts: [...choice.options].map(({ text }) => text) };
  });

/** Stitches over 4 in, which are the student's own. */
const swatch = (page, stitches) => typeInto(page, 'f-swatch-readings-0-stitches', String(stitches));

test('ticked, they are in the link; none ticked, it is the link that it ever was', async () => {
  const { page, url } = await teach({ title: 'Quay evenings', locks: ['rib'] });
  assert.equal(fragment(url)[0], '1');
  await box(page, 3).check();
  const three = await page.inputValue('#lesson-link');
  assert.equal(fragment(three)[0], '2');
  await box(page, 5).check();
  assert.notEqual(await page.inputValue('#lesson-link'), three);
  await box(page, 5).uncheck();
  assert.equal(await page.inputValue('#lesson-link'), three);
  await box(page, 3).uncheck();
  assert.equal(await page.inputValue('#lesson-link'), url);
});

test('the choice offers those alone: the others are seen, and say why they are not to be had', async () => {
  const { url } = await teach({ yarns: [3, 4] });
  const { page, seen } = await open({ url });
  const { on, off, texts } = await offered(page);
  assert.deepEqual(on, ['', '3', '4']);
  assert.deepEqual(off, ['0', '1', '2', '5', '6', '7']);
  assert.deepEqual(
    texts.map((text) => text.endsWith(': not in this class')),
    [false, true, true, true, false, false, true, true, true],
  );
  assert.equal(
    await told(page),
    'Your class uses yarn of weight 3 light (DK); or 4 medium (worsted, aran).',
  );
  await page.locator('#f-yarn-category').selectOption('3');
  assert.equal(await page.inputValue('#f-yarn-category'), '3');
  // In the shop too.
  await goTo(page, 'Buy');
  assert.ok(await page.locator('[data-view="class-yarns"] p').isVisible());
  assert.deepEqual(seen.errors, []);
});

test('without a class, or with one that says nothing of yarn, every yarn is offered', async () => {
  const { url } = await teach({ title: 'Quay evenings' });
  for (const where of [undefined, url]) {
    const { page } = await open(where ? { url: where } : {});
    const { on, off, texts } = await offered(page);
    assert.equal(on.length, 9);
    assert.deepEqual(off, []);
    assert.ok(texts.every((text) => !text.includes('class')));
    assert.equal(await told(page), '');
  }
});

// Stitches over 4 in that are plainly of a weight, by the published ranges: 21 to 24 light, 16 to 20 medium, 12 to 15 bulky.
for (const [stitches, yarns, category, isTold] of [
  [22, [3, 4], '', false],
  [22, [4], '', true],
  [18, [4], '', false],
  [18, [3, 5], '', true],
  // Whatever the label says, it is the swatch that is knit.
  [18, [3], '3', true],
  [22, [3], '3', false],
]) {
  const whose = `${stitches} stitches, labelled ${category || 'nothing'}, in a class of ${yarns}`;
  test(`${whose}: ${isTold ? 'she is told of another yarn' : 'nothing is told'}, and has her plan`, async () => {
    const { url } = await teach({ yarns });
    const { page } = await open({ url });
    await swatch(page, stitches);
    if (category) await page.locator('#f-yarn-category').selectOption(category);
    assert.equal(/By its gauge/.test(await told(page)), isTold);
    if (isTold) {
      const name = stitches === 18 ? '4 medium' : '3 light';
      assert.match(await told(page), new RegExp(`your swatch is ${name}.*show it to your teacher`));
    }
    assert.ok((await readNote(page))['stitches a round']);
    assert.equal(await page.locator('[aria-invalid="true"]').count(), 0);
    assert.equal(await page.locator('.trouble, .mend').count(), 0);
  });
}

test('of the example’s swatch, which is nobody’s, nothing is told; nor of a gauge off the label', async () => {
  const { url } = await teach({ yarns: [2] });
  const { page } = await open({ url });
  assert.doesNotMatch(await told(page), /By its gauge/);
  await swatch(page, 18);
  assert.match(await told(page), /By its gauge/);
  await page.getByRole('radio', { name: 'not yet' }).check();
  await page.locator('#f-yarn-category').selectOption('2');
  assert.doesNotMatch(await told(page), /By its gauge/);
});

test('a yarn that she had chosen before stays hers, and she is told', async () => {
  const { url } = await teach({ yarns: [3] });
  const { page } = await open();
  await swatch(page, 14);
  await page.locator('#f-yarn-category').selectOption('5');
  const note = await readNote(page);
  await follow(page, url);
  assert.equal(await page.inputValue('#f-yarn-category'), '5');
  assert.match(await told(page), /Chosen here is 5 bulky \(chunky\), which is none of them\./);
  assert.deepEqual(await readNote(page), note);
});

test('they stay with her sock, are left with the class, and come back with a step back', async () => {
  const { url } = await teach({ yarns: [0, 7] });
  const { page } = await open({ url });
  assert.match(await page.textContent('[data-key="course"]'), /Set by the class: which yarns\./);
  await typeInto(page, 'f-foot-lengthMm', '25');
  await again(page);
  assert.deepEqual((await offered(page)).on, ['', '0', '7']);
  // Followed once more, it is the sock that she has.
  await follow(page, url);
  assert.equal(await page.locator('[data-key="visit"]').count(), 0);
  await press(page, 'leave the class’s settings');
  assert.equal((await offered(page)).off.length, 0);
  assert.equal(await told(page), '');
  await press(page, 'undo');
  assert.deepEqual((await offered(page)).on, ['', '0', '7']);
});

test('shared, her sock takes them along', async () => {
  const { url } = await teach({ yarns: [3], title: 'Quay evenings' });
  const { page } = await open({ url });
  await typeInto(page, 'f-foot-lengthMm', '25');
  await press(page, 'share this sock');
  const { page: friend } = await open({ url: await page.inputValue('#shared-link') });
  assert.deepEqual((await offered(friend)).on, ['', '3']);
  assert.equal(await friend.inputValue('#f-foot-lengthMm'), '25');
});

test('what the teacher ticked is there when she comes back, and binds no sock of hers', async () => {
  const { page, url } = await teach({ yarns: [1, 6] });
  assert.equal((await offered(page)).off.length, 0);
  await again(page);
  await goTo(page, 'Class');
  assert.equal(await page.inputValue('#lesson-link'), url);
  assert.equal(await box(page, 1).isChecked(), true);
  assert.equal(await box(page, 2).isChecked(), false);
});

test('what is kept of them may have been written by anybody', async () => {
  const { url } = await teach({ yarns: [3] });
  const { page, seen } = await open({ url });
  await typeInto(page, 'f-foot-lengthMm', '25');
  await changeKept(page, `sheet.course.yarns = ['4', 9, -1, 2.5, null, {}, 5, 5, 1e9];`);
  await page.evaluate(() => {
    const lesson = JSON.parse(localStorage.getItem('twinround/lesson') ?? '{}');
    localStorage.setItem('twinround/lesson', JSON.stringify({ ...lesson, yarns: { 0: 3 } }));
  });
  await again(page);
  assert.deepEqual((await offered(page)).on, ['', '5']);
  await goTo(page, 'Class');
  assert.equal(await page.locator('[data-lesson="yarns"]:checked').count(), 0);
  // No list at all: that is no sheet of ours, and it is set aside.
  await changeKept(page, `sheet.course.yarns = 'any';`);
  await again(page);
  assert.equal(await page.locator('p[data-key="aside"]').count(), 1);
  assert.deepEqual(seen.errors, []);
});

test('several yarns to choose among leave the yarn open, locked or not', async () => {
  const { page } = await open();
  await goTo(page, 'Class');
  await page.locator('[data-lesson="yarn"]').check();
  for (const category of ['1', '3'])
    await page.locator(`[data-lesson="yarns"][value="${category}"]`).check();
  assert.ok(await page.locator('[data-lesson="yarn"]').isDisabled());
  assert.ok(await page.locator('[data-yarn-open]').isVisible());
  const student = await open({ url: await page.inputValue('#lesson-link') });
  const choice = student.page.locator('#f-yarn-category');
  assert.ok(await choice.isEnabled());
  await choice.selectOption('3');
  assert.equal(await choice.inputValue(), '3');
});
