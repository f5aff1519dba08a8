// A foot told by its shoe: what the plan makes of it, and how far to trust that.

/** @typedef {string} Text */

export const footWords = {
  estimated: 'Estimated:',
  measure: (/** @type {Text} */ length, /** @type {Text} */ what, /** @type {Text} */ spread) =>
    `${length} ${what}, give or take ${spread}`,
  long: 'long',
  round: 'round the ball',
  ukBand: (/** @type {Text} */ least, /** @type {Text} */ most) =>
    `A UK size is a band: it is sold to feet of ${least} to ${most}.`,
  mondopoint: (/** @type {Text} */ mm) =>
    `Mondopoint names the foot’s own length: ${mm} exactly. Sizes go in steps, so the foot may differ a little.`,
  child:
    'A child’s foot is taken to be nearly as far round as it is long: an assumption. A tape is better.',
};
