// A link to this sock: the device's own way to share where there is one, else the clipboard, else to be copied by hand.
import { copyText } from './download.js';

/** @typedef {{ url: string, isCopied: boolean }} Shared */

/** What stands behind the address's #. @param {Document} document */
export const fragmentOf = (document) => document.location.hash.slice(1);

/** The address without it, so that a reload opens what is kept. @param {Document} document */
export function leaveLink(document) {
  const { pathname, search } = document.location;
  const history = document.defaultView?.history;
  history?.replaceState(history.state, '', pathname + search);
}

/**
 * A link's whole address. A copy on a disk has none that others could open: then only what stands behind the #.
 * @param {Document} document @param {string} text
 */
export function addressOf({ location }, text) {
  const page = location.protocol === 'file:' ? '' : location.href.split('#')[0];
  return `${page}#${text}`;
}

/** @param {Document} document @param {string} url @returns {Promise<boolean>} whether it is on the clipboard */
async function handOut(document, url) {
  if (navigator.share && !url.startsWith('#')) {
    try {
      await navigator.share({ url });
      return false;
    } catch (error) {
      // She thought better of it: that is no failure.
      if (error instanceof Error && error.name === 'AbortError') return false;
    }
  }
  return copyText(document, url);
}

/**
 * @param {Document} document @param {(what: string) => string} makeAddress of the sock ('') or of the class's link
 * @param {(shared: Shared, what: string) => void} tell
 */
export function listenSharing(document, makeAddress, tell) {
  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element && target.closest('[data-share]');
    if (!button) return;
    const what = button.getAttribute('data-share') ?? '';
    const url = makeAddress(what);
    void handOut(document, url).then((isCopied) => tell({ url, isCopied }, what));
  });
}

/** A link may be followed while the page is open. @param {Document} document @param {() => void} open */
export function listenLinks(document, open) {
  document.defaultView?.addEventListener('hashchange', open);
}
