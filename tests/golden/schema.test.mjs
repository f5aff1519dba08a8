// The committed schema is the core's own, and means what the core does: whatever it lets through the
// core does not refuse as malformed, and the other way round. Judged by ajv, a validator not ours.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at, fromBrowserTests } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';
import { kept } from './kept.mjs';
import { mutations } from './mutate.mjs';

const { Ajv2020 } = fromBrowserTests('ajv/dist/2020.js');

const text = readFileSync(at('core', 'wire', 'schema.json'), 'utf8');
const schema = JSON.parse(text);
const ajv = new Ajv2020({ allErrors: true, strictTypes: false, strictTuples: false });
ajv.addSchema(schema, 'contract');
const definition = (name) => ajv.getSchema(`contract#/$defs/${name}`);
/** By question: what a request and a reply are to be. */
const contract = {
  plan: { isRequest: definition('request'), isReply: definition('reply') },
  adjust: { isRequest: definition('adjustRequest'), isReply: definition('adjustReply') },
};
const core = await loadCore();

// Refusals of form, which a schema can express; all others come of computing the plan.
const ofForm = new Set([
  'newer_version',
  'not_an_object',
  'required',
  'unknown_field',
  'wrong_type',
  'out_of_range',
  'not_whole',
  'unknown_word',
  'too_many_items',
  'needs_partner',
]);

const problemsOf = (reply) => reply.problems ?? [];

/** Asks the core; checks the reply against the schema; says whether both judge the request alike. */
function judgeBoth(asked, question = 'plan') {
  const { isRequest, isReply } = contract[question];
  const reply = JSON.parse(core.answer(question, JSON.stringify(asked)));
  assert.ok(
    isReply(reply),
    `${JSON.stringify(isReply.errors)} in the reply to ${JSON.stringify(asked)}`,
  );
  const wellFormed = isRequest(asked);
  const refusedForForm = problemsOf(reply).filter((problem) => ofForm.has(problem.code));
  return { alike: wellFormed === (refusedForForm.length === 0), refusedForForm, reply };
}

const measured = {
  version: 1,
  swatch: {
    fabric: 'stockinette',
    washed: true,
    needleMm: 4.5,
    readings: [
      { stitches: 20, widthMm: 101.6, rounds: 28, heightMm: 101.6 },
      { stitches: 20.25, widthMm: 101.6 },
    ],
    stretchedWidthMm: 190,
    massG: 5.6,
    massStitches: 560,
  },
  yarn: { category: 4, ballG: 100, ballM: 200 },
  foot: {
    lengthMm: 246,
    ballGirthMm: 228,
    heelAnkleGirthMm: 310,
    ankleGirthMm: 216,
    calfGirthMm: 373,
  },
  legHeightMm: 200,
  cuffMm: 30,
  rib: { knit: 2, purl: 2, roundsPerShift: 4, lean: 'left' },
  girthEase: -0.1,
  lengthEase: -0.04,
  toe: { share: 0.25, tipShare: 0.4, shape: 'round' },
  stitchCount: 44,
  pace: { stitchesPerMinute: 15 },
  yarnMargin: 0.1,
};

const bySize = {
  version: 1,
  yarn: { category: 1 },
  foot: { shoe: { scale: 'eu', size: 39 }, body: 'woman' },
  legHeightMm: 180,
};

const onTheNeedles = {
  ...bySize,
  needles: {
    roundsDone: 9,
    stitches: 30,
    widthMm: 101.6,
    rounds: 9,
    lengthMm: 25,
    gramsLeftA: 50,
    gramsLeftB: 50,
  },
};
const { request, adjustRequest } = schema.$defs;

describe('the schema', () => {
  it('is what sockmath says', async () => {
    const { ok, out } = await runCommand(at('build', 'native', 'sockmath'), ['schema']);
    assert.ok(ok, out);
    assert.equal(out, text);
  });

  for (const [name, base, question, shape] of [
    ['measured', measured, 'plan', request],
    ['bySize', bySize, 'plan', request],
    ['onTheNeedles', onTheNeedles, 'adjust', adjustRequest],
  ]) {
    it(`lets the ${name} request through, and the core answers it`, () => {
      const { alike, refusedForForm } = judgeBoth(base, question);
      assert.ok(alike);
      assert.deepEqual(refusedForForm, []);
    });

    it(`judges every change of the ${name} request as the core does`, () => {
      const parted = [];
      let refused = 0;
      let accepted = 0;
      for (const { path, value, changed } of mutations(shape, base)) {
        const { alike, refusedForForm } = judgeBoth(changed, question);
        if (refusedForForm.length > 0) refused += 1;
        else accepted += 1;
        if (!alike) {
          const said = refusedForForm.map((problem) => `${problem.field} ${problem.code}`);
          parted.push(`/${path.join('/')} = ${JSON.stringify(value)}: core says [${said}]`);
        }
      }
      assert.deepEqual(parted, []);
      assert.ok(refused > 50 && accepted > 10, `${refused} refused and ${accepted} accepted`);
    });

    it(`knows every field of the ${name} request by the pointer the core names`, () => {
      for (const { path, schema: field, value, changed } of mutations(shape, base)) {
        const wrongInItself = field && value !== undefined && !ajv.validate(field, value);
        if (!wrongInItself) continue;
        // It is named, or something inside it is.
        const pointer = `/${path.join('/')}`;
        const named = judgeBoth(changed, question).refusedForForm.map((problem) => problem.field);
        const isAt = (place) => place === pointer || place.startsWith(`${pointer}/`);
        assert.ok(named.some(isAt), `${pointer} = ${JSON.stringify(value)}: named [${named}]`);
      }
    });
  }

  for (const { name, question, read } of kept) {
    it(`fits the kept request and reply ${name}`, () => {
      const { isReply } = contract[question];
      assert.ok(isReply(JSON.parse(read('reply.json'))), JSON.stringify(isReply.errors));
      let asked;
      try {
        asked = JSON.parse(read('request.json'));
      } catch {
        return; // kept for being no JSON at all
      }
      assert.ok(judgeBoth(asked, question).alike);
    });
  }
});
