// Cautions of a plan: it stands, and this should be known about it.

/** @typedef {Record<string, string>} Figures */

/** Ease as people say it: "−11 %" is "11 % smaller". @param {string} ease */
const girth = (ease = '') =>
  ease.startsWith('\u2212') ? `${ease.slice(1)} smaller` : `${ease} larger`;

/** @type {Record<string, (figures: Figures) => string>} */
export const cautionWords = {
  guessed_gauge: ({ category }) =>
    `The gauge (tension) is guessed from the label (weight ${category}). Knit the toe, then measure it: the toe is the best swatch.`,
  flat_swatch: () =>
    'A swatch knit flat, back and forth, may differ from knitting in the round. Measure the toe once it is done.',
  unwashed_swatch: () =>
    'The swatch is not washed. Most wool relaxes in the wash, so the finished sock may come out a little different.',
  stretch_doubtful: ({ measuredMm, limitMm }) =>
    `Pulled sideways a stitch reached ${measuredMm}, more than its yarn allows (${limitMm}). Were those the stitches of the first reading alone?`,
  rib_swatch: ({ contraction }) =>
    `The swatch is in rib: it was reckoned to pull in to ${contraction} of stockinette (stocking stitch), give or take a tenth.`,
  shift_every_round: () => 'A rib that moves every round is hardly a rib: it pulls in little.',
  moss_stitch: () =>
    'Knit 1, purl 1 moved every round is moss stitch (seed stitch). It leans neither way and does not pull in.',
  no_lean: () =>
    'In knit 1, purl 1 a step to the left and one to the right are the same: it leans neither way.',
  ease_outside: ({ ease, asked }) =>
    `The sock would be ${girth(ease)} than the foot; ${girth(asked)} was asked, and 2 to 20 % smaller is what a ribbed sock is worn at.`,
  ease_off: ({ ease, asked }) =>
    `The sock would be ${girth(ease)} than the foot; ${girth(asked)} was asked. Another rib comes closer.`,
  heel_moved_count: ({ from, to, heelUse }) =>
    `${from} stitches would use ${heelUse} of their stretch to pass the heel, so ${to} are advised.`,
  heel_tight: ({ heelUse }) =>
    `The heel uses ${heelUse} of the stretch there is: it goes on, tightly.`,
  heel_will_not_pass: ({ heelUse }) =>
    `This will not go over the heel: it would use ${heelUse} of the stretch there is. Take a larger count.`,
  leg_widened: ({ from, to, heightMm, girthMm, girth: how }) =>
    `From ${heightMm} above the floor the leg is too wide for ${from} stitches: the rib widens to ${to}, for a leg up to ${girthMm} round.${
      how === 'estimated'
        ? ' That girth is only estimated from the foot. Measure ankle and calf before the leg.'
        : ''
    }`,
  stitch_crosses: ({ round, stitches = '' }) => {
    const isBack = stitches.startsWith('\u2212');
    const n = isBack ? stitches.slice(1) : stitches;
    return `After round ${round} of the rib, which widens it, move ${n === '1' ? 'one stitch' : `${n} stitches`} from the ${
      isBack ? 'second half to the first' : 'first half to the second'
    }, so that both halves hold as many.`;
  },
  girths_estimated: ({ heelMm }) =>
    `Heel and ankle were not measured: the sock is tested on a large heel, ${heelMm} round.`,
  foot_estimated: ({ lengthMm, lengthSpreadMm, girthMm, girthSpreadMm }) =>
    `Guessed from the shoe: a foot of ${lengthMm}, give or take ${lengthSpreadMm}, and ${girthMm} round, give or take ${girthSpreadMm}. A tape is better.`,
  yarn_sources_disagree: ({ weighedMm, geometryMm, apart, doubt = '' }) =>
    `The weighed piece says ${weighedMm} of yarn a stitch, the gauge says ${geometryMm}: ${apart} apart. ${
      doubt.endsWith('massG')
        ? 'Doubt the weighing first: so light a piece is hard to weigh.'
        : 'Doubt the gauge and the ball’s length first: measure again.'
    }`,
  mass_needs_ball: () =>
    'A weighed piece tells the yarn only with the ball’s grams and metres beside it; it was left aside.',
  yarn_guessed: ({ category }) =>
    `How far 100 g reach is guessed from the yarn’s weight (${category}). The ball band knows better.`,
  loose_fabric: ({ tryMm }) =>
    `This fabric is loose for its yarn: a sock of it will wear through. ${tryMm ? `Try a ${tryMm} needle` : 'Try a thinner needle'} and swatch again.`,
  firm_fabric: ({ tryMm }) =>
    `This fabric is firm for its yarn: it wears well, gives little and is hard on the hands. ${tryMm ? `Try a ${tryMm} needle` : 'Try a thicker needle'} and swatch again.`,
  substitute_differs: ({ apart = '' }) =>
    `The other yarn is ${apart.startsWith('\u2212') ? `${apart.slice(1)} thinner` : `${apart} thicker`} than the first: it knits up at another gauge (tension). Swatch it before you trust these counts.`,
  balls_just: ({ balls, spareM, field = '' }) =>
    `Just: of ${balls === '1' ? 'one ball' : `${balls} balls`}${field.startsWith('/yarn/substitute') ? ' of the other yarn' : ''} only ${spareM} would be left over. One ball more is safe.`,
  balls_barely_begun: ({ balls, overM }) =>
    `Of ${balls} balls the last is bought for ${overM} only. A little less to spare, or a leg a few rounds shorter, saves it.`,
  heel_below_ball: ({ heelMm, ballMm }) =>
    `Round heel and ankle (${heelMm}) should be about a third more than round the ball of the foot (${ballMm}). Measure it again: the sock has to pass it.`,
  no_cable_long_enough: ({ cableMinMm }) =>
    `No circular needle is sold as long as ${cableMinMm}. Knit the socks one after the other, or on two needles.`,
};
