// The appendix at work: a figure's link opens its entry.

const target = /^#(working-[\w-]+)$/;

/** @param {Document} document @param {string} id */
function openEntry(document, id) {
  const entry = document.getElementById(id)?.closest('details');
  if (!entry) return false;
  entry.open = true;
  entry.scrollIntoView({ block: 'start' });
  entry.querySelector('summary')?.focus({ preventScroll: true });
  return true;
}

/** @param {Document} document */
export function serveWorkings(document) {
  document.addEventListener('click', (event) => {
    if (!(event.target instanceof Element)) return;
    const link = event.target.closest('a[href^="#working-"]');
    const [, id] = target.exec(link?.getAttribute('href') ?? '') ?? [];
    // The address stays as it is: what stands behind its # is not ours to change.
    if (id && openEntry(document, id)) event.preventDefault();
  });
}
