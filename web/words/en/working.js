// How a figure came about: its name, its rule in words, where the rule is from.

/** By the code of the figure. @type {Record<string, string>} */
export const figureWords = {
  footLength: 'Length of the foot',
  ballGirth: 'Girth at the ball of the foot',
  gauge: 'Gauge (tension)',
  gaugeError: 'How sure the gauge is',
  mmPerStitch: 'Yarn in one stitch',
  geometryMmPerStitch: 'Yarn in one stitch, by the gauge',
  restGirthMm: 'Girth at rest',
  firmness: 'Firmness',
  stitchCount: 'Stitches a round',
  heelUse: 'Passing the heel',
  legFit: 'Passing ankle and leg',
  widening: 'Widening for the leg',
  castOn: 'Wraps and cast-on',
  toeRounds: 'Toe rounds',
  toeIncreases: 'Increase rounds',
  lengthMm: 'Length of the sock',
  totalRounds: 'Rounds in all',
  cuffRounds: 'Cuff rounds',
  spiralRounds: 'Spiral rounds',
  pitch: 'Slant of the rib',
  strains: 'Back and front of the heel',
  bindOffYarn: 'Yarn for the bind-off (cast-off)',
  mPerSock: 'Yarn for one sock',
  mWithMargin: 'Yarn for the pair',
  balls: 'Balls',
  substitute: 'From another yarn',
  gPerPair: 'Weight of the pair',
  needle: 'Needle',
  cable: 'Cable',
  minutes: 'Time',
};

/** By the code of the rule. @type {Record<string, string>} */
export const ruleWords = {
  shoe_length: 'The shoe scale’s own length for the size; a foot may differ by a whole size.',
  ball_girth_estimate: 'From the foot’s length, as girth goes with length in measured feet.',
  gauge_pooled:
    'Stitches of all readings divided by all their widths; rounds by all their heights, the same way.',
  gauge_from_rib:
    'Stitches of all readings divided by all their widths, times what such a rib draws in to, for stockinette lies wider; rounds by all their heights.',
  gauge_from_label:
    'The dense end of the label’s range, for a sock is knit firm; and so many rounds for a stitch.',
  gauge_error:
    'How far the readings scatter, at least 2 %, less with more of them; and a quarter stitch at each end.',
  label_error: 'The whole range of the label may be true, any part of it as likely as another.',
  loop_weighed: 'Grams a stitch, turned into length by the ball’s metres a gram.',
  loop_geometry:
    'From stitches and rounds: in plain knitting, stitches in an area times the square of the yarn in a stitch is nearly constant.',
  rest_girth: 'The girth with the rib eased open, times what the rib draws in to.',
  firmness: 'The root of the yarn’s thickness against the yarn in a stitch.',
  stitch_count:
    'Girth, less the ease, times the gauge; then the nearest whole repeat, both halves alike where that comes close.',
  stitch_count_named: 'Your own count. The advised one comes from girth, ease and gauge.',
  heel_use:
    'A stitch spans half its yarn at most, or what hands pulled it to. The heel may use a share of what all stitches span so.',
  leg_fit: 'Every girth up to the edge is tested like the heel; told is the one that takes most.',
  widening:
    'Where the leg would take too much of the stretch, one stitch more in each repeat, as often as it needs; the repeats stay whole and as many.',
  cast_on:
    'The tip’s share of the stitches, so that fours added come out even; half of it is wrapped round each tip. The slip knot is no stitch.',
  toe_rounds: 'A share of the foot’s length; at least as many as the increases need.',
  toe_increases:
    'From the cast-on to the full round, four stitches in each increase round; in a left and a right toe two or four.',
  sock_length: 'The foot with its ease, and the leg.',
  total_rounds: 'Length times rounds, to the nearest round.',
  cuff_rounds: 'The cuff’s height times rounds, to the nearest round.',
  spiral_rounds: 'All rounds less toe, widening and cuff.',
  pitch: 'One stitch to the side in so many rounds up.',
  strains:
    'A tube has no heel: round the bend the back must stretch and the front folds, each told as a share of the length.',
  bind_off_yarn: 'A little over three times the widest girth that the edge passes: heel or calf.',
  yarn_sock: 'Every stitch cast on and knit, times the yarn in a stitch; the bind-off; two tails.',
  yarn_pair: 'Two socks and what is to spare.',
  balls: 'Yarn divided by a ball, up to whole balls.',
  substitute: 'The same metres, not the same grams: divided by its ball, up to whole balls.',
  mass: 'Yarn times the grams in a metre.',
  needle: 'The swatch’s own, or the thin end of the label’s range.',
  cable: 'Both socks, four halves, side by side on the cable; a loop at each end; two tips.',
  time: 'Stitches by pace, and two turns a round.',
};

