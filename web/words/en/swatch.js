// The swatch: its readings as a whole, and what else can be measured on it.

/** @typedef {string} Text */

export const swatchWords = {
  name: (/** @type {Text} */ stitches, /** @type {Text} */ rounds, /** @type {Text} */ over) =>
    `The swatch by all readings: ${stitches} stitches wide and ${rounds} rounds high, ${over}.`,
  stitches: (/** @type {Text} */ n) => `${n} stitches`,
  rounds: (/** @type {Text} */ n) => `${n} rounds`,
  one: (/** @type {Text} */ take, /** @type {Text} */ over) =>
    `One reading: give or take ${take} stitches ${over}. A second one, elsewhere on the swatch, tells how even it is.`,
  mean: (
    /** @type {number} */ n,
    /** @type {Text} */ stitches,
    /** @type {Text} */ rounds,
    /** @type {Text} */ over,
  ) => `${n} readings: ${stitches} stitches and ${rounds} rounds ${over}`,
  inStockinette: 'Turned from the rib to stockinette.',
  scatter: {
    name: (/** @type {number} */ n) =>
      `How ${n} readings scatter: a mark a reading, the mean as a line, its give or take as a band. The same figures stand in the table below.`,
    stitches: 'stitches',
    rounds: 'rounds',
    mean: (/** @type {Text} */ mean, /** @type {Text} */ take) => `${mean} ± ${take}`,
    key: 'Band: the mean, give or take. A mark far from the others is the one to count again.',
  },
  table: {
    open: 'The readings as a table',
    caption: (/** @type {Text} */ over) => `Each reading ${over}`,
    reading: 'reading',
    stitches: 'stitches',
    rounds: 'rounds',
    mean: 'mean',
    take: 'give or take',
    none: '–',
  },
};
