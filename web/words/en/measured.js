// Measured on the needles, and yarn left: what the sock in hand comes to, and what can still be done.

/** @typedef {string} Text */

export const measuredWords = {
  table: {
    caption: (/** @type {Text} */ over) => `Stitches and rounds ${over}, give or take`,
    heads: ['', 'stitches', 'rounds'],
    swatch: 'swatch',
    label: 'yarn’s label',
    toe: 'toe',
    together: 'together',
    alone: 'counts: the toe',
    none: 'not measured',
    mean: (/** @type {Text} */ mean, /** @type {Text} */ take) => `${mean} ± ${take}`,
  },
  weighed: 'Together: each counts the more, the surer it is. What follows goes by that.',
  apart: (/** @type {Text} */ errors) =>
    `They lie ${errors} times their give or take apart: that is not one fabric. Count the toe once more. What follows goes by the toe alone; measure again after the next ten rounds.`,
  examples: 'Your swatch is still the example’s: only the toe counts.',

  /** By how many there are. */
  ways: [
    'One way to go on: no other count fits better',
    'Two ways to go on, and what each costs',
    'Three ways to go on, and what each costs',
  ],
  advised: 'advised',
  title: /** @type {Record<string, (n: Text) => Text>} */ ({
    keep: (n) => `Keep on with ${n}`,
    change: (n) => `Change to ${n} at the rib’s start`,
    restart: (n) => `Start again with ${n}`,
  }),
  keep: 'Knit on as begun.',
  over: (/** @type {Text} */ rounds) =>
    `All is knit: the cuff is ${rounds} longer than you asked for. There is nothing to unpick: bind off (cast off) now.`,
  rounds: (/** @type {Text} */ now, /** @type {Text} */ planned) =>
    `The same length now takes ${now} rounds in place of ${planned}; the rib makes up the difference.`,
  back: (/** @type {Text} */ to, /** @type {Text} */ lost) =>
    `Unpick ${lost}, to the end of round ${to}.`,
  roundsOf: (/** @type {number} */ n) => (n === 1 ? 'one round' : `${n} rounds`),
  /** What to work in a round of the toe, by the sides that it widens now. */
  step: /** @type {Record<string, (round: Text, stitches: Text) => Text>} */ ({
    none: (round, n) => `Round ${round}: leave the increases out; ${n} stitches.`,
    both: (round, n) => `Round ${round}: increase as in the toe’s other rounds; ${n} stitches.`,
    great: (round, n) =>
      `Round ${round}: increase at the start of the first half and the end of the second only; ${n} stitches.`,
    little: (round, n) =>
      `Round ${round}: increase at the end of the first half and the start of the second only; ${n} stitches.`,
  }),
  added: (/** @type {Text} */ step) => `${step} It is one more than the toe was planned with.`,
  ribFrom: (/** @type {Text} */ round, /** @type {Text} */ n) =>
    `The rib begins with round ${round}, and goes by the plan for ${n} from there.`,
  restart: 'Unpick all of it, cast on anew, and go by the new plan.',
  passes: 'It would not go over heel and leg.',
  figures: {
    lost: 'rounds lost',
    toGo: 'rounds to go',
    girth: 'girth, flat',
    ease: 'on the foot',
    heel: 'stretch for the heel',
    pair: 'yarn of the pair',
    yarn: 'of that to go',
    time: 'time to go',
  },
  anew: (/** @type {Text} */ n) => `The plan for ${n}`,
  isBegun:
    'This sock is begun and keeps its plan. Make another from it, which can be changed; then put the toe’s reading into its swatch.',
  another: 'another sock from this one',
  byToeAlone:
    'The toe’s reading takes the place of your swatch’s, and the whole plan is made anew by it, to the count and the yarn told above. It can be undone.',
  byBoth:
    'The toe’s reading becomes one more of your swatch, and the whole plan is made anew. It pools them all alike, so it may differ a little from what is told above. It can be undone.',
  toSwatch: 'put the toe’s reading into the swatch',
};

export const yarnLeftWords = {
  title: /** @type {Record<string, Text>} */ ({ a: 'Sock A', b: 'Sock B' }),
  left: (/** @type {Text} */ yarn) => `${yarn} left`,
  lasts: (/** @type {number} */ n) =>
    n === 0
      ? 'All rounds are knit: bind off (cast off) now.'
      : `It lasts for the ${n === 1 ? 'one round' : `${n} rounds`} to go, and the bind-off (cast-off).`,
  over: (/** @type {Text} */ yarn, /** @type {number} */ n) =>
    `${yarn} will be left over${
      n === 0
        ? ''
        : `: yarn for ${n === 1 ? 'one round' : `${n} rounds`} more than the plan asks for`
    }.`,
  high: (/** @type {Text} */ leg) => `Ended there, the leg is ${leg} high.`,
  inFoot: 'Ended there, it would not even reach the leg.',
  short: (/** @type {number} */ n, /** @type {Text} */ last, /** @type {Text} */ lack) =>
    n === 0
      ? `It does not last: bind off (cast off) now, ${lack} short of the plan.`
      : `It does not last: yarn for ${n === 1 ? 'one round' : `${n} rounds`} more, to round ${last}, ${lack} short of the plan.`,
  rescue: (/** @type {number} */ n, /** @type {Text} */ last) =>
    `There is too little left to bind off (cast off). Unpick ${n === 1 ? 'the last round' : `the last ${n} rounds`} and bind off after round ${last}.`,
  stop: (/** @type {Text} */ mass, /** @type {Text} */ yarn) =>
    `Stop when ${mass} are left, ${yarn}: the bind-off and its tail take that.`,
  join: (/** @type {Text} */ round) =>
    `Or join a new ball, at the latest where round ${round} begins: at the start of a half, with long tails, never under the ball of the foot.`,
  noJoin:
    'All the rounds that it reaches lie under the ball of the foot, where a join is felt. Unpick to below it to join a new ball.',
  both: (/** @type {Text} */ last) =>
    `Both socks alike: bind off the two after round ${last}, or even out the yarn between them.`,
  even: (/** @type {Text} */ last) => `Both socks alike: bind off the two after round ${last}.`,
  askRounds: 'Say above how many rounds are done: without them this cannot be told.',
  guessed:
    'How long a gram is was guessed from the yarn’s weight. Fill in a ball’s grams and length to be sure.',
};
