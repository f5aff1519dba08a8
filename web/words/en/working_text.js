// What lines of working share.

/** @typedef {string} Text */
/** @typedef {Record<string, Text>} Numbers written out, each with its unit where it has one, by name */

/**
 * @typedef {object} Units of the reader
 * @property {Text} length "cm" or "in"
 * @property {Text} an the article that the length takes
 * @property {Text} perYarn how many centimetres a metre has, or inches a yard
 * @property {Text} fourInches what a label's stitches are counted over
 */

/**
 * @typedef {object} Circumstances that change a rule, so that a line would not be true of it
 * @property {boolean} isLeftAndRight of the toe
 */

/**
 * @typedef {object} Line
 * @property {readonly string[]} of the numbers put in
 * @property {(circumstances: Circumstances) => boolean} [unless]
 * @property {true} [isElse] only where the line before it could not be said
 * @property {(numbers: Numbers, units: Units) => Text} say
 */

/** A share behind the 1 that it is added to: "− 10 %", "+ 5 %". @param {Text} share */
export const ease = (share) =>
  share.startsWith('\u2212') ? `\u2212 ${share.slice(1)}` : `+ ${share}`;
