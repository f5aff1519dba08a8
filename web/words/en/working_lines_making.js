// The rules of the making with their numbers put in, as lines that can be done again on paper. A line
// is said where all the numbers it is `of` are there.

import { ease } from './working_text.js';

/** @typedef {import('./working_text.js').Line} Line */

/** By the code of the rule. @type {Record<string, Line[]>} */
export const makingLines = {
  cast_on: [
    {
      of: ['stitches', 'tipShare', 'exact'],
      say: ({ stitches, tipShare, exact }) => `${stitches} stitches × ${tipShare} = ${exact}`,
    },
    {
      of: ['stitches', 'castOn'],
      say: ({ stitches, castOn }) =>
        `the nearest that is a whole number of fours below ${stitches}: ${castOn}`,
    },
    {
      of: ['castOn', 'wraps'],
      say: ({ castOn, wraps }) => `${castOn} ÷ 2 = ${wraps} wraps round each tip`,
    },
  ],
  toe_rounds: [
    {
      of: ['footLengthMm', 'share', 'roundsPerMm', 'exact'],
      say: ({ footLengthMm, share, roundsPerMm, exact }, { length, an }) =>
        `foot ${footLengthMm} × ${share} × ${roundsPerMm} rounds ${an} ${length} = ${exact}`,
    },
    {
      of: ['increases', 'rounds'],
      say: ({ increases, rounds }) =>
        `to whole rounds, or as many as ${increases} increase rounds need: ${rounds}`,
    },
  ],
  toe_increases: [
    {
      of: ['stitches', 'castOn', 'increases'],
      unless: ({ isLeftAndRight }) => isLeftAndRight,
      say: ({ stitches, castOn, increases }) => `(${stitches} − ${castOn}) ÷ 4 = ${increases}`,
    },
    {
      of: ['stitches', 'castOn', 'increases'],
      isElse: true,
      say: ({ stitches, castOn, increases }) =>
        `from ${castOn} to ${stitches}, by two or by four: ${increases} increase rounds`,
    },
  ],
  sock_length: [
    {
      of: ['footLengthMm', 'lengthEase', 'legHeightMm', 'lengthMm'],
      say: ({ footLengthMm, lengthEase, legHeightMm, lengthMm }) =>
        `foot ${footLengthMm} × (1 ${ease(lengthEase)}) + leg ${legHeightMm} = ${lengthMm}`,
    },
  ],
  total_rounds: [
    {
      of: ['lengthMm', 'roundsPerMm', 'exact', 'rounds'],
      say: ({ lengthMm, roundsPerMm, exact, rounds }, { length, an }) =>
        `${lengthMm} × ${roundsPerMm} rounds ${an} ${length} = ${exact}, to whole rounds: ${rounds}`,
    },
  ],
  cuff_rounds: [
    {
      of: ['cuffMm', 'roundsPerMm', 'exact', 'rounds'],
      say: ({ cuffMm, roundsPerMm, exact, rounds }, { length, an }) =>
        `cuff ${cuffMm} × ${roundsPerMm} rounds ${an} ${length} = ${exact}, to whole rounds: ${rounds}`,
    },
  ],
  spiral_rounds: [
    {
      of: ['totalRounds', 'toeRounds', 'wideningRounds', 'cuffRounds', 'rounds'],
      say: ({ totalRounds, toeRounds, wideningRounds, cuffRounds, rounds }) => {
        const widening = wideningRounds === '0' ? '' : ` − widening ${wideningRounds}`;
        return `all ${totalRounds} − toe ${toeRounds}${widening} − cuff ${cuffRounds} = ${rounds}`;
      },
    },
  ],
  pitch: [
    {
      of: ['stitchesPerMm', 'roundsPerMm', 'roundsPerShift', 'pitchDeg'],
      say: ({ stitchesPerMm, roundsPerMm, roundsPerShift, pitchDeg }) =>
        `arctan((1 ÷ ${stitchesPerMm} stitches) ÷ (${roundsPerShift} ÷ ${roundsPerMm} rounds)) = ${pitchDeg}°`,
    },
  ],
  strains: [
    {
      of: ['heelGirthMm', 'stadium', 'breadthShare', 'footLengthMm', 'heelDepthMm'],
      say: ({ heelGirthMm, stadium, breadthShare, footLengthMm, heelDepthMm }) =>
        `depth of the heel: ${heelGirthMm} ÷ 2 − ${stadium} × ${breadthShare} × ${footLengthMm} = ${heelDepthMm}`,
    },
    {
      of: ['footLengthMm', 'legHeightMm', 'lengthMm', 'backStrain'],
      say: ({ footLengthMm, legHeightMm, lengthMm, backStrain }) =>
        `back: (foot ${footLengthMm} + leg ${legHeightMm}) ÷ sock ${lengthMm} − 1 = ${backStrain}`,
    },
    {
      of: ['footLengthMm', 'legHeightMm', 'heelDepthMm', 'lengthMm', 'frontStrain'],
      say: ({ footLengthMm, legHeightMm, heelDepthMm, lengthMm, frontStrain }) =>
        `front: (foot ${footLengthMm} + leg ${legHeightMm} − 2 × depth ${heelDepthMm} ÷ √2) ÷ sock ${lengthMm} − 1 = ${frontStrain}`,
    },
  ],
  bind_off_yarn: [
    {
      of: ['perGirth', 'girthMm', 'm'],
      say: ({ perGirth, girthMm, m }, { perYarn }) =>
        `${perGirth} × ${girthMm} ÷ ${perYarn} = ${m}`,
    },
  ],
  yarn_sock: [
    {
      of: ['stitches', 'mmPerStitch', 'bindOffM', 'tailsM', 'm'],
      say: ({ stitches, mmPerStitch, bindOffM, tailsM, m }, { perYarn }) =>
        `${stitches} stitches × ${mmPerStitch} ÷ ${perYarn} + bind-off ${bindOffM} + tails ${tailsM} = ${m}`,
    },
  ],
  yarn_pair: [
    {
      of: ['mPerSock', 'margin', 'm'],
      say: ({ mPerSock, margin, m }) => `2 × ${mPerSock} × (1 ${ease(margin)}) = ${m}`,
    },
    {
      of: ['relativeError'],
      say: ({ relativeError }) => `give or take ${relativeError}`,
    },
  ],
  balls: [
    {
      of: ['m', 'ballM', 'balls'],
      say: ({ m, ballM, balls }) => `${m} ÷ ${ballM} in a ball, up to whole balls: ${balls}`,
    },
  ],
  substitute: [
    {
      of: ['m', 'ballM', 'balls'],
      say: ({ m, ballM, balls }) => `${m} ÷ ${ballM} in a ball, up to whole balls: ${balls}`,
    },
    {
      of: ['m', 'ballM', 'ballG', 'g'],
      say: ({ m, ballM, ballG, g }) => `${m} ÷ ${ballM} × ${ballG} = ${g}`,
    },
  ],
  mass: [
    {
      of: ['m', 'ballM', 'ballG', 'g'],
      say: ({ m, ballM, ballG, g }) => `${m} ÷ ${ballM} × ${ballG} = ${g}`,
    },
  ],
  needle: [
    {
      of: ['mm'],
      say: ({ mm }) => `a needle of ${mm}`,
    },
  ],
  cable: [
    {
      of: ['stitches', 'stitchesPerMm', 'loopMm', 'tipMm', 'cableMinMm'],
      say: ({ stitches, stitchesPerMm, loopMm, tipMm, cableMinMm }, { length, an }) =>
        `4 halves × ${stitches} ÷ 2 ÷ ${stitchesPerMm} stitches ${an} ${length} + 2 loops × ${loopMm} + 2 tips × ${tipMm} = ${cableMinMm}`,
    },
  ],
  time: [
    {
      of: ['stitchesOfPair', 'stitchesPerMinute', 'rounds', 'turnSeconds', 'minutes'],
      say: ({ stitchesOfPair, stitchesPerMinute, rounds, turnSeconds, minutes }) =>
        `${stitchesOfPair} stitches ÷ ${stitchesPerMinute} a minute + 2 turns × ${rounds} rounds × ${turnSeconds} s ÷ 60 = ${minutes} min`,
    },
  ],
};
