// The page against ill will, in three engines: nothing that stands in a link, a name, a note or a file is ever markup or
// code, asks anybody for anything, or touches what is the reader's own.
import assert from 'node:assert/strict';
import path from 'node:path';
import { after, before, describe, it } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';

import { loadCore } from '../../tools/js/load_core.mjs';
import { serve } from '../../tools/js/serve.mjs';
import { engines } from './engines.mjs';
import { files, fragments, texts } from './hostile.mjs';

const site = fileURLToPath(new URL('../../build/site/', import.meta.url));

let served;
let core;
before(async () => {
  served = await serve({ folder: path.resolve(site) });
  core = await loadCore();
});
after(() => served.close());

async function until(hands, condition, what) {
  for (let times = 0; times < 100; times += 1) {
    if (await hands.evaluate(condition)) return;
    await wait(100);
  }
  assert.fail(`not within ten seconds: ${what}`);
}

const answered = `() => performance.getEntriesByName('first-answer').length > 0`;

/** Opens the page with a foot of one's own, and watches it. */
async function openOwn(hands) {
  await hands.goto('about:blank');
  await hands.goto(served.url);
  await until(hands, answered, 'an answer');
  await hands.evaluate(`() => {
    localStorage.clear();
    globalThis.violations = [];
    addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      violations.push(violatedDirective + ' ' + blockedURI));
    globalThis.faults = [];
    addEventListener('error', ({ message }) => faults.push(message));
    addEventListener('unhandledrejection', ({ reason }) => faults.push(String(reason)));
    const field = document.getElementById('f-foot-lengthMm');
    field.value = '22';
    field.dispatchEvent(new Event('input', { bubbles: true }));
    return true;
  }`);
}

/** What must hold whatever was tried. */
async function assertUnharmed(hands, what) {
  const state = await hands.evaluate(`() => ({
    pwned: globalThis.pwned ?? {}.pwned ?? null,
    strangers: document.querySelectorAll('img, iframe, object, embed, base, [onerror], [onload], script[src]').length,
    violations: [...globalThis.violations],
    faults: [...globalThis.faults],
    asked: performance.getEntriesByType('resource').map(({ name }) => name),
    cookie: document.cookie,
    names: Object.keys(localStorage).filter((name) => !name.startsWith('twinround/')),
    session: sessionStorage.length,
    origin: new URL(document.baseURI).origin === location.origin,
  })`);
  // The worker and its manifest lie beside the page; nobody else is ever asked.
  const asked = state.asked.filter((url) => !/\/(sw\.js|app\.webmanifest|icons\/[^/]+)$/.test(url));
  assert.deepEqual(
    { ...state, asked },
    {
      pwned: null,
      strangers: 0,
      violations: [],
      faults: [],
      asked: [],
      cookie: '',
      names: [],
      session: 0,
      origin: true,
    },
    what,
  );
}

/** The foot that the reader's own sock is kept with. */
const ownFoot = `() => Object.entries(localStorage)
  .filter(([name]) => name.startsWith('twinround/sock/'))
  .map(([, text]) => JSON.parse(text))
  .some(({ draft }) => draft['/foot/lengthMm']?.typed === '22')`;

for (const [name, start] of Object.entries(engines)) {
  describe(name, () => {
    let hands;
    before(async () => (hands = await start()));
    after(() => hands.end());

    it('follows no fragment but a link, and keeps what is the reader’s own', async () => {
      await openOwn(hands);
      for (const fragment of fragments) {
        await hands.evaluate(`() => { location.hash = ${JSON.stringify(fragment)}; return true; }`);
        await wait(20);
        await assertUnharmed(hands, `#${fragment.slice(0, 80)}`);
        assert.equal(await hands.evaluate(ownFoot), true, fragment.slice(0, 80));
      }
      assert.match(
        await hands.evaluate(`() => document.querySelector('.sentence').textContent`),
        /a foot 22.cm/,
      );
    });

    it('opens at an address with any of them, and works', async () => {
      for (const fragment of [texts[0], texts[1], '%', '0'.repeat(40), 'a'.repeat(20000)]) {
        await hands.goto('about:blank');
        await hands.goto(`${served.url}#${fragment}`);
        await until(hands, answered, `#${fragment.slice(0, 40)}`);
        const told = `() => document.querySelector('[data-key="bad-link"]')?.textContent ?? ''`;
        assert.notEqual(await hands.evaluate(told), '', fragment.slice(0, 40));
      }
    });

    it('takes a class’s words for words', async () => {
      await openOwn(hands);
      for (const text of texts) {
        const { link } = JSON.parse(
          core.answer(
            'link',
            JSON.stringify({
              version: 1,
              fields: [],
              title: text.slice(0, 60).toWellFormed(),
              note: text.toWellFormed(),
            }),
          ),
        );
        await hands.evaluate(
          `() => { location.hash = ${JSON.stringify(link.text)}; return true; }`,
        );
        await wait(20);
        await assertUnharmed(hands, text);
      }
    });

    it('takes names and notes for words, on the page and in the shelf', async () => {
      await openOwn(hands);
      for (const text of texts) {
        await hands.evaluate(`() => {
          document.getElementById('socks').open = true;
          for (const css of ['#sock-name', '#sock-note']) {
            const field = document.querySelector(css);
            field.value = ${JSON.stringify(text)};
            field.dispatchEvent(new Event('input', { bubbles: true }));
          }
          return true;
        }`);
        await assertUnharmed(hands, text);
      }
    });

    it('opens no file that is none, and no other that does harm', async () => {
      await openOwn(hands);
      for (const text of files) {
        await hands.evaluate(`() => {
          const files = new DataTransfer();
          files.items.add(new File([${JSON.stringify(text)}], 'x.json', { type: 'application/json' }));
          const input = document.getElementById('open-file');
          input.files = files.files;
          input.dispatchEvent(new Event('change', { bubbles: true }));
          return true;
        }`);
        await wait(60);
        await assertUnharmed(hands, text.slice(0, 120));
        assert.equal(await hands.evaluate(ownFoot), true, text.slice(0, 120));
      }
      // Some are well made and were opened, so that their words have been shown.
      const opened = await hands.evaluate(
        `() => Object.keys(localStorage).filter((name) => name.startsWith('twinround/sock/')).length`,
      );
      assert.ok(opened > 2 * texts.length, `${opened} opened`);
      // What was opened of them is still no more than words after the next visit.
      await hands.goto('about:blank');
      await hands.goto(served.url);
      await until(hands, answered, 'an answer after all of them');
    });
  });
}
