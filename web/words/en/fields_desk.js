// The fields of the teacher's desk.

/** @type {Record<string, import('./fields.js').FieldWords>} */
export const deskFields = {
  '/supply/yarns': { label: 'Yarns, by the number on the label', short: 'yarns' },
  '/supply/scale': { label: 'Shoe scale', of: 'of the class', short: 'shoe scale' },
  '/supply/body': { label: 'Worn by', of: 'in the class', short: 'wearer' },
  '/supply/sizes': {
    label: 'Shoe sizes',
    short: 'shoe sizes',
    how: 'One after the other: 36, 38.5, 42',
  },
  '/supply/feet': {
    label: 'Or feet by tape',
    short: 'feet by tape',
    how: 'Length by girth at the ball, of each: 22 x 20 cm, 24 x 22 cm',
  },
  '/weeks/meetings': { label: 'Meetings', short: 'meetings' },
  '/weeks/minutesInClass': {
    label: 'Minutes of knitting in each',
    short: 'minutes in class',
    how: 'Less than the hour it is called: greeting and showing are no knitting.',
  },
  '/weeks/minutesAtHome': {
    label: 'Minutes at home',
    of: 'from one to the next',
    short: 'minutes at home',
    how: 'All together, from one meeting to the next. Empty: none.',
  },
  '/weeks/castOnMinutes': {
    label: 'Minutes to cast on',
    short: 'minutes for casting on',
    how: 'In the first meeting. Empty: 20.',
  },
  '/weeks/day': { label: 'The first is on', short: 'first day' },
  '/inHand/balls': { label: 'Balls of yarn in hand', short: 'balls in hand' },
  '/inHand/g': { label: 'or, weighed', of: ', the yarn in hand', short: 'yarn in hand' },
  '/weeks/time': { label: 'at', of: 'this time of day', short: 'time of day' },
  '/weeks/daysBetween': {
    label: 'Days from one to the next',
    short: 'days between',
    how: 'Empty: 7.',
  },
  '/drive/pairs': { label: 'Pairs wanted', short: 'pairs' },
  '/drive/women': {
    label: 'Women',
    of: ', parts of the feet',
    short: 'women',
    how: 'A part of the feet, of any size: 1 and 1, or 60 and 40.',
  },
  '/drive/men': { label: 'Men', of: ', parts of the feet', short: 'men' },
  '/drive/children': {
    label: 'Children',
    short: 'children',
    how: 'Their ages, each with its part of the feet where they differ: 6, 8, 10 x 2',
  },
  '/drive/sizes': {
    label: 'Sizes to make',
    short: 'sizes',
    how: 'Left out, as few as serve enough.',
  },
  '/drive/wantedShare': {
    label: 'Feet to serve',
    short: 'feet to serve',
    how: 'Left out, 90 %.',
  },
  '/drive/legOfFoot': {
    label: 'Leg height',
    short: 'leg height',
    how: 'As a share of the foot’s length. Left out, 80 %: 20 cm on a foot of 25.',
  },
  '/tags/seats': { label: 'Seats', short: 'seats', how: '1 to 60; left empty, 12.' },
  '/tags/lines': { label: 'On each', of: 'tag', short: 'what is on a tag' },
  '/drive/fibre': {
    label: 'Fibre',
    of: 'of the yarn',
    short: 'fibre',
    how: 'As on the label: 75 % wool, 25 % nylon. Left out, a line to write on.',
  },
  '/drive/washing': { label: 'To wash', short: 'washing', how: 'By hand, lukewarm; dry flat.' },
  '/drive/lots': {
    label: 'Wool at hand',
    short: 'wool at hand',
    how: '1.2 kg of 200 m per 100 g, 150 g. A weight or a length alone counts as the sock’s yarn.',
  },
};
