// Links that were given away, kept in tests/wire/links: NAME.txt is the link, NAME.json what it opens
// to. They open for ever: whoever changes one of these files breaks a promise.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';
import { checkOf, readLink } from './link_reference.mjs';

const folder = ['tests', 'wire', 'links'];
const files = readdirSync(at(...folder)).sort();
const names = files.filter((file) => file.endsWith('.txt')).map((file) => file.slice(0, -4));
const read = (file) => readFileSync(at(...folder, file), 'utf8').trim();
const core = await loadCore();

/** The reply's fields as the second reader tells them. */
const byPointer = (fields) =>
  Object.fromEntries(
    fields.map(({ field, typed, unit, value }) => [
      field,
      {
        unit,
        ...(value !== undefined && { value }),
        ...(value === undefined && typed && { typed }),
      },
    ]),
  );
/** A choice left empty is told there with an empty text. */
const plain = (fields) =>
  Object.fromEntries(
    Object.entries(fields).map(([pointer, { typed, ...rest }]) => [
      pointer,
      typed ? { ...rest, typed } : rest,
    ]),
  );

describe('links that were given away', () => {
  it('are there for each version there was', () => {
    assert.ok(names.filter((name) => name.startsWith('v1-')).length >= 5);
    assert.ok(names.filter((name) => name.startsWith('v2-')).length >= 3);
    assert.equal(files.length, 2 * names.length);
  });

  for (const name of names) {
    const link = read(`${name}.txt`);
    const question = JSON.stringify({ version: 1, text: link });

    it(`${name} opens to what it said`, async () => {
      const reply = core.answer('link', question);
      const opened = JSON.parse(reply).link;
      const kept = JSON.parse(read(`${name}.json`));
      for (const [member, said] of Object.entries(kept)) {
        assert.deepEqual(opened[member], said, member);
      }
      const { code, stdout } = await runCommand(at('build', 'native', 'sockmath'), ['link'], {
        input: question,
      });
      assert.equal(code, 0);
      assert.equal(stdout.trim(), reply, 'wasm and native differ');
    });

    // What is said alike is written alike, for ever: a link that was printed is found again.
    it(`${name} is what is made of its sheet today`, () => {
      const { fields, echo, ...said } = JSON.parse(read(`${name}.json`));
      const { rules, ...counts } = echo;
      const plan = 'totalRounds' in counts ? { echo: counts } : {};
      const asked = fields.map(({ field, typed, unit, value }) =>
        value === undefined ? { field, typed, unit } : { field, value, unit },
      );
      const asking = { version: 1, fields: asked, ...said, ...plan };
      const reply = JSON.parse(core.answer('link', JSON.stringify(asking)));
      if (reply.rules === rules) assert.equal(reply.link.text, link);
      assert.equal(link[0], said.yarns ? '2' : '1');
    });

    it(`${name} says the same to a second reader`, () => {
      const { fields, ...rest } = JSON.parse(read(`${name}.json`));
      const { fields: secondFields, ...second } = readLink(link);
      assert.deepEqual(plain(secondFields), byPointer(fields));
      assert.deepEqual(second, rest);
      assert.ok(checkOf(link));
      assert.ok(!checkOf(link.replace(/.$/, (last) => (last === '0' ? '1' : '0'))));
    });
  }
});
