// A host of the built page that can publish another version, lose the line in the middle, and be gone.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import http from 'node:http';
import os from 'node:os';
import path from 'node:path';
import { after, afterEach, before, beforeEach } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';

import { serve } from '../../tools/js/serve.mjs';
import { stampWorker } from '../../tools/js/worker.mjs';
import { visit } from './open_page.mjs';
import { launchChromium } from './chromium.mjs';

const site = fileURLToPath(new URL('../../build/site/', import.meta.url));
const builtPage = readFileSync(path.join(site, 'index.html'), 'utf8');

/** The built page as another version of it: its script and style, and so its policy, are the same. */
export const versionOf = (name) => builtPage.replace('<h1>Twinround</h1>', `<h1>${name}</h1>`);

/** To the byte as it is sent, compressed as the browser takes it. @returns {Promise<http.IncomingMessage>} */
const ask = (url, headers) =>
  new Promise((resolve, reject) => {
    http.get(url, { headers }, resolve).on('error', reject);
  });

export async function openHost() {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'twinround-host-'));
  cpSync(site, folder, { recursive: true });
  const inner = await serve({ folder });

  const host = {
    url: '',
    folder,
    /** Every path asked for. */
    asked: [],
    isGone: false,
    /** Says of which requests only the first half is sent. @type {(request: http.IncomingMessage) => boolean} */
    cuts: () => false,
    /** How long the second half of those is held back before the line is lost. */
    cutAfterMs: 0,
    /** A version, and the worker of it or of another. */
    publish(page, workerOf = page) {
      writeFileSync(path.join(folder, 'index.html'), page);
      writeFileSync(path.join(folder, 'sw.js'), stampWorker(workerOf));
    },
    async close() {
      front.closeAllConnections();
      front.close();
      await inner.close();
      rmSync(folder, { recursive: true });
    },
  };

  const front = http.createServer(async (request, response) => {
    if (host.isGone) {
      request.socket.destroy();
      return;
    }
    host.asked.push(request.url);
    const answer = await ask(new URL(request.url, inner.url), request.headers);
    const body = Buffer.concat(await answer.toArray());
    const { 'transfer-encoding': _chunked, ...headers } = answer.headers;
    response.writeHead(answer.statusCode, { ...headers, 'content-length': body.length });
    if (host.cuts(request)) {
      response.write(body.subarray(0, body.length / 2));
      await wait(host.cutAfterMs, undefined, { ref: false });
      request.socket.destroy();
    } else response.end(body);
  });
  await new Promise((resolve) => front.listen(0, '127.0.0.1', () => resolve(undefined)));
  host.url = `http://127.0.0.1:${front.address().port}/`;
  return host;
}

/** The worker's own request for the page, as it installs: a reader's is for a document. */
export const isInstall = ({ url, headers }) => url === '/' && headers['sec-fetch-dest'] === 'empty';

export const untilReady = (page) =>
  page.waitForFunction(() =>
    document.querySelector('[data-view="offline"]').textContent.startsWith('Ready'),
  );

export const nameOf = (page) => page.textContent('h1');

/** Writes over every page that is kept, as a failing disk might. */
export const spoilKept = (page) =>
  page.evaluate(async () => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      const kept = await cache.match('./');
      const text = await kept.text();
      await cache.put('./', new Response(text.slice(0, -9), { headers: kept.headers }));
    }
  });

/** For a file of tests one browser; for each of them a host of its own, and windows that have seen nothing yet. */
export function eachWithHost() {
  const at = {};
  before(async () => (at.browser = await launchChromium()));
  after(() => at.browser.close());
  beforeEach(async () => {
    at.host = await openHost();
    at.context = await at.browser.newContext({ viewport: { width: 1280, height: 900 } });
  });
  afterEach(async () => {
    await at.context.close();
    await at.host.close();
  });
  /** A first visit, as long as it takes to be ready. */
  at.firstVisit = async () => {
    const page = await at.context.newPage();
    await visit(page, at.host.url);
    await untilReady(page);
    return page;
  };
  return at;
}
