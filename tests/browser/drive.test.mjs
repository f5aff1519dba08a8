// Many feet: typed as a person would, told as the core answers.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { after, before, test } from 'node:test';

import { driveCautions, fieldWords, problemWords } from '../../web/words/en.js';
import {
  askCore,
  openDrive,
  rested,
  rowsOf,
  said,
  squeeze,
  typeDrive,
  wrong,
} from './drive_fold.mjs';
import { openBrowser } from './open_page.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const schema = JSON.parse(
  readFileSync(new URL('../../core/wire/schema.json', import.meta.url), 'utf8'),
).$defs;

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const openFold = (options) => openDrive(open, options);
const tenths = (share) => `${Math.floor(share * 1000 + 1e-9) / 10} %`;

const everybody = { pairs: '40', women: '1', men: '1', children: '6, 8, 10 x 2' };
const askedOfAll = {
  pairs: 40,
  groups: [
    { who: 'woman', share: 1 },
    { who: 'man', share: 1 },
    { who: 'child', ageYears: 6 },
    { who: 'child', ageYears: 8 },
    { who: 'child', ageYears: 10, share: 2 },
  ],
};

test('the page says what the core does: how many sizes, of what, and how many pairs of each', async () => {
  const drive = await askCore(askedOfAll);
  const { page, seen } = await openFold();
  assert.match(await said(page), /^Say how many pairs/);
  await typeDrive(page, everybody);
  const text = await said(page);
  const { sizes, share, shareByNumber, wool } = drive;
  assert.equal(sizes.length, 4);
  assert.ok(
    text.startsWith(`4 sizes serve ${tenths(share)} of these feet, give or take 0.5 in`),
    text,
  );
  assert.ok(text.includes('Fewer would not serve the 90 % wanted.'));
  assert.ok(text.includes('soldiers’ feet, measured in 2012'));
  assert.ok(text.includes('Of children’s feet only the length was measured, in 1977'));
  assert.ok(
    text.includes(
      'men (1 part), children of 6 (1 part), children of 8 (1 part) and children of 10 (2 parts)',
    ),
  );
  assert.ok(
    text.includes(
      `${Math.round(wool.m)} m, ${Math.round(wool.g)} g. ${wool.balls} balls of 100 g.`,
    ),
  );

  const rows = await rowsOf(page, 'drive-sizes');
  assert.equal(rows.length, sizes.length);
  sizes.forEach((size, i) => {
    const [name, pairs, sock, feet, serves, yarn] = rows[i].map((lines) => lines.map(squeeze));
    assert.equal(name[0], String(i + 1));
    assert.equal(pairs[0], String(size.pairs));
    assert.deepEqual(sock.slice(0, 2), [`${size.stitchCount} st`, `${size.totalRounds} rounds`]);
    const cm = (mm) => `${Number((mm / 10).toFixed(1))} cm`;
    assert.equal(sock[2], `${cm(size.lengthMm)} long`);
    assert.equal(feet[0], `${cm(size.band.footFromMm)} to ${cm(size.band.footToMm)}`);
    assert.equal(feet.at(-1), `goes on ${cm(size.band.fitsFromMm)} to ${cm(size.band.fitsToMm)}`);
    const [first] = size.band.shoes;
    assert.equal(feet[1], `EU ${first.from}–${first.to}`);
    assert.equal(feet.length, 2 + size.band.shoes.length);
    assert.equal(serves[0], tenths(size.share));
    assert.equal(yarn[0], `${Math.round(size.mPerPair)} m a pair`);
    assert.equal(yarn[1], `${Math.round(size.m)} m, ${Math.round(size.g)} g in all`);
  });

  const numbers = await rowsOf(page, 'by-number');
  assert.deepEqual(
    numbers.map(([count, served]) => [count[0], squeeze(served[0])]),
    shareByNumber.map((one, i) => [String(i + 1), tenths(i + 1 === 4 ? share : one)]),
  );
  assert.equal(await page.locator('.by-number .chosen th').innerText(), '4');
  // Each bar is as long as its number says, and the line stands at what is wanted.
  const bars = await page.locator('.share-bar').evaluateAll((all) =>
    all.map((bar) => {
      const wide = bar.getBoundingClientRect();
      const at = bar.querySelector('line').getBoundingClientRect();
      return [
        bar.querySelector('rect').getBoundingClientRect().width / wide.width,
        (at.left + at.width / 2 - wide.left) / wide.width,
      ];
    }),
  );
  bars.forEach(([long, line], i) => {
    assert.ok(
      Math.abs(long - (i === 3 ? share : shareByNumber[i])) < 0.002,
      `bar ${i + 1}: ${long}`,
    );
    assert.ok(Math.abs(line - 0.9) < 0.002, String(line));
  });
  assert.deepEqual([seen.errors, seen.violations], [[], []]);
});

