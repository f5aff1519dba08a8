// The sheet to fill in by pen: the sums of the plan as boxes, for the class's own rib, ease and toe.
import { formatNumber, formatPercent } from '../../units.js';
import { penWords as words, planWords, sheetWords, stagesWords } from '../../../words/en.js';
import { viewCare } from '../count/cautions.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { sayRounds, spansOf } from '../knit/knit_rib.js';
import { sayRun } from '../knit/lines.js';
import { sayMove, writeRib } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */

const { knit } = planWords;

/** A share to multiply by, "0.9". @param {number} share */
const factor = (share) => formatNumber(share, 2);

/** @param {Make} h @param {import('../../../words/en/pen_sheet.js').Sum} sum */
const viewSum = (h, sum) =>
  h(
    'p',
    { class: 'pen-sum' },
    sum.map((part) =>
      typeof part === 'string'
        ? h('span', {}, part)
        : h('span', { class: 'pen-box' }, h('span', {}, part.box)),
    ),
  );

/** Rounds that increase, runs of them joined: "2–3, 5". @param {Plan} plan */
function increasesOf({ toe }) {
  const rounds = toe.sides.flatMap((side, i) => (side === 'none' ? [] : [i + 1]));
  /** @type {Array<[number, number]>} */
  const runs = [];
  for (const round of rounds) {
    const last = runs[runs.length - 1];
    if (last && last[1] === round - 1) last[1] = round;
    else runs.push([round, round]);
  }
  return runs.map(([from, to]) => sayRounds(from, to)).join(', ');
}

/** A half of the rib for whatever count: how often its repeat comes is not said. @param {Plan} plan @param {number} line */
const sayAnyHalf = (plan, line) =>
  plan.lines[line].told[0]
    .map(({ runs, times }) => {
      const said = runs.map(sayRun).join(', ');
      return times === 1 ? said : words.over(said);
    })
    .join(', ');

/** One turn of the rib, of a sock whose halves are alike. @param {Make} h @param {Plan} plan */
function anyRib(h, plan) {
  const most = plan.rib.roundsPerShift === 0 ? 1 : plan.spiral.periodRounds;
  const spans = spansOf(plan, 'spiral').filter(({ from }) => from < most);
  return table(h, {
    caption: words.ribCaption,
    heads: words.ribHeads,
    rows: spans.map(({ from, rounds, line, secondLine }) => ({
      name: sayRounds(from + 1, Math.min(from + rounds, plan.spiral.periodRounds)),
      cells: [
        secondLine === undefined
          ? sayAnyHalf(plan, line)
          : words.both(sayAnyHalf(plan, line), sayAnyHalf(plan, secondLine)),
      ],
    })),
    className: 'lines',
  });
}

/** @param {Make} h @param {string} title @param {...(import('../dom.js').Child | import('../dom.js').Child[])} children */
const part = (h, title, ...children) => h('section', {}, h('h3', {}, title), children.flat());

/**
 * @param {Make} h @param {Showing} showing the class's sock
 * @param {Plan[]} counts the same sock at every count that is offered
 */
export function viewPenSheet(h, showing, counts) {
  const { plan, request, system } = showing;
  const { girthEase, lengthEase, cuffMm, toe, yarnMargin } = request;
  const figures = figuresIn(system);
  const sums = (/** @type {import('../../../words/en/pen_sheet.js').Sum[]} */ all) =>
    all.map((sum) => viewSum(h, sum));
  return [
    h(
      'div',
      { class: 'pen' },
      h('h2', {}, words.title, h('span', { class: 'sheet-own' }, words.who)),
      h('p', {}, words.lead([writeRib(plan.rib), sayMove(plan)].filter(Boolean).join(', '))),
      h(
        'div',
        { class: 'pen-columns' },
        part(h, words.swatch.title, sums(words.swatch.sums)),
        part(h, words.foot.title, sums(words.foot.sums)),
        part(
          h,
          words.count.title,
          sums(words.count.sums(factor(1 + girthEase))),
          viewSum(h, words.count.heel(factor(plan.passUse))),
          h('p', {}, words.count.heelNote),
        ),
        h(
          'section',
          {},
          table(h, {
            caption: words.table.caption,
            heads: words.table.heads,
            rows: counts.map((one) => ({
              name: formatNumber(one.stitchCount),
              cells: [formatNumber(one.castOn.wraps), increasesOf(one)],
            })),
            className: 'lines',
          }),
          h('p', {}, words.table.note(figures.length(plan.foot.lengthMm))),
          h('p', {}, knit.toe.made),
        ),
        part(
          h,
          words.length.title,
          sums(
            words.length.sums(
              factor(1 + lengthEase),
              formatPercent(toe.share),
              figures.length(cuffMm),
            ),
          ),
        ),
        part(h, words.yarn.title, sums(words.yarn.sums(factor(1 + yarnMargin)))),
        part(
          h,
          words.rib,
          counts.length > 0 && anyRib(h, counts[counts.length - 1]),
          h('p', {}, knit.rib.forward),
          h('p', {}, stagesWords.tryOn.text(words.pastFoot(factor(1 + lengthEase)))),
        ),
        h(
          'section',
          {},
          h('h3', {}, words.passes),
          h(
            'ol',
            { class: 'pen-passes' },
            knit.passes.list.map((pass) => h('li', {}, pass)),
          ),
          h('p', {}, knit.passes.turn),
          h('p', {}, words.castOn),
          h('p', {}, sheetWords.bindOff),
          viewCare(h),
        ),
      ),
    ),
  ];
}
