// The rounds as CSV, read back by Papa Parse (RFC 4180, a reader that is not ours): hostile cells, and every plan
// whose reply is kept in tests/golden.
import assert from 'node:assert/strict';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { describe, it } from 'node:test';

import Papa from 'papaparse';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at } from '../../tools/js/paths.mjs';
import { writeCsv } from '../../web/script/export/csv.js';
import { tableOfRounds } from '../../web/script/export/rounds.js';

const separators = [',', ';'];

function readCsv(text, delimiter) {
  const { data, errors } = Papa.parse(text, { delimiter, skipEmptyLines: true });
  assert.deepEqual(errors, []);
  return data;
}

/** A cell, and what is read back. */
const cells = [
  ['=1+1', "'=1+1"],
  ['=HYPERLINK("http://example.invalid","tap")', '\'=HYPERLINK("http://example.invalid","tap")'],
  ['+1', "'+1"],
  ['-1', "'-1"],
  ['@x', "'@x"],
  ['\t=1', "'\t=1"],
  ['\r=1', "'\r=1"],
  ['\n=1', "'\n=1"],
  ['＝1+1', "'＝1+1"],
  ['"=1', '"=1'],
  ['*k2, p2* 5 times', '*k2, p2* 5 times'],
  ['a;b', 'a;b'],
  ['a,b;c', 'a,b;c'],
  ['say "k"', 'say "k"'],
  ['""', '""'],
  ['one\ntwo', 'one\ntwo'],
  ['one\r\ntwo', 'one\r\ntwo'],
  ['end\r', 'end\r'],
  ['\u2212 1', '\u2212 1'],
  ['1+1=2', '1+1=2'],
  ['🧦, ½', '🧦, ½'],
  [' ', ' '],
  ['', ''],
  [40, '40'],
];

describe('a cell', () => {
  for (const separator of separators) {
    for (const [cell, read] of cells) {
      it(`${JSON.stringify(cell)} between ${separator} is read back and reckons nothing`, () => {
        const text = writeCsv(
          [
            ['a', cell, 'z'],
            [cell, 'last', cell],
          ],
          separator,
        );
        assert.deepEqual(readCsv(text, separator), [
          ['a', read, 'z'],
          [read, 'last', read],
        ]);
      });
    }
  }

  it('is quoted only where it must be, its quotes doubled, each row ended by CR LF', () => {
    const rows = [
      ['a,b', 'c;d', 'e"f', 5],
      ['g', '', 'h\n', 0],
    ];
    assert.equal(writeCsv(rows, ','), '\ufeff"a,b",c;d,"e""f",5\r\ng,,"h\n",0\r\n');
    assert.equal(writeCsv(rows, ';'), '\ufeffa,b;"c;d";"e""f";5\r\ng;;"h\n";0\r\n');
  });
});

/** Stitches that a half leaves on the needle, counted from its words; none where it says no number. */
function countTold(text) {
  if (text === 'knit' || text === 'purl') return undefined;
  const whole = text.replaceAll(/\*([^*]*)\* (\d+) times/g, (_, runs, times) =>
    Array(Number(times)).fill(runs).join(', '),
  );
  return whole.split(', ').reduce((sum, run) => {
    const [, made, stitches] = /^(?:(M1[LRP])|[kp](\d+))$/.exec(run) ?? assert.fail(run);
    return sum + (made ? 1 : Number(stitches));
  }, 0);
}

const golden = at('tests', 'golden');
const plans = readdirSync(golden)
  .filter((name) => existsSync(`${golden}/${name}/reply.json`))
  .map((name) => [name, JSON.parse(readFileSync(`${golden}/${name}/reply.json`, 'utf8')).plan])
  .filter(([, plan]) => plan);

// None of them has halves that come out uneven.
const core = await loadCore();
const wide = JSON.parse(readFileSync(`${golden}/wide-calf/request.json`, 'utf8'));
for (const lean of ['left', 'mirrored']) {
  const request = structuredClone(wide);
  request.swatch.readings[0].stitches = 22;
  request.rib = { knit: 4, purl: 2, roundsPerShift: 4, lean };
  const { plan } = JSON.parse(core.answer('plan', JSON.stringify(request)));
  plans.push([`uneven halves, ${lean}`, plan]);
}

describe('of every plan', () => {
  for (const [name, plan] of plans) {
    it(`${name}: a row a round, whose words make as many stitches as it says`, () => {
      const [heads, ...rows] = readCsv(writeCsv(tableOfRounds(plan), ';'), ';');
      assert.deepEqual(
        rows.map(([round]) => round),
        Array.from({ length: plan.totalRounds }, (_, i) => String(i + 1)),
      );
      assert.deepEqual(
        rows.map(([, , stitches]) => Number(stitches)),
        plan.rounds.flatMap(({ rounds, stitches }) => Array(rounds).fill(stitches)),
      );
      const isPairUnlike = plan.rounds.some(({ secondLine }) => secondLine !== undefined);
      assert.equal(heads.length, isPairUnlike ? 8 : 6);
      for (const row of rows) {
        assert.equal(row.length, heads.length);
        for (let i = 4; i < row.length; i += 2) {
          const [first, second] = row.slice(i, i + 2).map(countTold);
          if (first !== undefined && second !== undefined) {
            assert.equal(first + second, Number(row[2]), row.join(' | '));
          }
        }
      }
    });

    it(`${name}: it says which rounds increase, move the rib and widen the leg`, () => {
      const rows = tableOfRounds(plan).slice(1);
      const { toe, rib, spiral, widening } = plan;
      rows.slice(0, toe.rounds).forEach(([round, , , what]) => {
        assert.equal(what === 'knit', toe.sides[round - 1] === 'none', `round ${round}`);
      });
      const moved = rows.filter(([, , , what]) => what === 'the rib moves');
      const ofSpiral = moved.filter(([round]) => round <= toe.rounds + spiral.rounds);
      const every = rib.roundsPerShift;
      const most = every === 0 ? 0 : Math.ceil(spiral.rounds / every) - 1;
      assert.deepEqual(
        ofSpiral.map(([round]) => round),
        Array.from({ length: most }, (_, i) => toe.rounds + (i + 1) * every + 1),
      );
      for (const { ribRound, crossing = 0, ...stage } of widening.stages) {
        const what = rows[toe.rounds + ribRound][3];
        assert.ok(what.includes(`k${stage.knit}, p${stage.purl}`), what);
        assert.equal(/uneven/.test(what), crossing !== 0, what);
      }
    });
  }

  it('there is one of each kind among them', () => {
    const stages = plans.flatMap(([, { widening }]) => widening.stages);
    assert.ok(stages.some(({ crossing }) => crossing));
    assert.ok(stages.some(({ crossing }) => !crossing));
    assert.ok(plans.some(([, { rib }]) => rib.lean === 'mirrored'));
    assert.ok(plans.some(([, { rib }]) => rib.roundsPerShift === 1));
    assert.ok(plans.some(([, { toe }]) => toe.sides.includes('great')));
  });
});
