// The rib chart, the round strip's table, and saving a drawing as a file.

/** @typedef {string} Text */

export const chartWords = {
  lead: 'The outside of the sock, a square a stitch. Begin at the bottom right, work to the left, then go up a round.',
  most: (/** @type {Text} */ n) => `Up to ${n} rounds at a time.`,
  of: (/** @type {Text} */ total) => `of ${total}`,
  title: (/** @type {Text} */ sock, /** @type {Text} */ rounds, /** @type {Text} */ total) =>
    `${sock === '' ? 'rounds' : `${sock}: rounds`} ${rounds} of ${total}`,
  name: (/** @type {Text} */ title, /** @type {Text} */ stitches) =>
    `Chart, ${title}, up to ${stitches} stitches wide. The same rounds stand in words below.`,
  scroll: (/** @type {Text} */ title) => `Chart, ${title}: scroll sideways to see all of it`,
  begin: '← begin here',
  socks: { a: 'sock A', b: 'sock B' },
  jumps: 'Show',
  turn: 'one whole turn of the rib',
  turnBegin: 'how the rib begins to turn',
  section: (/** @type {Text} */ name) => `the ${name}`,
  sectionBegin: (/** @type {Text} */ name) => `how the ${name} begins`,
  lower: 'lower rounds',
  higher: 'higher rounds',
  keyName: (/** @type {Text[]} */ signs) => `Key to the chart. ${signs.join('; ')}.`,
  /** Each broken into the lines it is drawn in. */
  key: /** @type {Record<string, { sign: Text, lines: Text[] }>} */ ({
    k: { sign: 'blank square', lines: ['knit'] },
    p: { sign: 'dot', lines: ['purl'] },
    m1r: { sign: 'stem with an arm to the right', lines: ['M1R, made by knitting'] },
    m1l: { sign: 'stem with an arm to the left', lines: ['M1L, made by knitting'] },
    m1p: { sign: 'stem with two arms', lines: ['M1P, made by purling'] },
    changed: {
      sign: 'bar under the square',
      lines: ['moved: knit over a purl,', 'or purl over a knit'],
    },
    half: { sign: 'strong line', lines: ['the first half ends: go on', 'to the other sock'] },
    gap: { sign: 'no square', lines: ['no stitch here in this round'] },
  }),
  table: {
    open: 'The chart in words',
    caption: 'The rounds of the chart, from the lowest up',
  },
  strip: {
    open: 'The rounds as a table',
    caption: 'One sock, from the toe up',
    part: 'part',
    rounds: 'rounds',
    what: 'what happens',
    adds: (/** @type {number} */ n, /** @type {Text} */ rounds) =>
      `stitches added in ${n === 1 ? 'round' : 'rounds'} ${rounds}`,
    moves: (/** @type {Text} */ move) => `the rib: ${move}`,
    straight: 'straight up',
    plain: 'knit',
  },
  save: {
    lead: 'save as',
    label: (/** @type {Text} */ what, /** @type {Text} */ kind) => `save ${what} as ${kind}`,
    drawings: {
      pair: 'the pair',
      stretch: 'the stretch line',
      strip: 'the round strip',
      chart: 'the chart',
    },
    file: (/** @type {Text} */ what, /** @type {Text} */ stitches, /** @type {Text} */ rounds) =>
      `twinround ${what} ${stitches} stitches ${rounds}`,
    rounds: (/** @type {Text} */ rounds) => `rounds ${rounds}`,
  },
};
