// What each working came to, as the rest of the page writes it, and where on the sheet it stands.
import { perWords, workingWords } from '../../../words/en.js';
import { writeNamed } from '../figures.js';
import { guessText } from '../guess.js';

/** @typedef {import('../../contract.js').Working} Working */
/** @typedef {import('../showing.js').Showing} Showing */

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

// What each figure hangs on, by the name under which a guess touches it.
const hangsOn =
  /** @type {Partial<Record<Working['figure'], Parameters<typeof guessText>[1]>>} */ ({
    footLength: 'length',
    ballGirth: 'footGirth',
    gauge: 'gauge',
    gaugeError: 'gauge',
    mmPerStitch: 'gauge',
    firmness: 'firmness',
    stitchCount: 'stitches',
    restGirthMm: 'girth',
    heelUse: 'heelUse',
    legFit: 'legUse',
    widening: 'legUse',
    castOn: 'wraps',
    toeRounds: 'toe',
    toeIncreases: 'wraps',
    lengthMm: 'length',
    totalRounds: 'rounds',
    cuffRounds: 'gauge',
    spiralRounds: 'rounds',
    pitch: 'gauge',
    strains: 'ankle',
    bindOffYarn: 'heelGirth',
    mPerSock: 'yarn',
    mWithMargin: 'yarn',
    balls: 'yarn',
    substitute: 'yarn',
    gPerPair: 'mass',
    needle: 'needle',
    cable: 'cable',
    minutes: 'time',
  });

/** A figure in short, beside its name, and its ring where it is a guess. @param {Working} working @param {Showing} showing */
export function tellResult(working, showing) {
  const text = writeResult(working, showing);
  const name = hangsOn[working.figure];
  return name && text ? guessText(showing, name, text) : text;
}

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
