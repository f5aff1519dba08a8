// Stripes and leftovers: each part by itself, and what only just is.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';

import { again, goTo, openBrowser, typeInto } from './open_page.mjs';
import { answer, drawn, fields, from, openStripes, wrong } from './stripes_fold.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const openFold = (options) => openStripes(open, options);

test('a choice alone asks nothing, and no part waits for another', async () => {
  const { page } = await openFold();
  await from(page, 'two-ends');
  await typeInto(page, fields.own, 'blue 3, white 2');
  await typeInto(page, fields.lots, '100 g');
  const drawings = async () => {
    const count = (what) => answer(page, what).locator('svg').count();
    return [await count('repeat'), await count('own'), await count('leftovers')];
  };
  assert.equal(await wrong(page), '');
  assert.deepEqual(await drawings(), [0, 1, 1]);
  await typeInto(page, fields.repeat, '3 m, 2 m');
  assert.deepEqual(await drawings(), [1, 1, 1]);
  await typeInto(page, fields.repeat, '');
  assert.equal(await wrong(page), '');
  assert.deepEqual(await drawings(), [0, 1, 1]);
  // A start without colours is a question, and a wrong one; so are half a round and too little a lot.
  await typeInto(page, fields.startB, '2');
  assert.match(await wrong(page), /^This is needed/);
  assert.deepEqual(await drawings(), [0, 1, 1]);
  await typeInto(page, fields.own, 'blue 2.5');
  assert.deepEqual(await drawings(), [0, 0, 1]);
  await again(page);
  await goTo(page, 'Knit');
  await page.locator('#stripes').evaluate((fold) => (fold.open = true));
  assert.deepEqual(await drawings(), [0, 0, 1]);
  assert.match(await wrong(page), /This is needed.*whole number/);
});

test('one colour is drawn plain, and called what it is', async () => {
  const { page } = await openFold();
  const marks = () => answer(page, 'own').locator('rect[fill^="url"]').count();
  for (const [typed, says, marked] of [
    ['blue 1', /all of one colour/, false],
    ['blue 200', /all of one colour/, false],
    ['blue 200, white 2', /longer than the sock/, false],
    ['blue 3, white 2', /The colour changes/, true],
  ]) {
    await typeInto(page, fields.own, typed);
    assert.match(await answer(page, 'own').innerText(), says, typed);
    assert.equal((await marks()) > 0, marked, typed);
  }
});

test('lots that reach without their margin alone are said to', async () => {
  const { page } = await openFold();
  await typeInto(page, fields.lots, '50 g, 50 g');
  const said = await answer(page, 'leftovers').innerText();
  assert.match(
    said,
    /They just make the pair with one join a sock, without the margin of 10\s%: to keep it, \d+ m of a further yarn/,
  );
  assert.doesNotMatch(said, /are missing/);
  // Drawn to the edge.
  const [a] = await drawn(page, 'leftovers');
  assert.ok(Math.abs(a.at(-1)[2] - 1) < 0.002);
});

for (const [name, typed, says] of [
  ['own', '-3', /“-3” is not understood/],
  ['own', 'blue 3 m', /What fits: a plain number\./],
  ['repeat', '12 1/2 in', /What fits: m, yd\./],
]) {
  test(`“${typed}” is refused in words at its field`, async () => {
    const { page } = await openFold();
    await typeInto(page, fields[name], typed);
    assert.match(await wrong(page), says);
    assert.equal(await answer(page, name).locator('svg').count(), 0);
  });
}
