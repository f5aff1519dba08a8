// Lost count: what the page says of what was seen, held against the core asked by itself.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { again, goTo, openBrowser, press, typeInto } from './open_page.mjs';

const core = await loadCore();
// The page's example: k2, p2 moved every 4 rounds on 40 stitches, a toe of 17 rounds and 95 of rib.
const pair = {
  version: 1,
  rib: { knit: 2, purl: 2, roundsPerShift: 4, lean: 'left' },
  toeRounds: 17,
  spiralRounds: 95,
  cuffRounds: 8,
  stitches: 40,
};
const found = (seen) =>
  JSON.parse(core.answer('found', JSON.stringify({ ...pair, ...seen }))).found;

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

/** The fold of a sock on the needles with all that is in it, as a reader opens it. */
async function atLost(options) {
  const { page, seen } = await open(options);
  await goTo(page, 'Knit');
  await page.locator('#lost > summary').click();
  for (const summary of await page.locator('#lost details > summary').all()) await summary.click();
  return { page, seen };
}

async function atLostBegun(options) {
  const opened = await atLost(options);
  await press(opened.page, 'I have cast on: begin this sock');
  return opened;
}

/** By what stands behind /found/, in the order of the form. */
async function look(page, typed) {
  for (const [name, text] of Object.entries(typed))
    await typeInto(page, `f-found-${name.replace('/', '-')}`, text);
}

const answerIn = (page) => page.locator('[data-view="lost"]').innerText();
const problemAt = (page, name) =>
  page.locator(`[data-field="/found/${name}"] .problem`).textContent();
const places = (page) =>
  page
    .locator('[data-view="lost"] [data-place]')
    .evaluateAll((buttons) => buttons.map((button) => button.getAttribute('data-place')));

test('steps and the rounds since lead to the round, and there is a button to go on from it', async () => {
  const { page, seen } = await atLostBegun();
  await look(page, { 'a/columns': '9', 'a/since': '4' });
  const { round } = found({ a: { in: 'rib', columns: 9, since: 4 } }).a;
  assert.equal(round, 57);
  assert.match(
    await answerIn(page),
    /^A: round 57 is knit, you are at the beginning of round 58\.\s+go on from there$/,
  );
  assert.deepEqual(await places(page), ['57']);
  assert.deepEqual(seen.errors, []);
  assert.deepEqual(seen.violations, []);
});

test('going on from there says so, and leads to the needles', async () => {
  const { page } = await atLostBegun();
  await look(page, { 'a/columns': '9', 'a/since': '4' });
  await press(page, 'go on from there');
  assert.match(await answerIn(page), /go on from there The page is at round 58 now\.$/);
  assert.match(await page.locator('#needles .work-round').innerText(), /58/);
  const isAtHand = () => document.activeElement.matches('#needles .next');
  assert.ok(await page.evaluate(isAtHand));
  const { top } = await page.evaluate(() =>
    document.getElementById('needles').getBoundingClientRect().toJSON(),
  );
  assert.ok(top >= 0 && top < 400, `${top}`);
  // To the edge: no next pass is left to press.
  await look(page, { 'a/columns': '23', 'a/since': '11' });
  await press(page, 'go on from there');
  assert.match(await answerIn(page), /every round done now\.$/);
  assert.ok(await page.evaluate(() => document.activeElement.matches('#needles .back')));
});

test('a sock that is not begun is not gone on with: how to is said', async () => {
  const { page } = await atLost();
  await look(page, { 'a/columns': '9', 'a/since': '4' });
  assert.match(await answerIn(page), /round 58\.\s+Begin the sock above, then the page can go on/);
  assert.deepEqual(await places(page), []);
  await look(page, { 'a/columns': '', 'a/since': '3', 'a/place': '0' });
  assert.match(await answerIn(page), /round 20\s*round 36/);
  assert.deepEqual(await places(page), []);
});

