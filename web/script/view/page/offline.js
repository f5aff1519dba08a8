// At the foot of the page whether it opens without a signal; under the sentence that a newer one is there.
import { offlineWords as words } from '../../../words/en.js';

/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../offline.js').Offline & { isKept: boolean }} Offline */

/** @param {Offline} offline */
function sayWhether({ isFile, isBarred, isReady }) {
  if (isFile) return words.copy;
  if (isReady) return words.ready;
  return isBarred ? words.cannot : '';
}

/** One text, whatever it says, so that the link beside it stays the same. @param {Make} h @param {Offline} offline */
export const viewOffline = (h, offline) => [
  `${sayWhether(offline)} `,
  offline.isHosted &&
    h('a', { href: './', download: 'twinround.html', 'data-copy': '' }, words.keep),
];

/** @param {Make} h @param {Offline} offline */
export const viewUpdate = (h, { isNewer, isKept }) => [
  isNewer &&
    h(
      'p',
      { class: 'asked' },
      isKept ? words.newer : words.newerUnkept,
      h('button', { type: 'button', class: 'quiet', 'data-take-over': '' }, words.take),
    ),
];
