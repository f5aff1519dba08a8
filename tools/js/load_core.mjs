// The very module that the page carries, run under Node by the page's own loader: for the tests, the bench, and the
// plan that is put into the page while it is built.
import { readFileSync } from 'node:fs';
import path from 'node:path';

import { startModule } from '../../web/script/core/module.js';
import { at } from './paths.mjs';

/**
 * @param {string} [folder] where core.wasm is
 * @returns {Promise<{ answer: (question: string, text: string) => string }>}
 */
export const loadCore = (folder = at('build', 'wasm')) =>
  startModule(readFileSync(path.join(folder, 'core.wasm')));
