// The texts that go into the page: its style, its script with the module's glue, its module.
import { readFileSync } from 'node:fs';
import path from 'node:path';

import { fromWeb } from './paths.mjs';

const esbuild = fromWeb('esbuild');
const terser = fromWeb('terser');

// Every browser that runs the module with growing memory and Trusted Types or their absence.
const target = ['es2021', 'chrome100', 'firefox100', 'safari15.4'];
// Small pictures travel inside the style; img-src in the policy allows data: and nothing else.
const loader = { '.svg': 'dataurl', '.png': 'dataurl' };

/** All style sheets, in the order given, as one minified text. */
export async function buildStyle(webFolder, hrefs) {
  const result = await esbuild.build({
    stdin: {
      contents: hrefs.map((href) => `@import ${JSON.stringify(`./${href}`)};`).join('\n'),
      resolveDir: webFolder,
      loader: 'css',
    },
    bundle: true,
    minify: true,
    write: false,
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'warning',
    target,
    loader,
  });
  return result.outputFiles[0].text.trim();
}

/** The page's modules as one function that runs at once. */
export async function buildScript(webFolder, src) {
  const result = await esbuild.build({
    entryPoints: [path.join(webFolder, src)],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'warning',
    target,
    loader,
  });
  return result.outputFiles[0].text.trim();
}

/** Emscripten's glue, squeezed, so that it leaves behind globalThis.createCore and nothing else. */
export async function buildGlue(coreFolder) {
  const glue = readFileSync(path.join(coreFolder, 'core.js'), 'utf8');
  const result = await terser.minify(`${glue}\nglobalThis.createCore = createCore;`, {
    module: true,
    compress: { passes: 3 },
    mangle: true,
  });
  // A function around it keeps the glue's short names out of the window.
  return `(()=>{${result.code}})();`;
}

/** The module's bytes as base64: a data block of the page. */
export function encodeModule(coreFolder) {
  return readFileSync(path.join(coreFolder, 'core.wasm')).toString('base64');
}
