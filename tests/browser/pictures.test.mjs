// Every moment of the page beside a picture of it that somebody has looked at: narrow and wide, light and dark.
//
// A picture is of the whole page, at a fraction of its size, so that sixteen of them stay small. Two are alike if no
// more than one pixel in two hundred differs by more than letters do that another browser's version draws a little
// thicker. What differs is left in build/pictures/, and `TWINROUND_PICTURES=make` takes them anew: look at each
// before it is committed.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';

import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';

import { untilReady } from './host.mjs';
import { goTo, openBrowser } from './open_page.mjs';

const kept = fileURLToPath(new URL('pictures/', import.meta.url));
const made = fileURLToPath(new URL('../../build/pictures/', import.meta.url));
const isMaking = process.env.TWINROUND_PICTURES === 'make';

const mostDifferent = 0.005;
const threshold = 0.2;

const widths = [
  { width: 360, height: 780, deviceScaleFactor: 0.3 },
  { width: 1280, height: 860, deviceScaleFactor: 0.25 },
];

let open;
let end;
before(async () => {
  for (const folder of [kept, made]) mkdirSync(folder, { recursive: true });
  ({ open, end } = await openBrowser());
});
after(() => end());

/** How much of a picture differs from the one that is kept; all of it, if its size does. */
function differenceOf(name, taken) {
  const file = path.join(kept, name);
  assert.ok(existsSync(file), `${name} is not there: make it with TWINROUND_PICTURES=make`);
  const [was, is] = [PNG.sync.read(readFileSync(file)), PNG.sync.read(taken)];
  writeFileSync(path.join(made, name), taken);
  // A line of text more or less moves all below it; a pixel is the rounding of a page's height.
  if (was.width !== is.width || Math.abs(was.height - is.height) > 1) return 1;
  const height = Math.min(was.height, is.height);
  const size = was.width * height * 4;
  const diff = new PNG({ width: was.width, height });
  const differ = pixelmatch(
    was.data.subarray(0, size),
    is.data.subarray(0, size),
    diff.data,
    was.width,
    height,
    { threshold },
  );
  writeFileSync(path.join(made, `diff-${name}`), PNG.sync.write(diff));
  return differ / (was.width * height);
}

for (const { deviceScaleFactor, ...viewport } of widths) {
  for (const colorScheme of ['light', 'dark']) {
    for (const moment of ['Buy', 'Count', 'Knit', 'Class']) {
      const name = `${moment.toLowerCase()}-${viewport.width}-${colorScheme}.png`;
      test(`${name} is as it was looked at`, async () => {
        const { page } = await open({ viewport, deviceScaleFactor, colorScheme });
        await goTo(page, moment);
        // The line at the foot that says so is in the picture.
        await untilReady(page);
        // The address is another one every time, and so is its code.
        await page.evaluate(() => {
          for (const node of document.querySelectorAll('.lesson .qr, #lesson-link'))
            node.style.visibility = 'hidden';
        });
        const taken = await page.screenshot({ fullPage: true, animations: 'disabled' });
        await page.context().close();
        if (isMaking) writeFileSync(path.join(kept, name), taken);
        const share = differenceOf(name, taken);
        assert.ok(share <= mostDifferent, `${(share * 100).toFixed(2)} % differs: build/pictures`);
      });
    }
  }
}
