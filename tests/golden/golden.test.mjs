// Whole replies, kept: the native program and the module of the page must say the same to the byte,
// and what reply.json says within the contract. A folder is request.json, reply.json and a `source`
// that says where its figures come from.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';
import { compareReplies } from './compare.mjs';
import { kept } from './kept.mjs';

const core = await loadCore();

/** The program's answer, with what it must be whatever the request: one line, and an exit code that fits. */
async function askNative(question, request) {
  const { code, out } = await runCommand(at('build', 'native', 'sockmath'), [question], {
    input: request,
  });
  const reply = out.replace(/\n$/, '');
  assert.equal(code, JSON.parse(reply).ok ? 0 : 1, 'exit code');
  return reply;
}

describe('golden', () => {
  for (const asked of ['plan', 'adjust']) {
    it(`has replies of ${asked} to compare`, () =>
      assert.ok(kept.some(({ question }) => question === asked)));
  }
  for (const { name, question, files, read } of kept) {
    it(name, async () => {
      const request = read('request.json');
      const native = await askNative(question, request);
      assert.equal(core.answer(question, request), native, 'wasm and native differ');
      assert.deepEqual(compareReplies(read('reply.json'), native), []);
      const sources = files.filter((file) => /^source/.test(file));
      assert.equal(sources.length, 1, 'says where its figures come from');
      assert.ok(read(sources[0]).length > 0);
    });
  }
});

describe('the comparison itself', () => {
  const same = '{"a":[40,0.196850394],"b":"40, \\"0.2\\"","c":0.0}';
  const rows = [
    ['itself', same, []],
    ['a real in its last bits', same.replace('0.196850394', '0.1968503940001'), []],
    ['nought but for rounding', same.replace('0.0}', '1.1e-17}'), []],
    ['a real further off', same.replace('0.196850394', '0.196850395'), ['/a/1']],
    ['a count one off', same.replace('40,', '41,'), ['/a/0']],
    ['a count no longer whole', same.replace('40,', '40.0000001,'), ['/a/0']],
    ['a text', same.replace('"40, ', '"41, '), ['/b']],
    ['a figure missing', same.replace(',"c":0.0', ''), ['/c']],
    ['a figure too many', same.replace('"c"', '"d":1,"c"'), ['/d']],
    ['a list cut short', same.replace(',0.196850394', ''), ['/a/1']],
    ['a list for an object', same.replace('[40,0.196850394]', '{"0":40,"1":0.196850394}'), ['/a']],
  ];
  for (const [what, text, pointers] of rows) {
    it(`sees ${what}`, () => {
      const found = compareReplies(same, text).map((line) => line.split(':')[0]);
      assert.deepEqual(found, pointers);
    });
  }
});
