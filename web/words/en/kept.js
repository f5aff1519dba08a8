// What is kept, what can be taken back, and what a link brings.

/** @typedef {string} Text */

export const keptWords = {
  undo: 'undo',
  redo: 'redo',
  anew: 'begin anew',
  notKept:
    'Not saved here: this browser keeps nothing for the page. Take the link, or save a file, before you close it.',
  opaque:
    'Not saved here, and no printing or files either: the frame that this page stands in allows none of it. Take the link, and open it in a window of its own.',
  elsewhere: 'This sock was changed in another tab.',
  theirs: 'take that one',
  mine: 'keep this one',
  aside: 'Something kept here could not be read. It was set aside, not deleted.',
  download: 'download it',

  begun: 'This sock is begun: its numbers stay as they were cast on.',
  remade:
    'This sock is begun, but what was kept of it cannot be shown. What you see is what today’s rules make of it: hold it against what is on your needles.',
  begin: 'I have cast on: begin this sock',
  stillExample: (/** @type {Text} */ parts) => `Still the example’s, not yours: ${parts}.`,
  notBegun: 'not begun after all',
  placeForgotten: (/** @type {string} */ round) =>
    `You are in round ${round}: that place is forgotten, and the numbers can be changed again.`,
  another: 'another sock from this one',
  removed: (/** @type {Text} */ name) => `Removed: ${name.trim() || 'a sock without a name'}.`,
  putBack: 'put it back',
  yourSocks: 'your socks',

  opened: (/** @type {number} */ n, /** @type {number} */ known) =>
    `${n} opened${known > 0 ? `; ${known} here already` : ''}.`,

  course: 'From your class',
  settled: (/** @type {Text[]} */ parts) => `Set by the class: ${parts.join(', ')}.`,
  whichYarns: 'which yarns',
  leaveClass: 'leave the class’s settings',

  share: 'share this sock',
  code: 'The link as a QR code',
  noAddress:
    'This copy lies on a disk and has no address that others could open. Put this behind the address of the page.',
  shareLabel: 'A link to this sock',
  copied: 'Copied. Whoever opens it sees this sock; nothing is sent anywhere else.',
  byHand: 'To be copied: whoever opens it sees this sock.',

  visit: 'This came by a link. Your own sock is kept as it was.',
  makeMine: 'add it to my socks',
  backToMine: 'back to my own',
  madeAs: (/** @type {Text} */ was, /** @type {Text} */ is) =>
    `The link was made as ${was}; here it comes to ${is}.`,
  counts: (/** @type {number} */ stitches, /** @type {number} */ rounds) =>
    `${stitches} stitches and ${rounds} rounds`,
  /** Nothing that is kept here has been touched. */
  badFile: /** @type {Record<string, Text>} */ ({
    no_json: 'That file is no save file, or was cut short. Nothing was opened.',
    not_ours:
      'That file holds no sock that this page can read: it is of another kind, or of a newer page. Nothing was opened.',
    some_unread: 'Some socks of that file could not be read. The others are among your socks.',
    no_room:
      'There is no room for all of that file in this browser: what could not be kept is gone when the page is closed. Save it to a file first.',
    too_large: 'That file is too large for a save file. It was not opened.',
  }),
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
