// A leg that is too wide for the foot's count: drawn wider, told round by round, and never said to fit where
// it does not.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { goTo, openBrowser, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

/** A leg of 35 cm on a calf of 45.2 cm: k2p3 on 50 from rib round 111, k3p3 on 60 from rib round 134. */
async function openWide(options) {
  const { page, seen } = await open(options);
  await page.locator('.finer > summary').click();
  await typeInto(page, 'f-foot-calfGirthMm', '45.2');
  // The foot is another's now, but its heel is the one the sock was planned for.
  await typeInto(page, 'f-foot-heelAnkleGirthMm', '31');
  await typeInto(page, 'f-legHeightMm', '35');
  return { page, seen };
}

const textOf = (page, selector) => page.locator(selector).innerText();

/** Half widths of a drawn edge by height, from its path's own points. */
const edgeOf = (page, only) =>
  page.evaluate((selector) => {
    const edge = document.querySelector(`.pair.${selector} .edge`);
    const box = edge.getBBox();
    const long = edge.getTotalLength();
    const right = [];
    for (let i = 0; i <= 4000; i += 1) {
      const { x, y } = edge.getPointAtLength((long * i) / 4000);
      if (x > 0) right.push([y, x]);
    }
    const at = (y) =>
      right.reduce((best, one) => (Math.abs(one[0] - y) < Math.abs(best[0] - y) ? one : best))[1];
    const round = box.height / 162;
    return {
      stitch: at(box.height * 0.6) / 10,
      // In rounds from the tip.
      after: [50, 120, 148, 162].map((done) => at(Math.max(0.5, box.height - done * round))),
    };
  }, only);

test('the tube is drawn as wide as its stitches, before and after it widens', async () => {
  const { page } = await openWide();
  for (const only of ['wide-only', 'narrow-only']) {
    if (only === 'narrow-only') await page.setViewportSize({ width: 360, height: 740 });
    const { stitch, after: halves } = await edgeOf(page, only);
    const stitches = halves.map((half) => (half / stitch) * 4);
    // 40 up to the first widening round, 50 before the second, 60 at the edge.
    [40, 40, 50, 60].forEach((count, i) =>
      assert.ok(Math.abs(stitches[i] - count) < 0.8, `${only}: ${stitches.join(', ')}`),
    );
  }
});

test('the ribs go on unbroken across each widening, and end straight on the wider rib', async () => {
  const { page } = await openWide();
  const bands = await page.evaluate(() =>
    document
      .querySelector('.pair.wide-only .purl')
      .getAttribute('d')
      .split('Z')
      .filter(Boolean)
      .map((band) =>
        band
          .slice(1)
          .split('L')
          .map((point) => point.split(' ').map(Number)),
      ),
  );
  const edge = await page.evaluate(() => {
    const box = document.querySelector('.pair.wide-only .edge').getBBox();
    return { x: box.width / 2, stitch: box.width / 30, round: box.height / 162 };
  });
  // Before the leg widens the sock is 20 stitches across; no band is drawn where it lies behind.
  const isBehind = ([x]) => Math.abs(x) >= 10 * edge.stitch;
  let whole = 0;
  for (const band of bands) {
    const right = band.slice(0, band.length / 2);
    const left = band.slice(band.length / 2).reverse();
    // From the rib's first round to the edge without a gap, or to where it leaves the front.
    const isFromFoot = Math.abs(right[0][1] - 145 * edge.round) < 0.5;
    const isToEdge = Math.abs(right.at(-1)[1]) < 0.5;
    assert.ok(isFromFoot || (isBehind(right[0]) && isBehind(left[0])), 'begins in sight');
    assert.ok(isToEdge || (isBehind(right.at(-1)) && isBehind(left.at(-1))), 'ends in sight');
    whole += isFromFoot && isToEdge ? 1 : 0;
    right.slice(1).forEach(([x, y], i) => {
      const [was, from] = right[i];
      // A column moves a stitch in four rounds, a little more where the tube itself opens.
      const most = ((from - y) / edge.round) * edge.stitch * 0.9 + 1.5 * edge.stitch;
      assert.ok(Math.abs(x - was) <= most, `a jump from ${was} to ${x} at ${y}`);
    });
    const across = (i) => right[i][0] - left[i][0];
    if (isFromFoot) assert.ok(Math.abs(across(0) - 2 * edge.stitch) < 0.1, 'two at the foot');
    if (isToEdge) {
      assert.ok(Math.abs(across(right.length - 1) - 3 * edge.stitch) < 0.1, 'three at the edge');
    }
  }
  assert.ok(bands.length > 6 && whole > 0, `${bands.length} bands, ${whole} whole`);
});

