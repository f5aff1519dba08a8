// Stripes and leftovers: what the yarn makes of the pair, and what to do so that the socks match.

/** @typedef {string} Text */

const socks = { a: 'A', b: 'B' };

/** Names that a knitter gives her colours, each by the dye it is drawn in. */
const dyes = [
  'red madder rust coral pink rose scarlet crimson orange',
  'blue woad indigo navy denim teal turquoise',
  'yellow weld gold mustard ochre lemon',
  'green moss olive sage lime forest',
  'white cream ecru natural undyed ivory beige',
  'brown walnut tan chestnut chocolate camel',
  'purple violet lilac plum lavender mauve',
  'grey gray black charcoal silver slate',
].map((names) => names.split(' '));

export const stripesWords = {
  dyes,
  colour: (/** @type {Text} */ sign, /** @type {Text} */ name) =>
    name === '' ? sign : `${sign} ${name}`,
  half: { 1: 'first half', 2: 'second half' },
  band: (/** @type {Text} */ colour, /** @type {Text} */ where) => `${colour}: ${where}`,
  fromCastOn: 'from the cast-on',
  fromStart: (/** @type {Text} */ round) => `from round ${round}`,
  within: (/** @type {Text} */ round, /** @type {Text} */ half) => `within round ${round}, ${half}`,
  inBindOff: 'in the bind-off (cast-off)',

  repeat: {
    alike: 'As the yarn begins now, both socks come out alike.',
    matched: 'Then both socks come out alike.',
    unalike: 'As the yarn begins now, the socks do not match.',
    pull: (/** @type {Text} */ yarn, /** @type {Text} */ mass) =>
      `Pull ${yarn} (${mass}) off B’s yarn before you cast on, and they do`,
    orPull: (/** @type {Text} */ yarn, /** @type {Text} */ mass) =>
      `; or ${yarn} (${mass}) off A’s.`,
    opposite: 'From the two ends of one ball the colours run opposite ways.',
    mirror: 'This repeat reads alike both ways, so they can be made to match.',
    noMatch:
      'No start makes the socks match: this repeat does not read alike both ways. Cut the ball in two instead, or wear them as they are.',
    cut: (/** @type {Text} */ mass, /** @type {Text} */ yarn) =>
      `Cut the ball after ${mass} (${yarn}): A’s yarn begins at the ball’s own end, B’s at the cut.`,
    length: (/** @type {Text} */ yarn) => `One repeat is ${yarn} long.`,
    enough: {
      yes: (/** @type {Text} */ sock, /** @type {Text} */ spare) =>
        `${sock}’s yarn lasts, with ${spare} to spare.`,
      just: (/** @type {Text} */ sock, /** @type {Text} */ spare) =>
        `${sock}’s yarn just lasts: ${spare} to spare is less than the margin.`,
      no: (/** @type {Text} */ sock, /** @type {Text} */ short) =>
        `${sock}’s yarn does not last: ${short} are missing.`,
    },
    pulled: 'B, pulled off',
  },
  own: {
    table: {
      caption: 'Yarn of the pair by colour',
      heads: ['colour', 'stripes on a sock', 'yarn', 'weight'],
    },
    changes: (/** @type {Text} */ n, /** @type {Text} */ more) =>
      `The colour changes ${n} a sock. Carried up inside, that costs next to nothing; cut at every change, ${more} more for the tails.`,
    times: (/** @type {number} */ n) => (n === 1 ? 'once' : `${n} times`),
    one: 'It is all of one colour.',
    never: 'The stripe is longer than the sock: it never changes.',
  },
  leftovers: {
    halve: 'Weigh each lot and wind it into two equal halves, one for each sock.',
    reaches: (/** @type {number} */ joins) =>
      joins === 0
        ? 'One lot makes the whole pair.'
        : `They make the pair with ${joins === 1 ? 'one join' : `${joins} joins`} a sock.`,
    just: (/** @type {number} */ joins, /** @type {Text} */ margin, /** @type {Text} */ missing) =>
      `They just make the pair${
        joins === 0 ? '' : ` with ${joins === 1 ? 'one join' : `${joins} joins`} a sock`
      }, without the margin${margin && ` of ${margin}`}: to keep it, ${missing} of a further yarn.`,
    inside: 'One could not be helped within the toe or the cuff.',
    insideMore: (/** @type {Text} */ n) => `${n} could not be helped within the toe or the cuff.`,
    short: (/** @type {Text} */ missing) =>
      `They do not make the pair: ${missing} are missing, the margin included.`,
    ends: (/** @type {Text} */ round, /** @type {Text} */ leg) =>
      `As it is, bind off (cast off) after round ${round}: a leg of ${leg}, floor to edge. The cuff is then the last of these rounds.`,
    endsInFoot: (/** @type {Text} */ round) =>
      `As it is, they end after round ${round}, in the foot: no sock yet.`,
    nothing: 'They do not even make one round and its bind-off (cast-off).',
    otherThickness: (/** @type {Text} */ lot, /** @type {Text} */ share, isThicker = false) =>
      `${lot} is ${share} ${isThicker ? 'thicker' : 'thinner'} than the sock’s yarn: swatch the two together first.`,
    parts: { caption: 'From the toe up', heads: ['part', 'lot', 'rounds'] },
    lots: {
      caption: 'The lots',
      heads: ['lot', 'for each sock', 'knit of it', 'makes by itself'],
      none: 'not needed',
      makesNone: 'no whole part',
    },
  },
  pair: (/** @type {Text} */ what) =>
    `${what}, both socks side by side, toe down, each band with its number.`,
  drawing: {
    repeat: 'The stripes of the yarn',
    own: 'Your stripes',
    leftovers: 'Your leftovers',
  },
  sock: socks,
  both: 'A and B',
  bands: {
    open: 'Where the colours change, as a table',
    caption: 'Each sock from the toe up',
    head: 'stripe',
  },
};
