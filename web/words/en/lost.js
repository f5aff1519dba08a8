// Lost count: how to look at the sock, which round that is, and how to mend a step at the wrong round.

/** @typedef {string} Text */

export const lostWords = {
  how: 'Start at the needle and go down one knit rib to the last place where it steps over: a stitch that was purled begins to be knit. Count the rounds from there up to the needle, the stepping one among them. Then follow the rib down to the toe, and count its steps.',
  straight:
    'A straight rib never steps over. Count its rounds from where it begins, up a column of knit stitches, and say 0 steps.',
  drawing: {
    name: 'A rib that steps over by one stitch; the rounds are counted anew from that step',
    title: '',
    begin: 'rounds since the step →',
    parts: /** @type {Record<string, Text>} */ ({ below: '', above: 'a step' }),
  },
  sock: { a: 'A', b: 'B' },
  found: (/** @type {Text} */ sock, /** @type {Text} */ round, /** @type {Text} */ next) =>
    round === '0'
      ? `${sock}: only the cast-on is done, you are at the beginning of round 1.`
      : `${sock}: round ${round} is knit, you are at the beginning of round ${next}.`,
  several: (/** @type {Text} */ sock, /** @type {Text} */ period) =>
    `${sock} looks like that every ${period}. Say about where you are, or go on from the one it is:`,
  others: 'It looks the same after any of these, if that is not the one:',
  after: (/** @type {Text} */ round) => `round ${round}`,
  notBegun: 'Begin the sock above, then the page can go on from there.',
  at: (/** @type {Text} */ next) => `The page is at round ${next} now.`,
  atEnd: 'The page has every round done now.',
  go: 'go on from there',
  goLevel: (/** @type {Text} */ round) => `they are level: go on from round ${round}`,
  level: 'Both socks stand alike.',
  apart: (
    /** @type {Text} */ behind,
    /** @type {Text} */ ahead,
    /** @type {Text} */ rounds,
    /** @type {Text} */ last,
  ) =>
    `${behind} is ${rounds} behind. Knit ${behind} alone, both halves of every round, while ${ahead} is only slid along the cable. After ${rounds} both stand at the end of round ${last}.`,
  unpick: (/** @type {Text} */ rounds, /** @type {Text} */ stitches) =>
    `Unpick: ${rounds} of both socks, ${stitches} stitches, and knit them again.`,
  hook: (/** @type {Text} */ columns, /** @type {Text} */ stitches) =>
    `Or mend it where it is: at either edge of each knit rib drop one stitch down to the wrong round and hook it up again the other way, purl for knit and knit for purl. That is ${columns} columns on both socks, ${stitches} stitches, one column at a time.`,
  hookAll: (/** @type {Text} */ columns, /** @type {Text} */ stitches) =>
    `Mended where it is, every stitch would be dropped down to the wrong round and hooked up again the other way: all ${columns} columns of both socks, ${stitches} stitches, one column at a time. To unpick is easier.`,
};

export const lostFields = {
  ...Object.fromEntries(
    ['a', 'b'].flatMap((sock) => {
      const of = `of sock ${sock.toUpperCase()}`;
      return [
        [
          `/found/${sock}/columns`,
          {
            label: 'Steps of a rib',
            of,
            short: `steps ${of}`,
            how: 'All, from the toe up; 0 before the first.',
            needed: 'How often has it stepped over? Or say how a round begins, below.',
          },
        ],
        [
          `/found/${sock}/since`,
          {
            label: 'Rounds since',
            of: `the last step ${of}`,
            short: `rounds since the step ${of}`,
            how: 'Its own round is the first.',
            needed: 'How many rounds are there since the last step?',
          },
        ],
        [
          `/found/${sock}/place`,
          {
            label: `${sock.toUpperCase()} begins with`,
            of: 'so many stitches of the repeat already past',
            short: `the beginning ${of}`,
            how: '0: a rib’s first knit stitch; 1: its second stitch; and so on.',
          },
        ],
        [
          `/found/${sock}/near`,
          {
            label: 'about round',
            of,
            short: `about round ${of}`,
            how: 'A guess will do.',
          },
        ],
        [
          `/found/${sock}/rounds`,
          {
            label: `Toe rounds of ${sock.toUpperCase()}`,
            short: `toe rounds ${of}`,
            how: 'Up the middle, the cast-on left out.',
          },
        ],
      ];
    }),
  ),
  '/found/misstep/roundsSince': {
    label: 'Rounds since',
    of: 'the wrong one',
    short: 'rounds since the wrong one',
    how: 'The wrong one is the first.',
  },
};

export const lostProblems = {
  beyond_toe: (/** @type {Record<string, Text>} */ { max }) =>
    `The toe has ${max} rounds. If there are more, the rib has begun: count that.`,
  too_many_since: (/** @type {Record<string, Text>} */ { max }) =>
    `The rib steps over every ${max} rounds: look for a later step, and count from there.`,
  beyond_rib: (/** @type {Record<string, Text>} */ { max }) =>
    `Before the cuff it can be ${max} at most: count again.`,
  beyond_cuff: (/** @type {Record<string, Text>} */ { max }) =>
    `From there to the edge of the cuff there are ${max} rounds: count again from the last step, in a straight rib from where it begins.`,
  never_moves: () =>
    'This rib is straight: say 0 steps, and count the rounds from where the rib begins.',
  place_not_reached: () =>
    'The rib does not stand like that in any round it can be told by this. Count its steps instead.',
};