/** By the code of the source. @type {Record<string, string>} */
export const sourceWords = {
  'munden-1959': 'Munden 1959, J. Textile Inst. 50, T448, from memory',
  spencer: 'Spencer, Knitting Technology, from memory; wider ribs are assumed, give or take 10 %',
  'cyc-standard-yarn-weight': 'Craft Yarn Council, Standard Yarn Weight System',
  dillmont: 'Dillmont, Encyclopedia of Needlework',
  'ansur-ii':
    'ANSUR II, US Army 2012, computed from its public data: soldiers, younger and fitter than most',
  brannock: 'the Brannock scale',
  'iso-19407': 'ISO/TS 19407:2015',
  'european-shoe-table': 'a table of European sizes',
  'from-memory': 'from memory; sources differ',
  'trade-rule': 'the trade’s rule',
  'common-practice': 'common practice, no source',
  geometry: 'geometry',
  definition: 'by definition',
  assumption: 'an assumption of this page; a measurement of yours replaces it where there is one',
};

/** Units of a gauge, told over ten centimetres or four inches. */
export const perWords = { metric: 'over 10\u00a0cm', inch: 'over 4\u00a0in' };

/** The reader's units inside a line. */
export const unitWords = {
  metric: {
    length: 'cm',
    an: 'a',
    perYarn: (/** @type {string} */ n) => `${n} cm a metre`,
  },
  inch: {
    length: 'inch',
    an: 'an',
    perYarn: (/** @type {string} */ n) => `${n} in a yard`,
  },
};

/** What the part says of itself. */
export const workingWords = {
  title: 'How each figure came about',
  lead: 'Open a figure to see its rule, and the rule with your numbers put in, to do again on paper. A share in % is put in as a part of one: 10 % is 0.1.',
  opens: (/** @type {string} */ figure) => `${figure}: how it came about`,
  print: 'print the workings',
  source: (/** @type {string} */ source) => `Source: ${source}.`,
  isAssumed: 'our assumption',
  assumed: ' A measurement of yours replaces it.',
  firm: /** @type {Record<string, string>} */ ({ loose: 'loose', usual: 'usual', firm: 'firm' }),
  wraps: (/** @type {string} */ n) => `${n} wraps`,
  gauge: (/** @type {string} */ stitches, /** @type {string} */ over) =>
    `${stitches} stitches ${over}`,
  from: 'It came from',
  reading: (/** @type {number} */ n) => `reading ${n}`,
  stitchesOver: (/** @type {string} */ stitches, /** @type {string} */ width) =>
    `${stitches} stitches over ${width}`,
  roundsOver: (/** @type {string} */ rounds, /** @type {string} */ height) =>
    `${rounds} rounds over ${height}`,
  groups: /** @type {Record<string, string>} */ ({
    gauge: 'Foot, gauge and fabric',
    width: 'How wide',
    length: 'How long',
    yarn: 'How much yarn',
    tools: 'Needle and time',
  }),
};

/** Two ways to know the yarn in a stitch, side by side. */
export const twoWaysWords = {
  caption: 'Yarn in a stitch, known in two ways',
  weighed: 'by the weighed piece',
  geometry: 'by the gauge',
  apart: (/** @type {string} */ apart) => `${apart} apart: more than 15 %, so one of them is off.`,
  near: 'They are less than 15 % apart: both are believable, and the weighed piece is used.',
  doubt: 'Look again at: ',
};
