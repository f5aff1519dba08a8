// The rules of the fit with their numbers put in, as lines that can be done again on paper. A line is
// said where all the numbers it is `of` are there.

import { ease } from './working_text.js';

/** @typedef {import('./working_text.js').Line} Line */

/** A rib swatch is as tall as any other. @type {Line[]} */
const roundsAndReadings = [
  {
    of: ['rounds', 'heightMm', 'roundsPerMm'],
    say: ({ rounds, heightMm, roundsPerMm }, { length, an }) =>
      `${rounds} rounds ÷ ${heightMm} = ${roundsPerMm} rounds ${an} ${length}`,
  },
  {
    of: ['readings'],
    say: ({ readings }) =>
      readings === '1' ? 'one reading' : `all ${readings} readings added up first`,
  },
];

// Scatter of the readings and their ends, each squared; what a wash or a rib adds comes behind.
const readingErrors = ['readings', 'stitches', 'cv', 'leastCv', 'endError', 'relativeError'];
const sumOfErrors = (
  /** @type {Record<string, string>} */ { readings, stitches, cv, leastCv, endError },
) =>
  `(the larger of ${cv} and ${leastCv})² ÷ ${readings} + (${endError} × √${readings} ÷ ${stitches} stitches)²`;

/** By the code of the rule. @type {Record<string, Line[]>} */
export const fitLines = {
  shoe_length: [
    {
      of: ['stepMm', 'size', 'offset', 'lengthMm'],
      say: ({ stepMm, size, offset, lengthMm }) =>
        `${stepMm} a size × (${size} ${ease(offset)}) = ${lengthMm}`,
    },
    {
      of: ['size', 'lengthMm', 'spreadMm'],
      say: ({ size, lengthMm, spreadMm }) =>
        `size ${size} stands for a foot of ${lengthMm}, give or take ${spreadMm}`,
    },
  ],
  ball_girth_estimate: [
    {
      of: ['constantMm', 'perLength', 'lengthMm', 'girthMm'],
      say: ({ constantMm, perLength, lengthMm, girthMm }) =>
        `${constantMm} + ${perLength} × foot ${lengthMm} = ${girthMm}`,
    },
    {
      of: ['lengthMm', 'girthMm', 'spreadMm'],
      say: ({ lengthMm, girthMm, spreadMm }) =>
        `feet of ${lengthMm} measure about ${girthMm} round the ball, give or take ${spreadMm}`,
    },
  ],
  gauge_pooled: [
    {
      of: ['stitches', 'widthMm', 'stitchesPerMm'],
      say: ({ stitches, widthMm, stitchesPerMm }, { length, an }) =>
        `${stitches} stitches ÷ ${widthMm} = ${stitchesPerMm} stitches ${an} ${length}`,
    },
    ...roundsAndReadings,
  ],
  gauge_from_rib: [
    {
      of: ['stitches', 'widthMm', 'contraction', 'stitchesPerMm'],
      say: ({ stitches, widthMm, contraction, stitchesPerMm }, { length, an }) =>
        `${stitches} stitches ÷ ${widthMm} × ${contraction} = ${stitchesPerMm} stitches ${an} ${length}`,
    },
    ...roundsAndReadings,
  ],
  gauge_from_label: [
    {
      of: ['category', 'stitchesOver4In'],
      say: ({ category, stitchesOver4In }, { fourInches }) =>
        `labels of weight ${category} go up to ${stitchesOver4In} stitches over ${fourInches}`,
    },
    {
      of: ['stitchesOver4In', 'stitchesPerMm'],
      say: ({ stitchesOver4In, stitchesPerMm }, { length, an, fourInches }) =>
        `${stitchesOver4In} stitches ÷ ${fourInches} = ${stitchesPerMm} stitches ${an} ${length}`,
    },
    {
      of: ['stitchesPerMm', 'roundsPerStitch', 'roundsPerMm'],
      say: ({ stitchesPerMm, roundsPerStitch, roundsPerMm }, { length, an }) =>
        `${stitchesPerMm} × ${roundsPerStitch} = ${roundsPerMm} rounds ${an} ${length}`,
    },
  ],
  gauge_error: [
    {
      of: [...readingErrors, 'washError', 'ribError'],
      say: (numbers) =>
        `√(${sumOfErrors(numbers)} + washing ${numbers.washError}² + rib ${numbers.ribError}²) = ${numbers.relativeError}`,
    },
    {
      of: [...readingErrors, 'washError'],
      isElse: true,
      say: (numbers) =>
        `√(${sumOfErrors(numbers)} + washing ${numbers.washError}²) = ${numbers.relativeError}`,
    },
    {
      of: [...readingErrors, 'ribError'],
      isElse: true,
      say: (numbers) =>
        `√(${sumOfErrors(numbers)} + rib ${numbers.ribError}²) = ${numbers.relativeError}`,
    },
    {
      of: readingErrors,
      isElse: true,
      say: (numbers) => `√(${sumOfErrors(numbers)}) = ${numbers.relativeError}`,
    },
  ],
  label_error: [
    {
      of: ['lo', 'hi', 'relativeError'],
      say: ({ lo, hi, relativeError }) =>
        `(${hi} − ${lo}) ÷ (√3 × (${lo} + ${hi})) = ${relativeError}`,
    },
  ],
  loop_weighed: [
    {
      of: ['massG', 'massStitches', 'ballM', 'ballG', 'mmPerStitch'],
      say: ({ massG, massStitches, ballM, ballG, mmPerStitch }, { perYarn }) =>
        `piece ${massG} ÷ ${massStitches} stitches × ball ${ballM} ÷ ${ballG} × ${perYarn} = ${mmPerStitch}`,
    },
  ],
  loop_geometry: [
    {
      of: ['ks', 'stitchesPerMm', 'roundsPerMm', 'mmPerStitch'],
      say: ({ ks, stitchesPerMm, roundsPerMm, mmPerStitch }) =>
        `√(${ks} ÷ (${stitchesPerMm} stitches × ${roundsPerMm} rounds)) = ${mmPerStitch}`,
    },
    {
      of: ['apart'],
      say: ({ apart }) => `the weighed piece says ${apart} beside this`,
    },
  ],
  rest_girth: [
    {
      of: ['finishedGirthMm', 'contraction', 'restGirthMm'],
      say: ({ finishedGirthMm, contraction, restGirthMm }) =>
        `eased open ${finishedGirthMm} × ${contraction} = ${restGirthMm}`,
    },
  ],
  firmness: [
    {
      of: ['tex', 'loopCm', 'mmPerStitch', 'tightness'],
      say: ({ tex, loopCm, tightness }) =>
        `√${tex} g a kilometre ÷ ${loopCm} cm in a stitch = ${tightness}`,
    },
    {
      of: ['tightness'],
      say: () => 'under 10 is loose, 10 to 13.5 is usual for hand-knit socks, over 13.5 is firm',
    },
  ],
  stitch_count: [
    {
      of: ['ballGirthMm', 'girthEase', 'stitchesPerMm', 'ideal'],
      say: ({ ballGirthMm, girthEase, stitchesPerMm, ideal }, { length, an }) =>
        `ball of the foot ${ballGirthMm} × (1 ${ease(girthEase)}) × ${stitchesPerMm} stitches ${an} ${length} = ${ideal}`,
    },
    {
      of: ['repeat', 'byEase', 'stitches'],
      say: ({ repeat, byEase, stitches }) =>
        `in whole repeats of ${repeat}: ${byEase}, which would not pass the heel; so ${stitches}`,
    },
    {
      of: ['repeat', 'stitches'],
      isElse: true,
      say: ({ repeat, stitches }) => `in whole repeats of ${repeat}: ${stitches}`,
    },
    {
      of: ['stitches', 'ballGirthMm', 'stitchesPerMm', 'ease'],
      say: ({ stitches, ballGirthMm, stitchesPerMm, ease: came }) =>
        `ease it comes to: ${stitches} ÷ (${ballGirthMm} × ${stitchesPerMm}) − 1 = ${came}`,
    },
  ],
  stitch_count_named: [
    {
      of: ['ballGirthMm', 'girthEase', 'stitchesPerMm', 'ideal'],
      say: ({ ballGirthMm, girthEase, stitchesPerMm, ideal }, { length, an }) =>
        `by girth and ease it would be ${ballGirthMm} × (1 ${ease(girthEase)}) × ${stitchesPerMm} stitches ${an} ${length} = ${ideal}`,
    },
    {
      of: ['stitches', 'ballGirthMm', 'stitchesPerMm', 'ease'],
      say: ({ stitches, ballGirthMm, stitchesPerMm, ease: came }) =>
        `ease of your own count: ${stitches} ÷ (${ballGirthMm} × ${stitchesPerMm}) − 1 = ${came}`,
    },
    {
      of: ['repeat', 'stitches'],
      say: ({ repeat, stitches }) => `${stitches} stitches, in whole repeats of ${repeat}`,
    },
  ],
  heel_use: [
    {
      of: ['heelMm', 'stitches', 'widestStitchMm', 'heelUse'],
      say: ({ heelMm, stitches, widestStitchMm, heelUse }) =>
        `heel and ankle ${heelMm} ÷ (${stitches} stitches × ${widestStitchMm}) = ${heelUse}`,
    },
    {
      of: ['passUse'],
      say: ({ passUse }) => `at most ${passUse} may be used`,
    },
  ],
  leg_fit: [
    {
      of: ['girthMm', 'stitches', 'widestStitchMm', 'use'],
      say: ({ girthMm, stitches, widestStitchMm, use }) =>
        `leg ${girthMm} ÷ (${stitches} stitches × ${widestStitchMm}) = ${use}`,
    },
    {
      of: ['girthMm', 'heightMm', 'use', 'passUse'],
      say: ({ girthMm, heightMm, use, passUse }) =>
        `tightest where the leg is ${girthMm} round, ${heightMm} above the floor: ${use} of the stretch, and at most ${passUse} may be used`,
    },
  ],
  widening: [
    {
      of: ['repeats', 'knit', 'purl', 'stitches'],
      say: ({ repeats, knit, purl, stitches }) =>
        `${repeats} repeats × (${knit} + ${purl}) = ${stitches} stitches`,
    },
    {
      of: ['neededFromMm', 'knit', 'purl', 'stitches', 'round'],
      say: ({ neededFromMm, knit, purl, stitches, round }) =>
        `the leg needs it from ${neededFromMm} above the floor: after ${round} rounds of rib to k${knit}, p${purl} on ${stitches} stitches`,
    },
  ],
};
