// The texts that go into the page: its style, its script, its module.
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
    write: false,
    format: 'iife',
    minifySyntax: true,
    charset: 'utf8',
    legalComments: 'none',
    logLevel: 'warning',
    target,
    loader,
  });
  // Looking at it three times finds what a single pass leaves behind: 1.6 kB of the page.
  const { code } = await terser.minify(result.outputFiles[0].text, {
    compress: { passes: 3, keep_fargs: false },
  });
  return code.trim();
}

// What cannot stand for itself inside a script element of an HTML page: NUL and CR are changed by the
// parser, `<` could end the element, and from DEL on a byte is no character of its own.
const plain = (byte) => byte !== 0x00 && byte !== 0x0d && byte !== 0x3c && byte < 0x7f;

/**
 * The module's bytes as text for a data block of the page: one character a byte, which is the byte
 * itself where it can be, else U+0100 + byte. Either way the byte is the character's low eight bits.
 * A host's compression still sees the bytes in step, which base64 hides from it: a quarter less to load.
 */
export function encodeModule(coreFolder) {
  const bytes = readFileSync(path.join(coreFolder, 'core.wasm'));
  return Array.from(bytes, (byte) => String.fromCharCode(plain(byte) ? byte : 0x100 + byte)).join(
    '',
  );
}
