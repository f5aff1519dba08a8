// The printed sheet: one person's pair on one side of paper.

/** @typedef {string} Text */

export const sheetWords = {
  print: 'print the sheet',
  printNote: 'One side of paper: counts, toe, rib, rounds to tick.',
  printList: 'print the list',
  name: 'Twinround',
  own: 'name of this sock',
  wraps: 'wraps a sock',
  stitches: 'stitches a round',
  toe: 'toe rounds',
  rounds: 'rounds in all',
  yarn: 'yarn, the pair',
  girth: (/** @type {Text} */ girth) => `${girth} round`,

  toeTitle: 'Toe',
  toeHeads: ['rounds', 'work', 'then a half', 'a sock', ''],
  ribTitle: 'Rib',
  cuffTitle: 'Cuff, and off',
  bindOff: '*k2tog through the back loops, slip it back to the left tip*: loosely, to the end.',
  widerTitle: 'The leg grows wider',

  milestones: {
    title: 'Milestones',
    heads: ['', 'round', 'from tip', ''],
    castOn: (/** @type {Text} */ wraps) => `wrap B ${wraps} times, then A ${wraps}`,
    rib: (/** @type {Text} */ rib) => `toe done: begin the rib, ${rib}`,
    move: 'the rib moves for the first time',
    tryOn: 'a lifeline, and both tried on past the heel',
    wider: (/** @type {Text} */ rib) => `the leg widens, to ${rib}`,
    cuff: 'cuff, straight up',
    bindOff: 'all rounds done: bind off (cast off)',
  },

  yarnTitle: 'Yarn for one sock',
  all: 'one sock',
  needle: (/** @type {Text} */ needle, /** @type {Text} */ cable) =>
    cable === '' ? `Needle: ${needle}` : `Needle: ${needle}, ${cable} from tip to tip`,

  strip: {
    title: 'A box a round',
    name: (/** @type {Text} */ rounds) =>
      `Every round of the sock as a box to tick, ${rounds} in all`,
    key: '+ increase   ◣ the rib moves',
    keyWider: '   ▼ the leg widens',
  },
  care: 'With care',
};
