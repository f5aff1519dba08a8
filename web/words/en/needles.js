// At the needles: the round in hand, pass by pass.

/** @typedef {string} Text */

export const needlesWords = {
  title: 'On the needles',
  round: (/** @type {Text} */ round, /** @type {Text} */ all) => `Round ${round} of ${all}`,
  done: 'All rounds are knit: bind off (cast off).',
  passes: 'The four passes of this round',
  pass: [
    { sock: 'A', half: 'first half' },
    { sock: 'B', half: 'first half' },
    { sock: 'B', half: 'second half' },
    { sock: 'A', half: 'second half' },
  ],
  turn: 'turn',
  state: { done: 'done', now: 'now', later: '' },
  next: 'done, on',
  back: 'back',
  undo: 'undo the last tap',
  stitches: 'stitches on each sock',
  used: 'yarn used, A and B',
  both: (/** @type {Text} */ a, /** @type {Text} */ b) => (a === b ? `${a} each` : `${a}, ${b}`),
  toGo: 'yarn still to go, the pair',
  hours: 'time still to go',
  hoursBy: (/** @type {Text} */ pace) => `at ${pace} stitches a minute`,
  timed: (/** @type {Text} */ rounds) => `, timed over ${rounds}`,
  leftOut: (/** @type {number} */ n) => `, ${n} too long or short to count`,
  ahead: 'What comes next',
  kinds: /** @type {Record<string, Text>} */ ({
    increase: 'an increase round',
    rib: 'the first rib round',
    shift: 'the rib moves over',
    widening: 'the leg widens',
    cuff: 'the cuff begins',
    bindOff: 'bind off (cast off)',
  }),
  inRounds: (/** @type {number} */ rounds, /** @type {Text} */ at) =>
    rounds === 0
      ? 'this round'
      : rounds === 1
        ? `next round, ${at}`
        : `in ${rounds} rounds, at round ${at}`,
  atEnd: (/** @type {number} */ rounds) =>
    rounds === 0 ? 'now' : rounds === 1 ? 'after this round' : `after ${rounds} more rounds`,

  wishes: 'While you knit',
  wake: 'keep the screen awake',
  wakeRefused: 'This browser would not keep the screen awake; its own settings may.',
  large: 'larger letters',
  night: 'dark',
  aloud: 'read aloud',
  noVoice: 'This device has no voice of its own to read with.',
  timing: 'time my rounds',
  timingNote: (/** @type {boolean} */ isRunning) =>
    isRunning ? 'This round is timed.' : 'The next round will be timed.',
  pause: 'pause',
  paused: 'Paused: the clock waits until “pause” is pressed again.',
  unkept: 'not kept yet',
  keys: 'Space or → is the next pass, ← one back; a headset’s “next track” too, where the browser passes it on.',
  elsewhere:
    'This sock was knit on in another window: this is where it stands. Your last tap here was not counted.',
  notKept: 'This browser keeps nothing here: the place is lost when the page is closed.',

  spoken: {
    work: /** @type {Record<string, Text>} */ ({
      k: 'knit',
      p: 'purl',
      m1r: 'make one right',
      m1l: 'make one left',
      m1p: 'make one purlwise',
    }),
    // A voice reads larger ones off their digits; these it may take for something else.
    counts:
      'no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
        ' ',
      ),
    turn: 'Turn.',
    times: (/** @type {Text} */ runs, /** @type {Text} */ n) => `${runs}, ${n} times`,
    pass: (/** @type {Text} */ sock, /** @type {Text} */ half, /** @type {Text} */ line) =>
      `${sock}, ${half}: ${line}.`,
    round: (/** @type {Text} */ round) => `Round ${round}.`,
    allHalf: /** @type {Record<string, Text>} */ ({ k: 'knit all', p: 'purl all' }),
  },
};
