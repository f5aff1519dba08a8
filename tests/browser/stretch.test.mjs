// The stretch line tells every girth there is to pass, and a count of one's own stays one's own.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { openBrowser, readCounts, typeInto } from './open_page.mjs';
import { countNow, line, openFiner, phone } from './stretch_line.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

test('a count of one’s own stays, is refused in words for a rib it does not fit, and what fits is offered', async () => {
  const { page } = await open();
  await page.locator('.choice', { hasText: '44' }).click();
  // Other fields change: it stays.
  await typeInto(page, 'f-foot-ballGirthMm', '25');
  await typeInto(page, 'f-legHeightMm', '18');
  assert.equal(await countNow(page), 44);
  await typeInto(page, 'f-rib-purl', '3');
  assert.equal(await page.inputValue('#f-stitchCount'), '44');
  assert.match(await page.textContent('.offers'), /44 is no count for this rib/);
  const offered = await page.locator('.offers button').allTextContents();
  assert.deepEqual(offered, ['take 40', 'take the advised 50']);
  // The last good plan is still in view.
  assert.equal(await countNow(page), 44);
  await page.getByRole('button', { name: 'take 40' }).click();
  assert.equal(await page.locator('.offers').count(), 0);
  assert.equal(await countNow(page), 40);
  assert.equal(await page.inputValue('#f-stitchCount'), '40');
  await page.getByRole('button', { name: 'back to the advised 50' }).click();
  assert.equal(await page.inputValue('#f-stitchCount'), '');
  assert.equal(await countNow(page), 50);
});

test('every girth is on the line, and in its table', async () => {
  const { page } = await open();
  const flags = () =>
    page
      .locator('.stretch.wide-only .flag')
      .evaluateAll((all) =>
        all.map((flag) =>
          [...flag.querySelectorAll('text')].map((one) => one.textContent).join(' '),
        ),
      );
  assert.deepEqual(await flags(), [
    'at rest 14.2 cm',
    'the foot 22.8 cm',
    'the edge 27.7 cm',
    'the heel 31 cm',
    // 85 % of 40 stitches, each as wide as half its yarn: 0.85 x 40 x 9.977 mm.
    'too tight past 33.9 cm',
    'no further 39.9 cm',
  ]);
  assert.equal(await page.locator('.stretch-table[open]').count(), 0);
  await page.locator('.stretch-table summary').click();
  const rows = await page
    .locator('.stretch-table tbody tr')
    .evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
  assert.deepEqual(
    rows.map(([, girth]) => girth),
    ['14.2 cm', '20.3 cm', '22.8 cm', '27.7 cm', '31 cm', '33.9 cm', '39.9 cm'],
  );
  assert.deepEqual(rows[1], ['eased open', '20.3 cm', 'give or take 0.5 cm']);
  assert.match(rows[4].join(' '), /heel.*takes 78.% of the stretch/);
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  assert.equal((await flags())[3], 'the heel 12¼ in');
});

test('a leg that is widened is no failure of the foot’s tube, and says on what it goes', async () => {
  const { page } = await open();
  await openFiner(page);
  await page.locator('#f-foot-calfGirthMm').fill('45.2');
  await page.locator('#f-legHeightMm').fill('35');
  const edge = page.locator('.stretch.wide-only .flag', { hasText: 'the edge' });
  assert.equal(await edge.locator('text').nth(1).textContent(), '45.2 cm, on 60 st');
  assert.match(await edge.getAttribute('class'), /elsewhere/);
  const box = await edge.locator('path').boundingBox();
  const { from, to } = await line(page);
  assert.ok(452 > from && 452 < to);
  assert.ok(box.x > 1000 && box.x < 1248);
});

