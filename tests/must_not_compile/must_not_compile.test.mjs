// Misuse that the types refuse. Each snippet has two halves: with CONTROL it must compile, without it
// must not, and for the reason it names. It is compiled exactly as the files of its layer are.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { compileCommands, listed } from '../../tools/js/file_lists.mjs';
import { at } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';

const commands = [...compileCommands()];

/** The compiler and flags of some file of this layer, without its own name and output. */
function compilerOf(layer) {
  const [, entry] = commands.find(([name]) => name.startsWith(`core/${layer}/`));
  const words = entry.command.split(' ').filter(Boolean);
  words.splice(words.indexOf('-o'), 2);
  words.splice(words.indexOf('-c'), 2);
  return words;
}

async function compile(file, layer, flags) {
  const [compiler, ...rest] = compilerOf(layer);
  // In plain English, whatever the machine speaks: the expected words are matched.
  const env = { LC_ALL: 'C' };
  return runCommand(compiler, [...rest, ...flags, '-fsyntax-only', at(file)], { env });
}

const snippets = listed(['tests/must_not_compile'], /\.cpp$/);

describe('must not compile', { concurrency: 2 }, () => {
  for (const file of snippets) {
    const text = readFileSync(at(file), 'utf8');
    const layer = /^\/\/ layer: (\w+)$/m.exec(text)?.[1];
    const expect = /^\/\/ expect: (.+)$/m.exec(text)?.[1];
    it(file, async () => {
      assert.ok(layer && expect, 'the snippet names its layer and the error it expects');
      const control = await compile(file, layer, ['-DCONTROL']);
      assert.ok(control.ok, `the control half does not compile:\n${control.out}`);
      const misuse = await compile(file, layer, []);
      assert.ok(!misuse.ok, 'it compiled');
      assert.match(misuse.out, new RegExp(expect), 'it failed for another reason');
    });
  }
});
