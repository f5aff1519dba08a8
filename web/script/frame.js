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

/** @param {Document} document @returns {boolean} whether the frame denies the page an origin, and so nearly everything */
export function standInFrame(document) {
  const view = /** @type {Window & typeof globalThis} */ (document.defaultView);
  if (view.parent === view) return false;
  tellHeight(document, view);
  const isOpaque = view.origin === 'null' && document.location.protocol !== 'file:';
  document.documentElement.toggleAttribute('data-opaque', isOpaque);
  return isOpaque;
}
