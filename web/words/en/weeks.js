// The weeks of a class: how far each pair comes in each meeting.

/** @typedef {string} Text */

const paceOf = (/** @type {Text} */ n) => `${n} ${n === '1' ? 'stitch' : 'stitches'} a minute`;

export const weeksWords = {
  title: 'The weeks',
  of: (/** @type {Text} */ title) => `${title}: the weeks`,
  empty:
    'Type how often the class meets, and how many minutes it knits each time. Told is every yarn ticked under “Wool for the class”, or else the sock set here.',
  mend: 'Mend what is marked above: then the weeks are told.',
  own: 'The sock set here',
  course: (
    /** @type {Text} */ meetings,
    /** @type {Text} */ inClass,
    /** @type {Text} */ atHome,
    /** @type {Text} */ all,
  ) =>
    `${meetings === '1' ? '1 meeting' : `${meetings} meetings`} of ${inClass} min${
      atHome === '0' ? '' : `, ${atHome} min at home from one to the next`
    }: ${all} of knitting in all.`,
  pair: (/** @type {Text} */ stitches, /** @type {Text} */ rounds) =>
    `${stitches} stitches, ${rounds} rounds a sock.`,
  inMeeting: (/** @type {number} */ meeting) => `in meeting ${meeting}`,
  atHomeAfter: (/** @type {number} */ meeting) => `at home after meeting ${meeting}`,
  done: (/** @type {Text} */ pace, /** @type {Text} */ where, /** @type {Text} */ spare) =>
    `At ${paceOf(pace)} the last round is knit ${where}, with ${spare} to spare.`,
  late: (
    /** @type {Text} */ pace,
    /** @type {Text} */ missing,
    /** @type {Text} */ rounds,
    /** @type {Text} */ total,
  ) =>
    `At ${paceOf(pace)} not done by the last meeting: ${missing} missing, and ${rounds} rounds of ${total} done.`,
  hardly: 'less than 5 min',
  least: (/** @type {Text} */ pace) =>
    `Under ${paceOf(pace)} the socks are not done by the last meeting.`,
  takes: (/** @type {Text} */ pace) => `It takes ${paceOf(pace)}.`,
  never: 'No hand is fast enough for that.',
  help: (/** @type {boolean} */ hasHomework) =>
    `Bind-off (cast-off) and tails come out of the time to spare. Who falls behind needs fewer rounds (a lower leg), or ${hasHomework ? 'more homework' : 'more time'}.`,
  caption:
    'Rounds of each sock that are done when a meeting begins and when it ends; and what falls into it, or into the homework after it.',
  head: 'When',
  meeting: (/** @type {number} */ n) => `Meeting ${n}`,
  meetingOf: (/** @type {Text} */ title, /** @type {number} */ n, /** @type {number} */ all) =>
    `${title}: meeting ${n} of ${all}`,
  untitled: 'Two socks at once',
  after: 'After the last',
  rounds: (/** @type {Text} */ from, /** @type {Text} */ to) => `rounds ${from}–${to}`,
  span: (/** @type {Text} */ from, /** @type {Text} */ to) => `${from}–${to}`,
  finished: 'done',
  home: (/** @type {Text} */ what) => `at home: ${what}`,
  milestone: {
    castOn: 'cast on',
    toe: 'toe done',
    firstShift: 'the rib’s first step',
    tryOn: 'try on',
    cuff: 'cuff begins',
    bindOff: 'bind off (cast off)',
  },
  afterRound: (/** @type {Text} */ what, /** @type {Text} */ rounds) => `${what} after ${rounds}`,
  hint: 'For the foot of the sock on the page, at the sheet’s own pace (“Your own pace”): a larger foot takes longer. A round counts once it is whole on both socks.',
  calendar:
    'A calendar entry is as long as the knitting in it. Taken anew under the same title, they replace those of before: give another class another title.',
  noCalendar: (/** @type {Text} */ missing) => `For calendar entries type ${missing} too.`,
  missing: { day: 'the first day', time: 'the time of day', both: 'the first day and the time' },
};