test('in the cuff the rounds are counted on from the last step', async () => {
  const { page } = await atLost();
  await look(page, { 'a/columns': '23', 'a/since': '4', 'b/columns': '23', 'b/since': '11' });
  assert.match(await answerIn(page), /^A: round 113 is knit/);
  assert.match(await answerIn(page), /B: round 120 is knit/);
});

test('two socks apart: which one to knit alone, how long, and where both then stand', async () => {
  const { page } = await atLostBegun();
  await look(page, { 'a/columns': '9', 'a/since': '4', 'b/columns': '9', 'b/since': '2' });
  const text = await answerIn(page);
  assert.match(text, /B: round 55 is knit/);
  assert.match(text, /B is 2 rounds behind\. Knit B alone, both halves of every round/);
  assert.match(text, /both stand at the end of round 57/);
  assert.deepEqual(await places(page), ['57']);
  await look(page, { 'b/columns': '10', 'b/since': '1' });
  assert.match(await answerIn(page), /A is 1 round behind\. Knit A alone/);
  assert.deepEqual(await places(page), ['58']);
  await look(page, { 'b/columns': '9', 'b/since': '4' });
  assert.match(await answerIn(page), /Both socks stand alike\.\s+go on from there$/);
});

test('the beginning of a round alone tells all that look like it, and with a guess the nearest', async () => {
  const { page } = await atLostBegun();
  await look(page, { 'a/since': '3', 'a/place': '0' });
  const { candidates } = found({ a: { in: 'rib', place: 0, since: 3 } }).a;
  assert.match(await answerIn(page), /A looks like that every 16 rounds/);
  assert.deepEqual(await places(page), candidates.map(String));
  await look(page, { 'a/near': '50' });
  assert.match(await answerIn(page), /^A: round 52 is knit, you are at the beginning of round 53/);
  assert.deepEqual(
    (await places(page)).sort(),
    candidates.map(String).sort(),
    'the others are still to be had',
  );
});

test('of a mirrored pair the second sock is read its own way', async () => {
  const { page } = await open();
  await page.locator('#f-rib-lean').selectOption('mirrored');
  await goTo(page, 'Knit');
  await page.locator('#lost > summary').click();
  for (const summary of await page.locator('#lost details > summary').all()) await summary.click();
  await look(page, { 'b/since': '1', 'b/place': '2', 'b/near': '0' });
  // The rib's first round, which on the first sock begins with a knit stitch.
  assert.match(await answerIn(page), /^B: round 18 is knit/);
});

test('in the toe the rounds are counted, and nothing but the cast-on is none', async () => {
  const { page } = await atLost();
  await look(page, { 'a/rounds': '17', 'b/rounds': '0' });
  const text = await answerIn(page);
  assert.match(text, /A: round 17 is knit, you are at the beginning of round 18/);
  assert.match(text, /B: only the cast-on is done/);
  assert.match(text, /B is 17 rounds behind/);
});

test('a step at the wrong round: unpicked or mended, with what each costs', async () => {
  const { page } = await atLost();
  await look(page, { 'misstep/roundsSince': '3' });
  const ways = found({ misstep: { roundsSince: 3 } }).misstep;
  const text = await page.locator('[data-view="misstep"]').innerText();
  assert.match(text, new RegExp(`3 rounds of both socks, ${ways.unpickStitches} stitches`));
  assert.match(text, new RegExp(`${ways.hookColumns} columns on both socks, ${ways.hookStitches}`));
  assert.deepEqual(await places(page), []);
});

test('in a rib of single stitches every stitch would have to be mended', async () => {
  const { page } = await open();
  await typeInto(page, 'f-rib-knit', '1');
  await typeInto(page, 'f-rib-purl', '1');
  await goTo(page, 'Knit');
  await page.locator('#lost > summary').click();
  for (const summary of await page.locator('#lost details > summary').all()) await summary.click();
  await look(page, { 'misstep/roundsSince': '3' });
  const text = await page.locator('[data-view="misstep"]').innerText();
  assert.match(text, /every stitch would be dropped/);
  assert.doesNotMatch(text, /either edge/);
});

