// In the shop, before any swatch: what to buy, how sure that is, and what to swatch.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { goTo, openBrowser, readNote, typeInto } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const buy = '[data-view="buy"]';

/** No swatch, fingering yarn, a foot by tape; and then to the list. */
async function inTheShop(page, moment = 'Buy') {
  await goTo(page, 'Count');
  await page.getByRole('radio', { name: 'not yet' }).check();
  await page.locator('#f-yarn-category').selectOption('1');
  await typeInto(page, 'f-foot-ballGirthMm', '22.8');
  await typeInto(page, 'f-foot-lengthMm', '24.6');
  await goTo(page, moment);
}

const sums = async (page) =>
  (await page.locator('.sum').allInnerTexts()).map((text) => text.replace(/\s+/g, ' '));

test('before the swatch the shop’s questions are answered, each figure with its mark', async () => {
  const { page } = await open();
  await inTheShop(page);
  const [yarn, mass, needle] = await sums(page);
  // 64 stitches: 22.8 cm less a tenth, at 32 over 4 in, is 64.6. The rest is the plan's own.
  assert.equal((await readNote(page))['stitches a round'], '64');
  assert.match(yarn, /^332 m 364 yd guess of yarn for the pair, give or take 40 m$/);
  assert.match(mass, /^about 79 g 2\.8 oz guess/);
  assert.match(needle, /^2\.25 mm US.1, UK.13 guess one long circular, 100 cm \(40 in\)/);
  const marked = await page.evaluate(() =>
    [...document.querySelectorAll('.hand > div, .hand-more > div')].map(
      (line) => line.querySelectorAll('.guess').length,
    ),
  );
  assert.deepEqual(marked, [1, 1, 1, 1, 1, 1, 1]);
  assert.equal(await page.locator('[data-view="summary"] .guess').count(), 1);
  assert.equal(await page.locator('.ticks .guess').count(), 2);
  assert.match(
    await page.textContent('[data-view="note"]'),
    /guess: worked out from the yarn’s label/,
  );
});

test('a guess is marked wherever a figure that hangs on it stands', async () => {
  const { page } = await open();
  await inTheShop(page, 'Count');
  const ringed = (selector) =>
    page.evaluate((css) => {
      const texts = [...document.querySelectorAll(css)].map((node) => node.textContent);
      return [texts.length, texts.filter((text) => text.includes('○')).length];
    }, selector);
  assert.deepEqual(await ringed('.choice .tag'), [5, 5]);
  assert.deepEqual(await ringed('.pair.wide-only .part-name'), [4, 3]); // and how the rib moves
  assert.deepEqual(await ringed('.strip.wide-only .strip-text'), [3, 3]);
  // The foot was measured here, and the leg and the heel are the example's no more.
  assert.deepEqual(await ringed('.stretch.wide-only .stretch-figure'), [6, 5]);
  // All but the sock's length, which is the tape's; what each foot is told from is no guess of ours.
  const plain = await page.evaluate(() =>
    [...document.querySelectorAll('.working')]
      .filter((entry) => !entry.querySelector('.came-to').textContent.includes('○'))
      .map((entry) => entry.querySelector('.figure-name').textContent),
  );
  assert.deepEqual(plain, ['Length of the sock']);
  await goTo(page, 'Knit');
  assert.equal(await page.locator('#knit h3 .guess').count(), 4);
  await goTo(page, 'Count');
  for (const place of ['figcaption', '[data-key="of-choices"]', '#workings .lead']) {
    assert.match(await page.locator(place).innerText(), /○.marks a guess\./, place);
  }
});

test('a figure that nothing guessed touches carries no mark', async () => {
  const { page } = await open();
  for (const moment of ['Buy', 'Knit', 'Class', 'Count']) {
    await goTo(page, moment);
    assert.equal(await page.locator('.guess').count(), 0, moment);
    assert.doesNotMatch(await page.textContent('main'), /○/, moment);
  }
  // The heel alone unmeasured: only what it touches.
  await page.locator('#f-foot-heelAnkleGirthMm').fill('');
  assert.equal(await page.locator('.hand .guess').count(), 0);
  assert.equal(await page.locator('.hand-more .guess').count(), 1);
});

