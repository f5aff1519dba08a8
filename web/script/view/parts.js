// The sock's parts, from the toe up, as the drawings and tables tell them.
import { drawingWords, planWords } from '../../words/en.js';
import { formatCount } from '../units.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {{ section: string, rounds: number, stitches: number, from: number }} Part */

/** Runs of rounds joined by section. @param {Plan} plan @returns {Part[]} */
export function partsOf(plan) {
  /** @type {Part[]} */
  const parts = [];
  let from = 0;
  for (const { section, rounds, stitches } of plan.rounds) {
    const last = parts[parts.length - 1];
    if (last && last.section === section)
      Object.assign(last, { rounds: last.rounds + rounds, stitches });
    else parts.push({ section, rounds, stitches, from });
    from += rounds;
  }
  return parts;
}

export const nameOf = (/** @type {string} */ section) =>
  drawingWords.sectionName[section] ?? section;

/** "k2, p2". @param {Plan} plan */
export const sayRib = ({ rib }) => `k${formatCount(rib.knit)}, p${formatCount(rib.purl)}`;

const sayEvery = (/** @type {number} */ rounds) =>
  rounds === 1 ? planWords.knit.rib.everyRound : drawingWords.rounds(rounds);

/** How the rib moves, in a few words, or '' for one that stands straight. @param {Plan} plan */
export const sayMove = ({ rib, spiral }) => {
  if (rib.roundsPerShift === 0) return '';
  const say = spiral.pitchDeg === undefined ? drawingWords.change : drawingWords.move;
  return say(sayEvery(rib.roundsPerShift));
};

/** What to call the rib: one that moves and leans nowhere is no spiral. @param {Plan} plan */
export function ribTitle({ rib, spiral }) {
  const names = planWords.knit.rib;
  if (rib.roundsPerShift === 0) return names.straightName;
  if (spiral.pitchDeg !== undefined) return nameOf('spiral');
  return rib.roundsPerShift === 1 ? names.mossName : names.brokenName;
}

/** Millimetres from the tip to where a section begins. @param {Plan} plan @param {string} section */
export function lengthTo(plan, section) {
  const part = partsOf(plan).find((one) => one.section === section);
  return (part?.from ?? plan.totalRounds) / plan.gauge.roundsPerMm;
}
