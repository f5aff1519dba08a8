// The band round a pair that is given away: two on one side of paper.

/** @typedef {string} Text */

export const bandWords = {
  print: 'print the band',
  title: 'A pair of spiral socks',
  noHeel: 'No heel: each sock fits either foot and turns as it likes.',
  sided: 'One left, one right: the great toe shows which. No heel.',
  foot: 'for feet of',
  range: (/** @type {Text} */ from, /** @type {Text} */ to) => `${from} to ${to}`,
  one: (/** @type {Text} */ length) => `about ${length}`,
  shoes: 'shoe sizes',
  scales: /** @type {Record<string, Text>} */ ({
    eu: 'EU',
    uk: 'UK',
    'us-women': 'US women',
    'us-men': 'US men',
  }),
  yarn: 'yarn',
  lines: ['fibre', 'to wash', 'made for', 'made by'],
  fold: 'fold here, round the pair',
  care: 'Socks slide on smooth floors. For an infant: look for loose threads inside, and leave no small parts on them.',
};
