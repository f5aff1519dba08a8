// Lost count: how to look, the round found again, and the ways out of a misstep.
import { drawChart } from '../draw/chart.js';
import { drawingWords, lostWords as words } from '../../words/en.js';
import { formatCount } from '../units.js';
import { roundsOf } from './chart_rounds.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */
/** @typedef {import('../contract.js').Found} Found */
/** @typedef {NonNullable<Found['a']>} OfSock */

// As much of the first step of this rib as shows it: stitches, and rounds on either side.
const stitches = 10;
const most = 3;

/** @param {Document} document @param {Showing['plan']} plan */
function drawStep(document, plan) {
  const first = plan.rounds.findIndex(
    ({ section }, i) => section === 'spiral' && plan.rounds[i + 1]?.section === 'spiral',
  );
  if (first < 0) return undefined;
  const [below, above] = plan.rounds.slice(first, first + 2);
  const last = plan.rounds.slice(0, first + 1).reduce((sum, { rounds }) => sum + rounds, 0);
  const window = {
    from: last + 1 - Math.min(most, below.rounds),
    to: last + Math.min(most, above.rounds),
  };
  const rounds = roundsOf(plan, window, false).map(({ number, halves, changed }) => ({
    section: number > last ? 'above' : 'below',
    number: number > last ? number - last : below.rounds - last + number,
    halves: [halves[0].slice(0, stitches), []],
    changed: [changed[0].slice(0, stitches), []],
  }));
  return drawChart(document, rounds, {
    ...words.drawing,
    sectionName: (section) => words.drawing.parts[section],
  });
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewLostHow(h, document, { plan }) {
  if (plan.rib.roundsPerShift === 0) return [h('p', {}, words.straight)];
  const drawing = drawStep(document, plan);
  return [h('p', {}, words.how), drawing && h('p', { class: 'step-drawn' }, drawing)];
}

/** @param {Make} h @param {number} round that is knit @param {string} label */
const goOn = (h, round, label) =>
  h(
    'button',
    { type: 'button', class: 'quiet', 'data-place': String(round), 'data-key': `go${round}` },
    label,
  );

/** @param {Make} h @param {'a' | 'b'} sock @param {OfSock | undefined} found @param {number} period */
function sayFound(h, sock, found, period) {
  if (!found) return [];
  const { round, candidates } = found;
  const name = words.sock[sock];
  const others = candidates.filter((one) => one !== round);
  return [
    round !== undefined &&
      h('p', { class: 'found' }, words.found(name, formatCount(round), formatCount(round + 1))),
    round === undefined && h('p', {}, words.several(name, drawingWords.rounds(period))),
    round !== undefined && others.length > 0 && h('p', {}, words.others),
    others.length > 0 &&
      h(
        'p',
        { class: 'candidates' },
        others.map((one) => goOn(h, one, words.after(formatCount(one)))),
      ),
  ];
}

/** @param {Make} h @param {Found} found */
function sayBoth(h, { a, b, apart }) {
  const rounds = [a, b].flatMap((sock) => (sock?.round === undefined ? [] : [sock.round]));
  if (rounds.length === 0) return [];
  const last = Math.max(...rounds);
  const go = h('p', {}, goOn(h, last, words.go));
  if (!apart) return [go];
  if (apart.alone === 'none') return [h('p', {}, words.level), go];
  const other = apart.alone === 'a' ? 'b' : 'a';
  const more = drawingWords.rounds(apart.rounds);
  return [
    h('p', {}, words.apart(words.sock[apart.alone], words.sock[other], more, formatCount(last))),
    h('p', {}, goOn(h, last, words.goLevel(formatCount(last)))),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function viewLost(h, { beside }) {
  /** @type {Found | undefined} */
  const found = beside?.found?.reply;
  if (!found) return [];
  const { a, b, periodRounds } = found;
  return [
    ...sayFound(h, 'a', a, periodRounds),
    ...sayFound(h, 'b', b, periodRounds),
    ...sayBoth(h, found),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function viewMisstep(h, { beside }) {
  /** @type {Found['misstep']} */
  const ways = beside?.found?.reply?.misstep;
  if (!ways) return [];
  const { unpickRounds, unpickStitches, hookColumns, hookStitches } = ways;
  return [
    h(
      'ol',
      { class: 'steps' },
      h('li', {}, words.unpick(drawingWords.rounds(unpickRounds), formatCount(unpickStitches))),
      h('li', {}, words.hook(formatCount(hookColumns), formatCount(hookStitches))),
    ),
  ];
}
