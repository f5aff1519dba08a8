// What comes out of the printer: pages as words and as pictures.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

import { PNG } from 'pngjs';

/**
 * Prints the page as its own print button would, and reads the paper.
 * @returns {Promise<{ words: string[], pictures: PNG[] }>} a text and a picture a page
 */
export async function print(page, format, dotsPerInch = 72) {
  const folder = mkdtempSync(path.join(tmpdir(), 'twinround-'));
  try {
    const file = path.join(folder, 'paper.pdf');
    writeFileSync(file, await page.pdf({ format }));
    const text = execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' });
    execFileSync('pdftoppm', ['-r', String(dotsPerInch), '-png', file, path.join(folder, 'page')]);
    const pictures = readdirSync(folder)
      .filter((name) => name.endsWith('.png'))
      .sort()
      .map((name) => PNG.sync.read(readFileSync(path.join(folder, name))));
    return { words: text.split('\f').slice(0, -1), pictures };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Its darkest and its most coloured pixel, how much of it is ink, and how far from each edge the ink ends. */
export function inkOf({ width, height, data }) {
  let ink = 0;
  let darkest = 255;
  let colour = 0;
  const edges = { left: width, right: width, top: height, bottom: height };
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const [r, g, b] = data.subarray((y * width + x) * 4);
      colour = Math.max(colour, Math.max(r, g, b) - Math.min(r, g, b));
      darkest = Math.min(darkest, r);
      if (r > 240) continue;
      ink += 1;
      edges.left = Math.min(edges.left, x);
      edges.right = Math.min(edges.right, width - 1 - x);
      edges.top = Math.min(edges.top, y);
      edges.bottom = Math.min(edges.bottom, height - 1 - y);
    }
  }
  return { share: ink / (width * height), darkest, colour, edges };
}
