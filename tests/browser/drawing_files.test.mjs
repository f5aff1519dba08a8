// Every drawing as a file of its own: whole, in its colours, and the same in another program.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';

import { fileUrl, goTo, openBrowser } from './open_page.mjs';

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

const drawings = {
  'the pair': 'twinround-pair-40-stitches',
  'the stretch line': 'twinround-stretch-40-stitches',
  'the round strip': 'twinround-strip-40-stitches',
  'the chart': 'twinround-chart-40-stitches-rounds-18-33',
};

async function save(page, what, kind) {
  await goTo(page, what === 'the chart' ? 'Knit' : 'Count');
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: `save ${what} as ${kind}` }).click();
  const download = await waiting;
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** Opens a picture in a page that knows nothing of ours and reads its pixels. */
async function look(page, bytes, type) {
  return page.evaluate(
    async ([text, mime]) => {
      const image = new Image();
      image.src = `data:${mime};base64,${text}`;
      await image.decode();
      const canvas = document.createElement('canvas');
      canvas.width = image.naturalWidth;
      canvas.height = image.naturalHeight;
      const paint = canvas.getContext('2d');
      paint.drawImage(image, 0, 0);
      const { data } = paint.getImageData(0, 0, canvas.width, canvas.height);
      const seen = new Map();
      for (let i = 0; i < data.length; i += 4) {
        const colour = data.subarray(i, i + 4).join(' ');
        seen.set(colour, (seen.get(colour) ?? 0) + 1);
      }
      const [corner] = [data.subarray(0, 4).join(' ')];
      const share = (colour) => (seen.get(colour) ?? 0) / (data.length / 4);
      return {
        width: canvas.width,
        height: canvas.height,
        corner,
        colours: seen.size,
        ground: share(corner),
        black: share('0 0 0 255'),
      };
    },
    [bytes.toString('base64'), type],
  );
}

const paper = '246 241 230 255';

/** What a file may not hold, and must. */
const readSvg = (page, text) =>
  page.evaluate((source) => {
    const wordsOutside = (drawn) => {
      const shown = document.body.appendChild(document.importNode(drawn, true));
      const frame = shown.getBoundingClientRect();
      const cut = [...shown.querySelectorAll('text')].filter((words) => {
        const { left, right, top, bottom } = words.getBoundingClientRect();
        const isInside = left >= frame.left && right <= frame.right;
        return !isInside || top < frame.top || bottom > frame.bottom;
      });
      shown.remove();
      return cut.map((words) => words.textContent);
    };
    const file = new DOMParser().parseFromString(source, 'image/svg+xml');
    const root = file.documentElement;
    const fault = file.querySelector('parsererror');
    const ids = new Set([...file.querySelectorAll('[id]')].map((node) => node.id));
    const named = [...source.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id);
    return {
      fault: fault?.textContent ?? '',
      root: root.localName,
      namespace: root.namespaceURI,
      size: ['width', 'height', 'viewBox'].map((name) => root.getAttribute(name)),
      title: root.querySelector(':scope > title')?.textContent ?? '',
      unnamed: [...file.querySelectorAll('text')].filter(
        (node) => !node.closest('[font-family]') && !node.getAttribute('font-family'),
      ).length,
      lost: named.filter((id) => !ids.has(id)),
      patterns: named.length,
      cut: wordsOutside(root),
      strangers: [
        ...file.querySelectorAll('[class], [style], [role], [tabindex], script, foreignObject'),
      ].length,
    };
  }, text);

