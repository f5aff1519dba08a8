// The schema of `drive` against the core, judged by ajv; and the native core against the module.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at, fromBrowserTests } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';
import { compareReplies } from './compare.mjs';

const { Ajv2020 } = fromBrowserTests('ajv/dist/2020.js');
const ajv = new Ajv2020({ allErrors: true, strictTypes: false, strictTuples: false });
ajv.addSchema(JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8')), 'contract');
const isRequest = ajv.getSchema('contract#/$defs/driveRequest');
const isReply = ajv.getSchema('contract#/$defs/driveReply');
const core = await loadCore();

const socks = (drive, rest = {}) => ({
  version: 1,
  swatch: { readings: [{ stitches: 20, widthMm: 101.6, rounds: 28, heightMm: 101.6 }] },
  yarn: { category: 4, ballG: 100, ballM: 200 },
  ...rest,
  drive: { pairs: 40, groups: [{ who: 'woman' }, { who: 'man', share: 0.5 }], ...drive },
});
const village = [{ who: 'woman' }, { who: 'man' }, { who: 'child', ageYears: 8, share: 2 }];

const good = [
  socks({}),
  socks({ groups: village, sizes: 5, lots: [{ g: 500, m: 1000 }] }),
  socks({ wantedShare: 0.98 }, { swatch: undefined, yarn: { category: 1 }, legHeightMm: 200 }),
  socks({ lots: [{ g: 50, m: 300, category: 0 }] }),
];
const bad = [
  socks({ pairs: 0 }),
  socks({ sizes: 13 }),
  socks({ groups: [] }),
  socks({ groups: [{ who: 'child' }] }),
  socks({ lots: [{ category: 0 }] }),
  socks({}, { stitchCount: 44 }),
  socks({}, { swatch: undefined, yarn: undefined }),
];
const asText = (request) => JSON.stringify(request);
const asked = (request) => JSON.parse(asText(request));

describe('the schema of drive', () => {
  it('lets through what the core answers, and describes the answer', () => {
    for (const request of good) {
      const reply = JSON.parse(core.answer('drive', asText(request)));
      assert.ok(reply.ok, asText(reply));
      assert.ok(isRequest(asked(request)), asText(isRequest.errors));
      assert.ok(isReply(reply), asText(isReply.errors));
    }
  });

  it('refuses what the core refuses, and describes the refusal', () => {
    for (const request of bad) {
      const reply = JSON.parse(core.answer('drive', asText(request)));
      assert.equal(reply.ok, false);
      assert.equal(isRequest(asked(request)), false, asText(request));
      assert.ok(isReply(reply), asText(isReply.errors));
    }
  });
});

describe('the native core', () => {
  it('answers drive as the module does', async () => {
    for (const request of good) {
      const { out } = await runCommand(at('build', 'native', 'sockmath'), ['drive'], {
        input: asText(request),
      });
      assert.deepEqual(compareReplies(out, core.answer('drive', asText(request))), []);
    }
  });
});
