// clang-tidy over every file of ours that is built natively. It is slow, so a file that was clean is
// not read again until it, a header it includes, its flags or the rules change: a stamp says so.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

import { compileCommands } from './file_lists.mjs';
import { at } from './paths.mjs';
import { runCommand, runPool } from './run_command.mjs';

const ours = /^(core|wasm|tools)\//;

/** The files that this one reads, as the compiler tells them; system headers are pinned by version. */
async function readsOf({ command, directory }) {
  const words = command.split(' ').filter(Boolean);
  const output = words.indexOf('-o');
  words.splice(output, 2);
  const { ok, stdout } = await runCommand(words[0], [...words.slice(1), '-MM'], { cwd: directory });
  if (!ok) return undefined;
  return stdout.replace(/\\\n/g, ' ').split(/\s+/).slice(1).filter(Boolean);
}

async function stampOf(entry, version) {
  const files = await readsOf(entry);
  if (!files) return undefined;
  const hash = createHash('sha256').update(version).update(entry.command);
  hash.update(readFileSync(at('.clang-tidy')));
  for (const file of files) hash.update(readFileSync(path.resolve(entry.directory, file)));
  return path.join(at('build', 'tidy'), hash.digest('hex'));
}

/** @returns {Promise<{ passed: number, failed: number, log: string }>} */
export async function tidy() {
  mkdirSync(at('build', 'tidy'), { recursive: true });
  const { stdout: version } = await runCommand('clang-tidy', ['--version']);
  const entries = [...compileCommands()].filter(([name]) => ours.test(name));
  const logs = [];
  await runPool(
    entries.map(([name, entry]) => async () => {
      const stamp = await stampOf(entry, version);
      if (stamp && existsSync(stamp)) return;
      const { ok, out } = await runCommand('clang-tidy', [
        '-quiet',
        '-p',
        at('build', 'native'),
        at(name),
      ]);
      if (ok && stamp) writeFileSync(stamp, `${name}\n`);
      if (!ok) logs.push(out);
    }),
    os.cpus().length,
  );
  const none = entries.length === 0;
  const failed = none || logs.length > 0 ? 1 : 0;
  return { passed: 1 - failed, failed, log: none ? 'no file to read' : logs.join('\n') };
}
