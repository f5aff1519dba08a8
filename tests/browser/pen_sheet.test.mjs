// The sheet to fill in by pen: on one side of A4 and Letter, and worked out by hand it comes to the core's own counts.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { openBrowser } from './open_page.mjs';
import { inkOf, print } from './pdf.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const squeeze = (text) => text.replace(/[\s\u00a0\u202f]+/g, ' ');

async function printed(format, fields = {}) {
  const { page } = await open({ before: () => (window.print = () => {}) });
  await page.locator('.finer > summary').click();
  for (const [id, text] of Object.entries(fields)) await page.locator(`#f-${id}`).fill(text);
  await page.locator('nav a', { hasText: 'Class' }).click();
  await page.locator('[data-print="pen"]').click();
  return print(page, format);
}

for (const format of ['A4', 'Letter']) {
  for (const [name, fields] of Object.entries({
    'the usual rib': {},
    'a broad rib': { 'rib-knit': '4', 'rib-purl': '4' },
    'a straight one': { 'rib-roundsPerShift': '0' },
  })) {
    test(`with ${name} it is one side of ${format}, and nothing on it is cut off`, async () => {
      const { words, pictures } = await printed(format, fields);
      assert.equal(words.length, 1);
      const { edges, darkest, colour } = inkOf(pictures[0]);
      assert.ok(darkest < 30);
      assert.equal(colour, 0);
      for (const [edge, gap] of Object.entries(edges)) assert.ok(gap >= 19, `${edge}: ${gap}`);
      assert.ok(!words[0].includes('[object'));
    });
  }
}

test('while a field is wrong there is nothing on it', async () => {
  const { words } = await printed('A4', { 'foot-lengthMm': 'none' });
  assert.ok(!words.join(' ').includes('by pen'));
});

// Feet and hands as a class may have them: stitches and rounds over 10 cm, girth, length and leg in cm.
const students = [
  { stitches: 20, rounds: 28, girth: 22.8, foot: 24.6, leg: 20 },
  { stitches: 16, rounds: 22, girth: 24, foot: 26, leg: 18 },
  { stitches: 26, rounds: 36, girth: 21.5, foot: 23, leg: 22 },
  { stitches: 22, rounds: 31, girth: 25.5, foot: 27.5, leg: 24 },
];

test('a pen and the core come to the same counts', async () => {
  const { answer } = await loadCore();
  const { words } = await printed('A4');
  const told = squeeze(words[0]);
  const [, ease] = /G × ([\d.]+) × S/.exec(told) ?? told.match(/× (0\.9\d*) ×/);
  const [, length] = told.match(/× (0\.96) \+/);
  const rows = [...told.matchAll(/(?<= )(\d\d) (\d+) ((?:\d+(?:–\d+)?, )+\d+(?:–\d+)?)(?= )/g)];
  const table = new Map(
    rows.map(([, n, wraps, rounds]) => [Number(n), { wraps: Number(wraps), rounds }]),
  );
  assert.deepEqual([...table.keys()], [24, 32, 40, 48, 56, 64, 72, 80]);
  for (const { stitches, rounds, girth, foot, leg } of students) {
    const about = girth * Number(ease) * (stitches / 10);
    const [count] = [...table.keys()].sort((a, b) => Math.abs(a - about) - Math.abs(b - about));
    const all = Math.round((foot * Number(length) + leg) * (rounds / 10));
    const reply = JSON.parse(
      answer(
        'plan',
        JSON.stringify({
          version: 1,
          swatch: { readings: [{ stitches, widthMm: 100, rounds, heightMm: 100 }] },
          foot: { ballGirthMm: girth * 10, lengthMm: foot * 10 },
          legHeightMm: leg * 10,
          stitchCount: count,
        }),
      ),
    );
    assert.ok(reply.ok, JSON.stringify(reply.problems));
    const { plan } = reply;
    assert.equal(plan.castOn.wraps, table.get(count).wraps, `wraps of ${count}`);
    const increases = table
      .get(count)
      .rounds.split(', ')
      .map((run) => run.split('–').map(Number))
      .reduce((sum, [from, to = from]) => sum + to - from + 1, 0);
    assert.equal(increases, plan.toe.increaseRounds, `increases of ${count}`);
    assert.equal(plan.totalRounds, all, `rounds of ${girth}`);
    const near = plan.choices.map((one) => one.stitches);
    assert.ok(near.includes(count), `${count} among ${near}`);
  }
});
