// The hand note, and what marks a figure that is a guess.

/** @typedef {string} Text */

export const noteWords = {
  title: 'For the back of your hand',
  next: (/** @type {Text} */ wraps) => `next: wrap B ${wraps} times, then A ${wraps}`,
  wraps: 'wraps a sock',
  stitches: 'stitches a round',
  toe: 'toe rounds',
  rounds: 'rounds in all',
  yarn: 'of yarn, the pair',
  girth: (/** @type {Text} */ girth, /** @type {Text} */ take) =>
    `${girth} round, give or take ${take}`,
  take: (/** @type {Text} */ take) => `give or take ${take}`,
  time: 'of knitting',
  heel: 'of the stretch at the heel',
  heelTake: (/** @type {Text} */ take, /** @type {Text} */ most) =>
    `give or take ${take}; ${most} at most`,
  margin: (/** @type {Text} */ margin) => `In the yarn, ${margin} is to spare.`,
};

export const guessWords = {
  mark: 'guess',
  said: 'A guess so far.',
  after: (/** @type {Text} */ text) => `${text}\u00a0○`,
  ring: '○\u00a0marks a guess.',
  /** @type {Record<string, Text>} */
  why: {
    label: 'worked out from the yarn’s label. Your swatch takes its place.',
    shoe: 'worked out from the shoe. A tape round the foot takes its place.',
    both: 'worked out from the yarn’s label and the shoe. A swatch and a tape take their place.',
    foot: 'worked out from what such feet usually measure. A tape takes its place.',
  },
};
