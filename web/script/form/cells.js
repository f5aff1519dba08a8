// What is wanted between the cells of a table.

/** @param {Document} document */
export const separatorIn = (document) =>
  /** @type {HTMLInputElement | null} */ (document.querySelector('[name="cells"]:checked'))
    ?.value ?? ',';
