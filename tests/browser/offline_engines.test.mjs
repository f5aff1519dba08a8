// The page without a network, and its newer version, in the three engines: the same steps in each.
import assert from 'node:assert/strict';
import { after, afterEach, before, beforeEach, describe, it } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';

import { engines } from './engines.mjs';
import { openHost, versionOf } from './host.mjs';
import { answered } from './open_page.mjs';

const foot = '#f-foot-lengthMm';
const heading = `() => document.querySelector('h1').textContent`;
const typed = `() => document.querySelector('${foot}').value`;
const wraps = `() => document.querySelector('.hand .figure').textContent`;
const isReady = `() => document.querySelector('[data-view="offline"]').textContent.startsWith('Ready')`;
const isTold = `() => Boolean(document.querySelector('[data-take-over]'))`;

async function until(hands, what) {
  for (let times = 0; times < 150; times += 1) {
    // While a page begins anew there is none to ask.
    if (await hands.evaluate(what).catch(() => false)) return;
    await wait(100);
  }
  assert.fail(`not within fifteen seconds: ${what}`);
}

for (const [name, start] of Object.entries(engines)) {
  describe(name, () => {
    let hands;
    before(async () => (hands = await start()));
    after(() => hands.end());

    let host;
    beforeEach(async () => {
      host = await openHost();
      host.publish(versionOf('First'));
    });
    afterEach(() => host.close());

    const visit = async () => {
      await hands.goto(host.url);
      await until(hands, answered);
      await until(hands, isReady);
    };

    it('opens without a network after one visit, and answers, with what was typed', async () => {
      await visit();
      await hands.type(foot, '27');
      host.isGone = true;
      await visit();
      assert.equal(await hands.evaluate(typed), '27');
      const narrow = await hands.evaluate(wraps);
      await hands.type('#f-foot-ballGirthMm', '30');
      assert.notEqual(await hands.evaluate(wraps), narrow);
    });

    it('waits with a newer version for a yes', async () => {
      await visit();
      host.publish(versionOf('Second'));
      await visit();
      await until(hands, isTold);
      assert.equal(await hands.evaluate(heading), 'First');
      await hands.click('[data-take-over]');
      await until(hands, `() => (${heading})() === 'Second'`);
      host.isGone = true;
      await visit();
      assert.equal(await hands.evaluate(heading), 'Second');
    });

    it('stays whole when the line is lost in the middle of a newer version', async () => {
      await visit();
      host.publish(versionOf('Second'));
      // A visit no longer asks for the page: only the newer worker does.
      host.asked.length = 0;
      host.cuts = ({ url }) => url === '/';
      await visit();
      for (let times = 0; !host.asked.includes('/') && times < 100; times += 1) await wait(100);
      assert.ok(host.asked.includes('/'));
      await wait(500);
      assert.equal(await hands.evaluate(isTold), false);
      host.isGone = true;
      await visit();
      assert.equal(await hands.evaluate(heading), 'First');
    });
  });
}
