// Wool for the class, and the ways to take along what stands at the desk.

/** @typedef {string} Text */

export const takeWords = {
  csv: 'as a table (CSV)',
  ics: 'as calendar entries',
  copy: 'copy as text',
  print: 'print',
  copied: 'Copied: it can be pasted into a mail.',
  waits: 'Something is still to be mended, or being reckoned: this waits until then.',
  old: 'Mend what is marked above: this is the answer to what stood there before.',
  asFile: 'This browser lets nothing be copied for you: it is saved as a text file.',
};

export const supplyWords = {
  title: 'Wool for the class',
  empty: 'Tick the yarns and name the sizes: each pair then stands in a cell of its own.',
  hint: 'For the sock set here: its rib, toe, leg and fit. A number of stitches opens that pair as a plan.',
  caption: (/** @type {Text} */ margin) =>
    `Yarn for a pair, ${margin} to spare in it, in balls as such yarn is usually sold`,
  yarnHead: 'Yarn',
  scale: /** @type {Record<string, Text>} */ ({
    eu: 'EU',
    'us-women': 'US women’s',
    'us-men': 'US men’s',
    uk: 'UK',
    mondopoint: 'mm',
  }),
  shoe: (/** @type {Text} */ scale, /** @type {Text} */ size) => `${scale} ${size}`,
  foot: (/** @type {Text} */ length, /** @type {Text} */ girth) => `${length} long, ${girth} round`,
  /** The table's columns in a file. @type {(length: Text, yarn: Text, mass: Text) => Text[]} */
  heads: (length, yarn, mass) => [
    'yarn',
    'size',
    'stitches',
    `yarn for the pair (${yarn})`,
    `give or take (${yarn})`,
    'balls',
    `ball (${mass})`,
    `a sock (${mass})`,
    'needle (mm)',
    `cable (${length})`,
  ],
  stitches: (/** @type {Text} */ count) => `${count} st`,
  yarn: (/** @type {Text} */ yarn, /** @type {Text} */ error) => `${yarn} ± ${error}`,
  balls: (/** @type {Text} */ count, /** @type {Text} */ mass, /** @type {boolean} */ isJust) =>
    `${count} ${count === '1' ? 'ball' : 'balls'} of ${mass}${isJust ? ', a close count' : ''}`,
  sock: (/** @type {Text} */ mass) => `${mass} a sock`,
  needle: (/** @type {Text} */ mm, /** @type {Text} */ us) => (us ? `${mm} (US ${us})` : mm),
  cable: (/** @type {Text} */ length) => `${length} cable`,
  noCable: 'no cable is long enough',
  none: (/** @type {Text} */ code) =>
    /** @type {Record<string, Text>} */ ({
      count_out_of_range: 'no sock: too few or too many stitches for one',
      leg_too_short: 'no sock: the leg is too short for it',
      heel_out_of_reach: 'no sock: the heel will not go in',
      no_room_for_rib: 'no sock: no room for the rib',
    })[code] ?? 'no sock comes of this',
};
