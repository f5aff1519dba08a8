// Inside somebody else's page: how tall this one is, for a host that wants to know, and whether it may keep anything.

/**
 * Tells the host each new height, in pixels: `{ twinround: { height } }`.
 * @param {Document} document @param {Window & typeof globalThis} view
 */
function tellHeight({ documentElement, body }, view) {
  let told = 0;
  new view.ResizeObserver(() => {
    // Of what stands in the page: the root is never shorter than its frame.
    const height = body.getBoundingClientRect().bottom + view.scrollY;
    if (height === told || documentElement.clientWidth === 0) return;
    told = height;
    // To whoever frames the page: nothing private is in a height.
    view.parent.postMessage({ twinround: { height } }, '*');
  }).observe(body);
}

/** Scrolls to something in this page, and never the page around it. @param {Element} element */
export function bringIntoView(element) {
  const view = element.ownerDocument.defaultView;
  const { top } = element.getBoundingClientRect();
  // A little below the edge: what is kept in sight at the top lies over it.
  view?.scrollTo(0, top + view.scrollY - 96);
}

/** @param {Document} document @returns {boolean} whether the frame denies the page an origin, and so nearly everything */
export function standInFrame(document) {
  const view = /** @type {Window & typeof globalThis} */ (document.defaultView);
  if (view.parent === view) return false;
  tellHeight(document, view);
  const isOpaque = view.origin === 'null' && document.location.protocol !== 'file:';
  document.documentElement.toggleAttribute('data-opaque', isOpaque);
  return isOpaque;
}
