// The very module that the page carries, run under Node: for the tests, the bench, and the plan
// that is put into the page while it is built.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

import { at } from './paths.mjs';

/**
 * @param {string} [folder] where core.js and core.wasm are
 * @returns {Promise<{ answer: (question: string, text: string) => string }>}
 */
export async function loadCore(folder = at('build', 'wasm')) {
  const createCore = createRequire(import.meta.url)(path.join(folder, 'core.js'));
  // Handed over as bytes: the glue is built for the web, and Node's own fetch would mislead it.
  return createCore({ wasmBinary: readFileSync(path.join(folder, 'core.wasm')) });
}
