// Makes build/site from web/ and build/wasm: the page in ONE file, and beside it only what a host needs.
//
// What the page may rely on (the contract between this tool and web/):
//   - web/index.html names its style sheets with <link rel="stylesheet" href="..."> in the order they
//     apply, and its script with ONE <script type="module" src="..."> . Both become inline; relative
//     <link rel="icon"> pictures become data.
//   - The module's bytes, one in the low eight bits of each character (page_parts.mjs says why), are the
//     text of <script type="application/octet-stream" id="core-module">.
//     A script element of such a type is a data block: it is never executed, needs no hash in the
//     policy, and is read like any text, from file:// too.
//   - The script and then the data block stand at the very end of <body>, so all markup is there and shown; the
//     script has to wait for the block.
//   - web/script/first_paint.js exports `async function firstPaint(document, answer)`. It runs here, with
//     web/index.html as `document` (linkedom) and `answer(question, request)` asking the module just
//     built (objects in and out). What it leaves in the document is what a reader sees first.
//   - No style attribute, no on... attribute, no other inline script or style: the content security
//     policy (csp.mjs) would block them, so this tool refuses them. `element.style` in script is fine.
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

import { headersFor, policyFor } from './csp.mjs';
import { loadCore } from './load_core.mjs';
import { buildScript, buildStyle, encodeModule } from './page_parts.mjs';
import { at, fromWeb, isProgram } from './paths.mjs';
import { stampWorker } from './worker.mjs';

const { parseHTML } = fromWeb('linkedom');

// What a host serves beside the page, where web/ has it.
const besideThePage = ['app.webmanifest', 'icons'];

const mimeTypes = { '.svg': 'image/svg+xml', '.png': 'image/png', '.ico': 'image/x-icon' };

function only(found, what) {
  if (found.length !== 1)
    throw new Error(`web/index.html: expected one ${what}, found ${found.length}`);
  return found[0];
}

/** Takes the style sheets and the script out of the document and says what they were. */
function takeParts(document) {
  const sheets = [...document.querySelectorAll('link[rel="stylesheet"]')];
  const hrefs = sheets.map((sheet) => sheet.getAttribute('href'));
  if (hrefs.length === 0) throw new Error('web/index.html: no style sheet');
  const script = only(
    [...document.querySelectorAll('script[type="module"][src]')],
    'module script',
  );
  const src = script.getAttribute('src');
  for (const element of [...sheets, script]) element.remove();
  return { hrefs, src };
}

function inlineIcons(document, webFolder) {
  for (const link of document.querySelectorAll('link[rel~="icon"]')) {
    const href = link.getAttribute('href');
    if (href.startsWith('data:')) continue;
    const type = mimeTypes[path.extname(href)];
    const bytes = readFileSync(path.join(webFolder, href));
    // Markup as text: compression sees the words it knows.
    const data = type.includes('svg')
      ? `,${encodeURIComponent(String(bytes).trim().replaceAll('"', "'")).replace(/%(20|2F|3A|3D|27)/g, unescape)}`
      : `;base64,${bytes.toString('base64')}`;
    link.setAttribute('href', `data:${type}${data}`);
  }
}

/** What the policy would block, or what would ask somebody for something. */
export function findForbidden(document) {
  const found = [];
  for (const element of document.querySelectorAll('*')) {
    const name = element.localName;
    for (const { name: attribute, value } of element.attributes) {
      if (attribute === 'style') found.push(`<${name} style="${value}">: no style attributes`);
      if (attribute.startsWith('on')) found.push(`<${name} ${attribute}>: no inline handlers`);
      const loads = attribute === 'src' || attribute === 'srcset' || attribute === 'poster';
      if (loads && !value.startsWith('data:'))
        found.push(`<${name} ${attribute}="${value}">: loads`);
    }
    const href = element.getAttribute('href');
    const loadsHref = name === 'link' && element.getAttribute('rel') !== 'manifest';
    if (loadsHref && !href?.startsWith('data:')) found.push(`<link href="${href}">: loads`);
    if (name === 'style' || name === 'script') found.push(`<${name}>: only the bundle's own`);
    if (name === 'base' || name === 'iframe') found.push(`<${name}>: not in this page`);
  }
  return found;
}

