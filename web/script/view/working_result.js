// What each working came to, as the rest of the page writes it, and where on the sheet it stands.
import { perWords, workingWords } from '../../words/en.js';
import { writeNamed } from './figures.js';

/** @typedef {import('../contract.js').Working} Working */
/** @typedef {import('./showing.js').Showing} Showing */

/** In the order in which one comes from the other; by the word that the group is called. */
export const groups = /** @type {Record<string, Array<Working['figure']>>} */ ({
  gauge: [
    'footLength',
    'ballGirth',
    'gauge',
    'gaugeError',
    'mmPerStitch',
    'geometryMmPerStitch',
    'firmness',
  ],
  width: ['stitchCount', 'restGirthMm', 'heelUse', 'legFit', 'widening'],
  length: [
    'castOn',
    'toeRounds',
    'toeIncreases',
    'lengthMm',
    'totalRounds',
    'cuffRounds',
    'spiralRounds',
    'pitch',
    'strains',
  ],
  yarn: ['bindOffYarn', 'mPerSock', 'mWithMargin', 'balls', 'substitute', 'gPerPair'],
  tools: ['needle', 'cable', 'minutes'],
});

// Of a figure's numbers, the one that is the figure.
const resultOf = /** @type {Partial<Record<Working['figure'], string>>} */ ({
  footLength: 'lengthMm',
  ballGirth: 'girthMm',
  gauge: 'stitchesPerMm',
  gaugeError: 'relativeError',
  mmPerStitch: 'mmPerStitch',
  geometryMmPerStitch: 'mmPerStitch',
  restGirthMm: 'restGirthMm',
  stitchCount: 'stitches',
  heelUse: 'heelUse',
  legFit: 'use',
  widening: 'stitches',
  castOn: 'wraps',
  toeRounds: 'rounds',
  toeIncreases: 'increases',
  lengthMm: 'lengthMm',
  totalRounds: 'rounds',
  cuffRounds: 'rounds',
  spiralRounds: 'rounds',
  strains: 'backStrain',
  bindOffYarn: 'm',
  mPerSock: 'm',
  mWithMargin: 'm',
  balls: 'balls',
  substitute: 'balls',
  gPerPair: 'g',
  needle: 'mm',
  cable: 'cableMinMm',
  minutes: 'minutes',
});

/** A figure in short, beside its name. @param {Working} working @param {Showing} showing */
export function writeResult({ figure, numbers }, { plan, system }) {
  if (figure === 'firmness') return workingWords.firm[plan.firmness ?? ''] ?? '';
  if (figure === 'pitch') return `${writeNamed('pitchDeg', numbers.pitchDeg, system)}°`;
  if (figure === 'castOn') return workingWords.wraps(writeNamed('wraps', numbers.wraps, system));
  const name = resultOf[figure];
  if (!name || !(name in numbers)) return '';
  const text = writeNamed(name, numbers[name], system);
  return figure === 'gauge' ? workingWords.gauge(text, perWords[system]) : text;
}