test('the pairs of all sizes are the pairs wanted, none lost', async () => {
  const { page } = await openFold();
  for (const fields of [
    { pairs: '1', men: '2' },
    { pairs: '7', women: '60', men: '40' },
    { pairs: '137', children: '2; 17' },
    { pairs: '10000', sizes: '12' },
    { pairs: '3', sizes: '12' },
  ]) {
    await typeDrive(page, fields);
    const rows = await rowsOf(page, 'drive-sizes');
    const pairs = rows.map(([, [count]]) => Number(count.replace(/\s/g, '')));
    assert.equal(
      pairs.reduce((sum, count) => sum + count, 0),
      Number(fields.pairs),
      JSON.stringify(fields),
    );
    assert.deepEqual(await wrong(page), {});
  }
});

test('only those who are named count; a part of nothing leaves them out', async () => {
  const { page } = await openFold();
  await typeDrive(page, { pairs: '12', men: '3', women: '0' });
  const drive = await askCore({ pairs: 12, groups: [{ who: 'man', share: 3 }] });
  const text = await said(page);
  assert.ok(text.startsWith(`One size serves ${tenths(drive.share)} of these feet`), text);
  // One size: nothing is said of fewer.
  assert.ok(text.includes('That is the 90 % wanted.'));
  assert.ok(text.includes('12 pairs for men.'));
  assert.doesNotMatch(text, /1977/);
  await typeDrive(page, { men: '', children: '9' });
  assert.match(await said(page), /12 pairs for children of 9\./);
  assert.doesNotMatch(await said(page), /soldiers/);
});

test('so many sizes as are asked for, a share and a leg of one’s own', async () => {
  const { page } = await openFold();
  await typeDrive(page, { ...everybody, sizes: '2', wantedShare: '80', legOfFoot: '70 %' });
  const drive = await askCore({ ...askedOfAll, sizes: 2, wantedShare: 0.8, legOfFoot: 0.7 });
  let text = await said(page);
  assert.ok(text.startsWith(`2 sizes serve ${tenths(drive.share)} of these feet`), text);
  assert.ok(text.includes('That is less than the 80 % wanted.'));
  assert.ok(text.includes('The leg is 70 % of the foot'));
  assert.ok(text.includes(`leg ${Number((drive.sizes[0].legHeightMm / 10).toFixed(1))} cm`));
  await typeDrive(page, { sizes: '12', children: '' });
  text = await said(page);
  assert.match(text, /12 sizes were asked for: past 4 another one serves nobody more/);
  await typeDrive(page, {
    sizes: '',
    wantedShare: '99.9',
    men: '',
    women: '',
    children: '2, 6, 10, 14, 17',
  });
  text = await said(page);
  const all = await askCore({
    pairs: 40,
    groups: [2, 6, 10, 14, 17].map((ageYears) => ({ who: 'child', ageYears })),
    wantedShare: 0.999,
    legOfFoot: 0.7,
  });
  assert.equal(all.isReached, false);
  assert.ok(
    text.includes(
      `No number of sizes up to 12 serves the 99.9 % wanted; these serve ${tenths(all.share)}.`,
    ),
    text,
  );
});

test('wool at hand: by weight, by length, by its label; what it makes and what is missing', async () => {
  const { page } = await openFold();
  await typeDrive(page, {
    ...everybody,
    lots: '400 g, 150 g of 400 m per 100 g, 300 m, 14 oz 500 yd',
  });
  // 200 m in 100 g is the sock's own label.
  const lots = [
    { g: 400, m: 800 },
    { g: 150, m: 600 },
    { g: 150, m: 300 },
    { g: 14 * 28.349523125, m: 457.2 },
  ];
  const { atHand, sizes } = await askCore({ ...askedOfAll, lots });
  assert.deepEqual(
    atHand.lots.map(({ isSameYarn }) => isSameYarn),
    [true, false, true, false],
  );
  const rows = (await rowsOf(page, 'lots')).map((row) => row.map(([first]) => squeeze(first)));
  const whole = (pairs, alone) => pairs.map((count, i) => `${count} alone ${alone[i]}`);
  assert.deepEqual(
    rows[0].slice(0, -1).map((cell) => cell.replace(/alone/, ' alone').replace(/ +/g, ' ')),
    ['400 g, 800 m', ...whole(atHand.lots[0].pairsOfSize, atHand.lots[0].alone)],
  );
  assert.deepEqual(rows[1], ['150 g, 600 m', '–', '–', '–', '–', 'another yarn']);
  assert.equal(rows[2][0], '150 g, 300 m');
  assert.equal(rows[3][0], '397 g, 457 m');
  assert.deepEqual(rows[4].slice(1, 5), atHand.pairsOfSize.map(String));
  assert.deepEqual(
    rows[5].slice(1, 5),
    sizes.map(({ pairs }, i) => String(pairs - atHand.pairsOfSize[i])),
  );
  const text = await said(page);
  assert.ok(
    text.includes(`The wool at hand makes ${atHand.pairs} of the 40 pairs, each from one lot.`),
    text,
  );
  assert.match(text, /150 g, 600 m is of another thickness/);

  await typeDrive(page, { lots: '20 kg' });
  assert.match(await said(page), /The wool at hand makes all 40 pairs/);
  assert.equal((await rowsOf(page, 'lots')).length, 2);
});

