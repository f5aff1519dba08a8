// The bundle of a very small page, made with the module just built: what it promises to the page and
// to the policy. The real page, in a real browser, is tested in tests/browser.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { after, describe, it } from 'node:test';
import vm from 'node:vm';

import { bundle } from '../../tools/js/bundle.mjs';
import { at, fromWeb } from '../../tools/js/paths.mjs';
import { headersOf, serve } from '../../tools/js/serve.mjs';
import { stampWorker } from '../../tools/js/worker.mjs';

const { parseHTML } = fromWeb('linkedom');

const smallPage = {
  'index.html':
    '<!doctype html>\n<html lang="en">\n  <head>\n    <meta charset="utf-8" />\n    <title>Small</title>\n' +
    '    <link rel="icon" href="icon.svg" />\n' +
    '    <link rel="stylesheet" href="style/a.css" />\n    <link rel="stylesheet" href="style/b.css" />\n' +
    '    <script type="module" src="script/main.js"></script>\n  </head>\n' +
    '  <body>\n    <!-- not for readers -->\n    <main>\n      <output></output>\n      <pre>a\n  b</pre>\n' +
    '      <svg viewBox="0 0 1 1"><path d="M0 0" /></svg>\n    </main>\n  </body>\n</html>\n',
  'icon.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
  'style/a.css': 'p { color: red; }\n',
  'style/b.css': 'p { color: blue; }\n',
  'script/main.js': "import { word } from './word.js';\nconsole.log(word);\n",
  'script/word.js': "export const word = '</script>';\n",
  'script/first_paint.js':
    'export async function firstPaint(document, answer) {\n' +
    "  document.querySelector('output').textContent = String(answer('plan', {}).ok);\n}\n",
};

const folders = [];
after(() => folders.forEach((folder) => rmSync(folder, { recursive: true })));

function write(files) {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'twinround-bundle-'));
  folders.push(folder);
  // The page's modules are ES modules, which Node learns from here.
  for (const [name, text] of Object.entries({ 'package.json': '{"type":"module"}', ...files })) {
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    writeFileSync(path.join(folder, name), text);
  }
  return folder;
}

const make = (changes = {}) => bundle({ webFolder: write({ ...smallPage, ...changes }) });
const hashOf = (text) => `'sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}'`;

