// Which files there are, and which of them nobody builds.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

import { at, root } from './paths.mjs';

function walk(folder) {
  return readdirSync(at(folder), { withFileTypes: true }).flatMap((entry) => {
    const name = path.join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === 'node_modules' ? [] : walk(name);
    return [name];
  });
}

/** Every file under these folders whose name matches, from the top of the repository. */
export const listed = (folders, pattern) =>
  folders
    .flatMap(walk)
    .filter((name) => pattern.test(name))
    .sort();

/** The native build's own list: for every source file, how it is compiled. */
export function compileCommands(build = 'native') {
  const commands = JSON.parse(readFileSync(at('build', build, 'compile_commands.json'), 'utf8'));
  return new Map(commands.map((entry) => [path.relative(root, entry.file), entry]));
}

/** C++ files that stand in the tree but in no CMakeLists.txt. */
export function unlisted() {
  const built = compileCommands();
  return listed(['core', 'tests/core', 'tests/wire', 'tools'], /\.cpp$/)
    .filter((name) => !built.has(name))
    .map((name) => `${name}: in no CMakeLists.txt`);
}