test('a count of her own is no guess, though its rounds are', async () => {
  const { page } = await open();
  await inTheShop(page, 'Count');
  await page.locator('.choice[data-count="60"]').click();
  const marks = await page.evaluate(() =>
    [...document.querySelectorAll('.hand > div')].map((line) =>
      Boolean(line.querySelector('.guess')),
    ),
  );
  assert.deepEqual(marks, [false, false, true, true, true]);
});

test('girth, yarn, hours and heel use say give or take, with and without a swatch', async () => {
  const { page } = await open();
  const takes = () => page.locator('.hand .take, .hand-more .take').allTextContents();
  // 20.3 cm x 2.25 % is 0.46 cm; 210 m x 10.5 %; 683 min x 25 %; 77.7 % x 10.3 %.
  assert.deepEqual(await takes(), [
    '20.3 cm round, give or take 0.5 cm',
    'give or take 22 m',
    'give or take 3 h',
    'give or take 8\u00a0%; 85\u00a0% at most',
  ]);
  const swatched = await takes();
  await inTheShop(page);
  const guessed = await takes();
  assert.equal(guessed.length, 4);
  assert.notDeepEqual(guessed, swatched);
});

test('the ball’s label is asked for where the balls are missed, and answers with balls', async () => {
  const { page } = await open();
  await inTheShop(page);
  await page.locator('.sum .jump').click();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-yarn-ballG');
  await page.keyboard.type('50');
  await typeInto(page, 'f-yarn-ballM', '210');
  assert.match((await sums(page))[1], /^2 balls guess of 50 g and 210 m each; 88 m left over$/);
  assert.equal(await page.locator('.sum .jump').count(), 0);
  await typeInto(page, 'f-yarn-ballM', '400');
  assert.match((await sums(page))[1], /^1 ball guess of 50 g and 400 m; 68 m left over$/);
});

test('the list is ticked by hand, and a tick stays while the figures change', async () => {
  const { page } = await open();
  await inTheShop(page);
  const tick = (name) => page.getByRole('checkbox', { name });
  for (const what of [
    /^Yarn, 332 m/,
    /^Circular needle, 2\.25 mm/,
    /thicker/,
    /^Two stitch markers.*infant/,
    /kitchen scale/,
    /darning \(tapestry\) needle/,
    /lifeline/,
    /tape measure/,
  ]) {
    assert.equal(await tick(what).count(), 1, String(what));
  }
  await tick(/^Yarn/).focus();
  await page.keyboard.press('Space');
  await tick(/lifeline/).check();
  await goTo(page, 'Count');
  await typeInto(page, 'f-foot-ballGirthMm', '25');
  await goTo(page, 'Buy');
  assert.equal(await tick(/^Yarn, 3\d\d m/).isChecked(), true);
  assert.equal(await tick(/lifeline/).isChecked(), true);
  assert.equal(await tick(/kitchen scale/).isChecked(), false);
  await page.getByRole('radio', { name: 'measured' }).check();
  // A tick is a mark on the page alone.
  assert.doesNotMatch(await page.evaluate(() => JSON.stringify(localStorage)), /tick|lifeline/i);
});

test('what to swatch is in full view without a swatch, and folded beside one', async () => {
  const { page } = await open();
  await goTo(page, 'Buy');
  const steps = page.locator(`${buy} .steps`);
  assert.equal(await steps.isVisible(), false);
  await page.locator(`${buy} summary`, { hasText: 'How to knit a swatch' }).click();
  assert.equal(await steps.isVisible(), true);
  await inTheShop(page);
  assert.equal(await steps.isVisible(), true);
  assert.equal(await page.locator(`${buy} details`).count(), 0);
  const text = await steps.textContent();
  for (const what of [
    /in the round.*40 stitches.*toe/,
    /Flat/,
    /Begin on 2\.25 mm/,
    /10 cm \(4 in\)/,
    /Wash/,
    /quarter of a stitch.*three places/,
    /Weigh/,
  ])
    assert.match(text, what);
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  assert.match(await steps.textContent(), /4 in \(10 cm\)/);
  await page.getByRole('link', { name: 'I have a swatch' }).click();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-swatch-swatch');
});

