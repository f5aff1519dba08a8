// The leg grows wider: how to knit it so, and what else could be done.

/** @typedef {string} Text */

const stitches = (/** @type {Text} */ n) => (n === '1' ? 'stitch' : `${n} stitches`);

export const widerWords = {
  title: 'The leg grows wider',
  lead: (
    /** @type {Text} */ height,
    /** @type {Text} */ from,
    /** @type {Text} */ to,
    /** @type {number} */ times,
  ) =>
    `From ${height} above the floor the leg is too wide for ${from} stitches. So every repeat of the rib gains ${
      times === 1 ? 'a stitch once' : `a stitch, ${times === 2 ? 'twice' : `${times} times`}`
    }, up to ${to}. The ribs go on unbroken, only broader, and keep stepping as before.`,
  made: /** @type {Record<string, Text>} */ ({
    m1p: 'M1P (make one purlwise): lift the strand between the needles from back to front and purl its front leg.',
    m1l: 'M1L: lift the strand from front to back and knit its back leg.',
    m1r: 'M1R: lift the strand from back to front and knit its front leg.',
  }),
  stage: (/** @type {Text} */ rib, /** @type {Text} */ n) => `To ${rib}, ${n} stitches`,
  at: (
    /** @type {Text} */ ofRib,
    /** @type {Text} */ ofSock,
    /** @type {Text} */ fromTip,
    /** @type {Text} */ height,
  ) =>
    `Round ${ofRib} of the rib, ${ofSock} of the sock, ${fromTip} from the tip of the toe: the leg needs it from ${height} above the floor. Both socks, this one round:`,
  makes: (/** @type {Text} */ rib, /** @type {Text} */ n, /** @type {Text} */ half) =>
    `From here on the rib is ${rib}: ${n} stitches a sock, ${half} in each half.`,
  crosses: (/** @type {Text} */ n, /** @type {boolean} */ isOn) =>
    isOn
      ? `The halves are uneven now. Slip the last ${stitches(n)} of the first half over to the second, each sock.`
      : `The halves are uneven now. Slip the first ${stitches(n)} of the second half over to the first, each sock.`,
  crossesMirrored: (/** @type {Text} */ n, /** @type {boolean} */ isOn) =>
    isOn
      ? `The halves are uneven now. On A slip the last ${stitches(n)} of the first half over to the second; on B, the mirror, the first ${stitches(n)} of the first half over to the end of the second.`
      : `The halves are uneven now. On A slip the first ${stitches(n)} of the second half over to the first; on B, the mirror, the last ${stitches(n)} of the second half over to the start of the first.`,
  caption: (/** @type {Text} */ rib) => `${rib}: rounds counted from the first of the rib`,
  again: (/** @type {Text} */ last) =>
    `Then from the second line of the table again, moving on as before, up to round ${last}.`,
  then: (/** @type {Text} */ rounds) =>
    `From the first widening round to the cuff that is ${rounds} in all.`,
  otherwise: 'Or instead: a larger needle, and a new swatch',
  needle: (
    /** @type {Text} */ n,
    /** @type {Text} */ height,
    /** @type {Text} */ size,
    /** @type {Text} */ gauge,
    /** @type {Text} */ over,
  ) =>
    `Keep the ${n} stitches and, from ${height} above the floor, go on with a larger needle. Try ${size} first: it has to come to ${gauge} stitches ${over}, or fewer.`,
  swatchFirst:
    'That gauge (tension) is not known until it is swatched in this yarn on that needle. Looser fabric wears sooner, and the rounds and the yarn told here are of the leg that widens, not of this one.',
};
