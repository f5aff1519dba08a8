// The fields of a sock that is on the needles: what is measured on it, and what is left for it.

/** @type {Record<string, import('./fields.js').FieldWords>} */
export const needlesFields = {
  '/needles/roundsDone': {
    label: 'Rounds done',
    of: 'of each sock',
    short: 'rounds done',
    how: 'Of each sock, the toe’s among them.',
    needed: 'How many rounds are done? All the rest hangs on that.',
  },
  '/needles/stitches': {
    label: 'Stitches',
    of: 'of the toe',
    short: 'stitches of the toe',
    how: 'Across one layer of the toe, lying flat and not pulled.',
  },
  '/needles/widthMm': { label: 'over', of: 'a width of', short: 'toe width' },
  '/needles/rounds': {
    label: 'Rounds',
    of: 'of the toe',
    short: 'rounds of the toe',
    how: 'Up the middle, the needle left out.',
  },
  '/needles/lengthMm': { label: 'over', of: 'a length of', short: 'length of the toe' },
  '/needles/gramsLeftA': { label: 'Left of yarn A', short: 'yarn left of A' },
  '/needles/gramsLeftB': { label: 'Left of yarn B', short: 'yarn left of B' },
  '/stripes/repeat/stripes': {
    label: 'Its colours, as they leave the ball',
    short: 'colours of the yarn',
    how: 'Their lengths, a name where you have one: white 3.5 m, red 2 m, white 3.5 m, 8 m',
  },
  '/stripes/repeat/from': { label: 'The pair is knit from', short: 'where the yarn is from' },
  '/stripes/repeat/ballM': {
    label: 'One ball holds',
    short: 'length of the ball',
    how: 'Left out, as the plan’s yarn.',
    needed: 'How much yarn the one ball holds is needed for this.',
  },
  '/stripes/repeat/startAM': {
    label: 'A’s ball begins',
    of: 'so far into the repeat',
    short: 'beginning of A’s ball',
    how: 'So far into the repeat.',
  },
  '/stripes/repeat/startBM': {
    label: 'B’s ball begins',
    of: 'so far into the repeat',
    short: 'beginning of B’s ball',
    how: 'Of a ball of its own.',
  },
  '/stripes/own/stripes': {
    label: 'Rounds of each colour, over and over',
    short: 'your stripes',
    how: 'blue 3, white 2',
  },
  '/stripes/leftovers/lots': {
    label: 'What you have, in the order you like best',
    short: 'leftovers',
    how: '35 g of 210 m per 100 g, red 60 m, 20 g. A weight alone counts as the sock’s yarn.',
  },
};
