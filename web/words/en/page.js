// The page itself: its state, its messages, the usual care.

/** @typedef {string} Text */

export const pageWords = {
  /** Said when one of them is come to. */
  moments: { buy: 'Buy', count: 'Count', knit: 'Knit', class: 'Class' },
  forClass: {
    title: 'For the class',
    lead: 'The pair and its figures, large, for a screen that all look at. Below, how each figure came about: to tell it, or to hand it out.',
    sheet: {
      title: 'One for all',
      text: 'The sock set here on one side of paper: counts, toe, rib, rounds to tick, and a code that opens it.',
    },
    pen: {
      title: 'One for each student, blank',
      text: 'The same rib and toe, with boxes for her own swatch and foot: worked out by pen, with no screen.',
    },
    tags: {
      title: 'A tag for each seat',
      text: 'Cards to cut out, with the seat’s number and the class’s title. No names.',
    },
  },

  exampleIs: 'Example numbers, from the Tuesday class at Harrow Quay.',
  exampleLeft: (/** @type {Text} */ parts) => `Still to change: ${parts}.`,
  allOwn: 'Nothing here is the example’s any more.',
  problems: (/** @type {number} */ n) => (n === 1 ? 'One thing to mend:' : `${n} things to mend:`),
  lastGood: (/** @type {Text} */ values) =>
    values === '' ? 'last good plan' : `last good: ${values}`,
  answered: (/** @type {Text} */ stitches, /** @type {Text} */ rounds, /** @type {Text} */ yarn) =>
    `${stitches} stitches, ${rounds} rounds, ${yarn} of yarn.`,
  /** @returns {Text[][]} figure and what it counts */
  inShort: (/** @type {Text[]} */ [wraps, stitches, toe, rounds], /** @type {Text} */ yarn) => [
    [wraps, 'wraps'],
    [stitches, 'st'],
    [toe, 'toe'],
    [rounds, 'rounds'],
    [yarn, ''],
  ],

  trouble: {
    notPainted: 'This browser could not make the picture. Save it as SVG instead.',
    noWebAssembly:
      'This browser cannot run the part of the page that reckons (WebAssembly is missing or switched off). What you see is the example; the fields change nothing.',
    notStarted:
      'The part of the page that reckons did not start. What you see is the example; the fields change nothing. Reload the page, or open it in another browser.',
    stopped:
      'The part of the page that reckons has stopped. What you see is the last good plan. Reload the page to go on.',
  },

  sentence: {
    gauge: (/** @type {Text} */ stitches) => `${stitches} stitches`,
    readings: (/** @type {number} */ n, /** @type {Text} */ stitches) =>
      `${n} readings, mean ${stitches} stitches`,
    overFour: { in: '4\u00a0in', cm: '10\u00a0cm' },
    over: ' over ',
    noSwatch: 'No swatch yet, but ',
    yarn: (/** @type {Text} */ weight) => `yarn of weight ${weight}`,
    foot: '; a foot ',
    long: ' long and ',
    round: ' round; a leg ',
    shoe: (/** @type {Text} */ whose) => `; ${whose}’s foot, `,
    size: (/** @type {Text} */ scale, /** @type {Text} */ size) => `${scale}\u00a0${size}`,
    about: (/** @type {Text} */ length, /** @type {Text} */ girth) =>
      ` (estimated: ${length} long and ${girth} round); a leg `,
    high: ' high; ribbed ',
    rib: (/** @type {Text} */ rib) => rib,
    leaning: (/** @type {Text} */ lean) => `, ${lean}`,
    straight: ', straight up',
    end: '.',
  },

  care: {
    title: 'With care',
    notes: [
      'Diabetes, nerve trouble (neuropathy) or poor circulation: nothing tight at the top, no marks on the skin. Ask a podiatrist or doctor first.',
      'Socks slide on smooth floors. No sock planned here promises grip.',
      'For an infant: trim the ends inside, where a thread can wind round a toe; keep loose and clasp markers out of reach.',
      'Not everybody wears wool gladly. Ask whom it is for.',
      'Rest your hands when they are sore. Pain that lasts is for a doctor.',
    ],
  },
};
