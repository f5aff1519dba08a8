// Paints web/icons/icon.svg as the PNGs that an app's icon needs, in Chromium. Run when the drawing has changed:
//   node tools/js/make_icons.mjs
import { readFileSync, writeFileSync } from 'node:fs';

import { launchChromium } from '../../tests/browser/chromium.mjs';
import { at } from './paths.mjs';

const folder = (name) => at('web', 'icons', name);
const drawing = `data:image/svg+xml;base64,${readFileSync(folder('icon.svg')).toString('base64')}`;

// A launcher may cut a maskable icon to a circle of four fifths: the ground reaches the edge, the socks stay within.
const icons = [
  { name: 'icon-192.png', size: 192, ground: 'transparent', share: 1 },
  { name: 'icon-512.png', size: 512, ground: 'transparent', share: 1 },
  { name: 'icon-maskable-512.png', size: 512, ground: '#f6f1e6', share: 0.75 },
];

const browser = await launchChromium();
for (const { name, size, ground, share } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${ground}">` +
      `<img alt="" src="${drawing}" width="${size * share}">`,
  );
  writeFileSync(folder(name), await page.screenshot({ omitBackground: true }));
  await page.close();
}
await browser.close();