describe('bundle', () => {
  it('names the hashes of the very texts in the page', async () => {
    const { html, headers } = await make();
    const [, script] = /<script>([^]*?)<\/script>/.exec(html);
    const [, style] = /<style>([^]*?)<\/style>/.exec(html);
    const { document } = parseHTML(html);
    const policy = document.querySelector('meta[http-equiv]').getAttribute('content');
    assert.ok(policy.includes(`script-src ${hashOf(script)} 'wasm-unsafe-eval';`), policy);
    assert.ok(policy.includes(`style-src ${hashOf(style)};`), policy);
    assert.ok(policy.startsWith("default-src 'none';"));
    assert.ok(!policy.includes("'unsafe-eval'") && !policy.includes("'unsafe-inline'"));
    for (const where of ['/', '/index.html']) {
      assert.equal(
        headersOf(headers, where)['Content-Security-Policy'],
        `${policy}; frame-ancestors *`,
      );
    }
  });

  it('lets the worker ask its own host, and the page nobody', async () => {
    const { headers } = await make();
    const policies = ['/', '/sw.js'].map((where) => headersOf(headers, where));
    const [page, worker] = policies.map((all) => all['Content-Security-Policy']);
    assert.doesNotMatch(page, /connect-src/);
    assert.equal(worker, "default-src 'none'; connect-src 'self'");
    assert.equal(headersOf(headers, '/sw.js')['Cache-Control'], 'no-cache');
    assert.equal(headersOf(headers, '/icons/icon.svg')['Content-Security-Policy'], undefined);
  });

  it('puts the policy before anything it governs', async () => {
    const { html } = await make();
    assert.ok(html.indexOf('http-equiv') < html.indexOf('<style'));
    assert.ok(html.indexOf('http-equiv') < html.indexOf('<link'));
  });

  it('carries the module to the byte', async () => {
    const { document } = parseHTML((await make()).html);
    const block = document.getElementById('core-module');
    assert.equal(block.getAttribute('type'), 'application/octet-stream');
    const bytes = Buffer.from(block.textContent, 'latin1');
    assert.deepEqual(bytes, readFileSync(at('build', 'wasm', 'core.wasm')));
  });

  it('leaves no name behind', async () => {
    const { html } = await make();
    const [, script] = /<script>([^]*?)<\/script>/.exec(html);
    const seen = [];
    const window = { console: { log: (...words) => seen.push(words) } };
    vm.runInNewContext(script, window);
    assert.deepEqual(seen, [['</script>']]);
    assert.deepEqual(Object.keys(window), ['console']);
  });

  it('keeps the order of the style sheets', async () => {
    const { html } = await make();
    const [, style] = /<style>([^]*?)<\/style>/.exec(html);
    assert.match(style, /red.*(blue|#00f)/);
  });

  it('asks the module for what is seen first', async () => {
    const { document } = parseHTML((await make()).html);
    assert.match(document.querySelector('output').textContent, /^(true|false)$/);
  });

  it('loads nothing and keeps pictures, preformatted text and SVG names', async () => {
    const { html } = await make();
    const { document } = parseHTML(html);
    assert.equal(document.querySelector('link[rel=stylesheet]'), null);
    assert.equal(document.querySelector('[src]'), null);
    assert.match(
      document.querySelector('link[rel=icon]').getAttribute('href'),
      /^data:image\/svg\+xml,%3Csvg /,
    );
    assert.equal(document.querySelector('pre').textContent, 'a\n  b');
    assert.ok(html.includes('viewBox="0 0 1 1"'));
    assert.ok(!html.includes('not for readers'));
  });

  const refusals = [
    ['a style attribute', '<p style="color: red">x</p>', /no style attributes/],
    ['an inline handler', '<p onclick="go()">x</p>', /no inline handlers/],
    ['a picture from elsewhere', '<img alt="" src="https://example.org/x.png">', /loads/],
    ['a second script', '<script>go()</script>', /only the bundle's own/],
    ['a second style', '<style>p{}</style>', /only the bundle's own/],
    ['a frame', '<iframe title="x" src="data:,"></iframe>', /not in this page/],
  ];
  for (const [what, markup, why] of refusals) {
    it(`refuses ${what}`, async () => {
      const page = smallPage['index.html'].replace('<output>', () => `${markup}<output>`);
      await assert.rejects(make({ 'index.html': page }), why);
    });
  }
});

describe('the worker', () => {
  const source = "const stamp = '{{page}}';\nconst lostPage = '{{lost}}';\n";
  const run = (text) => vm.runInNewContext(`${text}; ({ stamp, lostPage })`);

  it('is another for every page, and knows the hash of its own', () => {
    for (const page of ['one\n', 'two\n', 'zwei\u00e4\n']) {
      const hash = createHash('sha256').update(page, 'utf8').digest('hex');
      assert.equal(run(stampWorker(page, source)).stamp, hash);
      assert.ok(stampWorker(page).includes(hash));
    }
  });

  it('carries a page of words that loads and runs nothing', () => {
    const { document } = parseHTML(run(stampWorker('page', source)).lostPage);
    assert.equal(document.querySelector('[src], [href], script, style, link'), null);
    assert.match(document.querySelector('main').textContent, /no signal/);
  });

  it('is refused where there is no place for the hash, or more than one', () => {
    for (const wrong of [source.replace('{{page}}', ''), source + source]) {
      assert.throws(() => stampWorker('page', wrong), /expected one place for the page/);
    }
  });
});

describe('serve', () => {
  it('takes from its headers every section that names the path, and no other', () => {
    const text = '/*\n  A: 1\n/\n  B: 2\n/x/*\n  C: 3\n/x/y\n  A: 4\n';
    for (const [where, expected] of [
      ['/', { A: '1', B: '2' }],
      ['/index.html', { A: '1' }],
      ['/x', { A: '1' }],
      ['/x/', { A: '1', C: '3' }],
      ['/x/y', { A: '4', C: '3' }],
      ['/x/yz', { A: '1', C: '3' }],
    ]) {
      assert.deepEqual(headersOf(text, where), expected, where);
    }
  });

  it('sends the page with the headers of its own file, and nothing outside it', async () => {
    const folder = write({
      'index.html': 'hello',
      _headers: '/*\n  X-Content-Type-Options: nosniff\n',
    });
    const { url, close } = await serve({ folder });
    try {
      const page = await fetch(url);
      assert.equal(await page.text(), 'hello');
      assert.equal(page.headers.get('x-content-type-options'), 'nosniff');
      assert.equal(page.headers.get('content-type'), 'text/html; charset=utf-8');
      for (const name of ['_headers', 'no-such-file', '%2e%2e/%2e%2e/etc/passwd', '%00', '%']) {
        assert.equal((await fetch(url + name)).status, 404, name);
      }
      assert.equal((await fetch(url, { method: 'POST' })).status, 405);
    } finally {
      await close();
    }
  });
});
