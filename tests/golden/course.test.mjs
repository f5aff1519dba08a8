// The questions about many socks against the schema, judged by ajv: requests that it lets through are answered and
// fit it in every reply; what it refuses the core refuses, or tells at the seat that it is of.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at, fromBrowserTests } from '../../tools/js/paths.mjs';

const { Ajv2020 } = fromBrowserTests('ajv/dist/2020.js');

const schema = JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8'));
const ajv = new Ajv2020({ allErrors: true, strictTypes: false, strictTuples: false });
ajv.addSchema(schema, 'contract');
const isA = (name) => ajv.getSchema(`contract#/$defs/${name}`);
const core = await loadCore();

const reading = { stitches: 20, widthMm: 101.6, rounds: 28, heightMm: 101.6 };
const foot = { lengthMm: 246, ballGirthMm: 228 };
const byShoe = { shoe: { scale: 'eu', size: 41 }, body: 'man' };
const common = { legHeightMm: 200, swatch: { readings: [reading] }, yarn: { category: 4 } };
const yarns = [0, 1, 2, 3, 4, 5, 6, 7].map((category) => ({ yarn: { category } }));
const kids = { foot: { shoe: { scale: 'eu', size: 27 }, body: 'child' }, legHeightMm: 130 };

const good = {
  supply: [
    { version: 1, class: common, rows: yarns, columns: [{ foot }, { foot: byShoe }, kids] },
    { version: 1, class: {}, rows: [{}], columns: [{}] },
  ],
  weeks: [
    { version: 1, class: { ...common, foot }, knitters: yarns, meetings: 6, minutesInClass: 90 },
    {
      version: 1,
      class: common,
      knitters: [{ foot: byShoe, pace: { stitchesPerMinute: 200 } }, {}],
      meetings: 30,
      minutesInClass: 5,
      minutesAtHome: 10080,
      castOnMinutes: 0,
    },
  ],
  roster: [
    {
      version: 1,
      class: { ...common, inHand: { balls: 1 } },
      seats: [{ foot }, { foot: byShoe, inHand: { g: 400 } }, kids, {}, ...yarns],
    },
  ],
  odd: [
    { version: 1, ...common, foot, inHand: { balls: 0.5 } },
    {
      version: 1,
      ...common,
      foot: byShoe,
      stitchCount: 32,
      yarn: { category: 1, ballG: 50, ballM: 210 },
    },
    {
      version: 1,
      ...common,
      foot,
      swatch: { readings: [reading, { stitches: 24, widthMm: 101.6 }] },
    },
  ],
};

for (const [question, requests] of Object.entries(good)) {
  describe(`the schema of ${question}`, () => {
    requests.forEach((request, place) => {
      it(`lets request ${place} through, and the reply fits it`, () => {
        const isRequest = isA(`${question}Request`);
        assert.ok(isRequest(request), JSON.stringify(isRequest.errors));
        const reply = JSON.parse(core.answer(question, JSON.stringify(request)));
        assert.ok(reply.ok, JSON.stringify(reply));
        const isReply = isA(`${question}Reply`);
        assert.ok(isReply(reply), JSON.stringify(isReply.errors));
      });

      it(`refuses request ${place} without any one member that it needs, and so does the core`, () => {
        const needed = schema.$defs[`${question}Request`].required;
        assert.ok(needed.length >= 3);
        for (const name of needed) {
          const { [name]: _left, ...rest } = request;
          assert.ok(!isA(`${question}Request`)(rest), name);
          const reply = JSON.parse(core.answer(question, JSON.stringify(rest)));
          assert.equal(reply.ok, false, name);
          assert.ok(isA(`${question}Reply`)(reply), name);
        }
      });
    });
  });
}

describe('a part of a request', () => {
  const bad = [
    { foot: { lengthMm: 246 } },
    { yarn: { ballG: 50 } },
    { cuffMm: 301 },
    { hat: 1 },
    { swatch: { readings: [] } },
    { rib: { knit: 2.5 } },
  ];
  for (const part of bad) {
    it(`is refused by schema and core alike: ${JSON.stringify(part)}`, () => {
      assert.ok(!isA('planPart')(part));
      assert.ok(!isA('seatPart')(part));
      const ask = { version: 1, class: { ...common, foot }, seats: [part] };
      const { roster } = JSON.parse(core.answer('roster', JSON.stringify(ask)));
      assert.ok(roster.seats[0].problems.length > 0);
      const rows = { version: 1, class: { ...common, foot }, rows: [part], columns: [{}] };
      assert.equal(JSON.parse(core.answer('supply', JSON.stringify(rows))).ok, false);
    });
  }
});

describe('a cell of supply', () => {
  // Pointers have no list in them here: the yarns and feet of a table are told by their own fields.
  const put = (request, pointer, value) => {
    const steps = pointer.split('/').slice(1);
    const last = steps.pop();
    let here = request;
    for (const step of steps) here = here[step] ??= {};
    here[last] = value;
  };

  it('opens as the plan whose figures it tells', () => {
    const [request] = good.supply;
    const { supply } = JSON.parse(core.answer('supply', JSON.stringify(request)));
    assert.equal(supply.cells.length, 24);
    let plans = 0;
    for (const { line, problems, clear, change } of supply.cells) {
      const opened = structuredClone({ version: 1, ...request.class });
      for (const pointer of clear) delete opened[pointer.slice(1)];
      for (const [pointer, value] of Object.entries(change)) put(opened, pointer, value);
      const reply = JSON.parse(core.answer('plan', JSON.stringify(opened)));
      assert.equal(reply.ok, line !== undefined);
      if (!line) {
        assert.deepEqual(problems, reply.problems);
        continue;
      }
      plans += 1;
      const { plan } = reply;
      assert.equal(line.stitchCount, plan.stitchCount);
      assert.equal(line.totalRounds, plan.totalRounds);
      assert.equal(line.mWithMargin, plan.yarn.mWithMargin);
      assert.equal(line.gPerSock, plan.yarn.gPerSock);
      assert.equal(line.needle.mm, plan.needle.mm);
      assert.equal(line.minutes, plan.minutes);
    }
    assert.ok(plans > 12, `${plans} of 24 are plans`);
  });
});
