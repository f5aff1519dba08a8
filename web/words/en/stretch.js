// The stretch line: its girths by name, its handle for those who listen, and what to say of a count.

/** @typedef {string} Text */

export const stretchWords = {
  title: 'Your count, and how far it stretches',
  lead: 'From the rib drawn in, at the left, to where its yarn pulls straight. Drag the marker, or step it, to try another count.',
  stitches: 'stitches a round',
  flat: (/** @type {Text} */ girth, /** @type {Text} */ take) =>
    `${girth} round with the rib eased open, give or take ${take}`,
  alike: 'Both halves of a round read the same.',
  unlike: 'The two halves of a round read differently.',
  fewer: (/** @type {Text} */ n) => `fewer: ${n} stitches`,
  more: (/** @type {Text} */ n) => `more: ${n} stitches`,
  noFewer: 'no fewer can be knit',
  noMore: 'no more can be knit',
  name: (/** @type {Text} */ n) =>
    `How far ${n} stitches stretch: a band of the rib, from at rest to no further, with what it has to pass. The same figures stand in the table below.`,

  handle: 'Stitches a round',
  handleValue: (
    /** @type {Text} */ n,
    /** @type {Text} */ flat,
    /** @type {Text} */ halves,
    /** @type {Text} */ heel,
  ) => `${n} stitches, ${flat}. ${halves} ${heel}`,
  heelPasses: (/** @type {Text} */ use) => `Passing the heel takes ${use} of the stretch.`,
  heelStuck: (/** @type {Text} */ use) =>
    `Too tight for the heel: it would take ${use} of the stretch.`,

  // Beside their marks, so as short as can be.
  mark: {
    rest: 'at rest',
    foot: 'the foot',
    edge: 'the edge',
    heel: 'the heel',
    largeHeel: 'a large heel',
    limit: 'too tight past',
    widest: 'no further',
    tooTight: (/** @type {Text} */ girth) => `${girth}, too tight`,
    widened: (/** @type {Text} */ girth, /** @type {Text} */ n) => `${girth}, on ${n} st`,
    before: (/** @type {Text} */ name) => `‹ ${name}`,
    after: (/** @type {Text} */ name) => `${name} ›`,
  },

  table: {
    open: 'The line as a table',
    caption: (/** @type {Text} */ n) => `Girths of ${n} stitches, and of what they go round`,
    what: 'girth',
    girth: 'round',
    remark: 'that is',
    rest: 'at rest, the rib drawn in',
    flat: 'eased open',
    foot: 'worn: the ball of the foot',
    edge: 'the leg at the top edge',
    heel: 'round heel and ankle',
    limit: 'too tight past this',
    widest: 'no further: the yarn pulls straight',
    take: (/** @type {Text} */ take) => `give or take ${take}`,
    measured: 'as measured',
    estimated: 'estimated',
    widened: (/** @type {Text} */ n) => `the tube is widened to ${n} stitches there`,
    heelUse: (/** @type {Text} */ use) => `takes ${use} of the stretch`,
    largeHeel: (/** @type {Text} */ use) =>
      `a large one, for it is not measured: takes ${use} of the stretch`,
    stuck: (/** @type {Text} */ use) => `too tight: takes ${use} of the stretch`,
    largeStuck: (/** @type {Text} */ use) =>
      `a large one, for it is not measured: too tight, takes ${use} of the stretch`,
    limitShare: (/** @type {Text} */ use) => `${use} of the stretch there is`,
  },

  // On the pair, where the heel is too much for the count.
  atHeel: {
    tight: 'too tight at the heel',
    stuck: 'will not pass the heel',
    caption: 'Hatched: where the heel has to pass, and this count is too tight for it.',
  },

  offer: {
    take: (/** @type {Text} */ n) => `take ${n}`,
    advised: (/** @type {Text} */ n) => `take the advised ${n}`,
    kept: 'Your own count is kept until you change it. What stands here is of the last good one.',
  },
};
