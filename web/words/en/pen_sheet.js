// The sheet to fill in by pen: for whoever has no phone with her.

/** @typedef {string} Text */

/** A sum: boxes to write into, by the name under them, and what stands between. @typedef {Array<{ box: Text } | Text>} Sum */

const box = (/** @type {Text} */ name) => ({ box: name });

export const penWords = {
  print: 'print a blank sheet to fill in by pen',
  title: 'Your pair, by pen',
  who: 'name or seat',
  lead: (/** @type {Text} */ rib) =>
    `Socks without a heel, toe up, both at once; rib ${rib}. Keep to one unit throughout. Letters stand for what you wrote above.`,

  swatch: {
    title: 'Swatch, washed and dry, in stockinette',
    sums: /** @type {Sum[]} */ ([
      [box('stitches'), '÷', box('their width'), '=', box('S')],
      [box('rounds'), '÷', box('their height'), '=', box('R')],
      [box('the same stitches, pulled wide'), '÷', box('stitches'), '=', box('W')],
    ]),
  },
  foot: {
    title: 'Foot',
    sums: /** @type {Sum[]} */ ([
      [box('G round the ball'), box('F heel to toe')],
      [box('H round heel and ankle'), box('L leg, from the floor')],
    ]),
  },
  count: {
    title: 'Stitches a round',
    sums: (/** @type {Text} */ share) =>
      /** @type {Sum[]} */ ([
        [box('G'), `× ${share} ×`, box('S'), '=', box('about')],
        ['the nearest count below:', box('N')],
      ]),
    heel: (/** @type {Text} */ share) =>
      /** @type {Sum} */ ([box('N'), '×', box('W'), `× ${share} =`, box('stretches to')]),
    heelNote:
      'Is that less than H? Then it will not go over the heel: take the next count, and try again.',
  },
  table: {
    caption: 'Counts, and the toe of each',
    heads: ['N', 'wraps', 'increase in rounds (all others: knit)'],
    note: (/** @type {Text} */ foot) =>
      `Toes for a foot of ${foot}; for a longer one knit more plain rounds after the last increase. An increase round, on each half: k1, M1R, knit to the last stitch, M1L, k1.`,
  },
  length: {
    title: 'Rounds',
    sums: (/** @type {Text} */ share, /** @type {Text} */ toe, /** @type {Text} */ cuff) =>
      /** @type {Sum[]} */ ([
        [box('F'), `× ${share} +`, box('L'), '=', box('length')],
        [box('length'), '×', box('R'), '=', box('all')],
        [`F × ${toe} × R =`, box('toe'), `${cuff} × R =`, box('cuff')],
        [box('all'), '−', box('toe'), '−', box('cuff'), '=', box('rib')],
      ]),
  },
  yarn: {
    title: 'Yarn for both',
    sums: (/** @type {Text} */ margin) =>
      /** @type {Sum[]} */ ([
        [box('grams of the swatch'), '÷', box('all its stitches'), '=', box('a stitch')],
        [box('a stitch'), '×', box('N'), '×', box('all'), `× 2 × ${margin} =`, box('grams')],
      ]),
  },
  passes: 'A round of the pair is four passes',
  castOn:
    'Cast on: hold the tips together, wrap yarn B round both as often as the table says, then yarn A; knit the upper loops, turn, knit the lower ones.',
  rib: 'The rib',
  pastFoot: (/** @type {Text} */ share) => `F × ${share} + 5 cm (2 in)`,
  ribCaption: 'Each half, over and over until only what follows is left; then from round 1 again',
  ribHeads: ['rounds', 'each half'],
  over: (/** @type {Text} */ runs) => `*${runs}*`,
  both: (/** @type {Text} */ a, /** @type {Text} */ b) => `A ${a}; B ${b}`,
};
