// What to buy, and why so much.

/** @typedef {string} Text */

const balls = (/** @type {number} */ n) => `${n} ${n === 1 ? 'ball' : 'balls'}`;

// Circular needles are sold by round names; the core tells millimetres.
const cableSold = /** @type {Record<number, Record<string, string>>} */ ({
  1000: { metric: '100 cm', inch: '40 in' },
  1200: { metric: '120 cm', inch: '47 in' },
  1500: { metric: '150 cm', inch: '60 in' },
});

export const buyWords = {
  title: 'To buy',
  need: (/** @type {Text} */ take) => `of yarn for the pair, give or take ${take}`,
  balls,
  just: 'just',
  ballsOf: (/** @type {number} */ n, /** @type {Text} */ mass, /** @type {Text} */ yarn) =>
    `of ${mass} and ${yarn}${n === 1 ? '' : ' each'}`,
  leftOver: (/** @type {Text} */ spare) => `; ${spare} left over`,
  about: (/** @type {Text} */ mass) => `about ${mass}`,
  massOfWeight: 'by what such yarn usually weighs',
  askBall: 'How many balls? Fill in a ball’s label',
  names: (/** @type {Text} */ us, /** @type {Text} */ uk) =>
    [us && `US\u00a0${us}`, uk && `UK\u00a0${uk}`].filter(Boolean).join(', '),
  cableSold,
  cable: (/** @type {Text} */ length, /** @type {Text} */ also) =>
    `one long circular, ${length} (${also}), for both socks at once`,
  noCable: 'no circular is sold long enough for both: two needles, or one sock after the other',

  list: {
    title: 'Shopping list',
    help: 'Ticks are for you alone; they are gone when the page is closed.',
    yarn: (/** @type {Text} */ yarn, /** @type {Text} */ also) => `Yarn, ${yarn} (${also})`,
    weight: (/** @type {Text} */ weight) => `weight ${weight}`,
    needle: (/** @type {Text} */ size) => `Circular needle, ${size}`,
    cableOf: (/** @type {Text} */ length, /** @type {Text} */ also) =>
      `${length} (${also}) from tip to tip, on a cable that bends easily`,
    spare: 'A needle a size or two thicker',
    spareWhy: 'to bind off (cast off) loosely',
    spareTry: (/** @type {Text} */ mm) => `to bind off (cast off) loosely; and ${mm}, to try`,
    have: 'Have you got?',
    markers: 'Two stitch markers',
    markersWhy: 'closed rings, one a sock; out of an infant’s reach',
    scale: 'A kitchen scale',
    scaleWhy: 'to halve a ball, and to weigh the swatch',
    darning: 'A blunt darning (tapestry) needle',
    darningWhy: 'to weave in the ends',
    lifeline: 'A lifeline',
    lifelineWhy: 'a smooth thread in another colour, to try the sock on',
    tape: 'A tape measure',
    tapeWhy: 'for the foot, the leg and the swatch',
  },

  why: 'About these figures',
  margin: (/** @type {Text} */ margin, /** @type {Text} */ bare) =>
    `${margin} to spare is in the yarn; the pair itself takes ${bare}.`,
  mass: (/** @type {Text} */ mass, /** @type {Text} */ also) =>
    `It weighs ${mass} (${also}), the spare included.`,
  // Each sock is knit from its own yarn; how to split it hangs on the number of balls.
  oneBall: (/** @type {Text} */ sock) =>
    `Each sock has its own yarn: wind off ${sock} for the second sock, or knit from both ends of the ball.`,
  evenBalls: (/** @type {number} */ n) => `Each sock has its own yarn: ${balls(n)} for each.`,
  oddBalls: (/** @type {number} */ n, /** @type {Text} */ sock) =>
    `Each sock has its own yarn: ${balls(n)} for each, and the last one shared: ${sock} a sock in all.`,
  splitMass: (/** @type {Text} */ sock) =>
    `Each sock has its own yarn: weigh out ${sock} a sock, or knit from both ends of one ball.`,
  cableLeast: (/** @type {Text} */ length) => `From tip to tip this pair needs at least ${length}.`,
  firmness: /** @type {Record<string, string>} */ ({
    loose: 'For this yarn the fabric is loose: a sock of it will wear through.',
    usual: 'For this yarn the fabric is as firm as hand-knit socks usually are.',
    firm: 'For this yarn the fabric is firm: it wears well, gives little and is hard on the hands.',
  }),
  firmnessUnknown: 'How firm the fabric will be, the grams and metres of a ball will tell.',
  tryAgain: (/** @type {Text} */ mm) => `Try a ${mm} needle and swatch again.`,
  tryFirst: (/** @type {Text} */ mm) => `Try a ${mm} needle for the swatch.`,
  time: (/** @type {Text} */ time, /** @type {Text} */ take, /** @type {Text} */ pace) =>
    `About ${time} of knitting for the pair, give or take ${take}${pace === '' ? '' : `, at ${pace} stitches a minute`}.`,
  ownPace: 'Time a round of your own',

  sections: 'Yarn in one sock',
  part: 'part',
  length: 'yarn',
  also: 'that is',
  oneSock: 'one sock',
  pair: 'the pair',
  withMargin: 'with the margin',

  other: {
    metres: 'Count metres, not grams: the socks take the same length of either yarn.',
    title: 'The two yarns, side by side',
    heads: ['for the pair', 'this yarn', 'the other'],
    yarn: 'yarn',
    ball: 'one ball',
    ballOf: (/** @type {Text} */ mass, /** @type {Text} */ yarn) => `${mass}, ${yarn}`,
    mass: 'weighs',
    balls: 'balls',
    ballsJust: (/** @type {Text} */ n) => `${n}, just`,
    spare: 'left over',
    thickness: 'thickness',
    fabric: 'fabric',
    unknown: 'not told',
    first: 'as planned',
    same: 'the same',
    thicker: (/** @type {Text} */ share) => `${share} thicker`,
    thinner: (/** @type {Text} */ share) => `${share} thinner`,
    firmness: /** @type {Record<string, string>} */ ({
      loose: 'loose',
      usual: 'usual for socks',
      firm: 'firm',
    }),
  },
};
