// The band for a pair that is given away: two on a side of A4 or Letter, read back from the paper.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { goTo, openBrowser } from './open_page.mjs';
import { inkOf, print } from './pdf.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const squeeze = (text) => text.replace(/[\s\u00a0\u202f]+/g, ' ');

/** What each plan's band says, and what it does not. */
const plans = {
  // 0.95 of a sock of 43.6 cm is a foot of 22.3; 0.85/0.777 of the heel's share is one of 26.9.
  usual: {
    fields: {},
    says: [
      'A pair of spiral socks',
      'No heel: each sock fits either foot',
      '22.3 cm to 26.9 cm 8¾ in to 10⅝ in',
      'EU 36–42 UK 3–8 US women 5.5–10.5 US men 4.5–9.5',
      '4 medium (worsted, aran)',
    ],
    not: /One left/,
  },
  // The grown-ups' scales do not reach so small a foot.
  'a child’s': {
    fields: {
      'swatch-readings-0-stitches': '28',
      'swatch-readings-0-rounds': '38',
      'foot-ballGirthMm': '16',
      'foot-lengthMm': '16.5',
      'foot-heelAnkleGirthMm': '',
      legHeightMm: '13',
      cuffMm: '2',
    },
    says: ['EU '],
    not: /UK|US /,
  },
  // Wider than its foot, 48 stitches for 44.9: nobody of that build is said to be served.
  'one that serves nobody': {
    fields: { girthEase: '5' },
    says: ['for feet of about 24.6 cm · 9⅝ in'],
    not: /shoe sizes|EU/,
  },
  'a left and a right': {
    fields: {},
    shape: 'left-right',
    says: ['One left, one right: the great toe shows which. No heel.'],
    not: /either foot/,
  },
};

async function openBand({ fields, shape }) {
  const { page, seen } = await open({ before: () => (window.print = () => {}) });
  await page.locator('.finer > summary').click();
  for (const [id, text] of Object.entries(fields)) await page.locator(`#f-${id}`).fill(text);
  if (shape) await page.locator('#f-toe-shape').selectOption(shape);
  assert.equal(await page.locator('[data-last-good]').count(), 0);
  await goTo(page, 'Knit');
  await page.locator('.stages summary', { hasText: 'To give away' }).click();
  return { page, seen };
}

/** Presses the button and prints, as its click would. */
async function printBand(page, format) {
  await page.getByRole('button', { name: 'print the band' }).click();
  return print(page, format);
}

for (const [name, plan] of Object.entries(plans)) {
  for (const format of ['A4', 'Letter']) {
    test(`${name}, on ${format}: twice on one side, black on white, the rest left to fill in`, async () => {
      const { page, seen } = await openBand(plan);
      const { words, pictures } = await printBand(page, format);
      assert.equal(words.length, 1);
      const told = squeeze(words[0]);
      const lines = ['fibre', 'to wash', 'made for', 'made by', 'Socks slide on smooth floors'];
      for (const text of [...plan.says, ...lines, 'For an infant: look for loose threads'])
        assert.equal(told.split(squeeze(text)).length, 3, `${text} twice in: ${told}`);
      assert.doesNotMatch(told, plan.not);
      assert.doesNotMatch(told, /Start to end|To knit|Twinround/);
      const { share, darkest, colour, edges } = inkOf(pictures[0]);
      assert.ok(share > 0.005);
      assert.equal(colour, 0);
      assert.ok(darkest < 30);
      for (const [edge, gap] of Object.entries(edges))
        assert.ok(gap >= 19, `${edge}: ${gap} points`);
      assert.deepEqual([seen.errors, seen.violations], [[], []]);
      await page.context().close();
    });
  }
}

test('it carries the sock’s own name, and the reader’s units first', async () => {
  const { page } = await openBand({ fields: {} });
  await page.locator('#socks').evaluate((fold) => (fold.open = true));
  await page.locator('#sock-name').fill('For the cold mornings');
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  const told = squeeze((await printBand(page, 'A4')).words[0]);
  assert.equal(told.split('For the cold mornings').length, 3, told);
  assert.match(told, /for feet of 8¾ in to 10⅝ in 22\.3 cm to 26\.9 cm/);
});

test('while a field is wrong it waits, and after it the sheet is the page’s own print again', async () => {
  const { page } = await openBand({ fields: {} });
  await printBand(page, 'A4');
  assert.equal(await page.getAttribute('html', 'data-printing'), null);
  const sheet = squeeze((await print(page, 'A4')).words[0]);
  assert.match(sheet, /Twinround/);
  await goTo(page, 'Count');
  await page.locator('#f-foot-ballGirthMm').fill('x');
  await goTo(page, 'Knit');
  const waits = squeeze((await printBand(page, 'A4')).words.join(' '));
  assert.match(waits, /still to be mended/);
  assert.doesNotMatch(waits, /for feet of/);
});