test('what is wrong is told at its field, in words that say what would be right', async () => {
  const { page } = await openFold();
  await typeDrive(page, { pairs: '40', women: '1' });
  for (const [name, text, told] of [
    ['pairs', '0', /Between 1 and 10000/],
    ['pairs', '3.5', /whole number/],
    ['women', '-1', /Between 0\.01 and 10000/],
    ['children', '6 8 10', /“6 8 10” is not understood/],
    ['children', '6 8', /“6 8” is not understood/],
    ['children', '6 x 2 x 3', /not understood/],
    ['children', '1', /Between 2 and 17/],
    ['children', '18', /Between 2 and 17/],
    ['children', '8 x 0.001', /Between 0\.01 and 10000/],
    ['sizes', '13', /Between 1 and 12/],
    ['wantedShare', '5', /Between 10 % and 99\.9 %/],
    ['wantedShare', '100', /Between 10 % and 99\.9 %/],
    ['legOfFoot', '10', /Between 20 % and 300 %/],
    ['legOfFoot', '20', /below the bend of the ankle\. At least 11\.6 cm/],
    ['lots', '400 g 30 g', /“400 g 30 g” is not understood/],
    ['lots', '2 g', /Between 5 g and/],
    ['lots', '4 m', /Between 5 m and/],
  ]) {
    await typeDrive(page, { [name]: text });
    await page.waitForFunction(
      (id) => document.querySelector(`.field:has(#${id}) .problem`).textContent !== '',
      `f-drive-${name}`,
    );
    const problems = await wrong(page);
    assert.match(squeeze(problems[name]), told, `${name}: ${text}`);
    assert.ok(
      Object.keys(problems).every((one) => one === name || one === 'lots'),
      JSON.stringify(problems),
    );
    await typeDrive(page, { [name]: { pairs: '40', women: '1' }[name] ?? '' });
    await page.waitForFunction(
      () => document.querySelectorAll('#many .problem:not(:empty)').length === 0,
    );
  }
});

test('a fabric that goes over nobody’s heel is told where the feet are named', async () => {
  const { page } = await openFold();
  await typeDrive(page, { pairs: '40', children: '2' });
  await page.getByRole('navigation').getByRole('link', { name: 'Count', exact: true }).click();
  await page.locator('#f-swatch-readings-0-stitches').fill('4');
  await page.locator('#f-swatch-readings-0-rounds').fill('6');
  await page.locator('#f-rib-knit').fill('5');
  await page.locator('#f-rib-purl').fill('5');
  assert.equal(await page.locator('html[data-last-good]').count(), 0);
  await page.getByRole('navigation').getByRole('link', { name: 'Class', exact: true }).click();
  await page.waitForFunction(() => document.querySelector('#many .problem:not(:empty)'));
  const problems = await wrong(page);
  assert.deepEqual(Object.keys(problems), ['children']);
  assert.match(problems.children, /goes over anybody’s heel/);
});

test('half a question asks nothing, and the last answer stands while a new one is on its way', async () => {
  const { page } = await openFold();
  await typeDrive(page, { pairs: '40' });
  await page.waitForTimeout(400);
  assert.match(await said(page), /^Say how many pairs/);
  assert.deepEqual(await wrong(page), {});
  await typeDrive(page, { men: '1' });
  const meanwhile = await page.evaluate(() => {
    const field = document.querySelector('#f-drive-pairs');
    field.value = '41';
    field.dispatchEvent(new Event('input', { bubbles: true }));
    return document.querySelector('[data-view="drive"]').textContent;
  });
  assert.match(meanwhile, /Being reckoned anew/);
  assert.match(meanwhile, /40 pairs for men/);
  await rested(page);
  assert.match(await said(page), /41 pairs for men/);
});

