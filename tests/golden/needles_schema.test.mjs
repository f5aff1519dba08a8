// The questions asked with the sock on the needles, place and found: whatever is asked, the reply is as the schema says, and
// what the schema refuses the core does not answer. Judged by ajv, a validator not ours.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at, fromBrowserTests } from '../../tools/js/paths.mjs';
import { mutations } from './mutate.mjs';

const { Ajv2020 } = fromBrowserTests('ajv/dist/2020.js');

const schema = JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8'));
const ajv = new Ajv2020({ allErrors: true, strictTypes: false, strictTuples: false });
ajv.addSchema(schema, 'contract');
const core = await loadCore();
const judgeOf = (name) => ajv.getSchema(`contract#/$defs/${name}`);

const example = at('tests', 'golden', 'contract-example', 'request.json');
const { plan } = JSON.parse(core.answer('plan', readFileSync(example, 'utf8')));
const metresOf = (name) => plan.yarn.sections.find(({ section }) => section === name).m;

const place = {
  version: 1,
  sock: {
    rounds: plan.rounds.slice(0, 14),
    castOnM: metresOf('castOn'),
    bindOffM: metresOf('bindOff'),
    tailsM: metresOf('tails'),
    mmPerStitch: plan.yarn.mmPerStitch,
  },
  done: { rounds: 12, passes: 3 },
  stitchesPerMinute: 15,
  laps: [
    { stitches: 80, seconds: 320 },
    { stitches: 80, seconds: 340.5 },
  ],
};

const found = {
  version: 1,
  rib: plan.rib,
  toeRounds: plan.toe.rounds,
  spiralRounds: plan.spiral.rounds,
  plainRounds: plan.spiral.rounds,
  stitches: plan.stitchCount,
  a: { in: 'rib', columns: 9, since: 4 },
  b: { in: 'rib', place: 0, since: 3, near: 50 },
  misstep: { roundsSince: 3 },
};

for (const [question, base] of Object.entries({ place, found })) {
  describe(`the question ${question}`, () => {
    const isRequest = judgeOf(`${question}Request`);
    const isReply = judgeOf(`${question}Reply`);
    const ask = (request) => JSON.parse(core.answer(question, JSON.stringify(request)));

    it('is answered', () => {
      assert.ok(isRequest(base), JSON.stringify(isRequest.errors));
      const reply = ask(base);
      assert.equal(reply.ok, true, JSON.stringify(reply));
      assert.ok(isReply(reply), JSON.stringify(isReply.errors));
    });

    it('is answered or refused as the schema says, whatever is changed', () => {
      let refused = 0;
      let answered = 0;
      for (const { changed } of mutations(schema.$defs[`${question}Request`], base)) {
        const reply = ask(changed);
        const told = `${JSON.stringify(changed)}: ${JSON.stringify(reply)}`;
        assert.ok(isReply(reply), `${told} ${JSON.stringify(isReply.errors)}`);
        if (!isRequest(changed)) assert.equal(reply.ok, false, told);
        if (reply.ok) answered += 1;
        else refused += 1;
      }
      assert.ok(refused > 50 && answered > 10, `${refused} refused and ${answered} answered`);
    });
  });
}

it('the plan’s own metres are used up at its end, and none before its beginning', () => {
  const sock = { ...place.sock, rounds: plan.rounds };
  const placeAt = (rounds) => {
    const request = { version: 1, sock, done: { rounds } };
    return JSON.parse(core.answer('place', JSON.stringify(request))).place;
  };
  const half = metresOf('tails') / 2;
  const near = (one, other) => assert.ok(Math.abs(one - other) < 1e-9, `${one} and ${other}`);
  near(placeAt(0).usedM.a, metresOf('castOn') + half);
  near(placeAt(0).usedM.pair + placeAt(0).toGoM.pair, plan.yarn.mPerPair);
  near(placeAt(plan.totalRounds).usedM.b, plan.yarn.mPerSock - metresOf('bindOff') - half);
  near(placeAt(plan.totalRounds).toGoM.pair, 2 * (metresOf('bindOff') + half));
  near(placeAt(0).pace.minutesToGo, plan.minutes);
  // Section by section.
  let done = 0;
  for (const section of ['toe', 'spiral', 'cuff']) {
    const before = placeAt(done).usedM.a;
    for (const span of plan.rounds) if (span.section === section) done += span.rounds;
    near(placeAt(done).usedM.a - before, metresOf(section));
  }
});
