// Where one looks while one knits: the round when the sock is begun, and always the pass in hand.
/** @param {Document} document */
export function showNeedles(document) {
  const place = document.getElementById('needles');
  if (!place) return;
  // It stands first in its moment.
  document.defaultView?.scrollTo(0, 0);
  /** @type {HTMLElement | null} */ (place.querySelector('.next'))?.focus({ preventScroll: true });
}

/** Above the bar that lies over the page's end, after a tap of her own. @param {Document} document */
export function keepPassInSight(document) {
  const pass = document.querySelector('.work-pass.now')?.getBoundingClientRect();
  const bar = document.querySelector('.work-bar')?.getBoundingClientRect();
  const view = document.defaultView;
  if (!pass || !bar || !view || bar.bottom < 0 || bar.top > view.innerHeight) return;
  const under = pass.bottom - bar.top;
  const above = pass.top - 64;
  if (under > 0 && pass.top < bar.bottom) view.scrollBy(0, under);
  else if (above < 0 && pass.bottom > 0) view.scrollBy(0, above);
}
