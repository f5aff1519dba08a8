// Serves a built site on this machine only, with the headers that its own `_headers` file asks for.
import { readFile } from 'node:fs/promises';
import http from 'node:http';
import path from 'node:path';
import zlib from 'node:zlib';

import { at, isProgram } from './paths.mjs';

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

/**
 * What a `_headers` file says of one path: every section that names it, a `*` at the end standing for anything.
 * @param {string} text @param {string} pathname
 */
export function headersOf(text, pathname) {
  const headers = {};
  let isMeant = false;
  for (const line of text.split('\n')) {
    const [, name, value] = /^\s+([^:\s]+):\s*(.*)$/.exec(line) ?? [];
    if (name && isMeant) headers[name] = value;
    else if (line.startsWith('/')) {
      const section = line.trim();
      isMeant = section.endsWith('*')
        ? pathname.startsWith(section.slice(0, -1))
        : pathname === section;
    }
  }
  return headers;
}

const pathOf = (url) => new URL(url, 'http://site').pathname;

function fileFor(folder, pathname) {
  const asked = path.normalize(decodeURIComponent(pathname));
  const name = asked.endsWith('/') ? `${asked}index.html` : asked;
  // Normalized from the top, so `..` never leaves the folder; `_headers` is for the host alone.
  return name === '/_headers' ? undefined : path.join(folder, name);
}

// As hosts do it on the way; quick rather than small.
const packing = { params: { [zlib.constants.BROTLI_PARAM_QUALITY]: 5 } };
const isText = (type) => /text|json|svg/.test(type);

/** The body as this browser takes it, with the headers that say so. */
function pack(body, type, { 'accept-encoding': accepted = '' }) {
  if (!isText(type) || !/\bbr\b/.test(accepted)) return { body, said: {} };
  return { body: zlib.brotliCompressSync(body, packing), said: { 'Content-Encoding': 'br' } };
}

async function respond(folder, headers, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405).end();
    return;
  }
  try {
    const pathname = pathOf(request.url ?? '/');
    const file = fileFor(folder, pathname);
    const whole = file && (await readFile(file));
    if (!whole) throw new Error('no such file');
    const type = types[path.extname(file)] ?? 'application/octet-stream';
    const { body, said } = pack(whole, type, request.headers);
    const asked = headersOf(headers, pathname);
    response.writeHead(200, { ...asked, ...said, 'Content-Type': type, Vary: 'Accept-Encoding' });
    response.end(request.method === 'HEAD' ? undefined : body);
  } catch {
    response.writeHead(404, { 'Content-Type': 'text/plain' }).end('Not here.\n');
  }
}

/**
 * @param {{ folder?: string, port?: number }} [options] port 0 takes any free one
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export async function serve({ folder = at('build', 'site'), port = 0 } = {}) {
  const headers = await readFile(path.join(folder, '_headers'), 'utf8');
  const server = http.createServer((request, response) => {
    void respond(folder, headers, request, response);
  });
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(undefined));
  });
  const close = () =>
    new Promise((resolve) => {
      server.close(() => resolve(undefined));
      server.closeAllConnections();
    });
  return { url: `http://127.0.0.1:${server.address().port}/`, close };
}

async function main(args) {
  const [flag, value] = args;
  const port = flag === undefined ? 8000 : Number(value);
  const misused = (flag !== undefined && flag !== '--port') || !Number.isInteger(port) || port < 0;
  if (misused || port > 65535) {
    console.error('usage: tools/serve [--port N]');
    process.exitCode = 2;
    return;
  }
  try {
    const { url } = await serve({ port });
    console.log(`Twinround is at ${url} (Ctrl+C ends it)`);
  } catch (error) {
    const taken = error.code === 'EADDRINUSE';
    console.error(
      taken ? `port ${port} is taken: try --port ${port + 1}` : `serve: ${error.message}`,
    );
    process.exitCode = 1;
  }
}

if (isProgram(import.meta.url)) await main(process.argv.slice(2));
