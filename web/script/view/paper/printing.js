// What comes out on paper: pages made for it (the sheet and the like); in the shop the list; and the workings, where they
// are asked for.

/** @typedef {'sheet' | 'band' | 'pen' | 'supply' | 'weeks' | 'tags' | 'bands' | 'sheets'} Page made for paper when it is wanted */
/** @typedef {Page | 'list' | 'workings'} Printed */

/** Every working open, until it is printed; the reader's own state comes back then. @param {Document} document */
function openWorkings(document) {
  const closed = [...document.querySelectorAll('details.working:not([open])')];
  for (const entry of closed) entry.setAttribute('open', '');
  document.defaultView?.addEventListener(
    'afterprint',
    () => {
      for (const entry of closed) entry.removeAttribute('open');
    },
    { once: true },
  );
}

/**
 * A page for paper is made when it is wanted, and gone after it: "beforeprint" and "afterprint" every browser tells,
 * whether the print came from here or from its own menu.
 * @param {Document} document @param {Record<string, () => Node[]>} pages
 */
export function listenPrinting(document, pages) {
  const page = document.documentElement;
  const view = document.defaultView;
  const place = document.querySelector('[data-view="sheet"]');
  view?.addEventListener('beforeprint', () => {
    if (!page.hasAttribute('data-printing')) {
      const isShop = page.getAttribute('data-moment') === 'buy';
      page.setAttribute('data-printing', isShop ? 'list' : 'sheet');
    }
    const what = /** @type {Page} */ (page.getAttribute('data-printing'));
    const isPage = Object.hasOwn(pages, what);
    page.toggleAttribute('data-page', isPage);
    if (isPage) place?.replaceChildren(...pages[what]());
  });
  view?.addEventListener('afterprint', () => {
    page.removeAttribute('data-printing');
    page.removeAttribute('data-page');
    place?.replaceChildren();
  });
  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element && target.closest('[data-print]');
    if (!button) return;
    const what = /** @type {Printed} */ (button.getAttribute('data-print'));
    page.setAttribute('data-printing', what);
    if (what === 'workings') openWorkings(document);
    view?.print();
  });
}
