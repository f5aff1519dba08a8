// Called by tests/bench/run, which has built everything. Each figure says how it was got.
import { readFileSync } from 'node:fs';
import http from 'node:http';
import zlib from 'node:zlib';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';
import { launchChromium } from '../browser/chromium.mjs';

const requestFile = at('tests', 'bench', 'request.json');

function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}

const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
const ms = (value) => `${value.toFixed(value < 10 ? 3 : 0)} ms`;

async function nativePlan() {
  const args = [requestFile, '--benchmark_format=json', '--benchmark_repetitions=9'];
  const { ok, out, stdout } = await runCommand(
    at('build', 'native', 'tests', 'bench', 'bench_plan'),
    args,
  );
  if (!ok) throw new Error(out);
  const found = JSON.parse(stdout).benchmarks.find((row) => row.aggregate_name === 'median');
  return found.cpu_time / 1e6;
}

/** Warmed up first: the page asks again and again while one types. */
async function wasmPlan() {
  const core = await loadCore();
  const text = readFileSync(requestFile, 'utf8');
  const times = [];
  for (let i = 0; i < 6000; i += 1) {
    const start = performance.now();
    core.answer('plan', text);
    times.push(performance.now() - start);
  }
  return median(times.slice(1000));
}

function sizes(html) {
  const params = { [zlib.constants.BROTLI_PARAM_QUALITY]: 11 };
  return {
    raw: html.length,
    gzip: zlib.gzipSync(html, { level: 9 }).length,
    brotli: zlib.brotliCompressSync(html, { params }).length,
  };
}

// A host compresses; the line below is slow, so the measure must carry compressed bytes too.
function hostOf(html) {
  const packed = zlib.gzipSync(html, { level: 9 });
  const server = http.createServer((request, response) => {
    const isPage = request.url === '/';
    response.writeHead(isPage ? 200 : 404, {
      'Content-Type': 'text/html; charset=utf-8',
      'Content-Encoding': 'gzip',
    });
    response.end(isPage ? packed : zlib.gzipSync(''));
  });
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}

// "Slow 4G" as the trade's own audits take it: 1.6 Mbit/s down, 150 ms there and back.
const slowLine = {
  offline: false,
  latency: 150,
  downloadThroughput: (1.6e6 / 8) * 0.9,
  uploadThroughput: 750e3 / 8,
};

/** From the start of navigation to the page's own mark, in a fresh profile each time. */
async function firstAnswer(browser, url, { slow }) {
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    if (slow) {
      await session.send('Network.enable');
      await session.send('Network.emulateNetworkConditions', slowLine);
      await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    }
    await page.goto(url);
    const mark = () => performance.getEntriesByName('first-answer')[0]?.startTime;
    return await (await page.waitForFunction(mark)).jsonValue();
  } finally {
    await context.close();
  }
}

/** A key pressed to the pair redrawn and laid out: the key's whole event, CPU a quarter. */
async function keystroke(browser, url) {
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await page.goto(url);
    await page.waitForFunction(() => performance.getEntriesByName('first-answer').length > 0);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    const times = await page.evaluate(() => {
      const input = document.getElementById('f-foot-ballGirthMm');
      return Array.from({ length: 41 }, (_, i) => {
        input.value = String(20 + i / 10);
        const start = performance.now();
        input.dispatchEvent(new Event('input', { bubbles: true }));
        // Laid out too, not only drawn.
        document.body.getBoundingClientRect();
        return performance.now() - start;
      });
    });
    return median(times);
  } finally {
    await context.close();
  }
}

async function browserTimes(html) {
  const server = await hostOf(html);
  const browser = await launchChromium();
  const url = `http://127.0.0.1:${server.address().port}/`;
  const times = { fast: [], slow: [] };
  let key;
  try {
    for (let i = 0; i < 7; i += 1) {
      times.fast.push(await firstAnswer(browser, url, { slow: false }));
      times.slow.push(await firstAnswer(browser, url, { slow: true }));
    }
    key = await keystroke(browser, url);
  } finally {
    await browser.close();
    server.close();
  }
  return { fast: median(times.fast), slow: median(times.slow), key };
}

const native = await nativePlan();
const wasm = await wasmPlan();
console.log(`one plan, native           ${ms(native)}   (median of 9 repetitions, CPU time)`);
console.log(
  `one plan, wasm under Node  ${ms(wasm)}   (median of 5000 after 1000; ${(wasm / native).toFixed(2)} times native)`,
);

const html = readFileSync(at('build', 'site', 'index.html'));
const { raw, gzip, brotli } = sizes(html);
console.log(`the page                   ${kB(raw)} raw, ${kB(gzip)} gzip, ${kB(brotli)} brotli`);

const { fast, slow, key } = await browserTimes(html);
console.log(
  `first answer in Chromium   ${ms(fast)}   (from this machine; median of 7 fresh profiles)`,
);
console.log(
  `first answer, slow line    ${ms(slow)}   (1.6 Mbit/s, 150 ms, CPU a quarter; median of 7)`,
);
console.log(
  `a keystroke to the pair    ${ms(key)}   (drawn and laid out, CPU a quarter; median of 41)`,
);
