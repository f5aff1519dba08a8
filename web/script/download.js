// A file handed to the reader.

/** @param {Document} document @param {Blob} blob @param {string} name */
export function handOver(document, blob, name) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  // Browsers read the address a moment later.
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}
