// The bands of many feet: one a pair, counted on the paper, none cut by a page's end.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { askCore, openDrive, squeeze, typeDrive } from './drive_fold.mjs';
import { openBrowser } from './open_page.mjs';
import { inkOf, print } from './pdf.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

async function printed(format, fields, { isInch = false } = {}) {
  const { page, seen } = await openDrive(open, { before: () => (window.print = () => {}) });
  await typeDrive(page, fields);
  if (isInch) await page.getByRole('radio', { name: 'in', exact: true }).check();
  await page.getByRole('button', { name: 'print the bands' }).click();
  const { words, pictures } = await print(page, format);
  await page.context().close();
  return { pages: words.map(squeeze), pictures, seen };
}

const times = (text, part) => text.split(part).length - 1;

for (const format of ['A4', 'Letter']) {
  test(`on ${format} there is one for each pair, whole, black on white, to be filled in`, async () => {
    const drive = await askCore({
      pairs: 40,
      groups: [
        { who: 'woman', share: 1 },
        { who: 'man', share: 1 },
        { who: 'child', ageYears: 8, share: 2 },
      ],
    });
    const fields = { pairs: '40', women: '1', men: '1', children: '8 x 2' };
    const { pages, pictures, seen } = await printed(format, fields);
    assert.equal(pages.length, 10);
    for (const text of pages) {
      // Whole: what stands first and what stands last on a band are on one side of paper.
      for (const part of [
        'A pair of spiral socks',
        'fibre',
        'to wash',
        'made by',
        'no small parts',
      ])
        assert.equal(times(text, part), 4, `${part} in: ${text}`);
      assert.doesNotMatch(text, /Twinround|Start to end|To knit|Pairs wanted/);
    }
    const all = pages.join(' ');
    drive.sizes.forEach(({ pairs, stitchCount, band }, i) => {
      const cm = (mm) => `${Number((mm / 10).toFixed(1))} cm`;
      assert.equal(times(all, `size ${i + 1} · ${stitchCount} st`), pairs, `size ${i + 1}`);
      assert.equal(times(all, `${cm(band.footFromMm)} to ${cm(band.footToMm)}`), pairs);
      const [eu] = band.shoes;
      assert.ok(times(all, `EU ${eu.from}–${eu.to}`) >= pairs);
    });
    for (const picture of pictures) {
      const { darkest, colour, edges } = inkOf(picture);
      assert.equal(colour, 0);
      assert.ok(darkest < 30);
      for (const [edge, gap] of Object.entries(edges)) assert.ok(gap >= 19, `${edge}: ${gap}`);
    }
    assert.deepEqual([seen.errors, seen.violations], [[], []]);
  });
}

test('a size that serves children alone names no scale of the grown-ups', async () => {
  const { pages } = await printed('A4', { pairs: '3', children: '4' });
  assert.match(pages[0], /EU \d+–\d+/);
  assert.doesNotMatch(pages[0], /UK|US /);
  assert.equal(times(pages.join(' '), 'made by'), 3);
});

test('the reader’s units stand first', async () => {
  const { pages } = await printed('Letter', { pairs: '2', men: '1' }, { isInch: true });
  assert.match(pages[0], /for feet of [\d¼½¾⅛⅜⅝⅞]+ in to [\d¼½¾⅛⅜⅝⅞]+ in [\d.]+ cm to [\d.]+ cm/);
});

test('of two hundred pairs each has its own; past that a side of each size is copied', async () => {
  const most = await printed('A4', { pairs: '200', women: '1', men: '1' });
  assert.equal(times(most.pages.join(' '), 'made by'), 200);
  assert.equal(most.pages.length, 50);
  const drive = await askCore({
    pairs: 201,
    groups: [
      { who: 'woman', share: 1 },
      { who: 'man', share: 1 },
    ],
  });
  for (const format of ['A4', 'Letter']) {
    const { pages } = await printed(format, { pairs: '201', women: '1', men: '1' });
    assert.equal(pages.length, drive.sizes.length);
    pages.forEach((text, i) => {
      assert.ok(text.includes(`Size ${i + 1}: for ${drive.sizes[i].pairs} pairs`), text);
      assert.equal(times(text, 'made by'), 4);
    });
  }
});

test('fibre and washing said once stand on every band', async () => {
  const fields = { pairs: '8', women: '1', fibre: '75 % wool, 25 % nylon', washing: 'by hand' };
  const { pages } = await printed('A4', fields);
  assert.equal(pages.length, 2);
  for (const text of pages) {
    assert.equal(times(text, 'fibre 75 % wool, 25 % nylon'), 4, text);
    assert.equal(times(text, 'to wash by hand'), 4);
    assert.equal(times(text, 'made by'), 4);
  }
});
