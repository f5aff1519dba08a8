// Measures as the drawings write them beside their lines.

/** @typedef {string} Text */

export const measureWords = {
  /** A foot of which the sock takes a little less, or more. */
  foot: (/** @type {Text} */ length, /** @type {Text} */ share, /** @type {boolean} */ isLess) =>
    share === '' ? `foot ${length}` : `foot ${length} ${isLess ? 'less' : 'and'} ${share}`,
  leg: (/** @type {Text} */ length) => `leg ${length}`,
};
