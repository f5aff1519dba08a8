// The page under Lighthouse, as a phone on a slow line and as a desk. Called by tests/bench/run --audit, which has
// put Lighthouse into build/audit: it is too large to install for everybody's tests.
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

import { at } from '../../tools/js/paths.mjs';
import { serve } from '../../tools/js/serve.mjs';

const require = createRequire(at('build', 'audit', 'package.json'));
const load = (name) => import(pathToFileURL(require.resolve(name)).href);
const { default: lighthouse, desktopConfig } = await load('lighthouse');
const { launch } = await load('chrome-launcher');

const times = ['first-contentful-paint', 'total-blocking-time', 'cumulative-layout-shift'];

const { url, close } = await serve();
const chrome = await launch({
  chromePath: '/usr/bin/chromium',
  chromeFlags: ['--headless=new', '--no-sandbox', '--disable-gpu'],
});
try {
  const options = { port: chrome.port, logLevel: 'error' };
  for (const [name, config] of Object.entries({ phone: undefined, desk: desktopConfig })) {
    const { lhr } = await lighthouse(url, options, config);
    const scores = Object.values(lhr.categories).map(
      ({ title, score }) => `${title} ${Math.round(score * 100)}`,
    );
    console.log(`${name}: ${scores.join(', ')}`);
    console.log(`  ${times.map((id) => `${id} ${lhr.audits[id].displayValue}`).join(', ')}`);
    for (const { auditRefs } of Object.values(lhr.categories)) {
      for (const { id, weight } of auditRefs) {
        const { score, title, explanation = '' } = lhr.audits[id];
        if (weight > 0 && score !== null && score < 0.9) console.log(`  ${title} ${explanation}`);
      }
    }
  }
} finally {
  await chrome.kill();
  await close();
}
