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
    const points = d
      .slice(1, d.indexOf('Z'))
      .split('L')
      .map((point) => point.split(' ').map(Number));
    // The slanting part of the band's first edge.
    const [from, to] = [points[1], points[points.length / 2 - 3]];
    return [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  });
  const degrees = (Math.atan(run / rise) * 180) / Math.PI;
  // One stitch over four rounds at 20 and 28 over 4 in: atan((1/20)/(4/28)).
  assert.ok(Math.abs(degrees - 19.29) < 0.3, `${degrees}`);
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
