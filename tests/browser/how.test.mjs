// How to measure stands at each field that is measured, and how to work in cards: drawn, named, opened by keyboard.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { after, before, test } from 'node:test';

import { goTo, openBrowser } from './open_page.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

// What a tape, a ruler, a scale, a label or a gauge is needed for.
const measured = [
  'foot-ballGirthMm',
  'foot-lengthMm',
  'foot-heelAnkleGirthMm',
  'foot-ankleGirthMm',
  'foot-calfGirthMm',
  'legHeightMm',
  'cuffMm',
  'foot-shoe-size',
  'yarn-category',
  'swatch-needleMm',
  'swatch-stretchedWidthMm',
  'swatch-massG',
];

const howOf = (page, id) => page.locator(`.field:has(#f-${id}) details.how-to`);

const openAll = (page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll('details.how-to, form details')) {
      details.open = true;
    }
  });

/** Each drawing there: its name, what it draws, and whether a sentence follows it. */
const readDrawings = (place) =>
  place.locator('svg').evaluateAll((all) =>
    all.map((drawing) => ({
      role: drawing.getAttribute('role'),
      name: drawing.getAttribute('aria-label') ?? '',
      strokes: drawing.querySelectorAll('path').length,
      broken: [...drawing.querySelectorAll('path')].filter(
        (path) =>
          /NaN|undefined|Infinity/.test(path.getAttribute('d')) || path.getTotalLength() < 1,
      ).length,
    })),
  );

function assertDrawn(drawings, where) {
  assert.ok(drawings.length > 0, `${where}: no drawing`);
  for (const { role, name, strokes, broken } of drawings) {
    assert.equal(role, 'img', where);
    assert.ok(name.length > 20, `${where}: "${name}"`);
    assert.ok(strokes >= 3, `${where}: ${strokes} strokes`);
    assert.equal(broken, 0, where);
  }
}

test('every measured field tells how, with a drawing and a sentence, closed until asked for', async () => {
  const { page } = await open();
  assert.equal(await page.locator('details.how-to[open]').count(), 0);
  for (const id of measured) {
    const how = howOf(page, id);
    assert.equal(await how.count(), 1, id);
    assertDrawn(await readDrawings(how), id);
    assert.ok((await how.locator('p').first().textContent()).length > 30, id);
    // The field's own line still describes it.
    const described = await page.locator(`#f-${id}`).getAttribute('aria-describedby');
    const line = how.locator('summary .how');
    assert.ok(described.split(' ').includes(await line.getAttribute('id')), id);
    assert.ok((await line.textContent()).length > 5, id);
  }
  const gauge = page.locator('[data-how="gauge"]');
  assertDrawn(await readDrawings(gauge), 'gauge');
  assert.equal(await gauge.locator('svg').count(), 2);
  assert.match(await gauge.textContent(), /quarter.*10 cm \(4 in\).*tension/s);
});

test('a drawing is opened and closed by keyboard, and its state is told', async () => {
  for (const viewport of [
    { width: 360, height: 780 },
    { width: 1280, height: 900 },
  ]) {
    const { page } = await open({ viewport });
    await page.locator('#f-foot-lengthMm').focus();
    // Past the unit of the field to the line that opens.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    const how = howOf(page, 'foot-lengthMm');
    assert.equal(
      await page.evaluate(() => document.activeElement.closest('.field').dataset.field),
      '/foot/lengthMm',
    );
    const drawing = page.getByRole('img', { name: /longest toe/ });
    assert.equal(await drawing.isVisible(), false);
    await page.keyboard.press('Enter');
    assert.equal(await drawing.isVisible(), true);
    const session = await page.context().newCDPSession(page);
    const { nodes } = await session.send('Accessibility.getFullAXTree');
    const told = nodes.filter(({ properties = [] }) =>
      properties.some(({ name, value }) => name === 'expanded' && value.value === true),
    );
    assert.ok(told.some(({ name }) => /Stand on paper.*See how/.test(name?.value ?? '')));
    await page.keyboard.press('Escape');
    assert.equal(await drawing.isVisible(), false);
    assert.equal(
      await how.locator('summary').evaluate((node) => node === document.activeElement),
      true,
    );
  }
});

