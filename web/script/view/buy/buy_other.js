// Another yarn in place of the first: both side by side, by metres and not by grams.
import { formatCount, formatPercent } from '../../units.js';
import { buyWords } from '../../../words/en.js';
import { cautionText } from '../count/cautions.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { guessMark } from '../guess.js';
import { markLastGood } from '../page/page_state.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

const words = buyWords.other;

/** @param {number} apart as a share of the first */
function sayThickness(apart) {
  const share = formatPercent(Math.abs(apart));
  if (share === formatPercent(0)) return words.same;
  return apart > 0 ? words.thicker(share) : words.thinner(share);
}

const sayBalls = (/** @type {number} */ balls, /** @type {boolean | undefined} */ isJust) =>
  isJust ? words.ballsJust(formatCount(balls)) : formatCount(balls);

/** @param {Showing} showing */
function rowsOf({ plan, request, system }) {
  const { yarn: first } = plan;
  const { yarn, mass } = figuresIn(system);
  const other = first.substitute;
  if (!other) return [];
  const sayBall = (/** @type {any} */ ball) =>
    ball?.ballG === undefined ? words.unknown : words.ballOf(mass(ball.ballG), yarn(ball.ballM));
  const metres = yarn(first.mWithMargin);
  return [
    { name: words.yarn, cells: [metres, metres] },
    { name: words.ball, cells: [sayBall(request.yarn), sayBall(request.yarn.substitute)] },
    {
      name: words.balls,
      cells: [
        first.balls === undefined ? words.unknown : sayBalls(first.balls, first.ballsJust),
        sayBalls(other.balls, other.ballsJust),
      ],
    },
    {
      name: words.spare,
      cells: [first.spareM === undefined ? words.unknown : yarn(first.spareM), yarn(other.spareM)],
    },
    {
      name: words.mass,
      cells: [
        first.gWithMargin === undefined ? words.unknown : mass(first.gWithMargin),
        mass(other.gWithMargin),
      ],
    },
    { name: words.thickness, cells: [words.first, sayThickness(other.thicknessApart)] },
    {
      name: words.fabric,
      cells: [
        plan.firmness === undefined ? words.unknown : words.firmness[plan.firmness],
        words.firmness[other.firmness],
      ],
    },
  ];
}

/** @param {Make} h @param {Showing} showing */
export function viewOther(h, showing) {
  const { plan, system } = showing;
  if (!plan.yarn.substitute) return [];
  const cautions = plan.cautions.filter(({ field }) => field.startsWith('/yarn/substitute'));
  return [
    markLastGood(h, showing),
    table(h, {
      caption: words.title,
      heads: words.heads,
      rows: rowsOf(showing),
      className: 'figures two-yarns',
    }),
    h('p', {}, words.metres, ' ', guessMark(h, showing, 'yarn')),
    ...cautions.map((caution) => h('p', { class: 'yarn-caution' }, cautionText(caution, system))),
  ];
}
