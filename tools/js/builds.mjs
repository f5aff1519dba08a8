// The builds that the tests need. Each is told like a suite, and what needs one that failed is not
// run on what an earlier build left behind.
import { mkdirSync } from 'node:fs';
import os from 'node:os';

import { at } from './paths.mjs';
import { runCommand } from './run_command.mjs';

const toolchain = '/usr/share/emscripten/cmake/Modules/Platform/Emscripten.cmake';
const wasmOptions = [
  `-DCMAKE_TOOLCHAIN_FILE=${toolchain}`,
  `-DCMAKE_CROSSCOMPILING_EMULATOR=${process.execPath}`,
];

async function cmake(folder, type, options = []) {
  const into = at('build', folder);
  const configure = ['-S', '.', '-B', into, '-G', 'Ninja', `-DCMAKE_BUILD_TYPE=${type}`];
  const first = await runCommand('cmake', [...configure, '-DTWINROUND_TESTS=ON', ...options]);
  if (!first.ok) return first;
  const jobs = String(os.cpus().length);
  return runCommand('cmake', ['--build', into, '--parallel', jobs], { timeout: 40 * 60_000 });
}

const makers = {
  native: () => cmake('native', 'Release'),
  // Asserts on, and enough optimisation for thousands of random requests.
  asan: () =>
    cmake('asan', 'Debug', ['-DTWINROUND_SANITIZE=ON', '-DCMAKE_CXX_FLAGS_DEBUG=-O1 -g1']),
  wasm: () => cmake('wasm', 'Release', wasmOptions),
  site: () => runCommand(at('tools', 'bundle'), []),
};

/** Which build another one starts from. */
export const buildNeeds = { native: [], asan: [], wasm: [], site: ['wasm'] };

export async function build(name) {
  mkdirSync(at('build'), { recursive: true });
  const { ok, out } = await makers[name]();
  return { passed: ok ? 1 : 0, failed: ok ? 0 : 1, log: out };
}