test('a loose or firm fabric is told against its yarn, with the needle to try', async () => {
  const { page } = await open();
  const cautions = async () => {
    await goTo(page, 'Count');
    const text = await page.textContent('.cautions');
    await goTo(page, 'Buy');
    return text;
  };
  await goTo(page, 'Buy');
  assert.match(await page.textContent(buy), /as firm as hand-knit socks usually are/);
  // The next sizes that are named, on either side of 4.5 mm.
  await typeInto(page, 'f-yarn-ballM', '420');
  assert.match(await page.textContent(buy), /loose: .* Try a 4 mm needle and swatch again/);
  assert.match(await cautions(), /loose for its yarn.*4 mm needle/);
  assert.match(await page.textContent('.ticks'), /4 mm, to try/);
  await typeInto(page, 'f-yarn-ballM', '110');
  assert.match(await page.textContent(buy), /firm: .* Try a 5 mm needle and swatch again/);
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  assert.match(await cautions(), /firm for its yarn.*5 mm needle/);
});

test('another yarn stands beside the first, by metres', async () => {
  const { page } = await open();
  await goTo(page, 'Buy');
  await page.locator('.other-yarn > summary').click();
  await typeInto(page, 'f-yarn-substitute-ballG', '50');
  assert.match(await page.textContent('#f-yarn-substitute-ballM-problem'), /needed/);
  await typeInto(page, 'f-yarn-substitute-ballM', '125');
  const rows = await page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll('.two-yarns tbody tr')].map((row) => [
        row.querySelector('th').textContent,
        [...row.querySelectorAll('td')].map((cell) => cell.textContent),
      ]),
    ),
  );
  // 210 m: of 500 tex 105 g, of 400 tex 84 g and a fifth thinner; 2 x 200 - 210, 2 x 125 - 210.
  assert.deepEqual(rows, {
    yarn: ['210 m', '210 m'],
    'one ball': ['100 g, 200 m', '50 g, 125 m'],
    balls: ['2', '2'],
    'left over': ['190 m', '40 m'],
    weighs: ['105 g', '84 g'],
    thickness: ['as planned', '20\u00a0% thinner'],
    fabric: ['usual for socks', 'usual for socks'],
  });
  const told = await page.textContent('[data-view="substitute"]');
  assert.match(told, /metres, not grams/);
  assert.match(told, /20.% thinner than the first/);
  // Nearly the same thickness: nothing to watch for.
  await typeInto(page, 'f-yarn-substitute-ballM', '98');
  assert.equal(await page.locator('.yarn-caution').count(), 0);
  await typeInto(page, 'f-yarn-substitute-ballG', '');
  await typeInto(page, 'f-yarn-substitute-ballM', '');
  assert.equal(await page.textContent('[data-view="substitute"]'), '');
});

test('a pace of her own is asked for beside the hours, and narrows them', async () => {
  const { page } = await open();
  await goTo(page, 'Buy');
  await page.getByRole('link', { name: 'Time a round of your own' }).click();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-pace-stitchesPerMinute');
  await page.keyboard.type('30');
  await goTo(page, 'Buy');
  assert.match(await page.textContent(buy), /at 30 stitches a minute/);
  await goTo(page, 'Count');
  const take = await page.locator('.hand-more .take').first().textContent();
  assert.equal(take, 'give or take 30 min');
});

test('fits a phone, in the shop and with both yarns side by side', async () => {
  for (const width of [320, 360]) {
    const { page } = await open({ viewport: { width, height: 740 } });
    await inTheShop(page);
    await page.locator('.other-yarn > summary').click();
    await typeInto(page, 'f-yarn-substitute-ballG', '50');
    await typeInto(page, 'f-yarn-substitute-ballM', '175');
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(over <= 0, `${over} px too wide at ${width} px`);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('#buy input, #buy .jump, #buy summary, #buy select')]
        .map((node) => [node.id || node.textContent, node.getBoundingClientRect()])
        .filter(([, box]) => box.width < 24 || box.height < 24)
        .map(([name]) => name),
    );
    assert.deepEqual(small, []);
    await page.context().close();
  }
});