test('of mirrored socks the widened ribs are each other’s mirror', async () => {
  const { page } = await openWide();
  await page.locator('#f-rib-lean').selectOption('mirrored');
  const [a, b] = await page.evaluate(() =>
    [...document.querySelectorAll('.pair.wide-only .sock')].map((sock) => {
      const dots = (selector) => sock.querySelector(selector).getAttribute('d');
      return { dots: dots('.increases'), bands: dots('.purl') };
    }),
  );
  const dotsOf = ({ dots }, sign) =>
    [...dots.matchAll(/M(-?[\d.]+) (-?[\d.]+)h0/g)]
      .map(([, x, y]) => `${Math.round(Number(y) * 10)} ${Math.round(sign * Number(x) * 10)}`)
      .sort();
  assert.ok(dotsOf(a, 1).length >= 22);
  assert.deepEqual(dotsOf(a, 1), dotsOf(b, -1));
  assert.notDeepEqual(dotsOf(a, 1), dotsOf(b, 1));
  // Of each band the edge over the widest round, seen in a mirror.
  const tops = ({ bands }, sign) =>
    bands
      .split('Z')
      .filter(Boolean)
      .flatMap((band) =>
        band
          .slice(1)
          .split('L')
          .map((point) => point.split(' ').map(Number))
          .filter(([x, y]) => y === 0 && Math.abs(x) < 60)
          .map(([x]) => Math.round(sign * x * 10)),
      )
      .sort((one, other) => one - other);
  assert.ok(tops(a, 1).length >= 8);
  assert.deepEqual(tops(a, 1), tops(b, -1));
});

test('every part is bracketed with its rounds, its length and its rib', async () => {
  const { page } = await openWide();
  const labels = (only) =>
    page.evaluate(
      (selector) =>
        [...document.querySelectorAll(`.pair.${selector} .brackets text`)].map(
          (label) => label.textContent,
        ),
      only,
    );
  const standing = await labels('wide-only');
  for (const label of [
    'k3, p3, 60 stitches',
    '4 rounds · 1.5 cm',
    'k2, p3, 50 stitches',
    '22 rounds · 8 cm',
    'cuff, k3, p3',
    '17 rounds · 6.2 cm',
  ])
    assert.ok(standing.includes(label), `${label} in ${standing.join(' / ')}`);
  const lying = (await labels('narrow-only')).join(' / ');
  assert.match(lying, /k2, p3, 50 stitches: 22 rounds · 8 cm/);
  assert.match(lying, /k3, p3, 60 stitches: 4 rounds · 1\.5 cm/);
  assert.match(lying, /cuff, k3, p3 \/ 8 rounds · 2\.9 cm/);
  const rows = await page
    .locator('.pair-place tbody tr')
    .evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
  assert.deepEqual(
    rows.map(([name, rounds, , stitches]) => [name, rounds, stitches]),
    [
      ['toe', '17', '40'],
      ['spiral rib', '111', '40'],
      ['wider, k2, p3', '22', '50'],
      ['wider, k3, p3', '4', '60'],
      ['cuff', '8', '60'],
      ['the whole sock', '162', '60'],
    ],
  );
});

test('the strip shows the wider leg and marks the rounds that widen it', async () => {
  const { page } = await openWide();
  const drawn = await page.evaluate(() => {
    const strip = document.querySelector('.strip.wide-only');
    const width = strip.viewBox.baseVal.width;
    const [, ...wedges] = strip
      .querySelector('.widens')
      .getAttribute('d')
      .split(/M(?=[\d.]+ 28V)/);
    const band = strip.querySelector('.band.widening');
    return {
      rounds: wedges.map((wedge) => Math.floor((parseFloat(wedge) / width) * 162) + 1),
      from: Math.round((band.x.baseVal.value / width) * 162),
      long: Math.round((band.width.baseVal.value / width) * 162),
    };
  });
  // 17 toe rounds, then 111 of the rib; the second is the rib's 134th.
  assert.deepEqual(drawn, { rounds: [129, 151], from: 128, long: 26 });
});

