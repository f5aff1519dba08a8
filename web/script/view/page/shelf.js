// Where all socks stand: drawn only while it is open, and opened by a link to it.
import { bringIntoView } from '../../frame.js';

/** @param {Document} document @param {() => void} draw */
export function listenShelf(document, draw) {
  const shelf = document.getElementById('socks');
  shelf?.addEventListener('toggle', draw);
  document.addEventListener('click', (event) => {
    const { target } = event;
    if (!(target instanceof Element) || !target.closest('a[href="#socks"]')) return;
    // What stands behind the address's # is not ours to change.
    event.preventDefault();
    if (!shelf) return;
    shelf.setAttribute('open', '');
    bringIntoView(shelf);
    shelf.querySelector('summary')?.focus({ preventScroll: true });
  });
}
