// What is written on the drawings, and what they are called for those who do not see them.

/** @typedef {string} Text */

export const drawingWords = {
  sectionName: /** @type {Record<string, string>} */ ({
    toe: 'toe',
    spiral: 'spiral rib',
    widening: 'wider leg',
    cuff: 'cuff',
    castOn: 'cast-on',
    bindOff: 'bind-off (cast-off)',
    tails: 'two tails',
  }),
  rounds: (/** @type {number} */ n) => (n === 1 ? '1 round' : `${n} rounds`),
  move: (/** @type {Text} */ every) => `a step every ${every}`,
  change: (/** @type {Text} */ every) => `changing every ${every}`,
  wider: (/** @type {Text} */ rib) => `wider, ${rib}`,
  stitches: (/** @type {Text} */ n) => `${n} stitches`,
  sock: { a: 'A', b: 'B' },
  foot: { a: 'right foot', b: 'left foot' },
  footOf: { a: 'A, right foot', b: 'B, left foot' },
  greatToes: 'great toes',
  whoseFoot:
    'Seen from above, first half up: A is for the right foot, B for the left, great toe to great toe. Turned over, each also goes on the other foot.',
  pairName: (/** @type {Text} */ stitches, /** @type {Text} */ length, /** @type {Text} */ girth) =>
    `The pair, laid flat and to scale: ${stitches} stitches a round, ${length} long, ${girth} round.`,
  pairWider: (/** @type {Text} */ stitches) => `The leg widens to ${stitches} stitches.`,
  pairToes: 'A has its great toe on the right, B on the left.',
  pairTable: 'The same figures stand in the table below.',
  toScale: (/** @type {Text} */ girth, /** @type {Text} */ rest) =>
    `To scale, eased open to ${girth} round; at rest the rib draws in to ${rest}.`,
  tooFine: (/** @type {Text} */ every) => `Too fine to show every rib: one in ${every} is drawn.`,
  giveOrTake: 'The dashed line is the give and take of a guessed gauge (tension).',
  whole: (/** @type {Text} */ rounds, /** @type {Text} */ length) => `${rounds} · ${length}`,
  table: {
    open: 'The pair as a table',
    caption: 'One sock, from the toe up',
    part: 'part',
    rounds: 'rounds',
    length: 'length',
    stitches: 'stitches at its end',
    all: 'the whole sock',
  },
  strip: {
    name: (/** @type {Text} */ rounds) =>
      `All ${rounds} rounds as one band: a tick a round, long where stitches are added, middling where the rib moves.`,
    knit: (/** @type {Text} */ rounds) => `${rounds} are knit, up to the line across.`,
    oneSided: 'Ticks of the toe that are less long add stitches on one side only.',
    widens: 'A wedge marks each round that widens the leg.',
    span: (/** @type {number} */ first, /** @type {number} */ last) =>
      first === last ? String(first) : `${first}–${last}`,
    part: (/** @type {Text} */ name, /** @type {Text} */ rounds) => `${name} ${rounds}`,
    last: (/** @type {Text} */ part) => `${part}, bind off`,
  },
  swatchAcross: (/** @type {Text} */ stitches) => `${stitches} stitches`,
  swatchUp: (/** @type {Text} */ rounds) => `${rounds} rounds`,
  swatchName: (/** @type {Text} */ stitches, /** @type {Text} */ rounds) =>
    `The swatch: ${stitches} stitches wide and ${rounds} rounds high.`,
};
