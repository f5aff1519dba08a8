// The appendix at work: a figure's link opens its entry, and a sheet of all entries prints.

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

/**
 * All entries open and all else away, until the sheet is printed. The reader's own state comes back with
 * "afterprint", which every browser tells, printed or not.
 * @param {Document} document
 */
function printWorkings(document) {
  const page = document.documentElement;
  const view = document.defaultView;
  const closed = [...document.querySelectorAll('details.working:not([open])')];
  for (const entry of closed) entry.setAttribute('open', '');
  page.setAttribute('data-printing', 'workings');
  view?.addEventListener(
    'afterprint',
    () => {
      page.removeAttribute('data-printing');
      for (const entry of closed) entry.removeAttribute('open');
    },
    { once: true },
  );
  view?.print();
}

/** @param {Document} document */
export function serveWorkings(document) {
  document.addEventListener('click', (event) => {
    if (!(event.target instanceof Element)) return;
    if (event.target.closest('[data-print="workings"]')) {
      printWorkings(document);
      return;
    }
    const link = event.target.closest('a[href^="#working-"]');
    const [, id] = target.exec(link?.getAttribute('href') ?? '') ?? [];
    // The address stays as it is: what stands behind its # is not ours to change.
    if (id && openEntry(document, id)) event.preventDefault();
  });
}
