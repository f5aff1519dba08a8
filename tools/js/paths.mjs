// Where things are, and how a tool gets at the node modules that web/ and tests/browser/ list.
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));
export const at = (...parts) => path.join(root, ...parts);

// package.json lives in web/ and tests/browser/, so a tool here asks from there.
export const fromWeb = createRequire(at('web', 'package.json'));
export const fromBrowserTests = createRequire(at('tests', 'browser', 'package.json'));

/** True when the module at this URL is the program itself, not something imported. */
export const isProgram = (url) => process.argv[1] === fileURLToPath(url);