for (const [what, typed, at, says] of [
  ['too many rounds since the step', { 'a/columns': '9', 'a/since': '5' }, 'a/since', /every 4/],
  ['past the edge', { 'a/columns': '23', 'a/since': '12' }, 'a/since', /11 rounds: count again/],
  [
    'a guess past the sock',
    { 'a/place': '0', 'a/since': '3', 'a/near': '121' },
    'a/near',
    /^Between 0 and 120/,
  ],
  ['too many steps', { 'b/columns': '24', 'b/since': '1' }, 'b/columns', /23 at most/],
  ['past the toe', { 'a/rounds': '18' }, 'a/rounds', /The toe has 17 rounds/],
  ['past the rib', { 'misstep/roundsSince': '96' }, 'misstep/roundsSince', /95 at most/],
  ['steps without rounds', { 'a/columns': '9' }, 'a/since', /^How many rounds are there/],
  ['rounds without steps', { 'a/since': '2' }, 'a/columns', /^How often has it stepped over/],
  ['past the repeat', { 'a/place': '4', 'a/since': '1' }, 'a/place', /^Between 0 and 3/],
  ['half a step', { 'a/columns': '2.5', 'a/since': '1' }, 'a/columns', /^A whole number/],
  ['no number', { 'a/since': 'some' }, 'a/since', /^“some” is no number/],
]) {
  test(`${what}: told at its field, while the plan stands`, async () => {
    const { page } = await atLost();
    await look(page, typed);
    assert.match(await problemAt(page, at), says);
    const input = page.locator(`#f-found-${at.replace('/', '-')}`);
    assert.equal(await input.getAttribute('aria-invalid'), 'true');
    assert.equal(await answerIn(page), '');
    assert.equal(await page.locator('.mend').count(), 0);
  });
}

test('it can be asked of a begun sock, and is there again when the page is', async () => {
  const { page } = await atLost();
  await press(page, 'I have cast on: begin this sock');
  await look(page, { 'a/columns': '1', 'a/since': '1' });
  assert.match(await answerIn(page), /^A: round 22 is knit/);
  await again(page);
  await page.locator('#lost').evaluate((fold) => (fold.open = true));
  assert.match(await answerIn(page), /^A: round 22 is knit/);
});

test('the drawing has the first step of this very rib, and a straight one has none', async () => {
  const { page } = await atLost();
  const numbers = () =>
    page
      .locator('.step-drawn .chart-number')
      .evaluateAll((nodes) => nodes.map((node) => node.textContent));
  assert.deepEqual(await numbers(), ['2', '3', '4', '1', '2', '3']);
  await goTo(page, 'Count');
  await typeInto(page, 'f-rib-roundsPerShift', '2');
  await goTo(page, 'Knit');
  assert.deepEqual(await numbers(), ['1', '2', '1', '2']);
  await goTo(page, 'Count');
  await typeInto(page, 'f-rib-roundsPerShift', '0');
  await goTo(page, 'Knit');
  assert.deepEqual(await numbers(), []);
  assert.match(await page.locator('#lost').innerText(), /A straight rib never steps over/);
  await look(page, { 'a/columns': '0', 'a/since': '40' });
  assert.match(await answerIn(page), /^A: round 57 is knit/);
});

for (const [width, colorScheme] of [
  [360, 'light'],
  [360, 'dark'],
  [1280, 'dark'],
]) {
  test(`nothing sticks out of a page ${width} wide, ${colorScheme}`, async () => {
    const { page } = await atLost({ viewport: { width, height: 800 }, colorScheme });
    await look(page, { 'a/since': '3', 'a/place': '0', 'misstep/roundsSince': '3' });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(wide <= width, `${wide}`);
  });
}
