// The list of stages in the page: which is open, which says that she is there, and where its links lead.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { again, changeKept, goTo, openBrowser, press } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

/** The stages in the page: which are open, which says that she is there, and its rounds. */
const readStages = (page) =>
  page.evaluate(() => {
    const title = (item) => item.querySelector('summary').firstChild.textContent;
    const items = [...document.querySelectorAll('.stages > li')];
    return {
      open: items.filter((item) => item.querySelector('details').open).map(title),
      here: items
        .filter((item) => item.getAttribute('aria-current') === 'step')
        .map((item) => `${title(item)}: ${item.querySelector('em').textContent}`),
      marks: document.querySelectorAll('.stages em').length,
      when: items.map((item) => item.querySelector('.when')?.textContent ?? ''),
    };
  });

test('before it is begun the first stage is open, and none says that she is there', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  const seen = await readStages(page);
  assert.deepEqual(seen.open, ['Cast on both']);
  assert.deepEqual(seen.here, []);
  assert.equal(seen.marks, 0);
  assert.deepEqual(seen.when, [
    '',
    'round 1',
    'rounds 2–17',
    'after round 17',
    'rounds 18–79',
    'after round 79',
    'rounds 80–112',
    'rounds 113–120',
    'after round 120',
    '',
    '',
    '',
  ]);
});

test('of a begun sock the stage she is in is open and said, and only that', async () => {
  const { page, seen } = await open();
  await goTo(page, 'Knit');
  await press(page, 'I have cast on: begin this sock');
  assert.deepEqual((await readStages(page)).here, ['Cast on both: you are here']);
  for (const [round, pass, title] of [
    [0, 1, 'Set up: the first round'],
    [1, 0, 'The toe'],
    [16, 3, 'The toe'],
    [17, 0, 'Measure the toe'],
    [17, 1, 'The rib begins'],
    [78, 3, 'The rib begins'],
    [79, 0, 'Try both on'],
    [79, 1, 'Up the leg'],
    [112, 0, 'The cuff'],
    [119, 3, 'The cuff'],
    [120, 0, 'Bind off (cast off) with give'],
  ]) {
    await changeKept(page, `sheet.started.round = ${round}; sheet.started.pass = ${pass};`);
    await again(page);
    const now = await readStages(page);
    assert.deepEqual(now.open, [title]);
    assert.deepEqual(now.here, [`${title}: you are here`]);
    assert.equal(now.marks, 1);
  }
  assert.deepEqual(seen.errors, []);
});

test('its links lead to what they name, and leave the address as it is', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  const address = page.url();
  const targets = await page.evaluate(() =>
    [...document.querySelectorAll('.stage-links a')].map((link) => ({
      to: link.getAttribute('href'),
      isThere: document.querySelector(link.getAttribute('href')) !== null,
    })),
  );
  assert.ok(targets.length > 10);
  for (const { to, isThere } of targets) assert.ok(isThere || to === '#measured', to);
  await page.locator('.stages summary', { hasText: 'The toe' }).first().click();
  await page.locator('.stage-links a[href="#how-m1r"]').click();
  const top = await page.locator('#how-m1r').evaluate((card) => card.getBoundingClientRect().top);
  assert.ok(top > 0 && top < 200, `${top}`);
  await page.locator('.stages summary', { hasText: 'Measure once more' }).click();
  await page.locator('.stage-links a[href="#socks"]').click();
  assert.equal(await page.locator('#socks').evaluate((fold) => fold.open), true);
  assert.equal(page.url(), address);
});
