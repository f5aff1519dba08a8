// The stretch line's figures for those who listen, or look up: every girth by its name.
import { stretchWords } from '../../../words/en.js';
import { formatCount, formatPercent } from '../../units.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { tightAtHeel } from './stretch.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Plan} Plan */

const words = stretchWords.table;

const source = (/** @type {boolean} */ isEstimated) =>
  isEstimated ? words.estimated : words.measured;

/** @param {Plan} plan */
function edgeRemark(plan) {
  if (plan.edgeStitches !== plan.stitchCount) return words.widened(formatCount(plan.edgeStitches));
  return source(plan.legFit.edgeEstimated);
}

/** @param {Plan} plan */
function heelRemark(plan) {
  const isTight = tightAtHeel(plan) !== '';
  const isLarge = plan.foot.heelAnkleGirthEstimated;
  const tight = isLarge ? words.largeStuck : words.stuck;
  const passes = isLarge ? words.largeHeel : words.heelUse;
  return (isTight ? tight : passes)(formatPercent(plan.heelUse));
}

/** @param {Make} h @param {Showing} showing */
export function tableOfStretch(h, { plan, system }) {
  const { length } = figuresIn(system);
  const { finishedGirthMm: flat, restGirthMm: rest, foot } = plan;
  const take = (/** @type {number} */ mm) => words.take(length(mm));
  const rows = /** @type {Array<[number, string, string]>} */ ([
    [rest, words.rest, take(rest * plan.restGirthError)],
    [flat, words.flat, take(flat * plan.girthError)],
    [foot.ballGirthMm, words.foot, source(foot.ballGirthEstimated)],
    [plan.legFit.edgeGirthMm, words.edge, edgeRemark(plan)],
    [foot.heelToPassMm, words.heel, heelRemark(plan)],
    [plan.passGirthMm, words.limit, words.limitShare(formatPercent(plan.passUse))],
    [plan.widestGirthMm, words.widest, ''],
  ]);
  rows.sort(([one], [other]) => one - other);
  return h(
    'details',
    { class: 'stretch-table', 'data-key': 'stretch-table' },
    h('summary', {}, words.open),
    table(h, {
      caption: words.caption(formatCount(plan.stitchCount)),
      heads: [words.what, words.girth, words.remark],
      rows: rows.map(([mm, name, remark]) => ({ name, cells: [length(mm), remark] })),
      className: 'girths',
    }),
  );
}
