// A student's link or file, where the teacher looks at it. It is nobody's field of a sheet.

/**
 * @param {Document} document
 * @param {{ link: (text: string) => void, file: (file: File) => void }} open
 */
export function listenHelping(document, open) {
  const link = /** @type {HTMLInputElement | null} */ (document.getElementById('helping-link'));
  const file = /** @type {HTMLInputElement | null} */ (document.getElementById('helping-file'));
  link?.addEventListener('input', () => {
    if (file) file.value = '';
    open.link(link.value);
  });
  file?.addEventListener('change', () => {
    const [chosen] = file.files ?? [];
    if (link) link.value = '';
    if (chosen) open.file(chosen);
  });
}
