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

/** How the rib moves, in a few words, or '' for one that stands straight. @param {Plan} plan */
export const sayMove = ({ rib }) =>
  rib.roundsPerShift === 0 ? '' : drawingWords.move(drawingWords.rounds(rib.roundsPerShift));

export const ribTitle = (/** @type {Plan} */ plan) =>
  plan.rib.roundsPerShift === 0 ? planWords.knit.rib.straightName : nameOf('spiral');
