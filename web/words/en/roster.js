// A class seat by seat: its table, what cannot be read of it, and what it takes together.

/** @typedef {string} Text */

const plural = (/** @type {Text} */ count, /** @type {Text} */ one, /** @type {Text} */ many) =>
  `${count} ${count === '1' ? one : many}`;

const seats = (/** @type {Text} */ count) => plural(count, 'seat', 'seats');

export const rosterWords = {
  title: 'Seat by seat',
  hint: 'A number for each seat is enough: names are not needed. What a row leaves out is the class’s own sock’s.',
  noHeads:
    'The first row has to say what stands in the columns, in any order, and as many of them as there are:',
  heads: [
    'seat',
    'yarn: the number on the label, 0 to 7, or its name',
    'stitches per 10 cm, or per 4 in; or stitches, and a column “width”',
    'rounds per 10 cm, or per 4 in',
    'foot, ball girth, heel (round heel and ankle): by tape, in cm or in; a heel left out is guessed large',
    'or shoe size, shoe scale (EU, US women, US men, UK), worn by (woman, man, child)',
    'leg: from the floor to the edge',
    'pace: stitches a minute',
    'balls, or grams in hand',
  ],
  sampleLabel: 'To begin with: an evening class in a harbour town, made up',
  sample: [
    [
      'seat',
      'yarn',
      'stitches per 10 cm',
      'rounds per 10 cm',
      'foot cm',
      'ball girth cm',
      'leg cm',
      'pace',
      'grams in hand',
    ],
    ['1', '1', '30', '42', '24,5', '22', '20', '25', '100'],
    ['2', '2', '26,5', '36', '25', '23,5', '20', '18', '150'],
    ['3', '4', '19', '26', '26', '24', '18', '15', '200'],
    ['4', '1', '', '', '23 1/2', '22', '15', '12', ''],
  ],
  copySample: 'copy this table',
  sheets: 'print a sheet for every seat',
  firstSheets: (/** @type {Text} */ count) => `The first ${count} of them.`,
  seat: (/** @type {Text} */ seat) => `seat ${seat}`,
  full: 'The field is full: rows at the end may be missing. A class here has up to 1 000 seats.',
  late: (/** @type {Text} */ count) => `Reckoning ${plural(count, 'sock', 'socks')} …`,
  planned: (/** @type {Text} */ count, /** @type {Text} */ all) =>
    count === all ? `${seats(all)}, all planned.` : `${count} of ${seats(all)} planned.`,
  whole: (/** @type {Text} */ text) => `The table: ${text}`,
  faultsTitle: 'To mend in the table',
  fault: (
    /** @type {Text} */ row,
    /** @type {Text} */ seat,
    /** @type {Text} */ column,
    /** @type {Text} */ text,
  ) =>
    [`Row ${row}`, seat && `seat ${seat}`, column && `“${column}”`].filter(Boolean).join(', ') +
    `: ${text}`,
  faultOfMany: (/** @type {Text} */ rows, /** @type {Text} */ column, /** @type {Text} */ text) =>
    `Rows ${rows}, “${column}”: ${text}`,
  andMore: (/** @type {Text} */ rows, /** @type {Text} */ count) => `${rows} and ${count} more`,
  more: (/** @type {Text} */ count) => `and ${count} more, each in its row of the table below.`,
  /** Of what was pasted; what is no number is told by the page's own words. @type {Record<string, (typed: Text, units: Text) => Text>} */
  faults: {
    which_unit: (_typed, units) =>
      `${units}? Say it in the head, as in “foot cm”, or behind each number.`,
    unknown_head: (typed) => `the column “${typed}” is not known here, and left out.`,
    repeated_head: (typed) => `“${typed}” says what a column before it says; that one counts.`,
    too_many_cells: () =>
      'more cells than the table has columns. Where commas part the cells, a decimal comma needs quotes.',
    half_gauge: () => 'stitches and rounds are both needed; or neither, for the class’s gauge.',
    over_what: () => 'over what width? Say it in the head: “stitches per 10 cm”.',
    not_a_yarn: (typed) => `“${typed}” is no yarn weight. A number from 0 to 7, as on the label.`,
    not_a_scale: (typed) => `“${typed}” is no shoe size. EU 38, US women 8, US men 9 or UK 5.`,
    us_which: () => 'US women or US men? Their numbers are not the same.',
    not_a_wearer: (typed) => `“${typed}” is not known: woman, man or child.`,
    both_in_hand: () => 'balls or grams, not both: weigh all of it, or count whole balls.',
    half_taped: () =>
      'a foot by tape takes both length and girth; with a shoe size leave both empty.',
  },
  oddGauge: (/** @type {Text} */ count) => `${seats(count)} with an odd gauge (tension):`,
  odd: (/** @type {Text} */ seat, /** @type {Text} */ text) => `Seat ${seat}: ${text}`,
  wool: {
    caption: 'Wool for all, what is to spare in it',
    heads: ['Yarn', 'Pairs', 'Yarn', 'Weight', 'Balls, whole for each pair'],
    withoutBall: (/** @type {Text} */ count) => `without ${plural(count, 'pair', 'pairs')}`,
  },
  needles: {
    caption: 'Needles to lend',
    heads: ['Needle', 'US', 'Cable', 'How many'],
    noCable: 'none is long enough',
  },
  caption: 'A pair for each seat',
  columns: ['Seat', 'Stitches', 'Rounds', 'Yarn', 'Needle', 'Time', 'What does harm'],
  error: (/** @type {Text} */ yarn, /** @type {Text} */ error) => `${yarn} ± ${error}`,
  none: 'no sock: ',
  needle: (/** @type {Text} */ mm, /** @type {Text} */ us, /** @type {Text} */ cable) =>
    [us ? `${mm} (US ${us})` : mm, cable].filter(Boolean).join(', '),
  noLink: 'This one cannot be opened as a plan.',
  open: 'open as a plan',
  copyLink: 'copy its link',
  send: 'What to tell its knitter:',
  seatHint: 'A seat’s number opens its row: from there its plan.',
  /** The table's columns in a file. @type {(length: Text, yarn: Text, mass: Text) => Text[]} */
  csv: (length, yarn, mass) => [
    'seat',
    'stitches',
    'rounds',
    `yarn for the pair (${yarn})`,
    `give or take (${yarn})`,
    `its weight (${mass})`,
    'balls',
    'needle (mm)',
    `cable (${length})`,
    'minutes',
    'give or take (minutes)',
    'what does harm',
  ],
};
