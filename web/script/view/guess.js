// What is a guess: which figures hang on a gauge from the label or on a foot nobody measured, and the
// mark they carry. A ring and a word, so that the mark does not hang on its colour.
import { guessWords } from '../../words/en.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */
/** @typedef {Pick<Showing, 'plan' | 'request'>} Planned */
/** @typedef {'gauge' | 'ball' | 'length' | 'heel' | 'leg' | 'edge' | 'mass' | 'needle'} Source what may be a guess */

/** @type {Record<string, Source[]>} */
const hangsOn = {
  stitches: ['gauge', 'ball'],
  wraps: ['gauge', 'ball'],
  gauge: ['gauge'],
  girth: ['gauge'],
  footGirth: ['ball'],
  heelGirth: ['heel'],
  edgeGirth: ['edge'],
  ease: ['gauge', 'ball'],
  heelUse: ['gauge', 'ball', 'heel'],
  legUse: ['gauge', 'ball', 'leg'],
  ankle: ['length', 'heel'],
  toe: ['gauge', 'length'],
  rounds: ['gauge', 'length'],
  length: ['length'],
  yarn: ['gauge', 'ball', 'length'],
  time: ['gauge', 'ball', 'length'],
  mass: ['gauge', 'ball', 'length', 'mass'],
  needle: ['needle'],
  cable: ['gauge', 'ball'],
  firmness: ['gauge'],
};

// A count of the knitter's own is no guess, whatever it was chosen by.
const ofTheCount = new Set(['stitches', 'wraps', 'cable']);

/** @param {Planned} planned @returns {Record<Source, boolean>} */
const guessed = ({ plan, request }) => ({
  gauge: plan.gauge.from === 'label',
  ball: plan.foot.ballGirthEstimated,
  length: plan.foot.lengthEstimated,
  heel: plan.foot.heelAnkleGirthEstimated,
  leg: plan.legFit.widestEstimated,
  edge: plan.legFit.edgeEstimated,
  mass: plan.yarn.massGuessed === true,
  needle: request.swatch?.needleMm === undefined,
});

/**
 * Whether a figure is touched by a guess.
 * @param {Planned} planned @param {keyof typeof hangsOn} figure
 */
export function isGuess(planned, figure) {
  if (planned.request.stitchCount !== undefined && ofTheCount.has(figure)) return false;
  const sources = guessed(planned);
  return hangsOn[figure].some((source) => sources[source]);
}

/** The mark beside a figure, or nothing. @param {Make} h @param {Planned} planned @param {keyof typeof hangsOn} figure */
export const guessMark = (h, planned, figure) =>
  isGuess(planned, figure) ? h('span', { class: 'guess' }, guessWords.mark) : null;

/** A short text, with the mark's ring behind it: in a drawing or a cell there is no room for its word. @param {Planned} planned @param {keyof typeof hangsOn} figure @param {string} text */
export const guessText = (planned, figure, text) =>
  isGuess(planned, figure) ? guessWords.after(text) : text;

/** What the mark means, said once. @param {Make} h @param {Planned} planned */
export function explainGuess(h, planned) {
  const { gauge, ball, length, heel, leg, edge } = guessed(planned);
  const isShoe = ball || length;
  const why = gauge
    ? isShoe
      ? 'both'
      : 'label'
    : isShoe
      ? 'shoe'
      : heel || leg || edge
        ? 'foot'
        : '';
  if (why === '') return null;
  return h(
    'p',
    { class: 'aside' },
    h('span', { class: 'guess' }, guessWords.mark),
    `: ${guessWords.why[why]}`,
  );
}

/** What the ring alone means, where such rings stand. @param {Planned} planned @param {Array<keyof typeof hangsOn>} figures */
export const explainRing = (planned, figures) =>
  figures.some((figure) => isGuess(planned, figure)) ? ` ${guessWords.ring}` : '';
