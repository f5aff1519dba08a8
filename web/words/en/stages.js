// From start to end: what to do at each stage of the pair, and the one thing before or at a round.

/** @typedef {string} Text */

const stitches = (/** @type {Text} */ n) => (n === '1' ? '1 stitch' : `${n} stitches`);

/** What a move of the rib is, by the way it goes: the same stitches are changed, on the other side of each rib. */
const moves = {
  left: 'knit the purl left of each rib, purl its rightmost knit',
  right: 'knit the purl right of each rib, purl its leftmost knit',
};

export const stagesWords = {
  title: 'Start to end',
  here: 'you are here',
  rounds: (/** @type {number} */ from, /** @type {number} */ to) =>
    from === to ? `round ${from}` : `rounds ${from}–${to}`,
  after: (/** @type {number} */ round) => `after round ${round}`,
  /** Cards that show how, by their names. @type {Record<string, Text>} */
  drawn: {
    castOn: 'the cast-on, drawn',
    round: 'a round, drawn',
    turn: 'the turn, drawn',
    m1r: 'M1R, drawn',
    m1l: 'M1L, drawn',
    m1p: 'M1P, drawn',
    rib: 'the move, drawn',
    tryOn: 'trying on, drawn',
    bindOff: 'the bind-off, drawn',
  },
  table: 'line by line, below',

  castOn: {
    title: 'Cast on both',
    yarn: (/** @type {Text} */ m, /** @type {Text} */ g) =>
      `A and B take ${m} (${g}) of yarn each, and something to spare.`,
    ends: 'From one ball: the outer end is A’s, the inner one B’s. Two balls: mark which is A’s.',
    // A Turkish cast-on, wrapped towards the points, so the sock wrapped last is knit first.
    steps: (/** @type {number} */ wraps, /** @type {number} */ all) => [
      'Hold the two tips together, points to the right, one above the other.',
      `B first: slip knot on the lower tip, then wrap yarn B ${wraps} times round both, up behind and down in front, each wrap nearer the points.`,
      `Then A the same way, ${wraps} wraps of yarn A between B and the points. That makes ${wraps} loops on each tip, ${all} stitches a sock. A slip knot is no stitch.`,
      'Draw the lower tip out to the right until its loops lie on the cable.',
    ],
    say: (/** @type {number} */ wraps) =>
      `Cast on first: B, then A, ${wraps} wraps each. In this round a loop that sits twisted is knit through its back leg.`,
  },
  setUp: {
    title: 'Set up: the first round',
    knit: 'With the lower tip, knit the loops of the upper one: A, then B. Turn, and knit the other side: B, then A, dropping each slip knot as you come to it. A loop that sits twisted is knit through its back leg.',
    passes:
      'So goes every round of the pair: four passes, the cable drawn out in a loop at each side.',
  },
  toe: {
    title: 'The toe',
    increase: (/** @type {Text} */ rounds, /** @type {Text} */ to) =>
      `Increase in rounds ${rounds}; knit all others. That makes ${stitches(to)} a sock.`,
  },
  measure: {
    title: 'Measure the toe',
    text: 'The toe is the best swatch: in the round, on this needle, by these hands. Lay it flat, unstretched, away from its tip.',
    link: 'Write down what it measures',
    say: 'Before this round measure the toe: it is the best swatch.',
  },
  rib: {
    title: 'The rib begins',
    first: (/** @type {number} */ round) => `Round ${round} is the first of the rib:`,
    lean: /** @type {Record<string, (every: Text, first: number) => Text>} */ ({
      left: (every, first) =>
        `Every ${every} it moves one stitch to the left, first in round ${first}: ${moves.left}.`,
      right: (every, first) =>
        `Every ${every} it moves one stitch to the right, first in round ${first}: ${moves.right}.`,
      mirrored: (every, first) =>
        `Every ${every} it moves one stitch, first in round ${first}. On A to the left: ${moves.left}. On B to the right: ${moves.right}.`,
      change: (every, first) =>
        `Every ${every} knit and purl change places, first in round ${first}.`,
    }),
    say: 'The first round of the rib.',
    move: /** @type {Record<string, Text>} */ ({
      left: `The rib moves one stitch to the left in this round: ${moves.left}.`,
      right: `The rib moves one stitch to the right in this round: ${moves.right}.`,
      mirrored: `The rib moves one stitch in this round. A, to the left: ${moves.left}. B, to the right: ${moves.right}.`,
      change: 'Knit and purl change places in this round.',
    }),
  },
  tryOn: {
    title: 'Try both on',
    text: (/** @type {Text} */ length) =>
      `At ${length} each sock reaches past the heel. Run a lifeline through every stitch of both, take the needle out of both, and draw each sock on past the heel: it should pass without straining the thread.`,
    say: 'Before this round: put in a lifeline and try both on past the heel.',
  },
  leg: {
    title: 'Up the leg',
    on: 'Slip the stitches back, right legs in front, and go on in the rib.',
    last: (/** @type {number} */ round) => `It moves for the last time in round ${round}.`,
  },
  wider: {
    first: (/** @type {number} */ round) => `Round ${round} makes it wider:`,
    say: (/** @type {Text} */ n) => `The leg widens in this round, to ${stitches(n)} a sock.`,
  },
  cuff: {
    title: 'The cuff',
    text: 'Straight on from where the rib stands: it moves no more.',
    say: 'The cuff begins: the rib moves no more.',
  },
  enough: (/** @type {Text} */ yarn) =>
    `Begin no further round with less than ${yarn} left of either yarn: that is the round, the bind-off and its tail.`,
  sayLast: (/** @type {Text} */ yarn) =>
    `The last round. It needs ${yarn} of each yarn, with the bind-off.`,
  bindOff: {
    title: 'Bind off (cast off) with give',
    steps: (/** @type {Text} */ yarn) => [
      `The elastic bind-off, also called lace or k2tog-tbl bind-off, on a needle a size or two larger: *knit 2 together through the back loops, slip the stitch made back to the left tip*, to the end. The edge then gives as much as the rib. It takes ${yarn} of yarn a sock.`,
      'On two socks: first half of A, then of B; the last loop of each waits on the right tip. Turn. Slip the waiting loop of B to the left tip, bind off its second half and fasten off; the same with A.',
    ],
    say: 'All rounds are done: bind off (cast off) with give.',
  },
  finish: {
    title: 'Ends, and a wash',
    text: 'Weave in the ends on the inside, wash the pair as it will be washed, and dry it flat.',
  },
  again: {
    title: 'Measure once more',
    text: (/** @type {Text} */ length, /** @type {Text} */ rest, /** @type {Text} */ girth) =>
      `Dry and flat, measure tip to edge, and round the foot, at rest and with the rib eased open. Planned: ${length} long, ${rest} at rest, ${girth} eased open.`,
    link: 'Keep both with your notes',
  },
  give: {
    title: 'To give away',
    text: 'A band for the pair: which feet it serves, its yarn, how to wash it. Two to a sheet, with lines to fill in.',
  },
};
