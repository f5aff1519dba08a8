// What is kept, what can be taken back, and what a link brings.

/** @typedef {string} Text */

export const keptWords = {
  undo: 'undo',
  redo: 'redo',
  anew: 'begin anew',
  notKept:
    'Not saved here: this browser keeps nothing for the page. It is gone when the page is closed.',
  elsewhere: 'This sock was changed in another tab.',
  theirs: 'take that one',
  mine: 'keep this one',
  aside: 'Something kept here could not be read. It was set aside, not deleted.',
  download: 'download it',

  share: 'share this sock',
  shareLabel: 'A link to this sock',
  copied: 'Copied. Whoever opens it sees this sock; nothing is sent anywhere else.',
  byHand: 'To be copied: whoever opens it sees this sock.',

  visit: 'This sock came by a link. Yours is kept as it was.',
  makeMine: 'make it mine',
  backToMine: 'back to mine',
  madeAs: (/** @type {Text} */ was, /** @type {Text} */ is) =>
    `The link was made as ${was}; here it comes to ${is}.`,
  counts: (/** @type {number} */ stitches, /** @type {number} */ rounds) =>
    `${stitches} stitches and ${rounds} rounds`,
  /** By the core's codes; nothing of the reader's own has been touched. */
  badLink: /** @type {Record<string, Text>} */ ({
    link_cut: 'The link was cut short on its way. Ask for it again, or copy it whole.',
    link_damaged: 'The link was changed on its way: some letter in it is wrong. Ask for it again.',
    link_newer:
      'The link was made by a newer page than this one. Reload the page, then open it again.',
    link_too_long: 'That is too long for a link to a sock. It was not opened.',
    link_not_ours:
      'What stands behind the # in the address is no link to a sock. It was not opened.',
  }),
};