/** Takes out comments and the indentation between elements; leaves <pre> and <textarea> as they are. */
export function squeeze(node) {
  for (const child of [...node.childNodes]) {
    if (child.nodeType === 8) child.remove();
    else if (child.nodeType === 3) child.textContent = child.textContent.replace(/\s+/g, ' ');
    else if (child.nodeType === 1 && !['pre', 'textarea'].includes(child.localName)) squeeze(child);
  }
}

// Inside a script or style element the parser looks for its end, and for a comment's beginning, which would make it
// look for more.
function assertInlines(what, text) {
  if (/<!--|<\/(script|style)|\r/i.test(text))
    throw new Error(`the ${what} cannot stand inside HTML`);
}

/** Puts the parts where the contract above says. Text is joined, not parsed, so hashes hold. */
function assemble(html, { style, script, moduleText, policy }) {
  const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
  const head = `<meta charset="utf-8">${meta}<style>${style}</style>`;
  const data = `<script type="application/octet-stream" id="core-module">${moduleText}</script>`;
  // The texts together: compression does better, and the page comes alive before its last quarter is there.
  const tail = `<script>${script}</script>${data}`;
  const charset = /<meta charset="utf-8"\s*\/?>/i;
  if (!charset.test(html)) throw new Error('web/index.html: <meta charset="utf-8"> is missing');
  const end = html.lastIndexOf('</body>');
  if (end < 0) throw new Error('web/index.html: </body> is missing');
  const whole = html.slice(0, end) + tail + html.slice(end);
  return whole.replace(charset, () => head);
}

/**
 * @param {{ webFolder?: string, coreFolder?: string }} [folders]
 * @returns {Promise<{ html: string, headers: string }>}
 */
export async function bundle({ webFolder = at('web'), coreFolder = at('build', 'wasm') } = {}) {
  const { document } = parseHTML(readFileSync(path.join(webFolder, 'index.html'), 'utf8'));
  const { hrefs, src } = takeParts(document);
  inlineIcons(document, webFolder);

  const core = await loadCore(coreFolder);
  const answer = (question, request) => JSON.parse(core.answer(question, JSON.stringify(request)));
  const firstPaintUrl = pathToFileURL(path.join(webFolder, 'script', 'first_paint.js')).href;
  const { firstPaint } = await import(firstPaintUrl);
  await firstPaint(document, answer);

  const forbidden = findForbidden(document);
  if (forbidden.length > 0) throw new Error(`the policy forbids:\n  ${forbidden.join('\n  ')}`);
  squeeze(document.documentElement);

  const style = await buildStyle(webFolder, hrefs);
  const script = await buildScript(webFolder, src);
  assertInlines('style', style);
  assertInlines('script', script);
  const policy = policyFor({ script, style });
  const moduleText = encodeModule(coreFolder);
  const html = assemble(document.toString(), { style, script, moduleText, policy });
  return { html: `${html.trim()}\n`, headers: headersFor(policy) };
}

async function main() {
  const webFolder = at('web');
  const site = at('build', 'site');
  const { html, headers } = await bundle();
  rmSync(site, { recursive: true, force: true });
  mkdirSync(site, { recursive: true });
  writeFileSync(path.join(site, 'index.html'), html);
  writeFileSync(path.join(site, '_headers'), headers);
  writeFileSync(path.join(site, 'sw.js'), stampWorker(html));
  for (const name of besideThePage) {
    const from = path.join(webFolder, name);
    if (existsSync(from)) cpSync(from, path.join(site, name), { recursive: true });
  }
  console.log(`bundle: build/site/index.html, ${Buffer.byteLength(html)} bytes`);
}

if (isProgram(import.meta.url)) {
  main().catch((error) => {
    console.error(`bundle: ${error.message}`);
    process.exitCode = 1;
  });
}