test('in inches every measure is, and no count has changed', async () => {
  const { page } = await openFold();
  await typeDrive(page, { ...everybody, lots: '400 g' });
  const counts = async () =>
    (await rowsOf(page, 'drive-sizes')).map(([, [pairs], [stitches]]) => [pairs, stitches]);
  const metric = await counts();
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  await rested(page);
  assert.deepEqual(await counts(), metric);
  const text = await said(page);
  assert.doesNotMatch(text, /\d (cm|m|g)\b/);
  assert.match(text, /14\.1 oz, 875 yd/);
  assert.match(text, /3\.5 oz\./);
});

test('a size opens as a plan of that count', async () => {
  const { page } = await openFold();
  await typeDrive(page, everybody);
  const link = page.locator('.drive-sizes a').nth(1);
  const [count] = (await link.innerText()).split(' ');
  const address = await link.getAttribute('href');
  const { page: other } = await open({ url: new URL(address, page.url()).href });
  await other.waitForFunction(() => document.querySelector('.hand .figure'));
  assert.match(await other.locator('.hand').first().innerText(), new RegExp(`\\b${count}\\b`));
});

test('it goes along as a table and as text, with the numbers of the page', async () => {
  const { page } = await openFold({ permissions: ['clipboard-read', 'clipboard-write'] });
  await typeDrive(page, { ...everybody, lots: '400 g, 300 g of 400 m per 100 g' });
  const drive = await askCore({
    ...askedOfAll,
    lots: [
      { g: 400, m: 800 },
      { g: 300, m: 1200 },
    ],
  });
  const waiting = page.waitForEvent('download');
  await page.locator('[data-carry="drive.csv"]').click();
  const download = await waiting;
  assert.equal(download.suggestedFilename(), 'twinround-drive.csv');
  const lines = readFileSync(await download.path(), 'utf8')
    .replace('\ufeff', '')
    .trim()
    .split('\r\n');
  const [heads, ...rows] = lines.map((line) => line.split(/[,;](?=\S)/));
  assert.equal(rows.length, drive.sizes.length);
  rows.forEach((row, i) => {
    const { pairs, stitchCount, totalRounds, mPerPair, m, g } = drive.sizes[i];
    assert.equal(row.length, heads.length);
    assert.deepEqual(row.slice(0, 4).map(Number), [i + 1, pairs, stitchCount, totalRounds]);
    const one = (value) => Number(value.toFixed(1));
    assert.deepEqual(row.slice(-4, -1).map(Number), [one(mPerPair), one(m), one(g)]);
  });

  await page.locator('[data-carry="drive.copy"]').click();
  const text = squeeze(await page.evaluate(() => navigator.clipboard.readText()));
  assert.match(text, /4 sizes serve .* Fewer would not serve the 90 % wanted\./);
  assert.match(text, /soldiers/);
  drive.sizes.forEach(({ pairs, stitchCount }, i) =>
    assert.match(
      text,
      new RegExp(`Size ${i + 1}: ${pairs} pairs?; [^;]+ each; ${stitchCount} st; `),
    ),
  );
  assert.match(text, new RegExp(`400 g, 800 m: Size 1 × ${drive.atHand.lots[0].pairsOfSize[0]}, `));
  assert.match(text, /300 g, 1200 m: another yarn/);
});

test('every problem and caution of the core has words, and no words are left over', () => {
  const problems = schema.driveProblem.properties.code.enum;
  for (const code of problems) {
    // The page asks no question but those there are.
    if (code === 'unknown_question') continue;
    assert.equal(typeof problemWords[code], 'function', code);
    assert.ok(problemWords[code]({}).length > 10, code);
  }
  const cautions = schema.driveCaution.properties.code.enum;
  assert.deepEqual(Object.keys(driveCautions).sort(), [...cautions].sort());
  for (const code of cautions) assert.ok(driveCautions[code]({}).length > 10, code);
});

test('what the page says holds where nothing is typed is the core’s own', () => {
  const { properties } = schema.driveRequest.properties.drive;
  for (const name of ['wantedShare', 'legOfFoot'])
    assert.ok(
      fieldWords[`/drive/${name}`].how.includes(`${properties[name].default * 100} %`),
      name,
    );
});

test('on a phone, light and dark, nothing is out of reach', async () => {
  for (const colorScheme of ['light', 'dark']) {
    const { page } = await openFold({ viewport: { width: 360, height: 780 }, colorScheme });
    await typeDrive(page, { ...everybody, lots: '400 g' });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(wide <= 360, String(wide));
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() => window.axe.run('#many'));
    assert.deepEqual(
      violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`),
      [],
    );
    await page.context().close();
  }
});
