// All socks that are kept here, and files of them.

/** @typedef {string} Text */

export const socksWords = {
  unnamed: 'a sock without a name',
  comesTo: (/** @type {Text} */ stitches, /** @type {Text} */ rounds) =>
    `${stitches} stitches, ${rounds} rounds`,
  unfinished: 'not a plan yet',
  begun: (/** @type {string} */ round) => `, begun, in round ${round}`,
  here: 'on the page',
  open: 'open',
  openNamed: (/** @type {Text} */ name) => `open ${name}`,
  remove: 'remove',
  removeNamed: (/** @type {Text} */ name) => `remove ${name}`,
};
