// What to buy: yarn, needle and cable; and where in the sock the yarn goes.
import { formatNumber, formatPercent, formatTime } from '../units.js';
import { planWords } from '../../words/en.js';
import { table } from './dom.js';
import { figuresIn } from './figures.js';
import { markLastGood } from './page_state.js';
import { nameOf } from './parts.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */

const words = planWords.buy;

/** How the yarn is shared between the socks, the spare included. @param {any} yarn @param {ReturnType<typeof figuresIn>} figures */
function splitWords({ balls, gWithMargin }, figures) {
  const each = figures.mass(gWithMargin / 2);
  if (balls === undefined) return words.splitMass(each);
  if (balls === 1) return words.oneBall(each);
  if (balls % 2 === 0) return words.evenBalls(balls / 2);
  return words.oddBalls((balls - 1) / 2, each);
}

/** @param {Make} h @param {Showing} showing */
function yarnWords(h, { plan, system }) {
  const { yarn } = plan;
  const figures = figuresIn(system);
  const margin = formatPercent(yarn.mWithMargin / yarn.mPerPair - 1);
  const lines = [words.margin(margin, figures.yarn(yarn.mPerPair))];
  if (yarn.gWithMargin !== undefined) {
    const say = yarn.massGuessed ? words.massGuessed : words.mass;
    lines.push(say(figures.mass(yarn.gWithMargin), figures.otherMass(yarn.gWithMargin)));
  }
  lines.push(splitWords(yarn, figures));
  const balls =
    yarn.balls === undefined
      ? null
      : h(
          'p',
          { class: 'balls' },
          h('strong', {}, words.balls(yarn.balls)),
          yarn.ballsJust ? h('em', { class: 'just' }, ` ${words.just}`) : null,
          yarn.spareM === undefined ? null : `. ${words.spare(figures.yarn(yarn.spareM))}`,
        );
  return [
    h(
      'p',
      { class: 'big' },
      words.need(figures.yarn(yarn.mWithMargin), figures.otherYarn(yarn.mWithMargin)),
    ),
    balls,
    ...lines.map((line) => h('p', {}, line)),
  ];
}

/** @param {number} mm @param {Showing['system']} system */
function cableWords(mm, system) {
  const figures = figuresIn(system);
  const sold = words.cableSold[mm];
  const other = system === 'metric' ? 'inch' : 'metric';
  return words.cable(
    sold?.[system] ?? figures.length(mm),
    sold?.[other] ?? figures.otherLength(mm),
  );
}

/** @param {Make} h @param {Showing} showing */
function toolWords(h, { plan, system }) {
  const { needle } = plan;
  const figures = figuresIn(system);
  const size = words.needleSize(
    `${formatNumber(needle.mm, 2)} mm`,
    needle.us ?? '',
    needle.uk ?? '',
  );
  const timing = plan.working.find(({ figure }) => figure === 'minutes')?.numbers.stitchesPerMinute;
  return [
    h('p', { class: 'big' }, size),
    needle.cableBuyMm === undefined ? null : h('p', {}, cableWords(needle.cableBuyMm, system)),
    h('p', {}, words.cableLeast(figures.length(needle.cableMinMm))),
    plan.firmness === undefined ? null : h('p', {}, words.firmness[plan.firmness]),
    h(
      'p',
      {},
      words.time(formatTime(plan.minutes), timing === undefined ? '' : formatNumber(timing, 1)),
    ),
  ];
}

/** @param {Make} h @param {Showing} showing */
function sectionTable(h, { plan, system }) {
  const { yarn } = plan;
  const figures = figuresIn(system);
  const row = (/** @type {string} */ name, /** @type {number} */ m, mark = '') => ({
    name,
    mark,
    cells: [figures.yarn(m), figures.otherYarn(m)],
  });
  return table(h, {
    caption: words.sections,
    heads: [words.part, words.length, words.also],
    rows: [
      ...yarn.sections.map(({ section, m }) => row(nameOf(section), m)),
      row(words.oneSock, yarn.mPerSock, 'sum'),
      row(words.pair, yarn.mPerPair, 'sum'),
      row(words.withMargin, yarn.mWithMargin, 'sum'),
    ],
    className: 'figures',
  });
}

/** @param {Make} h @param {Showing} showing */
export function viewBuy(h, showing) {
  return [
    h('h2', {}, words.title),
    markLastGood(h, showing),
    h(
      'div',
      { class: 'columns' },
      h('div', {}, h('h3', {}, words.yarn), yarnWords(h, showing)),
      h('div', {}, h('h3', {}, words.needle), toolWords(h, showing)),
      h('div', {}, sectionTable(h, showing)),
    ),
  ];
}