test('a heel that does not pass is marked past the limit, on the line and on the pair', async () => {
  for (const options of [{}, phone]) {
    const { page } = await open(options);
    const [pair, drawn] =
      options === phone ? ['.pair.narrow-only', 'phone-only'] : ['.pair.wide-only', 'wide-only'];
    assert.equal(await page.locator(`${pair} .tight`).count(), 0);
    await openFiner(page);
    await page.locator('#f-stitchCount').fill('32');
    const hatched = await page.locator(`${pair} .tight`).evaluateAll((all) =>
      all.map((one) => {
        const sock = one.parentNode.querySelector('.edge').getBBox();
        const { y, height, width } = one.getBBox();
        return { middle: (y + height / 2) / sock.height, isAcross: width >= sock.width };
      }),
    );
    assert.equal(hatched.length, 2);
    // Where the leg ends and the foot begins: 20 cm below the edge, of 43.6.
    for (const { middle, isAcross } of hatched) {
      assert.ok(Math.abs(middle - 200 / 436.16) < 0.01, `${middle}`);
      assert.ok(isAcross);
    }
    assert.equal(await page.textContent(`${pair} .tight-label`), 'will not pass the heel');
    const heel = page.locator(`.stretch.${drawn} .flag.tight`);
    assert.match(await heel.textContent(), /the heel31 cm, too tight/);
    const x = async (place) => (await place.locator('.thread').boundingBox()).x;
    const limit = page.locator(`.stretch.${drawn} .flag`, { hasText: 'too tight past' });
    assert.ok((await x(heel)) > (await x(limit)));
    // 36 stitches: it goes on, tightly.
    await page.locator('#f-stitchCount').fill('36');
    assert.equal(await page.textContent(`${pair} .tight-label`), 'too tight at the heel');
    await page.context().close();
  }
});

test('a heel past all that the yarn allows is still shown', async () => {
  const { page } = await open(phone);
  await openFiner(page);
  await page.locator('#f-stitchCount').fill('28');
  await page.locator('#f-foot-ballGirthMm').fill('23');
  const threads = await page
    .locator('.stretch.phone-only .flag .thread')
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().x));
  const names = await page.locator('.stretch.phone-only .stretch-name').allTextContents();
  const at = (name) => threads[names.findIndex((one) => one.includes(name))];
  assert.ok(at('heel') > at('no further'), names.join());
  assert.ok(at('heel') < 345);
});

test('ribs are offered where none of this one’s counts is advised', async () => {
  const { page } = await open();
  await page.locator('#f-rib-knit').fill('7');
  await page.locator('#f-rib-purl').fill('6');
  const first = page.locator('.ribs button').first();
  const said = await first.textContent();
  const [, knit, purl, count] = /^k(\d), p(\d) on (\d+) stitches/.exec(said);
  await first.click();
  assert.equal(await page.inputValue('#f-rib-knit'), knit);
  assert.equal(await page.inputValue('#f-rib-purl'), purl);
  assert.equal(await countNow(page), Number(count));
});

test('no label of the line runs into another or off it, whatever is on it', async () => {
  const { page } = await open({ viewport: { width: 320, height: 800 } });
  await openFiner(page);
  const faults = () =>
    page.evaluate(() => {
      const drawing = document.querySelector('.stretch.phone-only');
      const frame = drawing.getBoundingClientRect();
      const labels = [...drawing.querySelectorAll('.flag text, .count-figure')].map((label) => ({
        said: label.textContent,
        box: label.getBoundingClientRect(),
        flag: label.parentNode,
      }));
      const threads = [...drawing.querySelectorAll('.thread')].map((thread) => ({
        flag: thread.parentNode,
        box: thread.getBoundingClientRect(),
      }));
      const meet = (a, b, inset) =>
        a.left + inset < b.right &&
        b.left + inset < a.right &&
        Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 7;
      const pairs = labels.flatMap(({ said, box }, i) =>
        labels
          .slice(i + 1)
          .filter((other) => meet(box, other.box, 0))
          .map((other) => `${said} / ${other.said}`),
      );
      const crossed = labels.flatMap(({ said, box, flag }) =>
        threads
          .filter((one) => one.flag !== flag && meet(box, one.box, 1))
          .map(() => `thread through ${said}`),
      );
      const off = labels.filter(
        ({ box }) => box.left < frame.left - 6 || box.right > frame.right + 6,
      );
      return [...pairs, ...crossed, ...off.map(({ said }) => `off: ${said}`)];
    });
  for (const system of ['cm', 'in']) {
    await page.getByRole('radio', { name: system, exact: true }).check();
    for (const count of ['', '28', '32', '36', '44', '60', '80']) {
      for (const calf of ['37.3 cm', '45.2 cm', '30 cm']) {
        await page.locator('#f-stitchCount').fill(count);
        await page.locator('#f-foot-calfGirthMm').fill(calf);
        assert.deepEqual(await faults(), [], `${count} st, calf ${calf}, ${system}`);
      }
    }
    await page.locator('#f-stitchCount').fill('');
  }
});

test('units switched leave the counts and the scale alone', async () => {
  const { page } = await open();
  await page.locator('.step').nth(1).click();
  const [counts, { from, to }] = [await readCounts(page), await line(page)];
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  assert.deepEqual(await readCounts(page), counts);
  const now = await line(page);
  assert.deepEqual([now.from, now.to], [from, to]);
});
