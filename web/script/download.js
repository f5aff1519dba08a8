// What is handed to the reader: a file, or a text on the clipboard.

/** @param {Document} document @param {Blob} blob @param {string} name */
export function handOver(document, blob, name) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  // Browsers read the address a moment later.
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

/** @param {Document} document @param {string} text @returns {Promise<boolean>} whether the browser allows it */
export async function copyText(document, text) {
  try {
    await document.defaultView?.navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
