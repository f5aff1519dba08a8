// The rib chart: the window of rounds, a chart a sock where the two differ, the key, the same in words.
import { drawChart, drawKey } from '../../draw/chart.js';
import { chartWords, drawingWords, planWords } from '../../../words/en.js';
import { isPairUnlike, roundsOf, spansIn } from './chart_rounds.js';
import { table } from '../dom.js';
import { sayHalf } from './lines.js';
import { markLastGood } from '../page/page_state.js';
import { nameOf, partsOf } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('./chart_rounds.js').ChartRound} ChartRound */
/** @typedef {{ from: number, to: number, most: number }} ChartWindow first and last round, from 1; and how many at most */

const words = chartWords;

/** Which signs of the key these rounds need. @param {ChartRound[][]} charts */
function signsIn(charts) {
  const rounds = charts.flat();
  const works = new Set(rounds.flatMap(({ halves }) => halves.flat()));
  const widths = [0, 1].map((half) => new Set(rounds.map(({ halves }) => halves[half].length)));
  return Object.keys(words.key).filter((kind) => {
    if (kind === 'half') return true;
    if (kind === 'changed') return rounds.some(({ changed }) => changed.flat().includes(true));
    if (kind === 'gap') return widths.some((one) => one.size > 1);
    return works.has(kind);
  });
}

const sayRounds = (/** @type {ChartWindow} */ { from, to }) => drawingWords.strip.span(from, to);

/** A chart that is too wide moves inside its own place, its right end first in sight. @param {Make} h @param {Document} document @param {Plan} plan @param {ChartWindow} window @param {ChartRound[]} rounds @param {string} sock */
function chartOf(h, document, plan, window, rounds, sock) {
  const title = words.title(sock, sayRounds(window), String(plan.totalRounds));
  const most = Math.max(...rounds.map(({ halves }) => halves.flat().length));
  const drawn = drawChart(document, rounds, {
    name: words.name(title, String(most)),
    title,
    begin: words.begin,
    sectionName: nameOf,
  });
  return h(
    'div',
    { class: 'chart-scroll', tabindex: '0', role: 'group', 'aria-label': words.scroll(title) },
    drawn,
  );
}

/** The same rounds in words. @param {Make} h @param {Plan} plan @param {ChartWindow} window @param {boolean} isUnlike */
function tableOf(h, plan, window, isUnlike) {
  const rib = planWords.knit.rib;
  const rows = spansIn(plan, window).flatMap(({ first, last, line, secondLine }) => {
    const row = (/** @type {string} */ socks, /** @type {number} */ place) => {
      const halves = [sayHalf(plan.lines[place], 0), sayHalf(plan.lines[place], 1)];
      return {
        name: drawingWords.strip.span(first, last),
        cells: isUnlike ? [socks, ...halves] : halves,
      };
    };
    if (secondLine === undefined) return [row(rib.socks, line)];
    return [row(rib.sockA, line), row(rib.sockB, secondLine)];
  });
  return h(
    'details',
    { 'data-key': 'table' },
    h('summary', {}, words.table.open),
    table(h, {
      caption: words.table.caption,
      heads: isUnlike
        ? [rib.round, rib.sock, rib.first, rib.second]
        : [rib.round, rib.first, rib.second],
      rows,
      className: 'lines',
    }),
  );
}

/** @param {Make} h @param {Document} document @param {Showing} showing @param {ChartWindow} window */
export function viewChart(h, document, showing, window) {
  const { plan } = showing;
  const isUnlike = isPairUnlike(plan, window);
  const charts = (isUnlike ? [false, true] : [false]).map((isSecond) =>
    roundsOf(plan, window, isSecond),
  );
  const socks = isUnlike ? [words.socks.a, words.socks.b] : [''];
  const signs = signsIn(charts);
  const key = drawKey(
    document,
    signs.map((kind) => ({ kind, words: words.key[kind].lines })),
    words.keyName(
      signs.map((kind) => `${words.key[kind].sign}: ${words.key[kind].lines.join(' ')}`),
    ),
  );
  return [
    markLastGood(h, showing),
    h(
      'div',
      { class: 'charts' },
      h(
        'div',
        {},
        charts.map((rounds, i) => chartOf(h, document, plan, window, rounds, socks[i])),
      ),
      key,
    ),
    tableOf(h, plan, window, isUnlike),
  ];
}

/** Beside the two fields: how many rounds there are, and ways to the places one looks for. @param {Make} h @param {Showing} showing @param {ChartWindow} window */
export function viewWindow(h, { plan }, window) {
  const button = (
    /** @type {string} */ name,
    /** @type {string} */ asked,
    /** @type {boolean} */ isThere,
  ) =>
    h(
      'button',
      {
        type: 'button',
        class: 'quiet',
        'data-window': asked,
        ...(isThere ? {} : { disabled: '' }),
      },
      name,
    );
  const { totalRounds } = plan;
  const tall = window.to - window.from + 1;
  const lower = Math.max(1, window.from - tall);
  const higher = Math.min(totalRounds, window.to + tall);
  const isWhole = plan.spiral.periodRounds <= Math.min(window.most, plan.spiral.rounds);
  const parts = partsOf(plan);
  const sections = ['toe', 'widening', 'cuff']
    .map((section) => {
      const all = parts.filter((part) => part.section === section);
      return {
        section,
        from: all[0]?.from ?? 0,
        rounds: all.reduce((sum, part) => sum + part.rounds, 0),
      };
    })
    .filter(({ rounds }) => rounds > 0)
    .map(({ section, from, rounds }) => {
      // A round of what comes before, so that the widening's own first round stands on something.
      const first = section === 'toe' ? 1 : from;
      const last = Math.min(from + rounds, first + window.most - 1);
      const say = last < from + rounds ? words.sectionBegin : words.section;
      return button(say(nameOf(section)), `${first} ${last}`, true);
    });
  return [
    h('span', { class: 'chart-of' }, words.of(String(totalRounds))),
    h(
      'div',
      { class: 'chart-steps' },
      button(words.lower, `${lower} ${lower + tall - 1}`, window.from > 1),
      button(words.higher, `${higher - tall + 1} ${higher}`, window.to < totalRounds),
    ),
    h(
      'div',
      { class: 'chart-steps', role: 'group', 'aria-label': words.jumps },
      button(isWhole ? words.turn : words.turnBegin, '', true),
      ...sections,
    ),
    h('p', { class: 'aside' }, `${words.lead} ${words.most(String(window.most))}`),
  ];
}
