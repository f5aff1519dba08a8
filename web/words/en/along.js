// The sock as a file to take along.

/** @typedef {string} Text */

export const alongWords = {
  title: 'Take it along as a file',
  cells: 'Between the cells of the table',
  comma: 'comma',
  semicolon: 'semicolon',
  hint: 'Semicolon: for a spreadsheet that writes 3,5 with a comma.',
  csv: 'the rounds as a table (CSV)',
  json: 'the plan as data (JSON)',
  txt: 'the pattern as text',
  copy: 'copy the text',
  copied: 'Copied: it can be pasted into a mail.',
  byHand: 'This browser lets nothing be copied for you. The text is selected: copy it by hand.',
  text: 'The pattern as text',
  waits: 'Something on the sheet is still to be mended; the files wait until it is.',

  heads: ['round', 'part', 'stitches a sock', 'what happens'],
  half: (/** @type {Text} */ socks, /** @type {Text} */ half) => `${socks}, ${half}`,
  moves: 'the rib moves',
};
