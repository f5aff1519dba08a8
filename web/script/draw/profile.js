// How wide one sock lies at each height, from its real counts.

/** @typedef {import('../contract.js').Plan} Plan */

/**
 * @typedef {object} Size in the drawing's units
 * @property {number} stitch width of one stitch
 * @property {number} round height of one round
 * @property {number} width of the sock before any widening, half its stitches
 * @property {number} widest of the sock, half the stitches at its edge
 * @property {number} height of the sock, all its rounds
 */

/** @param {Plan} plan @param {number} scale units per millimetre @returns {Size} */
export function sizeSock(plan, scale) {
  const stitch = scale / plan.gauge.stitchesPerMm;
  const round = scale / plan.gauge.roundsPerMm;
  return {
    stitch,
    round,
    width: (plan.stitchCount / 2) * stitch,
    widest: (plan.edgeStitches / 2) * stitch,
    height: plan.totalRounds * round,
  };
}

/** @typedef {{ from: number, to: number, before: number, after: number }} Flare heights, and half widths */

// A fabric gives way gradually: so many rounds until the new stitches have spread.
const spreadRounds = 16;

/** The leg's widenings from the foot up. @param {Plan} plan @param {Size} size @returns {Flare[]} */
function flaresOf(plan, size) {
  let half = size.width / 2;
  const flares = plan.widening.stages.map(({ ribRound, stitches }) => {
    const before = half;
    half = (stitches / 4) * size.stitch;
    return { from: size.height - (plan.toe.rounds + ribRound) * size.round, before, after: half };
  });
  return flares.map((flare, i) => ({
    ...flare,
    to: Math.max(flare.from - spreadRounds * size.round, flares[i + 1]?.from ?? 0),
  }));
}

const smooth = (/** @type {number} */ t) => t * t * (3 - 2 * t);

/** Half the sock's width at a height of its leg. @param {Flare[]} flares @param {Size} size @param {number} y */
function halfWidthAt(flares, size, y) {
  let half = size.width / 2;
  for (const { from, to, before, after } of flares) {
    if (y >= from) break;
    half = before + (after - before) * smooth(Math.min(1, (from - y) / (from - to)));
  }
  return half;
}

const samples = [0, 1, 2, 3, 4, 5, 6, 7, 8].map((i) => i / 8);

/**
 * @typedef {object} Profile of the leg
 * @property {number[]} curve heights at which its widening is followed, from the foot up
 * @property {(y: number) => number} half half its width at a height
 */

/** @param {Plan} plan @param {Size} size @returns {Profile} */
export function profileOf(plan, size) {
  const flares = flaresOf(plan, size);
  return {
    curve: flares.flatMap(({ from, to }) => samples.map((share) => from + (to - from) * share)),
    half: (y) => halfWidthAt(flares, size, y),
  };
}
