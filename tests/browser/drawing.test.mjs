// The drawing is of the plan: to scale, from its counts, and joined to the fields beside it.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { openBrowser, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const boxes = (page, only) =>
  page.evaluate(
    (selector) =>
      [...document.querySelectorAll(`.pair.${selector} .edge`)].map((edge) => {
        const { width, height } = edge.getBBox();
        return { width, height };
      }),
    only,
  );

test('both socks are as wide and as long as their stitches and rounds make them', async () => {
  const { page } = await open();
  for (const only of ['wide-only', 'narrow-only']) {
    if (only === 'narrow-only') await page.setViewportSize({ width: 360, height: 740 });
    const [a, b] = await boxes(page, only);
    assert.deepEqual(a, b);
    // 40 stitches at 20 over 4 in, flat: 2 x 2 in; 120 rounds at 28 over 4 in.
    const flat = (40 / 2 / 20) * 4;
    const long = (120 / 28) * 4;
    assert.ok(Math.abs(a.width / a.height - flat / long) < 1e-3, only);
  }
});

test('the two socks’ ribs are alike, and each other’s mirror when asked', async () => {
  const { page } = await open();
  const ribs = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('.pair.wide-only .purl')].map((path) => path.getAttribute('d')),
    );
  const [a, b] = await ribs();
  assert.equal(a, b);
  await page.locator('.finer > summary').click();
  await page.locator('#f-rib-lean').selectOption('mirrored');
  const [first, second] = await ribs();
  assert.equal(first, a);
  // Every band of B is a band of A seen in a mirror: the same heights, x turned round.
  const bands = (d, turn) =>
    d
      .split('Z')
      .filter(Boolean)
      .map((band) =>
        band
          .replace('M', '')
          .split('L')
          .map((point) => point.split(' ').map(Number))
          .map(([x, y]) => `${(turn * x).toFixed(1)} ${y.toFixed(1)}`.replace('-0.0', '0.0'))
          .sort()
          .join('; '),
      );
  const inSight = (all) => new Set(all);
  const mirrored = inSight(bands(first, -1));
  const shared = bands(second, 1).filter((band) => mirrored.has(band));
  assert.ok(shared.length >= 8, `${shared.length} bands`);
});

test('the slant on paper is the pitch the plan tells', async () => {
  const { page } = await open();
  const [run, rise] = await page.evaluate(() => {
    const d = document.querySelector('.pair.wide-only .purl').getAttribute('d');
    // The longest slanting side of any band.
    const sides = d.split('Z').flatMap((band) => {
      const points = band
        .slice(1)
        .split('L')
        .map((point) => point.split(' ').map(Number));
      return points
        .slice(1)
        .map(([x, y], i) => [Math.abs(x - points[i][0]), Math.abs(y - points[i][1])]);
    });
    return sides.sort(([, one], [, other]) => other - one).find(([wide]) => wide > 1);
  });
  const degrees = (Math.atan(run / rise) * 180) / Math.PI;
  // One stitch over four rounds at 20 and 28 over 4 in: atan((1/20)/(4/28)).
  assert.ok(Math.abs(degrees - 19.29) < 0.3, `${degrees}`);
});

// From a newborn's sock in bulky yarn to a man's knee sock in the finest: [fields, stitches, rounds].
const anySock = [
  [
    {
      stitches: '8',
      rounds: '10',
      ball: '11',
      foot: '9.5',
      leg: '6',
      cuff: '1',
      knit: '1',
      purl: '1',
    },
    8,
    15,
  ],
  [
    {
      stitches: '32',
      rounds: '44',
      ball: '23',
      foot: '26',
      leg: '45',
      cuff: '4',
      knit: '3',
      purl: '2',
    },
    65,
    300,
  ],
  [
    {
      stitches: '70',
      rounds: '90',
      ball: '30',
      foot: '29',
      leg: '38',
      cuff: '4',
      knit: '3',
      purl: '2',
    },
    190,
    580,
  ],
  [
    {
      stitches: '60',
      rounds: '80',
      ball: '23',
      foot: '26',
      leg: '30',
      cuff: '4',
      knit: '1',
      purl: '1',
    },
    120,
    420,
  ],
];

