// A link to this sock: the device's own way to share where there is one, else the clipboard, else to be copied by hand.

/** @typedef {{ url: string, isCopied: boolean }} Shared */

/** What stands behind the address's #. @param {Document} document */
export const fragmentOf = (document) => document.location.hash.slice(1);

/** The address without it, so that a reload opens what is kept. @param {Document} document */
export function leaveLink(document) {
  const { pathname, search } = document.location;
  document.defaultView?.history.replaceState(null, '', pathname + search);
}

/** @param {string} url */
async function handOut(url) {
  if (navigator.share) {
    try {
      await navigator.share({ url });
      return false;
    } catch (error) {
      // She thought better of it: that is no failure.
      if (error instanceof Error && error.name === 'AbortError') return false;
    }
  }
  try {
    await navigator.clipboard.writeText(url);
    return true;
  } catch {
    return false;
  }
}

/**
 * @param {Document} document @param {() => string} makeText what the link says
 * @param {(shared: Shared) => void} tell
 */
export function listenSharing(document, makeText, tell) {
  document.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element) || !target.closest('[data-share]')) return;
    const [page] = document.location.href.split('#');
    const url = `${page}#${makeText()}`;
    void handOut(url).then((isCopied) => tell({ url, isCopied }));
  });
}

/** A link may be followed while the page is open. @param {Document} document @param {() => void} open */
export function listenLinks(document, open) {
  document.defaultView?.addEventListener('hashchange', open);
}
