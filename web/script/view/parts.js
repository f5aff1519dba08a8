// The sock's parts, from the toe up, as the drawings and tables tell them.
import { drawingWords, planWords } from '../../words/en.js';
import { formatCount } from '../units.js';
import { figuresIn } from './figures.js';
import { guessText } from './guess.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {{ section: string, rounds: number, stitches: number, from: number }} Part */

/** Runs of rounds joined by section, and each widening's by itself. @param {Plan} plan @returns {Part[]} */
export function partsOf(plan) {
  /** @type {Part[]} */
  const parts = [];
  let from = 0;
  for (const { section, rounds, stitches } of plan.rounds) {
    const last = parts[parts.length - 1];
    const isSame = section !== 'widening' || last?.stitches === stitches;
    if (last && last.section === section && isSame)
      Object.assign(last, { rounds: last.rounds + rounds, stitches });
    else parts.push({ section, rounds, stitches, from });
    from += rounds;
  }
  return parts;
}

export const nameOf = (/** @type {string} */ section) =>
  drawingWords.sectionName[section] ?? section;

/** @typedef {{ knit: number, purl: number }} Rib */

/** "k3, p3". @param {Rib} rib */
export const writeRib = ({ knit, purl }) => `k${formatCount(knit)}, p${formatCount(purl)}`;

/** The sock's rib, before any widening. @param {Plan} plan */
export const sayRib = ({ rib }) => writeRib(rib);

/** The rib of a part: one of a widening, or of the cuff above it, is wider. @param {Plan} plan @param {Part} part @returns {Rib} */
export const ribOf = (plan, part) =>
  plan.widening.stages.find(({ stitches }) => stitches === part.stitches) ?? plan.rib;

/** @param {Plan} plan */
export const isWidened = (plan) => plan.widening.stages.length > 0;

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

/** A part's name in a line of its own: "k3, p3 from here". @param {Plan} plan @param {Part} part */
export function titleOf(plan, part) {
  if (part.section === 'spiral') return ribTitle(plan);
  if (part.section === 'widening') return drawingWords.wider(writeRib(ribOf(plan, part)));
  return nameOf(part.section);
}

/** A part's rounds and length beside its bracket. @param {Showing} showing @param {Part} part */
export function bracketFigure(showing, part) {
  const { plan, system } = showing;
  const length = figuresIn(system).length(lengthAt(plan, part.rounds));
  return drawingWords.whole(drawingWords.rounds(part.rounds), length);
}

/** What a part is called beside its bracket, and more below its figure. @param {Plan} plan @param {Part} part */
function bracketLines(plan, part) {
  const rib = writeRib(ribOf(plan, part));
  const stitches = isWidened(plan) ? drawingWords.stitches(formatCount(part.stitches)) : '';
  if (part.section === 'spiral')
    return [`${rib} ${ribTitle(plan)}`, stitches, sayMove(plan)].filter(Boolean);
  if (part.section === 'widening') return [`${rib}, ${stitches}`];
  if (part.section === 'cuff' && isWidened(plan)) return [`${nameOf('cuff')}, ${rib}`];
  return [nameOf(part.section)];
}

/** The same, with the ring where its figures are a guess: the name has room for it. @param {Showing} showing @param {Part} part */
export function bracketWords(showing, part) {
  const [name, ...more] = bracketLines(showing.plan, part);
  return [guessText(showing, part.section === 'toe' ? 'toe' : 'rounds', name), ...more];
}

/** Millimetres from the tip to where a section begins. @param {Plan} plan @param {string} section */
export function lengthTo(plan, section) {
  const part = partsOf(plan).find((one) => one.section === section);
  return lengthAt(plan, part?.from ?? plan.totalRounds);
}

/** Millimetres from the tip to where a round, counted from 0, begins. @param {Plan} plan @param {number} round */
export const lengthAt = (plan, round) => round / plan.gauge.roundsPerMm;
