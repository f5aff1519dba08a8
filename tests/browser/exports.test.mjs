// What is taken along: real files from the page, each read by a program that is not ours where there is one, and held
// against what the page shows and what the core replies.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, describe, test } from 'node:test';

import { Ajv2020 } from 'ajv/dist/2020.js';
import Papa from 'papaparse';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at } from '../../tools/js/paths.mjs';
import { goTo, openBrowser } from './open_page.mjs';
import { take, unfold } from './take_along.mjs';

const ajv = new Ajv2020({ allErrors: true, strictTypes: false, strictTuples: false });
ajv.addSchema(JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8')), 'contract');
const [fitsRequest, fitsReply] = ['request', 'reply'].map((name) =>
  ajv.getSchema(`contract#/$defs/${name}`),
);
const core = await loadCore();

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const squeeze = (text) => text.replace(/\s+/g, ' ').trim();

/** What the page says of the sock, which the text has to say too. */
async function readPage(page) {
  const texts = (selectors) =>
    page.evaluate(
      (all) => [...document.querySelectorAll(all)].map((node) => node.textContent),
      selectors,
    );
  const counted = await texts('.sentence, .hand .figure, .hand .take, .cautions li');
  await goTo(page, 'Buy');
  const bought = await texts('.ticks b');
  await goTo(page, 'Knit');
  const knit = await texts('#knit :is(h3, h4, li, .lines :is(td, th, caption))');
  const toe = await texts('#knit .toe td:last-child');
  await goTo(page, 'Count');
  return { texts: [...counted, ...bought, ...knit], toe };
}

const plans = {
  'the example': {},
  'a widened leg': { 'foot-calfGirthMm': '45.2', 'foot-heelAnkleGirthMm': '31', legHeightMm: '35' },
  'mirrored socks': { 'rib-lean': 'mirrored' },
  'mirrored socks, widened': {
    'foot-calfGirthMm': '45.2',
    'foot-heelAnkleGirthMm': '31',
    legHeightMm: '35',
    'rib-lean': 'mirrored',
  },
  'a rib that moves every round': { 'rib-roundsPerShift': '1' },
  'a straight rib without a cuff': { 'rib-roundsPerShift': '0', cuffMm: '0' },
  'a left and a right toe from a shoe': { 'toe-shape': 'left-right', way: 'by shoe' },
};

async function openWith({ way, ...fields }) {
  const { page, seen } = await open();
  await page.locator('.finer > summary').click();
  if (way) await page.getByRole('radio', { name: way }).check();
  for (const [id, text] of Object.entries(fields)) {
    const field = page.locator(`#f-${id}`);
    const isChoice = (await field.evaluate((node) => node.localName)) === 'select';
    if (isChoice) await field.selectOption(text);
    else if ((await field.getAttribute('type')) === 'radio') {
      await page.locator(`[name="f-${id}"][value="${text}"]`).check();
    } else await field.fill(text);
  }
  assert.equal(await page.locator('[data-last-good]').count(), 0);
  await unfold(page);
  return { page, seen };
}

for (const [what, fields] of Object.entries(plans)) {
  describe(what, () => {
    let page;
    let seen;
    let taken;
    before(async () => {
      ({ page, seen } = await openWith(fields));
      taken = await take(page, 'json');
    });

    test('the plan is JSON by the published schema, and the core says it again', () => {
      const { request, reply } = JSON.parse(taken.bytes.toString('utf8'));
      assert.ok(fitsRequest(request), JSON.stringify(fitsRequest.errors));
      assert.ok(fitsReply(reply), JSON.stringify(fitsReply.errors));
      assert.equal(reply.ok, true);
      assert.deepEqual(JSON.parse(core.answer('plan', JSON.stringify(request))), reply);
      assert.equal(taken.name, `twinround-plan-${reply.plan.stitchCount}-stitches.json`);
    });

    test('the rounds are a table for either kind of spreadsheet', async () => {
      const { plan } = JSON.parse(taken.bytes.toString('utf8')).reply;
      const tables = [];
      for (const [label, delimiter] of [
        ['semicolon', ';'],
        ['comma', ','],
      ]) {
        await page.getByRole('radio', { name: label }).check();
        const { name, bytes } = await take(page, 'csv');
        assert.equal(name, `twinround-rounds-${plan.stitchCount}-stitches.csv`);
        assert.deepEqual([...bytes.subarray(0, 3)], [0xef, 0xbb, 0xbf]);
        const { data, errors } = Papa.parse(bytes.toString('utf8'), {
          delimiter,
          skipEmptyLines: true,
        });
        assert.deepEqual(errors, []);
        tables.push(data);
      }
      assert.deepEqual(tables[0], tables[1]);
      const [heads, ...rows] = tables[0];
      assert.deepEqual(heads.slice(0, 3), ['round', 'part', 'stitches a sock']);
      assert.equal(rows.length, plan.totalRounds);
      assert.deepEqual(
        rows.map(([, , stitches]) => Number(stitches)),
        plan.rounds.flatMap(({ rounds, stitches }) => Array(rounds).fill(stitches)),
      );
    });

    test('the text says what the page says, in 72 columns', async () => {
      for (const unit of ['in', 'cm']) {
        await page.getByRole('radio', { name: unit, exact: true }).check();
        const { name, bytes } = await take(page, 'txt');
        assert.match(name, /^twinround-pattern-\d+-stitches\.txt$/);
        const text = bytes.toString('utf8');
        const lines = text.split('\n');
        assert.ok(Math.max(...lines.map(({ length }) => length)) <= 72);
        assert.doesNotMatch(text, /undefined|NaN|\[object|<|\u00a0|\u202f|print the|share this/);
        const told = squeeze(text);
        const shown = await readPage(page);
        for (const one of shown.texts) {
          // A mark beside a figure stands in brackets there.
          const words = squeeze(one).replace(/ guess$/, ' (guess)');
          assert.ok(told.includes(words), `${unit}: ${words}`);
        }
        const [, toe] = /^round +work.*\n((?:.+\n)+)/m.exec(text);
        assert.deepEqual(
          toe
            .trimEnd()
            .split('\n')
            .map((line) => /(\d+)$/.exec(line)[1]),
          shown.toe,
        );
        assert.match(told, unit === 'in' ? /\d yd of yarn/ : /\d m of yarn/);
      }
    });

    test('nobody was asked and nothing went wrong', () => {
      assert.deepEqual([seen.errors, seen.violations], [[], []]);
      assert.equal(seen.requests.filter((url) => !url.startsWith('blob:')).length, 1);
    });
  });
}