async function assertFiles({ page, blank, ground = paper }) {
  for (const [what, name] of Object.entries(drawings)) {
    const svg = await save(page, what, 'SVG');
    assert.equal(svg.name, `${name}.svg`);
    const text = svg.bytes.toString('utf8');
    assert.doesNotMatch(text, /var\(--|https?:\/\/(?!www\.w3\.org\/)/, what);
    const file = await readSvg(blank, text);
    const { size, title, patterns, ...rest } = file;
    assert.deepEqual(rest, {
      fault: '',
      root: 'svg',
      namespace: 'http://www.w3.org/2000/svg',
      unnamed: 0,
      cut: [],
      lost: [],
      strangers: 0,
    });
    assert.ok(title.length > 20, what);
    assert.equal(patterns > 0, what === 'the pair', what);
    const [width, height] = size.map(Number);
    assert.equal(size[2], `0 0 ${width} ${height}`);

    const seen = await look(blank, svg.bytes, 'image/svg+xml');
    assert.deepEqual([seen.width, seen.height], [width, height], what);
    assert.equal(seen.corner, ground, what);
    assert.ok(seen.ground < 0.97 && seen.colours > 20 && seen.black < 0.01, JSON.stringify(seen));

    const png = await save(page, what, 'PNG');
    assert.equal(png.name, `${name}.png`);
    assert.equal(png.bytes.subarray(0, 8).toString('latin1'), '\x89PNG\r\n\x1a\n');
    assert.equal(png.bytes.readUInt32BE(16), width * 2, what);
    assert.equal(png.bytes.readUInt32BE(20), height * 2, what);
    const painted = await look(blank, png.bytes, 'image/png');
    assert.equal(painted.corner, ground, what);
    assert.ok(Math.abs(painted.ground - seen.ground) < 0.1, `${what} is not what its SVG is`);
    assert.ok(painted.colours > 20 && painted.black < 0.01, JSON.stringify(painted));
  }
}

const blankPage = async () => {
  const { page } = await open({ url: 'about:blank', wait: false });
  return page;
};

test('each drawing is saved as SVG and as PNG, and is the same drawing there', async () => {
  const { page, seen } = await open();
  await assertFiles({ page, blank: await blankPage() });
  assert.deepEqual(seen.errors, []);
  assert.deepEqual(seen.violations, []);
  const asked = seen.requests.filter((url) => !/^(data|blob):/.test(url));
  assert.equal(asked.length, 1, asked.join(' '));
});

test('a file is light on a dark page too, and the page itself is left as it was', async () => {
  const { page } = await open({ colorScheme: 'dark' });
  await goTo(page, 'Knit');
  const colours = () =>
    page.evaluate(() => [
      getComputedStyle(document.body).backgroundColor,
      getComputedStyle(document.querySelector('.chart .knits')).fill,
      document.documentElement.getAttribute('style'),
    ]);
  const before_ = await colours();
  await assertFiles({ page, blank: await blankPage() });
  assert.deepEqual(await colours(), before_);
  assert.equal(before_[0], 'rgb(31, 26, 22)');
});

test('from a file by double click, on a phone’s width', async () => {
  const { page } = await open({ url: fileUrl, viewport: { width: 360, height: 740 } });
  await assertFiles({ page, blank: await blankPage() });
});

test('both socks’ charts and the key are in one file; the file’s name says which rounds', async () => {
  const { page } = await open();
  await page.locator('.finer > summary').click();
  await page.locator('#f-rib-lean').selectOption('mirrored');
  await goTo(page, 'Knit');
  await page.locator('#chart-from').fill('20');
  await page.locator('#chart-from').press('Enter');
  const { name, bytes } = await save(page, 'the chart', 'SVG');
  assert.equal(name, 'twinround-chart-40-stitches-rounds-20-33.svg');
  const text = bytes.toString('utf8');
  for (const words of ['sock A: rounds 20–33', 'sock B: rounds 20–33', 'the first half ends']) {
    assert.ok(text.includes(words), words);
  }
});

test('in place of the fields beside the pair its file has words', async () => {
  const { page } = await open();
  const words = page.locator('.pair.wide-only').getByText(/^leg 20 cm$/);
  assert.equal(await words.isVisible(), false);
  const { bytes } = await save(page, 'the pair', 'SVG');
  const text = bytes.toString('utf8');
  assert.match(text, />leg 20 cm</);
  assert.match(text, />foot 24\.6 cm</);
  // No line that leads to a field which is not there.
  assert.doesNotMatch(text, /M0 \d+H10/);
});

test('each is saved by buttons large enough', async () => {
  const { page } = await open();
  for (const [moment, saved] of [
    ['Count', 3],
    ['Knit', 1],
  ]) {
    await goTo(page, moment);
    const buttons = await page.locator('[data-save]:visible').all();
    // On a wide page the strip is at its foot, and saved from Count.
    assert.equal(buttons.length, saved * 2);
    for (const button of buttons) {
      const { width, height } = await button.boundingBox();
      assert.ok(width >= 24 && height >= 24, `${width} x ${height}`);
    }
  }
});
