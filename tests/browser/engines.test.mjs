// The main job in the three engines that readers' browsers are made of, by one script: the same words
// typed, the same counts read, and the page open by its address and as a file.
import assert from 'node:assert/strict';
import path from 'node:path';
import { after, before, describe, it } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';

import { serve } from '../../tools/js/serve.mjs';
import { engines } from './engines.mjs';

const site = fileURLToPath(new URL('../../build/site/', import.meta.url));
const fileUrl = pathToFileURL(path.join(site, 'index.html')).href;

const field = (name) => `#f-${name}`;
const inInches = [
  ['swatch-readings-0-stitches', '22'],
  ['swatch-readings-0-widthMm', '4 in'],
  ['swatch-readings-0-rounds', '30'],
  ['swatch-readings-0-heightMm', '4 in'],
  ['foot-ballGirthMm', '9 1/2 in'],
  ['foot-lengthMm', '10 in'],
  ['foot-heelAnkleGirthMm', '12½ in'],
  ['legHeightMm', '7.5 in'],
];
const inCentimetres = [
  ['swatch-readings-0-stitches', '22'],
  ['swatch-readings-0-widthMm', '10,16 cm'],
  ['swatch-readings-0-rounds', '30'],
  ['swatch-readings-0-heightMm', '10,16 cm'],
  ['foot-ballGirthMm', '24,13 cm'],
  ['foot-lengthMm', '25,4 cm'],
  ['foot-heelAnkleGirthMm', '31,75 cm'],
  ['legHeightMm', '19,05 cm'],
];

// Run in the page: every count, so that no unit is in it.
const texts = `const texts = (selector) =>
  [...document.querySelectorAll(selector)].map((node) => node.textContent);`;
const inCount = `() => {
  ${texts}
  return { note: texts('.hand dd').slice(0, 4), choices: texts('.choice .count') };
}`;
const inKnit = `() => {
  ${texts}
  return { toe: texts('.toe tbody tr'), lines: texts('.lines tbody tr') };
}`;
const answered = `() => performance.getEntriesByName('first-answer').length > 0`;

async function untilAnswered(hands) {
  for (let times = 0; times < 100; times += 1) {
    if (await hands.evaluate(answered)) return;
    await wait(100);
  }
  assert.fail('the page gave no answer in ten seconds');
}

async function readCounts(hands) {
  const count = await hands.evaluate(inCount);
  await hands.click('nav a[href="#knit"]');
  const knit = await hands.evaluate(inKnit);
  await hands.click('nav a[href="#count"]');
  return { ...count, ...knit };
}

async function countsAfter(hands, url, typed) {
  await hands.goto(url);
  await untilAnswered(hands);
  for (const [name, text] of typed) await hands.type(field(name), text);
  await wait(100);
  return readCounts(hands);
}

let served;
before(async () => (served = await serve({ folder: site })));
after(() => served.close());

/** What the first engine read, for the others to agree with. */
let expected;

for (const [name, start] of Object.entries(engines)) {
  describe(name, () => {
    let hands;
    before(async () => (hands = await start()));
    after(() => hands.end());

    it('reads the same counts from inches as from centimetres', async (t) => {
      t.diagnostic(`${name} ${hands.version}`);
      const inch = await countsAfter(hands, served.url, inInches);
      assert.deepEqual(await countsAfter(hands, served.url, inCentimetres), inch);
      // Girth 241.3 mm less a tenth at 22 stitches over 101.6 mm is 47.0: 48.
      assert.equal(inch.note[1], '48');
      assert.ok(inch.toe.length > 10 && inch.lines.length > 3);
      expected ??= inch;
      assert.deepEqual(inch, expected);
    });

    it('works as a file opened by a double click', async () => {
      assert.deepEqual(await countsAfter(hands, fileUrl, inCentimetres), expected);
    });

    it('keeps the last good plan while a field is wrong', async () => {
      await hands.goto(served.url);
      await untilAnswered(hands);
      const good = await readCounts(hands);
      await hands.type(field('foot-lengthMm'), '1,234');
      await wait(100);
      assert.deepEqual(await readCounts(hands), good);
      const invalid = `() => document.querySelector('#f-foot-lengthMm').getAttribute('aria-invalid')`;
      assert.equal(await hands.evaluate(invalid), 'true');
    });
  });
}
