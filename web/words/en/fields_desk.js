// The fields of the teacher's desk.

/** @type {Record<string, import('./fields.js').FieldWords>} */
export const deskFields = {
  '/supply/yarns': { label: 'Yarns, by the number on the label', short: 'yarns' },
  '/supply/scale': { label: 'Shoe scale', of: 'of the class', short: 'shoe scale' },
  '/supply/body': { label: 'Worn by', of: 'in the class', short: 'wearer' },
  '/supply/sizes': { label: 'Shoe sizes', short: 'shoe sizes', how: '36, 38, 40, 42' },
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
  '/weeks/minutesAtHome': { label: 'At home, from one to the next', short: 'minutes at home' },
  '/weeks/castOnMinutes': { label: 'Casting on', short: 'minutes for casting on' },
  '/weeks/day': { label: 'The first is on', short: 'first day' },
  '/weeks/time': { label: 'at', short: 'time of day' },
  '/weeks/daysBetween': { label: 'Days from one to the next', short: 'days between' },
  '/drive/pairs': { label: 'Pairs wanted', short: 'pairs' },
  '/drive/women': { label: 'Women', of: ', parts of the feet', short: 'women' },
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
  '/drive/wantedShare': { label: 'Feet to serve', short: 'feet to serve' },
  '/drive/legOfFoot': { label: 'Leg, as a share of the foot', short: 'leg of the foot' },
  '/tags/seats': { label: 'Seats', short: 'seats', how: '1 to 60; left empty, 12.' },
  '/tags/lines': { label: 'On each', of: 'tag', short: 'what is on a tag' },
  '/drive/lots': {
    label: 'Wool at hand',
    short: 'wool at hand',
    how: '400 g of 200 m per 100 g, 150 g. A weight alone counts as the sock’s yarn.',
  },
};
