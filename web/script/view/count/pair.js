// The pair, standing for a wide page and lying for a narrow one: the same socks, to the same plan. And
// the same figures as a table.
import { drawingWords, pageWords, stretchWords } from '../../../words/en.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { explainRing, guessMark } from '../guess.js';
import { lyingPair } from './pair_lying.js';
import { standingPair } from './pair_standing.js';
import { partsOf, titleOf } from '../parts.js';
import { hasGreatToe } from '../knit/both_socks.js';
import { tightAtHeel } from './stretch.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** The same figures as a table. @param {Make} h @param {Showing} showing */
function tableOfPair(h, showing) {
  const { plan, system } = showing;
  const { length } = figuresIn(system);
  const words = drawingWords.table;
  const row = (
    /** @type {string} */ name,
    /** @type {number} */ rounds,
    /** @type {number} */ stitches,
  ) => ({
    name,
    cells: [String(rounds), length(rounds / plan.gauge.roundsPerMm), String(stitches)],
  });
  const rows = partsOf(plan).map((part) => row(titleOf(plan, part), part.rounds, part.stitches));
  return table(h, {
    caption: [`${words.caption} `, guessMark(h, showing, 'rounds')],
    heads: [words.part, words.rounds, words.length, words.stitches],
    rows: [...rows, row(words.all, plan.totalRounds, plan.edgeStitches)],
    className: 'figures',
  });
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewPair(h, document, showing) {
  const { plan, system, lastGood, problems } = showing;
  const { length } = figuresIn(system);
  const scale = drawingWords.toScale(length(plan.finishedGirthMm), length(plan.restGirthMm));
  const guess = plan.gauge.from === 'label' ? ` ${drawingWords.giveOrTake}` : '';
  const pairs = [standingPair(document, showing), lyingPair(document, showing)];
  const fine = pairs.map((pair) => {
    const every = pair.getAttribute('data-every') ?? '1';
    const only = pair.classList.contains('wide-only') ? 'wide-only' : 'narrow-only';
    return every !== '1' && h('span', { class: only }, drawingWords.tooFine(every));
  });
  return [
    ...pairs,
    h(
      'figcaption',
      {},
      problems.length > 0 &&
        h('strong', { class: 'last-good at-drawing' }, pageWords.lastGood(lastGood)),
      h('span', {}, `${scale}${guess}${explainRing(showing, ['rounds', 'toe'])}`),
      ...fine,
      tightAtHeel(plan) !== '' && h('span', { class: 'tight-told' }, stretchWords.atHeel.caption),
      hasGreatToe(plan) && h('span', { class: 'whose' }, drawingWords.whoseFoot),
      h(
        'details',
        { 'data-key': 'table' },
        h('summary', {}, drawingWords.table.open),
        tableOfPair(h, showing),
      ),
    ),
  ];
}
