// The weeks to take along and to look at: as text, on paper, on a phone, and by whoever reads by ear.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { after, before, test } from 'node:test';

import { goTo, openBrowser } from './open_page.mjs';
import { inkOf, print } from './pdf.mjs';
import { buttonOf, course, endsOn, openWeeks, place, tableOn, texts, tick } from './weeks_fold.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

test('as text it says every meeting, for a mail', async () => {
  const { page } = await open({ permissions: ['clipboard-read', 'clipboard-write'] });
  await goTo(page, 'Class');
  await tick(page, [1, 4]);
  await page.locator('[data-lesson="title"]').fill('Tuesday socks');
  await openWeeks(page, { ...texts(course), day: '2027-01-12', time: '19:00' });
  const rows = await tableOn(page);
  await buttonOf(page, 'copy').click();
  await page.waitForFunction(() => document.querySelector('[data-said]').textContent !== '');
  const text = await page.evaluate(() => navigator.clipboard.readText());
  assert.match(text, /^Tuesday socks: the weeks\n/);
  const blocks = text.split('\n\n');
  for (const { head, when, cells } of rows.slice(0, 8)) {
    const block = blocks.find((one) => one.startsWith(`${head}, ${when}\n`));
    assert.ok(block, head);
    cells.forEach((lines, column) => {
      const line = block.split('\n')[column + 1];
      for (const part of lines) assert.ok(line.includes(part), `${part} in ${line}`);
    });
  }
  for (const sentence of await endsOn(page)) assert.ok(text.includes(sentence), sentence);
});

for (const format of ['A4', 'Letter']) {
  for (const [name, yarns, asked] of [
    ['two yarns', [1, 4], course],
    ['all yarns and the longest course', [0, 1, 2, 3, 4, 5, 6, 7], { ...course, meetings: 30 }],
  ]) {
    test(`on ${format} stand ${name}, black on white and nothing cut off`, async () => {
      const { page } = await open({
        colorScheme: 'dark',
        before: () => (window.print = () => {}),
      });
      await goTo(page, 'Class');
      await tick(page, yarns);
      await openWeeks(page, { ...texts(asked), day: '2027-01-12', time: '19:00' });
      const rows = await tableOn(page);
      await place(page).locator('[data-print="weeks"]').click();
      const { words, pictures } = await print(page, format);
      const all = words.join(' ').replace(/\s+/g, ' ');
      for (const { head, when, cells } of rows) {
        for (const text of [head, when]) assert.ok(all.includes(text), text);
        for (const [first = ''] of cells) assert.ok(all.includes(first), first);
      }
      assert.match(all, /Tuesday, 12 January 2027, 19:00/);
      assert.ok(!all.includes('[object'));
      for (const picture of pictures) {
        const { edges, darkest, colour } = inkOf(picture);
        assert.ok(darkest < 30);
        assert.equal(colour, 0);
        for (const [edge, gap] of Object.entries(edges)) assert.ok(gap >= 19, `${edge}: ${gap}`);
      }
    });
  }
}

test('the fold has no barrier that axe knows of', async () => {
  for (const colorScheme of ['light', 'dark']) {
    const { page } = await open({ colorScheme });
    await goTo(page, 'Class');
    await tick(page, [1, 4]);
    await openWeeks(page, { ...texts(course), day: '2027-01-12' });
    await page.evaluate(axe);
    const found = await page.evaluate(async () => {
      const { violations } = await window.axe.run('#weeks');
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`);
    });
    assert.deepEqual(found, []);
  }
});

test('it fits a narrow page, and each figure says whose it is', async () => {
  for (const width of [320, 360]) {
    const { page } = await open({ viewport: { width, height: 740 } });
    await goTo(page, 'Class');
    await tick(page, [0, 1, 2, 3, 4, 5, 6, 7]);
    await openWeeks(page, { ...texts(course), day: '2027-01-12', time: '19:00' });
    const beyond = await page.evaluate(() => [
      document.documentElement.scrollWidth - document.documentElement.clientWidth,
      ...[...document.querySelectorAll('#weeks .table')].map(
        (table) => table.scrollWidth - table.clientWidth,
      ),
    ]);
    assert.deepEqual(beyond, [0, 0]);
    const whose = await place(page).locator('tbody tr').first().locator('.whose').allInnerTexts();
    assert.equal(whose.length, 8);
    assert.match(whose[1], /super fine/);
  }
});
