// Where all socks stand: drawn only while it is open, and opened by a link to it.

/** @param {Document} document @param {() => void} draw */
export function listenShelf(document, draw) {
  const shelf = document.getElementById('socks');
  shelf?.addEventListener('toggle', draw);
  document.addEventListener('click', ({ target }) => {
    if (target instanceof Element && target.closest('a[href="#socks"]'))
      shelf?.setAttribute('open', '');
  });
}
