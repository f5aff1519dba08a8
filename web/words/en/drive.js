// Many feet that nobody has measured: which sizes, how many of each, for whom, how much wool.

/** @typedef {string} Text */
/** @typedef {Record<string, Text>} Figures */

const sizes = (/** @type {Text} */ count) => (count === '1' ? 'One size' : `${count} sizes`);
const pairs = (/** @type {Text} */ count) => (count === '1' ? '1 pair' : `${count} pairs`);

export const driveWords = {
  title: 'Many feet: socks to give',
  empty: 'Say how many pairs, and for whom: parts of women or of men, or the ages of children.',
  late: 'Being reckoned anew …',
  serves: (/** @type {Text} */ count, /** @type {Text} */ share, /** @type {Text} */ points) =>
    `${sizes(count)} ${count === '1' ? 'serves' : 'serve'} ${share} of these feet, give or take ${points} in a hundred.`,
  enough: {
    isFewest: (/** @type {Text} */ wanted) => `Fewer would not serve the ${wanted} wanted.`,
    isOpen: (/** @type {Text} */ wanted) =>
      `It is not settled whether fewer would serve the ${wanted} wanted.`,
    isReached: (/** @type {Text} */ wanted) => `That is the ${wanted} wanted.`,
    isShort: (/** @type {Text} */ wanted) => `That is less than the ${wanted} wanted.`,
  },
  byNumber: {
    caption: (/** @type {Text} */ wanted) => `What so many sizes serve; the line is at ${wanted}`,
    heads: ['Sizes', 'Feet served'],
  },

  caption: (
    /** @type {Text} */ count,
    /** @type {Text} */ whom,
    /** @type {Text} */ leg,
    /** @type {Text} */ margin,
  ) =>
    `${pairs(count)} for ${whom}. The leg is ${leg} of the foot; ${margin} of the yarn is to spare.`,
  who: /** @type {Record<string, (age: Text) => Text>} */ ({
    woman: () => 'women',
    man: () => 'men',
    child: (age) => `children of ${age}`,
  }),
  parts: (/** @type {Text} */ who, /** @type {Text} */ share) =>
    `${who} (${share} ${share === '1' ? 'part' : 'parts'})`,
  and: ' and ',
  pairs,
  size: (/** @type {Text} */ number) => `Size ${number}`,
  sizeHeads: ['Size', 'Pairs', 'Each sock', 'For feet of', 'Serves', 'Yarn'],
  hours: (/** @type {Text} */ time) => `${time} each`,
  stitches: (/** @type {Text} */ count) => `${count} st`,
  rounds: (/** @type {Text} */ count) => `${count} rounds`,
  long: (/** @type {Text} */ length) => `${length} long`,
  leg: (/** @type {Text} */ height) => `leg ${height}`,
  fits: (/** @type {Text} */ range) => `goes on ${range}`,
  ofWhom: { women: 'women', men: 'men', children: 'children' },
  part: (/** @type {Text} */ who, /** @type {Text} */ share) => `${who} ${share}`,
  aPair: (/** @type {Text} */ yarn) => `${yarn} a pair`,
  inAll: (/** @type {Text} */ yarn, /** @type {Text} */ mass) => `${yarn}, ${mass} in all`,

  wool: {
    title: 'Wool for all of them',
    all: (/** @type {Text} */ yarn, /** @type {Text} */ mass) => `${yarn}, ${mass}.`,
    balls: (/** @type {Text} */ count, /** @type {Text} */ mass) =>
      `${count} ${count === '1' ? 'ball' : 'balls'} of ${mass}.`,
    noBall: 'With a ball’s label on the sheet, its balls are counted too.',
    guessed: 'The weight is guessed from the yarn’s number: the label knows better.',
  },
  lots: {
    title: 'What the wool at hand makes',
    enough: (/** @type {Text} */ count) =>
      `The wool at hand makes all ${count} pairs, each from one lot.`,
    heads: (/** @type {Text[]} */ all) => ['Lot', ...all, 'Left over'],
    name: (/** @type {Text} */ mass, /** @type {Text} */ yarn) => `${mass}, ${yarn}`,
    alone: (/** @type {Text} */ count) => `alone ${count}`,
    hint: 'Pairs of each size. “Alone”: so many if the lot makes no other size.',
    other: 'another yarn',
    makes: (/** @type {Text} */ lot, /** @type {Text} */ made) => `${lot}: ${made}`,
    made: 'In all',
    missing: 'Still missing',
  },

  bands: {
    print: 'print the bands',
    each: (/** @type {Text} */ count) =>
      `${count} bands to cut out, one a pair, four on a side; what is left empty, and the maker, are lines to write on`,
    once: 'one side of bands for each size, to be copied as often as it takes; what is left empty, and the maker, are lines to write on',
    size: 'size',
    ofSize: (/** @type {Text} */ number, /** @type {Text} */ count) => `${number} · ${count} st`,
    copies: (/** @type {Text} */ size, /** @type {Text} */ count) => `${size}: for ${pairs(count)}`,
  },

  /** The table's columns in a file. @type {(length: Text, yarn: Text, mass: Text) => Text[]} */
  heads: (length, yarn, mass) => [
    'size',
    'pairs',
    'stitches',
    'rounds',
    `sock length (${length})`,
    `leg (${length})`,
    `girth laid flat (${length})`,
    `feet from (${length})`,
    `feet to (${length})`,
    `goes on from (${length})`,
    `goes on to (${length})`,
    `ball girth from (${length})`,
    `ball girth to (${length})`,
    'shoes',
    'feet served (%)',
    `yarn a pair (${yarn})`,
    `yarn in all (${yarn})`,
    `in all (${mass})`,
    'hours a pair',
  ],
};

/** @type {Record<string, (figures: Figures) => Text>} */
export const driveCautions = {
  feet_of_soldiers: () =>
    'Of grown-ups these are shares of soldiers’ feet, measured in 2012: of younger and fitter people than most. Swollen or older feet may be wider.',
  children_estimated: () =>
    'Of children’s feet only the length was measured, in 1977; how wide they are is estimated from it.',
  fewer_sizes_do: ({ asked, sizes: fewer }) =>
    `${asked} sizes were asked for: past ${fewer} another one serves nobody more.`,
  share_not_reached: ({ wanted, share }) =>
    `No number of sizes up to 12 serves the ${wanted} wanted; these serve ${share}.`,
  better_not_ruled_out: ({ atMost }) =>
    `Other sizes, as many, might serve a little more, but ${atMost} at the most.`,
  lot_of_another_yarn: ({ lot }) =>
    `${lot} is of another thickness and knits to another gauge (tension): it is left out.`,
  lots_fall_short: ({ made, pairs: wanted, atMost }) =>
    `The wool at hand makes ${made} of the ${wanted} pairs, each from one lot.${
      atMost === made ? '' : ` Perhaps a few more: ${atMost} at the most.`
    }`,
};
