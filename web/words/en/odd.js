// What is odd about a student's sock: what it is at a glance, for the teacher, and the sentence to send back.

/** @typedef {string} Text */
/** @typedef {Record<string, Text>} Figures */

/** By the code of an oddity, cautions of a plan among them. @type {Record<string, Text>} */
const glance = {
  heel_will_not_pass: 'Will not go over the heel',
  heel_tight: 'Tight at the heel',
  tight_on_leg: 'Tight on the leg',
  ease_outside: 'Far from the size of the foot',
  yarn_short: 'Not enough yarn',
  margin_short: 'Hardly any yarn to spare',
  hand_needs_ball: 'Yarn in hand not known in length',
  no_cable_long_enough: 'No needle is long enough',
  gauge_loose: 'Looser than such yarn is knit',
  gauge_dense: 'Denser than such yarn is knit',
  loose_fabric: 'Loose fabric',
  firm_fabric: 'Firm fabric',
  ease_off: 'Not the size that was asked for',
  heel_below_ball: 'Heel smaller than it can be',
  yarn_sources_disagree: 'Weighed piece and gauge disagree',
  stretch_doubtful: 'Stretched too far to be true',
  substitute_differs: 'The other yarn is of another thickness',
  leg_widened: 'The leg widens',
  unwashed_swatch: 'Swatch not washed',
  flat_swatch: 'Swatch knit flat',
  rib_swatch: 'Swatch in rib',
  readings_scatter: 'The readings differ from each other',
  guessed_gauge: 'Gauge guessed from the label',
  foot_estimated: 'Foot guessed from a shoe',
  girths_estimated: 'Heel not measured',
  yarn_guessed: 'Yarn guessed from its weight',
  mass_needs_ball: 'Weighed without the ball’s label',
  heel_moved_count: 'More stitches, for the heel',
  balls_just: 'The balls are only just enough',
  balls_barely_begun: 'The last ball is hardly begun',
  shift_every_round: 'The rib moves every round',
  moss_stitch: 'Moss stitch, not a rib',
  no_lean: 'The rib leans neither way',
  stitch_crosses: 'A stitch changes needles',
};

/** What to send back, where the plan itself has no words for it. @type {Record<string, (figures: Figures) => Text>} */
const send = {
  heel_moved_count: ({ from, to, heelUse }) =>
    `${from} stitches would use ${heelUse} of their stretch to pass the heel, so ${to} are advised, and the sock is wider than asked. If the heel was not measured, please measure it: under the heel and over the bend in front.`,
  tight_on_leg: ({ use, girthMm, heightMm, girth }) =>
    `${heightMm} above the floor the leg is ${girthMm} round${girth === 'estimated' ? ' (estimated: please measure it)' : ''}, and the sock would be at ${use} of its stretch all day. A lower leg or more stitches is kinder. Take it off if it leaves marks, or if the foot grows cold or numb; with diabetes or poor circulation ask your doctor first.`,
  yarn_short: ({ shortM }) =>
    `Your yarn ends before the pair does: ${shortM} are missing. Get one ball more of the same lot, or make the leg lower.`,
  margin_short: ({ spareM }) =>
    `Your yarn is enough with only ${spareM} to spare. Keep one ball more of the same lot in reach, or make the leg a little lower.`,
  hand_needs_ball: () =>
    'Tell me the metres or yards on your ball band, please: only then can we see whether your yarn is enough.',
  gauge_dense: ({ category, fits }) =>
    `You have more stitches in a width than yarn of weight ${category} is commonly knit with; it looks like weight ${fits}. Please look at the label and count again over a flat swatch, not stretched.`,
  gauge_loose: ({ category, fits }) =>
    `You have fewer stitches in a width than yarn of weight ${category} is commonly knit with; it looks like weight ${fits}. Please look at the label and the needle, and count again.`,
  readings_scatter: () =>
    'Your counts of the swatch differ a good deal from each other. Please count again in three places, away from the edges.',
};

export const oddWords = {
  glance,
  send,
  harm: /** @type {Record<string, Text>} */ ({
    body: 'On the foot',
    supply: 'Yarn and needles',
    sock: 'The sock itself',
    doubt: 'Less sure than it might be',
  }),
};

export const helpingWords = {
  empty:
    'Paste the link, or choose the file: what is odd about that sock is listed with the worst first. Nothing of it is kept.',
  nothing: 'Nothing is odd about this sock.',
  noPlan: 'This sheet comes to no sock yet:',
  examples: (/** @type {Text} */ parts) =>
    `Not told yet, and here as in the example: ${parts}. What follows is only as true as that.`,
  begun: (/** @type {Text} */ round) =>
    `It is on the needles: ${round} rounds of each sock are done.`,
  copyOne: 'copy',
  copyThis: (/** @type {Text} */ sentence) => `copy: ${sentence}`,
  copyAll: 'copy all that is to be sent back',
};
