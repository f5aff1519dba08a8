// Carried anywhere, in the three engines: kept over a reload, opened by a link, framed by another site.
import assert from 'node:assert/strict';
import http from 'node:http';
import path from 'node:path';
import { after, before, describe, it } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';

import { serve } from '../../tools/js/serve.mjs';
import { engines } from './engines.mjs';

const site = fileURLToPath(new URL('../../build/site/', import.meta.url));
const fileUrl = pathToFileURL(path.join(site, 'index.html')).href;

let served;
let host;
/** What the course page frames the page with. */
let sandbox = '';
before(async () => {
  served = await serve({ folder: site });
  host = http.createServer((_request, response) => {
    response.setHeader('Content-Type', 'text/html; charset=utf-8');
    response.end(
      `<!doctype html><title>Course</title><input id="search" autofocus>
       <iframe src="${served.url}" width="900" height="600" ${sandbox}></iframe>`,
    );
  });
  await new Promise((resolve) => host.listen(0, resolve));
});
after(async () => {
  host.close();
  await served.close();
});

const freedoms =
  'allow-scripts allow-same-origin allow-forms allow-popups allow-modals allow-downloads';

const answered = `() => performance.getEntriesByName('first-answer').length > 0`;
async function until(ask, what) {
  for (let times = 0; times < 100; times += 1) {
    if (await ask()) return;
    await wait(100);
  }
  assert.fail(`not within ten seconds: ${what}`);
}

// In the page: types a foot, and says what the sentence makes of it.
const type = (text) => `() => {
  const field = document.getElementById('f-foot-lengthMm');
  field.value = ${JSON.stringify(text)};
  field.dispatchEvent(new Event('input', { bubbles: true }));
  return document.querySelector('.sentence').textContent;
}`;
const foot = `() => document.getElementById('f-foot-lengthMm').value`;
const textOf = (css) => `() => document.querySelector('${css}')?.textContent ?? ''`;

for (const [name, start] of Object.entries(engines)) {
  describe(name, () => {
    let hands;
    before(async () => (hands = await start()));
    after(() => hands.end());

    const open = async (url) => {
      await hands.goto('about:blank');
      await hands.goto(url);
      await until(() => hands.evaluate(answered), url);
    };
    const openCourse = async (how) => {
      sandbox = how;
      await hands.goto('about:blank');
      await hands.goto(`http://localhost:${host.address().port}/`);
      await until(() => hands.evaluateInFrame(answered), 'an answer in the frame');
    };

    it('keeps a sock over a reload, from a host and from a file', async () => {
      for (const url of [served.url, fileUrl]) {
        await open(url);
        await hands.evaluate(type('26,5'));
        await open(url);
        assert.equal(await hands.evaluate(foot), '26,5', url);
      }
    });

    it('opens a link beside it, and goes back', async () => {
      await open(served.url);
      await hands.evaluate(type('28'));
      await hands.click('[data-share]');
      await until(() => hands.evaluate(`() => !!document.getElementById('shared-link')`), 'a link');
      const url = await hands.evaluate(`() => document.getElementById('shared-link').value`);
      await hands.evaluate(type('22'));
      await open(url);
      assert.equal(await hands.evaluate(foot), '28');
      assert.equal(await hands.evaluate(`() => !!document.querySelector('.qr')`), false);
      await hands.click('[data-kept="backToMine"]');
      assert.equal(await hands.evaluate(foot), '22');
    });

    it('answers in the frame of another site, and takes no focus', async () => {
      await openCourse(`sandbox="${freedoms}"`);
      assert.match(await hands.evaluateInFrame(type('26')), /a foot 26.cm/);
      assert.equal(await hands.evaluate(`() => document.activeElement.id`), 'search');
      // Whether a browser lets a frame keep anything is its own affair; what is said of it is true.
      const said = await hands.evaluateInFrame(textOf('.not-kept'));
      const isKept = await hands.evaluateInFrame(`() => {
        try {
          return Object.keys(localStorage).some((name) => name.startsWith('twinround/sock/'));
        } catch {
          return false;
        }
      }`);
      assert.equal(said === '', isKept, said);
    });

    it('answers in a frame that allows script alone, and says what it cannot do', async () => {
      await openCourse('sandbox="allow-scripts"');
      assert.match(await hands.evaluateInFrame(type('26')), /a foot 26.cm/);
      assert.match(await hands.evaluateInFrame(textOf('[data-key="opaque"]')), /Not saved here/);
    });
  });
}