test('how to knit it: each widening round, its line, the rib it leaves, and the other way out', async () => {
  const { page } = await openWide();
  await goTo(page, 'Knit');
  const told = await textOf(page, '.wider');
  assert.match(told, /From 23\.2 cm above the floor the leg is too wide for 40 stitches/);
  assert.match(told, /Round 112 of the rib, 129 of the sock, 46\.4 cm from the tip/);
  assert.match(told, /each half: k1, \*p2, M1P, k2\* 4 times, p2, M1P, k1\./);
  assert.match(told, /Round 134 of the rib, 151 of the sock/);
  assert.match(told, /each half: \*k2, M1L, p3\* 5 times\./);
  assert.match(told, /k3, p3: 60 stitches a sock, 30 in each half/);
  assert.match(told, /make one purlwise/);
  assert.match(told, /Try 6.mm, US.10, UK.4 first: it has to come to 14\.77 stitches over 10.cm/);
  assert.match(told, /new swatch/);
  const rows = await page
    .locator('.wider .lines tbody tr')
    .evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
  assert.deepEqual(rows[1], [
    '117–120',
    'p1, *k2, p3* 4 times, k2, p2',
    'p1, *k2, p3* 4 times, k2, p2',
  ]);
  assert.deepEqual(rows.at(-1)[0], '137');
  await goTo(page, 'Count');
  assert.match(
    await textOf(page, '[data-view=cautions]'),
    /too wide for 40 stitches: the rib widens to 60/,
  );
});

test('the other units tell the same leg', async () => {
  const { page } = await openWide();
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  await goTo(page, 'Knit');
  const told = await textOf(page, '.wider');
  assert.match(told, /From 9⅛ in above the floor/);
  assert.match(told, /it has to come to 15\.01 stitches over 4.in/);
});

test('a leg that need not widen has no such part, row or mark', async () => {
  const { page } = await open();
  assert.equal(await page.locator('.strip .widens').count(), 0);
  await goTo(page, 'Buy');
  assert.doesNotMatch(await textOf(page, '#buy'), /wider|widening/);
  await goTo(page, 'Knit');
  assert.equal(await page.locator('.wider').count(), 0);
  assert.match(
    await textOf(page, '#knit'),
    /At the ankle\s+Behind, the way .* longer than the sock by [\d.]+\s% of its length: there it stretches/,
  );
});

test('where no rib grows wide enough, the leg’s field says so and how to mend it', async () => {
  const { page } = await open();
  await page.locator('.finer > summary').click();
  await typeInto(page, 'f-foot-calfGirthMm', '70');
  await typeInto(page, 'f-rib-knit', '10');
  await typeInto(page, 'f-rib-purl', '10');
  await typeInto(page, 'f-foot-heelAnkleGirthMm', '31');
  await typeInto(page, 'f-legHeightMm', '35');
  const problem = page.locator('#f-legHeightMm-problem');
  assert.match(
    await problem.innerText(),
    /Too wide from 20\.2 cm above the floor: 70 cm round takes 146\s%.*End the leg below 20\.2 cm; or choose a rib of fewer stitches/,
  );
  // What is shown meanwhile is an older plan, and says so.
  await goTo(page, 'Knit');
  assert.match(await page.locator('#knit .last-good').innerText(), /last good/);
});

test('a stitch that changes halves is told in the round that needs it', async () => {
  const { page } = await open();
  await page.locator('.finer > summary').click();
  await typeInto(page, 'f-rib-knit', '4');
  await typeInto(page, 'f-stitchCount', '42');
  await typeInto(page, 'f-foot-calfGirthMm', '42');
  await typeInto(page, 'f-foot-heelAnkleGirthMm', '31');
  await typeInto(page, 'f-legHeightMm', '35');
  const caution = await textOf(page, '[data-view=cautions]');
  assert.match(caution, /After round (\d+) of the rib, which widens it, move one stitch/);
  const [, round] = /After round (\d+) of the rib/.exec(caution);
  await goTo(page, 'Knit');
  const told = await textOf(page, '.wider');
  assert.match(told, new RegExp(`Round ${round} of the rib`));
  assert.match(
    told,
    /The halves are uneven now\. Slip the first stitch of the second half over to the first/,
  );
});
