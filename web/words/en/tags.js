// Name tags by seat.

/** @typedef {string} Text */

export const tagWords = {
  print: 'print the tags',
  seat: 'seat',
  /** To be filled in by hand. */
  lines: ['stitches', 'toe rounds', 'rib'],
  rib: (/** @type {Text} */ rib) => `rib ${rib}`,
  castOn: (/** @type {Text} */ wraps) => `cast on: ${wraps} wraps a sock`,
  waits: 'How many seats there are is still to be mended.',
};
