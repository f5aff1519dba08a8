// Lost count: how to look, the round found again, and the ways out of a misstep.
import { drawChart } from '../../draw/chart.js';
import { drawingWords, lostWords as words } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { roundsOf } from './chart_rounds.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Found} Found */
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

/** Only a begun sock has a place to go on from. @param {Make} h @param {Showing} showing @param {number} round that is knit @param {string} label */
function goOn(h, { isBegun, place, plan }, round, label) {
  if (!isBegun) return [];
  const isThere = place?.round === round && place.pass === 0;
  const key = `go${round}`;
  return [
    h(
      'button',
      { type: 'button', class: 'quiet', 'data-place': `${round}`, 'data-key': key },
      label,
    ),
    isThere &&
      h(
        'span',
        { role: 'status' },
        ' ',
        round === plan.totalRounds ? words.atEnd : words.at(formatCount(round + 1)),
      ),
  ];
}

/**
 * @param {Make} h @param {Showing} showing @param {'a' | 'b'} sock @param {OfSock | undefined} found
 * @param {number} period
 */
function sayFound(h, showing, sock, found, period) {
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
        others.flatMap((one) => {
          const after = words.after(formatCount(one));
          return showing.isBegun ? goOn(h, showing, one, after) : h('span', {}, after);
        }),
      ),
  ];
}

/** @param {Make} h @param {Showing} showing @param {Found} found */
function sayBoth(h, showing, { a, b, apart }) {
  const rounds = [a, b].flatMap((sock) => (sock?.round === undefined ? [] : [sock.round]));
  if (rounds.length === 0) return [];
  const last = Math.max(...rounds);
  const go = h('p', {}, goOn(h, showing, last, words.go));
  if (!apart) return [go];
  if (apart.alone === 'none') return [h('p', {}, words.level), go];
  const other = apart.alone === 'a' ? 'b' : 'a';
  const more = drawingWords.rounds(apart.rounds);
  return [
    h('p', {}, words.apart(words.sock[apart.alone], words.sock[other], more, formatCount(last))),
    h('p', {}, goOn(h, showing, last, words.goLevel(formatCount(last)))),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function viewLost(h, showing) {
  /** @type {Found | undefined} */
  const found = showing.beside?.found?.reply;
  if (!found) return [];
  const { a, b, periodRounds } = found;
  return [
    ...sayFound(h, showing, 'a', a, periodRounds),
    ...sayFound(h, showing, 'b', b, periodRounds),
    ...sayBoth(h, showing, found),
    !showing.isBegun && (a ?? b) && h('p', { class: 'aside' }, words.notBegun),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function viewMisstep(h, { beside, plan }) {
  /** @type {Found['misstep']} */
  const ways = beside?.found?.reply?.misstep;
  if (!ways) return [];
  // Ribs of one stitch are all edge.
  const hook = plan.rib.knit + plan.rib.purl === 2 ? words.hookAll : words.hook;
  const { unpickRounds, unpickStitches, hookColumns, hookStitches } = ways;
  return [
    h(
      'ol',
      { class: 'steps' },
      h('li', {}, words.unpick(drawingWords.rounds(unpickRounds), formatCount(unpickStitches))),
      h('li', {}, hook(formatCount(hookColumns), formatCount(hookStitches))),
    ),
  ];
}