test('any sock is drawn in a few paths, short enough for a frame, and says where ribs are left out', async () => {
  const { page } = await open();
  await page.locator('.finer > summary').click();
  await page.locator('#f-foot-calfGirthMm').fill('');
  await page.locator('#f-foot-ankleGirthMm').fill('');
  await page.locator('#f-foot-heelAnkleGirthMm').fill('');
  const ids = {
    stitches: 'swatch-readings-0-stitches',
    rounds: 'swatch-readings-0-rounds',
    ball: 'foot-ballGirthMm',
    foot: 'foot-lengthMm',
    leg: 'legHeightMm',
    cuff: 'cuffMm',
    knit: 'rib-knit',
    purl: 'rib-purl',
  };
  for (const [fields, stitches, rounds] of anySock) {
    for (const shift of ['1', '4']) {
      await page.locator('#f-rib-roundsPerShift').fill(shift);
      for (const [name, value] of Object.entries(fields)) {
        await page.locator(`#f-${ids[name]}`).fill(value);
      }
      const seen = await page.evaluate(() => ({
        wrong: document.querySelector('[data-last-good]') !== null,
        note: [...document.querySelectorAll('.hand .figure')].map((node) => node.textContent),
        pairs: [...document.querySelectorAll('svg.pair')].map((pair) => ({
          nodes: pair.querySelectorAll('*').length,
          text: pair.outerHTML.length,
          every: Number(pair.getAttribute('data-every')),
          apart: pair.getBoundingClientRect().width,
        })),
        told: document.querySelector('.pair-place figcaption').textContent,
      }));
      assert.equal(seen.wrong, false, JSON.stringify(fields));
      assert.ok(Math.abs(seen.note[1] - stitches) <= stitches * 0.1, seen.note.join());
      assert.ok(Math.abs(seen.note[3] - rounds) <= rounds * 0.15 + 2, seen.note.join());
      for (const { nodes, text, every } of seen.pairs) {
        assert.ok(nodes < 120, `${nodes} nodes`);
        assert.ok(text < 90_000, `${text} characters`);
        if (every > 1) assert.match(seen.told, new RegExp(`one in ${every} is drawn`));
      }
      const isFine = seen.pairs.some(({ every }) => every > 1);
      assert.equal(/Too fine/.test(seen.told), isFine);
    }
  }
});

test('each lead begins at its field’s line', async () => {
  const { page } = await open();
  const check = async () => {
    const gaps = await page.evaluate(() => {
      const svg = document.querySelector('.pair.wide-only');
      const { top, height } = svg.getBoundingClientRect();
      const unit = height / svg.viewBox.baseVal.height;
      const starts = [...svg.querySelectorAll('.measure')]
        .flatMap((path) => [...path.getAttribute('d').matchAll(/M0 (\d+)H10/g)])
        .map(([, y]) => top + Number(y) * unit)
        .sort((one, other) => one - other);
      const lines = [...document.querySelectorAll('.along .field:not([hidden]) .entry')]
        .map((entry) => entry.getBoundingClientRect().bottom - 1)
        .sort((one, other) => one - other);
      return [starts.length, lines.length, ...starts.map((y, i) => Math.abs(y - lines[i]))];
    });
    const [leads, fields, ...apart] = gaps;
    assert.equal(leads, fields);
    assert.ok(Math.max(...apart) < 2, gaps.join(' '));
  };
  await check();
  await typeInto(page, 'f-legHeightMm', '35');
  await check();
  await page.getByRole('radio', { name: 'by shoe' }).check();
  await check();
});

test('a drawing’s figures stand in a table too', async () => {
  const { page } = await open();
  const rows = await page
    .locator('.pair-place tbody tr')
    .evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
  assert.deepEqual(
    rows.map(([name, rounds]) => [name, rounds]),
    [
      ['toe', '17'],
      ['spiral rib', '95'],
      ['cuff', '8'],
      ['the whole sock', '120'],
    ],
  );
  for (const drawing of await page.locator('svg[role="img"]').all()) {
    assert.ok(((await drawing.getAttribute('aria-label')) ?? '').length > 20);
  }
});

test('a large, finely knit sock is drawn in a few nodes', async () => {
  const { page } = await open();
  await page.locator('#f-swatch-readings-0-stitches').fill('60');
  await page.locator('#f-swatch-readings-0-rounds').fill('90');
  const nodes = await page.locator('.pair.wide-only *').count();
  assert.ok(nodes < 120, `${nodes} nodes`);
});

test('labels of the stretch line and the strip never run into each other', async () => {
  for (const width of [320, 768, 1280]) {
    const { page } = await open({ viewport: { width, height: 800 } });
    const overlaps = () =>
      page.evaluate(() =>
        [...document.querySelectorAll('.stretch, .strip')]
          .filter((drawing) => drawing.checkVisibility())
          .flatMap((drawing) => {
            const labels = [...drawing.querySelectorAll('text')].map((label) => [
              label.textContent,
              label.getBoundingClientRect(),
            ]);
            return labels.flatMap(([one, a], i) =>
              labels
                .slice(i + 1)
                .filter(([, b]) => a.left < b.right && b.left < a.right)
                // Lines of one label lie close; those of two may not share half a line.
                .filter(([, b]) => Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 8)
                .map(([other]) => `${one} / ${other}`),
            );
          }),
      );
    await page.locator('.finer > summary').click();
    assert.deepEqual(await overlaps(), [], `${width} px, the example`);
    await page.locator('#f-cuffMm').fill('1');
    assert.deepEqual(await overlaps(), [], `${width} px, a short cuff`);
    await page.locator('#f-foot-ballGirthMm').fill('12');
    await page.locator('#f-foot-lengthMm').fill('12');
    await page.locator('#f-legHeightMm').fill('12');
    assert.equal(await page.locator('.mend').count(), 0);
    assert.deepEqual(await overlaps(), [], `${width} px, a small sock`);
    await page.context().close();
  }
});
