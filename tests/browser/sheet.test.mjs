// The printed sheet: on A4 and Letter, for small, usual and long plans, read back from the paper.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { openBrowser } from './open_page.mjs';
import { inkOf, print } from './pdf.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const reading = 'swatch-readings-0';
const plans = {
  usual: { pages: 1, fields: {} },
  small: {
    pages: 1,
    fields: {
      [`${reading}-stitches`]: '16',
      [`${reading}-rounds`]: '22',
      'foot-ballGirthMm': '13',
      'foot-lengthMm': '12',
      'foot-heelAnkleGirthMm': '',
      legHeightMm: '9',
    },
  },
  fingering: {
    pages: 1,
    fields: { [`${reading}-stitches`]: '32', [`${reading}-rounds`]: '44', legHeightMm: '25' },
  },
  long: {
    pages: 2,
    fields: {
      [`${reading}-stitches`]: '60',
      [`${reading}-rounds`]: '84',
      'foot-ballGirthMm': '26',
      'foot-lengthMm': '29',
      'foot-heelAnkleGirthMm': '36',
      legHeightMm: '40',
      'foot-calfGirthMm': '42',
      'rib-knit': '3',
      'rib-roundsPerShift': '1',
    },
  },
  broad: {
    pages: 2,
    fields: {
      [`${reading}-stitches`]: '48',
      [`${reading}-rounds`]: '66',
      'foot-ballGirthMm': '26',
      'foot-lengthMm': '28',
      'foot-calfGirthMm': '',
      legHeightMm: '30',
      'rib-knit': '12',
      'rib-purl': '12',
      'rib-roundsPerShift': '2',
    },
  },
};

async function openWith(fields) {
  const { page } = await open({ before: () => (window.print = () => {}) });
  await page.locator('.finer > summary').click();
  for (const [id, text] of Object.entries(fields)) await page.locator(`#f-${id}`).fill(text);
  assert.equal(await page.locator('[data-last-good]').count(), 0);
  return page;
}

const squeeze = (text) => text.replace(/[\s\u00a0\u202f]+/g, ' ');

for (const [name, { pages, fields }] of Object.entries(plans)) {
  for (const format of ['A4', 'Letter']) {
    test(`a ${name} plan on ${format}: all of it, black on white, and no page in vain`, async () => {
      const page = await openWith(fields);
      const plan = await page.evaluate(() => ({
        figures: [...document.querySelectorAll('.hand .figure')].map((node) => node.textContent),
        cautions: [...document.querySelectorAll('.cautions li')].map((node) => node.textContent),
        care: [...document.querySelectorAll('.care li')].map((node) => node.textContent),
        sentence: document.querySelector('.sentence').textContent,
      }));
      const { words, pictures } = await print(page, format);
      assert.ok(words.length <= pages, `${words.length} pages`);
      assert.equal(pictures.length, words.length);
      const told = squeeze(words.join(' '));
      for (const text of [...plan.figures, plan.sentence, ...plan.cautions, ...plan.care]) {
        assert.ok(told.includes(squeeze(text)), text);
      }
      // Every tenth box of the strip has its round beside it, to the last.
      const [, , , rounds] = plan.figures.map(Number);
      for (let round = 1; round <= rounds; round += 10) {
        assert.match(told, new RegExp(`(^| )${round}( |$)`), `round ${round}`);
      }
      for (const [i, picture] of pictures.entries()) {
        const { share, darkest, colour, edges } = inkOf(picture);
        assert.ok(share > 0.01, `page ${i + 1} is blank`);
        assert.equal(colour, 0, `page ${i + 1} has colours`);
        assert.ok(darkest < 30, `page ${i + 1} is pale`);
        // 7 mm at 72 dots an inch: what printers cannot reach, and where cut ink would end.
        for (const [edge, gap] of Object.entries(edges)) {
          assert.ok(gap >= 19, `page ${i + 1}, ${edge}: ${gap} points`);
        }
      }
      await page.context().close();
    });
  }
}

test('a box to tick for every toe round, every round of the sock, and each milestone', async () => {
  const page = await openWith({});
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  const seen = await page.evaluate(() => ({
    toe: document.querySelectorAll('.sheet .tick-box').length,
    rounds: document.querySelector('.sheet .box').getAttribute('d').split('z').length - 1,
    adds: document.querySelector('.sheet .adds').getAttribute('d').split('M').length - 1,
    milestones: [...document.querySelectorAll('.milestones tbody tr')].map((row) =>
      [...row.cells].map((cell) => cell.textContent),
    ),
  }));
  assert.equal(seen.toe, 17);
  assert.equal(seen.rounds, 120);
  // A cross is two strokes; the toe grows from 16 to 40 by fours.
  assert.equal(seen.adds / 2, 6);
  // 17 toe rounds of 4 in / 28 are 6.2 cm; the rib moves after four rounds; 8 rounds of cuff.
  assert.deepEqual(
    seen.milestones.map(([, round, mm]) => [round, mm]),
    [
      ['1', ''],
      ['18', '6.2 cm'],
      ['22', '7.6 cm'],
      ['80', '28.7 cm'],
      ['113', '40.6 cm'],
      ['', '43.5 cm'],
    ],
  );
});

test('what is still the example’s is said on the sheet, and a guess is marked', async () => {
  const page = await openWith({});
  const usual = squeeze((await print(page, 'A4')).words.join(' '));
  assert.match(usual, /Example numbers.*Still to change: swatch, yarn, foot, leg\./);
  assert.doesNotMatch(usual, /guess/);
  await page.getByRole('radio', { name: 'not yet' }).check();
  const guessed = squeeze((await print(page, 'A4')).words.join(' '));
  assert.match(guessed, /guess/);
  assert.match(guessed, /○ marks a guess/);
});

test('in the shop the list is printed, and afterwards the page is as it was', async () => {
  const page = await openWith({});
  await page.locator('nav a[href="#buy"]').click();
  for (const format of ['A4', 'Letter']) {
    const { words } = await print(page, format);
    assert.equal(words.length, 1, format);
    assert.match(words[0], /Shopping list/);
    assert.doesNotMatch(words[0], /A box a round/);
  }
  assert.equal(await page.locator('.sheet > *').count(), 0);
  assert.equal(await page.evaluate(() => document.documentElement.dataset.printing), undefined);
});

test('a sheet waits until what is wrong is mended', async () => {
  const page = await openWith({});
  await page.locator('#f-foot-lengthMm').fill('30x');
  const { words } = await print(page, 'A4');
  assert.equal(words.length, 1);
  assert.match(squeeze(words[0]), /printing waits/);
  assert.doesNotMatch(words[0], /A box a round/);
});