test('wide, a drawing lies beside its field, inside the page, and makes way for the next field', async () => {
  const { page } = await open();
  for (const id of ['foot-ballGirthMm', 'legHeightMm', 'yarn-category']) {
    const how = howOf(page, id);
    await how.locator('summary').click();
    const panel = await how.locator('.how-panel').boundingBox();
    const field = await page.locator(`.field:has(#f-${id})`).boundingBox();
    assert.ok(panel.x >= field.x + field.width, id);
    assert.ok(panel.x + panel.width <= 1280, id);
    // Only the last one opened lies there.
    assert.equal(await page.locator('details.how-to[open]').count(), 1, id);
  }
  // Its own field may be filled in beside it; another one closes it, so that nothing lies on what has the focus.
  await page.locator('#f-yarn-category').focus();
  assert.equal(await howOf(page, 'yarn-category').getAttribute('open'), '');
  await page.locator('#f-foot-lengthMm').focus();
  assert.equal(await howOf(page, 'yarn-category').getAttribute('open'), null);
  // So does a press anywhere else.
  await howOf(page, 'foot-lengthMm').locator('summary').click();
  assert.equal(await page.locator('details.how-to[open]').count(), 1);
  await page.locator('h1').click();
  assert.equal(await page.locator('details.how-to[open]').count(), 0);
});

test('narrow, what was opened stays open while other fields are filled in', async () => {
  const { page } = await open({ viewport: { width: 360, height: 780 } });
  await howOf(page, 'foot-ballGirthMm').locator('summary').click();
  await page.locator('#f-foot-lengthMm').fill('25');
  await howOf(page, 'foot-lengthMm').locator('summary').click();
  assert.equal(await page.locator('details.how-to[open]').count(), 2);
});

test('each step of the work has a card: a title, one drawing with a name, a few sentences', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  const cards = page.locator('.card');
  assert.equal(await cards.count(), 9);
  for (const card of await cards.all()) {
    const title = await card.locator('h4').textContent();
    assert.equal(await card.locator('svg').count(), 1, title);
    assertDrawn(await readDrawings(card), title);
    const sentences = (await card.locator('p').textContent()).match(/[.!?](?= |$)/g);
    assert.ok(sentences.length >= 2 && sentences.length <= 4, `${title}: ${sentences.length}`);
  }
  const text = await page.locator('.works').textContent();
  for (const words of [/M1R/, /M1L/, /M1P/, /Bind off \(cast off\)/, /lifeline/, /\(\+\)/]) {
    assert.match(text, words);
  }
});

test('M1R and M1L differ as they must: which leg lies over the needle, which one is worked', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  const strand = (id) =>
    page.locator(`#how-${id} svg`).evaluate((drawing) => {
      const paths = [...drawing.querySelectorAll('path')];
      const left = paths.findIndex((path) => path.matches('.stick'));
      // The last stroke is the leg in front of the needle.
      const front = paths
        .slice(left)
        .filter((path) => path.matches('.yarn.c, .yarn.dark'))
        .pop();
      const dark = paths.find((path) => path.matches('.yarn.dark'));
      const middle = 132;
      const side = (path) => {
        const box = path.getBBox();
        return box.x + box.width / 2 < middle ? 'left' : 'right';
      };
      return { front: side(front), worked: side(dark) };
    });
  assert.deepEqual(await strand('m1r'), { front: 'left', worked: 'left' });
  assert.deepEqual(await strand('m1l'), { front: 'right', worked: 'left' });
  assert.deepEqual(await strand('m1p'), { front: 'left', worked: 'left' });
});

test('with everything open: no sideways scroll, targets of 24 px, nothing that axe finds', async () => {
  for (const [width, colorScheme] of [
    [320, 'light'],
    [900, 'light'],
    [1280, 'light'],
    [360, 'dark'],
  ]) {
    const { page } = await open({ viewport: { width, height: 800 }, colorScheme });
    await openAll(page);
    const scroll = await page.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(scroll <= width, `${scroll} at ${width}`);
    const small = await page
      .locator('details.how-to summary')
      .evaluateAll(
        (all) =>
          all.filter((node) => node.offsetParent && node.getBoundingClientRect().height < 24)
            .length,
      );
    assert.equal(small, 0, `${width}`);
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => window.axe.run());
    assert.deepEqual(
      violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`),
      [],
      `${width} ${colorScheme}`,
    );
  }
});
