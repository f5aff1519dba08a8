// One sock on the needles in two tabs: the place is one, and no tap counts twice or for nothing unsaid.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { begin, keptPlace, stepShown, tap, tapOften, untilDone, untilKept } from './knitting.mjs';
import { again, goTo, openBrowser, openShelf, press, typeInto, visit } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

async function openTab(page) {
  const other = await page.context().newPage();
  await visit(other, page.url());
  return other;
}

test('another tab follows, unasked, and goes on from there', async () => {
  const { page } = await open();
  await begin(page);
  const other = await openTab(page);
  await tapOften(page, 5);
  await other.waitForFunction(() =>
    /^Round 2/.test(document.querySelector('.work-round').textContent),
  );
  assert.equal(await stepShown(other), 5);
  await tap(other);
  await untilDone(page, 2);
  await tap(page);
  for (const tab of [page, other]) {
    assert.equal(await tab.getByText('changed in another tab').count(), 0);
    assert.equal(await tab.locator('.work-note').count(), 0);
  }
  assert.deepEqual(await keptPlace(page), { round: 1, pass: 3, taps: 7 });
});

test('a tab in another moment follows as well, and writes nothing over the knitting', async () => {
  const { page } = await open();
  await begin(page);
  const other = await openTab(page);
  await goTo(other, 'Count');
  for (let i = 1; i <= 12; i += 1) {
    // At once: a tab that lies behind is given little time.
    await tapOften(page, 1);
    assert.equal((await keptPlace(page)).taps, i);
  }
  await other.waitForTimeout(200);
  assert.equal((await keptPlace(page)).taps, 12);
  await goTo(other, 'Knit');
  assert.equal(await stepShown(other), 12);
});

test('a tap on a page that is behind is not counted, and the page says so', async () => {
  const { page } = await open({
    before: () => {
      // One that has slept: nothing of what other tabs did has come to it.
      addEventListener(
        'storage',
        (event) => globalThis.isAsleep && event.stopImmediatePropagation(),
        true,
      );
    },
  });
  await begin(page);
  const other = await openTab(page);
  await page.evaluate(() => (globalThis.isAsleep = true));
  await tapOften(other, 3);
  assert.equal(await stepShown(page), 0);
  await tap(page);
  assert.equal(await stepShown(page), 3);
  assert.match(await page.textContent('.work-note'), /last tap here was not counted/);
  assert.equal((await keptPlace(page)).taps, 3);
  await tap(page);
  assert.equal(await stepShown(page), 4);
  assert.equal(await page.locator('.work-note').count(), 0);
});

test('of two taps at one moment in two tabs one counts, and no more', async () => {
  const { page } = await open();
  await begin(page);
  await tapOften(page, 2);
  await untilKept(page);
  const noted = await page.evaluate(async () => {
    const base = await new Promise((done) => {
      const request = indexedDB.open('twinround');
      request.onsuccess = () => done(request.result);
    });
    const store = () => base.transaction('places', 'readwrite').objectStore('places');
    const of = (request) => new Promise((done) => (request.onsuccess = () => done(request.result)));
    const [id] = await of(store().getAllKeys());
    const place = await of(store().get(id));
    // As if another tab had been quicker by a breath: it went back where this one goes on.
    await of(store().put({ ...place, pass: 1, taps: 3 }, id));
    return place;
  });
  assert.deepEqual([noted.round, noted.pass, noted.taps], [0, 2, 2]);
  await tap(page);
  await page.locator('.work-note').waitFor();
  assert.equal(await stepShown(page), 1);
  assert.deepEqual(await keptPlace(page), { round: 0, pass: 1, taps: 3 });
});

test('a sock begun in another tab is begun here, and “not begun after all” as well', async () => {
  const { page } = await open();
  await typeInto(page, 'f-foot-ballGirthMm', '24');
  const other = await openTab(page);
  await begin(page);
  await goTo(other, 'Knit');
  await tap(other);
  await untilDone(page, 1);
  await other.locator('[data-key="not-begun"] summary').click();
  await press(other, 'not begun after all');
  await page.waitForFunction(() => !document.querySelector('.work-round'));
  for (const tab of [page, other])
    assert.equal(await tab.getByText('changed in another tab').count(), 0);
});

test('while two tabs disagree about the name, no round is knit twice', async () => {
  for (const answer of ['take that one', 'keep this one']) {
    const { page } = await open();
    await begin(page);
    const other = await openTab(page);
    await openShelf(other);
    await tap(page);
    await untilDone(other, 1);
    await other.locator('#sock-name').fill('hers');
    await page.getByText('changed in another tab').first().waitFor();
    await tapOften(page, 2);
    await press(page, answer);
    assert.equal(await stepShown(page), 3, answer);
    await again(page);
    assert.equal(await stepShown(page), 3, answer);
  }
});
