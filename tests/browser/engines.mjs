// The three engines behind one small set of hands: go, click, type, look.
import { firefox } from 'playwright-core';

import { launchChromium } from './chromium.mjs';
import { openWebKit } from './webkit.mjs';

/** A page of playwright's with those hands. */
async function handsOf(browser) {
  const page = await (
    await browser.newContext({ viewport: { width: 1280, height: 900 } })
  ).newPage();
  return {
    version: browser.version(),
    goto: (url) => page.goto(url),
    evaluate: (script) => page.evaluate(`(${script})()`),
    // In the page's only frame.
    evaluateInFrame: async (script) => {
      const frame = await (await page.locator('iframe').elementHandle()).contentFrame();
      return frame.evaluate(`(${script})()`);
    },
    click: (css) => page.locator(css).click(),
    type: async (css, text) => {
      await page.locator(css).click();
      await page.keyboard.press('Control+A');
      await page.keyboard.press('Delete');
      await page.keyboard.type(text);
    },
    end: () => browser.close(),
  };
}

export const engines = {
  Chromium: async () => handsOf(await launchChromium()),
  Firefox: async () =>
    handsOf(
      await firefox.launch({
        channel: 'moz-firefox',
        executablePath: '/usr/bin/firefox-esr',
        // As a reader's own: without it a file may read its neighbours, and hides what would fail.
        firefoxUserPrefs: { 'security.fileuri.strict_origin_policy': true },
      }),
    ),
  WebKitGTK: openWebKit,
};
