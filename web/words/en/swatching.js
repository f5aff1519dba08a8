// What to swatch and how.

/** @typedef {string} Text */

/** At least so large, as people say it. @type {Record<string, Text>} */
const size = { metric: '10 cm (4 in)', inch: '4 in (10 cm)' };

/** @typedef {{ lead: Text, text: Text }} Step */

export const swatchingWords = {
  title: 'First, a swatch',
  fold: 'How to knit a swatch',
  lead: 'An evening’s knitting that saves a sock. With it, the guesses on this page go.',
  /** @returns {Step[]} */
  steps: (/** @type {Text} */ needle, /** @type {'metric' | 'inch'} */ system) => [
    {
      lead: 'Knit it in the round,',
      text: 'as the sock will be: 40 stitches at least. Or begin the sock and knit its toe: no swatch is better.',
    },
    {
      lead: 'Flat is quicker and less sure.',
      text: 'Every other row is purled then, and many hands purl looser than they knit.',
    },
    {
      lead: `Begin on ${needle},`,
      text: `in stockinette (stocking stitch): at least ${size[system]} each way, and a border round it.`,
    },
    {
      lead: 'Wash it',
      text: 'as the sock will be washed, and dry it flat.',
    },
    {
      lead: 'Count in the middle,',
      text: 'away from the edges, to a quarter of a stitch; stitches across and rounds up. Do it in three places: each is a reading.',
    },
    {
      lead: 'Have a scale?',
      text: 'Weigh the piece and count its stitches: nothing tells the yarn better.',
    },
  ],
  done: 'I have a swatch: fill it in',
};
