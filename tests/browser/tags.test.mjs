// Name tags by seat: as many as there are seats, each whole on its page, and no name on any.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { again, goTo, openBrowser, typeInto } from './open_page.mjs';
import { inkOf, print } from './pdf.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const seats = 'f-tags-seats';

async function openClass({ title = 'Evening class', ...more } = {}) {
  const { page, seen } = await open({ before: () => (window.print = () => {}), ...more });
  await goTo(page, 'Class');
  await page.locator('#lesson-title').fill(title);
  return { page, seen };
}

async function printed(page, format = 'A4', dots = 72) {
  await page.locator('[data-print="tags"]').click();
  return print(page, format, dots);
}

const squeeze = (text) => text.replace(/[\s\u00a0\u202f]+/g, ' ');
const seatsOn = (words) =>
  [...squeeze(words).matchAll(/seat (\d+)/g)].map(([, seat]) => Number(seat));

// In dots: between a card's left edge, 11 mm in, and what stands on it nothing is ink but the cuts.
const fine = 144;
const [from, to] = [12, 14.5].map((mm) => Math.floor((mm / 25.4) * fine));

/** How many cuts there are above and below the cards of the left column. */
function cutsOf({ width, height, data }) {
  let cuts = 0;
  let wasCut = false;
  for (let y = 0; y < height; y += 1) {
    let ink = 0;
    for (let x = from; x < to; x += 1) if (data[(y * width + x) * 4] < 200) ink += 1;
    const isCut = ink > 3;
    if (isCut && !wasCut) cuts += 1;
    wasCut = isCut;
  }
  return cuts;
}

for (const format of ['A4', 'Letter']) {
  for (const [typed, pages] of [
    ['', [12]],
    ['1', [1]],
    ['12', [12]],
    ['13', [12, 1]],
    ['60', [12, 12, 12, 12, 12]],
  ]) {
    test(`${format}: for “${typed}” seats there are ${pages.join(' + ')} cards, none cut by a page’s end`, async () => {
      const { page } = await openClass();
      if (typed) await typeInto(page, seats, typed);
      const { words, pictures } = await printed(page, format);
      assert.deepEqual(
        words.map((text) => seatsOn(text).length),
        pages,
      );
      assert.deepEqual(
        words.flatMap(seatsOn),
        Array.from({ length: pages.reduce((a, b) => a + b) }, (_, i) => i + 1),
      );
      words.forEach((text, at) => {
        const told = squeeze(text);
        for (const line of ['Evening class', 'stitches', 'toe rounds', 'rib'])
          assert.equal(told.split(line).length - 1, pages[at], `${line} on page ${at + 1}`);
      });
      for (const picture of pictures) {
        const { edges, colour } = inkOf(picture);
        assert.equal(colour, 0);
        for (const [edge, gap] of Object.entries(edges)) assert.ok(gap >= 19, `${edge}: ${gap}`);
      }
      // A cut above each row, and one below the last.
      const { pictures: sharp } = await printed(page, format, fine);
      assert.deepEqual(
        sharp.map(cutsOf),
        pages.map((cards) => Math.ceil(cards / 2) + 1),
      );
    });
  }
}

test('a number of seats that is none is told at its field, and no tags are printed', async () => {
  const { page } = await openClass();
  for (const [typed, told] of [
    ['0', 'Between 1 and 60, please.'],
    ['61', 'Between 1 and 60, please.'],
    ['-3', 'Between 1 and 60, please.'],
    ['12.5', 'A whole number, please.'],
    ['many', /is no number/],
  ]) {
    await typeInto(page, seats, typed);
    const text = await page.textContent(`#${seats}-problem`);
    if (typeof told === 'string') assert.equal(text, told, typed);
    else assert.match(text, told);
    assert.equal(await page.getAttribute(`#${seats}`, 'aria-invalid'), 'true');
    const { words } = await printed(page);
    assert.deepEqual(words.map(squeeze), ['How many seats there are is still to be mended. ']);
  }
  // The sock itself is none the worse.
  assert.equal(await page.locator('.hand').isVisible(), true);
  await typeInto(page, seats, '60');
  assert.equal(await page.textContent(`#${seats}-problem`), '');
});

test('the number is the desk’s: it stays for another sock, and after a reload', async () => {
  const { page } = await openClass();
  await typeInto(page, seats, '7');
  await goTo(page, 'Count');
  await typeInto(page, 'f-foot-lengthMm', '25');
  await again(page);
  await goTo(page, 'Class');
  assert.equal(await page.inputValue(`#${seats}`), '7');
  const link = await page.inputValue('#lesson-link');
  await typeInto(page, seats, '9');
  assert.equal(await page.inputValue('#lesson-link'), link);
});

test('of the sock on the page the tags say its own rib and cast-on, and no name', async () => {
  const { page } = await openClass({ title: '' });
  await page.evaluate(() => (document.querySelector('#socks').open = true));
  await page.locator('#sock-name').fill('For Ada');
  await goTo(page, 'Count');
  await typeInto(page, 'f-rib-knit', '3');
  const wraps = await page.textContent('.hand .figure');
  await goTo(page, 'Class');
  await typeInto(page, seats, '2');
  await page.locator('#f-tags-lines').selectOption('sock');
  const { words } = await printed(page);
  assert.equal(words.length, 1);
  const told = squeeze(words[0]);
  assert.equal(told.split('rib k3, p2').length - 1, 2);
  assert.equal(told.split(`cast on: ${wraps} wraps a sock`).length - 1, 2);
  assert.ok(!told.includes('toe rounds'));
  assert.ok(!told.includes('Ada'));
});

test('the longest title fits on its card', async () => {
  const title = 'Wide-sleeved Wednesday evening workshop for heel-less socks';
  const { page } = await openClass({ title: `${title}!` });
  await page.locator('[data-print="tags"]').click();
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => {
    document.body.style.width = '188mm';
    window.dispatchEvent(new Event('beforeprint'));
  });
  const cut = await page.evaluate(
    () =>
      [...document.querySelectorAll('.seat-tag, .seat-tag *')].filter(
        (node) =>
          node.scrollHeight > node.clientHeight + 1 && getComputedStyle(node).display !== 'inline',
      ).length,
  );
  assert.equal(await page.locator('.seat-tag').count(), 12);
  assert.equal(cut, 0);
});

test('the lead says which prints there are, and whom each is for', async () => {
  const { page } = await openClass();
  const told = await page
    .locator('.class-prints > div')
    .evaluateAll((parts) =>
      parts.map((part) => [
        part.querySelector('h3').textContent,
        part.querySelector('[data-print]').getAttribute('data-print'),
      ]),
    );
  assert.deepEqual(told, [
    ['One for all', 'sheet'],
    ['One for each student, blank', 'pen'],
    ['A tag for each seat', 'tags'],
  ]);
});
