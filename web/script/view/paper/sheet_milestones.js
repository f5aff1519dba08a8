// What to look forward to, and at which round it comes: a box for each.
import { ribTrack } from '../../draw/rib_track.js';
import { sheetWords } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { guessText } from '../guess.js';
import { wideningsOf } from '../knit/knit_wider.js';
import { lengthAt, partsOf, sayRib, writeRib } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {{ mm: number, round?: number, text: string }} Milestone `round` the first one of it, from 0 */

const words = sheetWords.milestones;

/** @param {Showing} showing @returns {Milestone[]} from the toe up */
function milestonesOf({ plan }) {
  const at = (/** @type {number} */ round, /** @type {string} */ text) => ({
    round,
    mm: lengthAt(plan, round),
    text,
  });
  const move = ribTrack(plan, false).find(({ isMove, before }) => isMove && !before);
  const cuff = partsOf(plan).find(({ section }) => section === 'cuff');
  return [
    at(0, words.castOn(formatCount(plan.castOn.wraps))),
    at(plan.toe.rounds, words.rib(sayRib(plan))),
    ...(move ? [at(move.from, words.move)] : []),
    at(plan.tryOnRound, words.tryOn),
    ...wideningsOf(plan).map(({ stage, widening }) =>
      at(widening.from, words.wider(writeRib(stage))),
    ),
    ...(cuff ? [at(cuff.from, words.cuff)] : []),
    { mm: lengthAt(plan, plan.totalRounds), text: words.bindOff },
  ].sort((one, other) => one.mm - other.mm);
}

/** @param {Make} h @param {Showing} showing */
export function sheetMilestones(h, showing) {
  const { length } = figuresIn(showing.system);
  return [
    h('h3', {}, words.title),
    table(h, {
      caption: '',
      heads: words.heads,
      rows: milestonesOf(showing).map(({ round, mm, text }) => ({
        name: '',
        cells: [
          round === undefined ? '' : guessText(showing, 'rounds', formatCount(round + 1)),
          mm === 0 ? '' : length(mm),
          text,
        ],
      })),
      className: 'milestones',
    }),
  ];
}
