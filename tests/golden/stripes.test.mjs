// Stripes and leftovers: the native program and the module of the page say the same to the byte, and what they say
// is what the schema promises. The sock is that of the contract's example, as the page hands it on.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at, fromBrowserTests } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';
import { sockInMaking } from '../../web/script/ask/making.js';

const { Ajv2020 } = fromBrowserTests('ajv/dist/2020.js');

const schema = JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8'));
const ajv = new Ajv2020({ allErrors: true, strictTypes: false, strictTuples: false });
ajv.addSchema(schema, 'contract');
const isRequest = ajv.getSchema('contract#/$defs/stripesRequest');
const isReply = ajv.getSchema('contract#/$defs/stripesReply');
const core = await loadCore();

const { plan } = JSON.parse(
  readFileSync(at('tests', 'golden', 'contract-example', 'reply.json'), 'utf8'),
);
const asked = (parts) => ({
  version: 1,
  sock: sockInMaking(plan),
  tex: plan.yarn.tex,
  ...parts,
});
const stripes = [
  { colour: 1, m: 3.5 },
  { colour: 2, m: 2 },
  { colour: 1, m: 3.5 },
  { colour: 3, m: 8 },
];

const good = {
  'two balls': { repeat: { stripes, startBM: 4 } },
  'two ends': { repeat: { stripes, from: 'two-ends', ballM: 240 } },
  halves: { repeat: { stripes, from: 'halves', ballM: 240 } },
  'own stripes': { own: { stripes: [{ colour: 1, rounds: 3 }] } },
  leftovers: { leftovers: { lots: [{ g: 60 }, { g: 90, mPer100G: 210 }, { m: 20 }] } },
  'too little': { leftovers: { lots: [{ m: 20 }], legHeightMm: 200, roundsPerMm: 0.27 } },
};
const bad = {
  nothing: {},
  'no colours': { repeat: { stripes: [] } },
  'a lot of nothing': { leftovers: { lots: [{}] } },
  'half a label': { leftovers: { lots: [{ mPer100G: 200 }] } },
  'too thin a stripe': { repeat: { stripes: [{ colour: 1, m: 0.01 }] } },
};

async function askBoth(request) {
  const text = JSON.stringify(request);
  const { out } = await runCommand(at('build', 'native', 'sockmath'), ['stripes'], { input: text });
  const native = out.replace(/\n$/, '');
  assert.equal(core.answer('stripes', text), native, 'wasm and native differ');
  return JSON.parse(native);
}

describe('stripes', () => {
  for (const [name, parts] of Object.entries(good)) {
    it(name, async () => {
      assert.ok(isRequest(asked(parts)), JSON.stringify(isRequest.errors));
      const reply = await askBoth(asked(parts));
      assert.ok(reply.ok);
      assert.ok(isReply(reply), JSON.stringify(isReply.errors));
    });
  }
  for (const [name, parts] of Object.entries(bad)) {
    it(`refuses ${name}, as the schema does`, async () => {
      assert.ok(!isRequest(asked(parts)));
      const reply = await askBoth(asked(parts));
      assert.ok(!reply.ok);
      assert.ok(isReply(reply), JSON.stringify(isReply.errors));
    });
  }
  it('adds every band up to the plan’s own metres', async () => {
    const { repeat } = (await askBoth(asked(good['two balls']))).stripes;
    for (const bands of [repeat.bandsA, repeat.bandsB]) {
      const sum = bands.reduce((all, { m }) => all + m, 0);
      assert.ok(Math.abs(sum - plan.yarn.mPerSock) < 1e-6);
    }
  });
});
