// Measured on the needles: the toe beside the swatch, and the ways to go on.
import { measuredWords as words, perWords } from '../../../words/en.js';
import { formatCount, formatNumber, formatPercent, formatTime, overGauge } from '../../units.js';
import { table } from '../dom.js';
import { figuresIn, writeEase } from '../figures.js';
import { keptButton } from '../page/kept_button.js';
import { gaugeSystem } from '../count/swatch.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {NonNullable<import('../../contract.js').Adjust['measured']>} Measured */
/** @typedef {Measured['ways'][number]} Way */

/** @param {Make} h @param {Showing} showing @param {Measured} measured */
function gauges(h, showing, { swatch, toe, together, byToeAlone }) {
  const system = gaugeSystem(showing);
  const write = (/** @type {number} */ perMm) => formatNumber(overGauge(perMm, system), 1);
  const say = (/** @type {number | undefined} */ mean, error = 0) =>
    mean === undefined ? words.table.none : words.table.mean(write(mean), write(mean * error));
  const row = (/** @type {string} */ name, /** @type {Measured['toe']} */ gauge, mark = '') => ({
    name,
    mark,
    cells: [
      say(gauge.stitchesPerMm, gauge.relativeError),
      say(gauge.roundsPerMm, gauge.roundsRelativeError),
    ],
  });
  const isLabel = showing.plan.gauge.from === 'label';
  return table(h, {
    className: 'figures',
    caption: words.table.caption(perWords[system]),
    heads: words.table.heads,
    rows: [
      row(isLabel ? words.table.label : words.table.swatch, swatch),
      row(words.table.toe, toe),
      row(byToeAlone ? words.table.alone : words.table.together, together, 'sum'),
    ],
  });
}

/** What to do, a sentence a step. @param {Way} way @param {Showing['plan']} plan */
function doing(way, plan) {
  const count = formatCount(way.stitchCount);
  if (way.way === 'restart') return [words.restart];
  const isOther = way.totalRounds !== plan.totalRounds;
  const rounds =
    isOther && words.rounds(formatCount(way.totalRounds), formatCount(plan.totalRounds));
  if (way.roundsOver > 0) return [words.over(words.roundsOf(way.roundsOver)), rounds];
  if (way.way === 'keep') return [words.keep, rounds];
  const steps = way.steps.map(({ round, added, sides, stitches }) => {
    const step = words.step[sides](formatCount(round), formatCount(stitches));
    return added ? words.added(step) : step;
  });
  const back =
    way.roundsLost > 0 && words.back(formatCount(way.fromRound), words.roundsOf(way.roundsLost));
  return [back, ...steps, words.ribFrom(formatCount(way.ribFromRound), count)];
}

/** @param {Make} h @param {Way} way @param {Showing} showing @param {boolean} isAdvised */
function choice(h, way, { plan, system }, isAdvised) {
  const { length, yarn } = figuresIn(system);
  const figure = (/** @type {keyof typeof words.figures} */ name, /** @type {string} */ text) =>
    h('div', {}, h('dt', {}, words.figures[name]), h('dd', {}, text));
  return h(
    'li',
    { 'data-key': way.way, class: isAdvised ? 'is-advised' : '' },
    h('h4', {}, words.title[way.way](formatCount(way.stitchCount))),
    isAdvised && h('p', { class: 'tag' }, words.advised),
    doing(way, plan).map((text) => text && h('p', {}, text)),
    way.passes ? null : h('p', { class: 'doubt' }, words.passes),
    h(
      'dl',
      {},
      figure('lost', formatCount(way.roundsLost)),
      figure('toGo', formatCount(way.roundsToGo)),
      figure('girth', length(way.finishedGirthMm)),
      figure('ease', writeEase(way.girthEase)),
      figure('heel', formatPercent(way.heelUse)),
      figure('pair', yarn(way.mPerPair)),
      figure('yarn', yarn(way.mToGo)),
      figure('time', formatTime(way.minutesToGo)),
    ),
  );
}

/** How the sock is planned anew. @param {Make} h @param {Showing} showing @param {Measured} measured */
function anew(h, { isBegun }, { toe, ways, byToeAlone }) {
  const other = ways.find(({ way }) => way !== 'keep');
  if (!other || toe.stitchesPerMm === undefined) return [];
  const button = isBegun
    ? keptButton(h, 'another', words.another)
    : h(
        'button',
        { type: 'button', class: 'quiet', 'data-toe-to-swatch': byToeAlone ? 'alone' : '' },
        words.toSwatch,
      );
  return [
    h('h3', {}, words.anew(formatCount(other.stitchCount))),
    h('p', {}, isBegun ? words.isBegun : byToeAlone ? words.byToeAlone : words.byBoth),
    h('p', {}, button),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function viewMeasured(h, showing) {
  const measured = showing.beside?.adjust?.reply?.measured;
  if (!measured) return [];
  const { ways, advised, isApart, errorsApart, byToeAlone } = measured;
  return [
    gauges(h, showing, measured),
    byToeAlone
      ? h(
          'p',
          { class: 'doubt' },
          isApart ? words.apart(formatNumber(errorsApart, 1)) : words.examples,
        )
      : h('p', { class: 'aside' }, words.weighed),
    h('h3', {}, words.ways[ways.length - 1]),
    h(
      'ul',
      { class: 'ways-on' },
      ways.map((/** @type {Way} */ way) => choice(h, way, showing, way.way === advised)),
    ),
    ...anew(h, showing, measured),
  ];
}
