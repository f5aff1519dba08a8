// Where the drawings lie over the page, beside their field, only one lies there, and it makes room as soon
// as the hand goes on to another field. Where they stand in the flow of the page, they stay as they are.

const selector = 'details.how-to[open]';
const place = '.field, [data-how]';

/** @param {Element} details */
function liesOver(details) {
  const panel = details.querySelector('.how-panel');
  return panel !== null && getComputedStyle(panel).position === 'absolute';
}

/** Closes all that lie over the page but the one of this place. @param {Document} document @param {Element | null} kept */
function closeOthers(document, kept) {
  for (const details of document.querySelectorAll(selector)) {
    if (!kept?.contains(details) && liesOver(details)) details.removeAttribute('open');
  }
}

/** @param {Document} document */
export function listenHow(document) {
  // The hand goes on to another field, or presses anywhere else.
  for (const type of ['focusin', 'pointerdown']) {
    document.addEventListener(type, ({ target }) => {
      if (target instanceof Element) closeOthers(document, target.closest(place));
    });
  }
  // A press does not focus a summary in every browser; opening tells it everywhere.
  document.addEventListener(
    'toggle',
    ({ target }) => {
      if (target instanceof Element && target.matches(selector)) {
        closeOthers(document, target.closest(place));
      }
    },
    true,
  );
  document.addEventListener('keydown', ({ key, target }) => {
    if (key !== 'Escape' || !(target instanceof Element)) return;
    const details = target.closest(place)?.querySelector(selector);
    if (!details) return;
    details.removeAttribute('open');
    details.querySelector('summary')?.focus();
  });
}
