// The page's service worker: web/sw.js, made out to the bytes of one page, so that every page has another worker.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';

import { lostWords } from '../../web/words/en/offline.js';
import { at } from './paths.mjs';

/** Shown by the worker itself where there is no page to show: nothing in it is loaded or run. */
const lostPage = ({ title, text }) =>
  '<!doctype html><html lang="en"><meta charset="utf-8">' +
  '<meta name="viewport" content="width=device-width, initial-scale=1">' +
  '<meta name="color-scheme" content="light dark">' +
  `<title>${title}</title><main><h1>${title}</h1><p>${text}</p></main></html>`;

function put(source, place, text) {
  const parts = source.split(`'{{${place}}}'`);
  if (parts.length !== 2) throw new Error(`web/sw.js: expected one place for the ${place}`);
  return parts.join(JSON.stringify(text));
}

/** @param {string} html the page, to the byte @param {string} [source] */
export function stampWorker(html, source = readFileSync(at('web', 'sw.js'), 'utf8')) {
  const hash = createHash('sha256').update(html, 'utf8').digest('hex');
  return put(put(source, 'page', hash), 'lost', lostPage(lostWords));
}
