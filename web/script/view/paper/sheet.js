// One person's pair on one side of paper: what she would copy out by hand, and boxes to tick.
import { ribTrack } from '../../draw/rib_track.js';
import { marksOf } from '../../draw/strip.js';
import { drawStripRows } from '../../draw/strip_rows.js';
import { formatCount, formatTime } from '../../units.js';
import { drawingWords, noteWords, planWords, sheetWords as words } from '../../../words/en.js';
import { sectionTable } from '../buy/buy.js';
import { soldLength } from '../buy/buy_tools.js';
import { splitWords } from '../buy/buy_yarn.js';
import { viewCare, viewCautions } from '../count/cautions.js';
import { viewCode } from '../page/code.js';
import { figuresIn, writeNeedle } from '../figures.js';
import { takesIn } from '../give_or_take.js';
import { explainRing, guessMark } from '../guess.js';
import { spansOf, ribTable, sayRibLead } from '../knit/knit_rib.js';
import { makesOf, sayMakes, stagePart, wideningsOf } from '../knit/knit_wider.js';
import { saySocks } from '../knit/lines.js';
import { viewStanding } from '../page/page_state.js';
import { lyingPair } from '../count/pair_lying.js';
import { isWidened } from '../parts.js';
import { viewSentence } from '../count/sentence.js';
import { sheetMilestones } from './sheet_milestones.js';
import { sheetToe } from './sheet_toe.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** @param {Make} h @param {Showing} showing */
function figures(h, showing) {
  const { plan, system } = showing;
  const write = figuresIn(system);
  const take = takesIn(showing);
  /** @type {Array<[Parameters<typeof guessMark>[2], string, string, string]>} */
  const all = [
    ['wraps', formatCount(plan.castOn.wraps), words.wraps, ''],
    [
      'stitches',
      formatCount(plan.stitchCount),
      words.stitches,
      words.girth(write.length(plan.finishedGirthMm)),
    ],
    ['toe', formatCount(plan.toe.rounds), words.toe, ''],
    ['rounds', formatCount(plan.totalRounds), words.rounds, formatTime(plan.minutes)],
    ['yarn', write.yarn(plan.yarn.mWithMargin), words.yarn, noteWords.take(take.yarn)],
  ];
  return h(
    'dl',
    { class: 'sheet-figures' },
    all.map(([name, figure, label, more]) =>
      h(
        'div',
        {},
        h('dt', {}, label),
        h('dd', {}, figure, ' ', guessMark(h, showing, name)),
        h('dd', { class: 'more' }, more),
      ),
    ),
  );
}

/** @param {Make} h @param {Showing} showing */
function rib(h, showing) {
  const { plan } = showing;
  return [
    h('h3', {}, words.ribTitle),
    h('p', {}, sayRibLead(plan)),
    ribTable(h, plan, true),
    h('p', {}, planWords.knit.rib.forward),
  ];
}

/** @param {Make} h @param {Showing} showing */
function wider(h, showing) {
  const { plan } = showing;
  if (!isWidened(plan)) return [];
  return [
    h('h3', {}, words.widerTitle),
    h('p', {}, sayMakes(makesOf(plan)).join(' ')),
    ...wideningsOf(plan).map((one) =>
      h('div', { class: 'stage-told' }, stagePart(h, showing, one, true)),
    ),
  ];
}

/** @param {Make} h @param {Showing} showing */
function cuff(h, { plan }) {
  const lines = spansOf(plan, 'cuff').flatMap((span) => saySocks(plan, span));
  return [
    h('h3', {}, words.cuffTitle),
    lines.length > 0 &&
      h(
        'p',
        {},
        [planWords.knit.cuff.text(drawingWords.rounds(plan.cuff.rounds)), ...lines].join(' '),
      ),
    h('p', {}, words.bindOff),
  ];
}

/** @param {Make} h @param {Showing} showing */
function yarn(h, showing) {
  const { plan, system } = showing;
  const { mm, us = '', uk = '', cableBuyMm } = plan.needle;
  const [cable] = cableBuyMm === undefined ? [''] : soldLength(cableBuyMm, system);
  return [
    h('h3', {}, words.yarnTitle),
    h('p', {}, splitWords(plan.yarn, figuresIn(system)), ' ', guessMark(h, showing, 'mass')),
    sectionTable(h, showing, true),
    h(
      'p',
      {},
      words.needle(`${writeNeedle(mm)} ${us && `US ${us}`} ${uk && `UK ${uk}`}`.trim(), cable),
    ),
  ];
}

/** @param {Make} h @param {Document} document @param {Showing} showing @param {string} url of the sock's link @param {string} [id] of its drawing, where there are several */
export function viewSheet(h, document, showing, url, id = 'sheet') {
  const { plan } = showing;
  const part = (/** @type {string} */ name, /** @type {import('../dom.js').Child[]} */ children) =>
    h('section', { class: `sheet-${name}` }, children);
  return [
    h(
      'header',
      { class: 'sheet-head' },
      h(
        'div',
        {},
        h(
          'p',
          { class: 'sheet-name' },
          words.name,
          ' · ',
          showing.name || h('span', { class: 'sheet-own' }, words.own),
        ),
        h('p', { class: 'sheet-sentence' }, viewSentence(h, showing)),
        viewStanding(h, showing),
      ),
      viewCode(h, document, url),
    ),
    figures(h, showing),
    h(
      'div',
      { class: 'sheet-columns' },
      part('pair', [lyingPair(document, showing, id)]),
      part('toe', sheetToe(h, plan)),
      part('milestones', sheetMilestones(h, showing)),
      part('rib', rib(h, showing)),
      isWidened(plan) && part('wider', wider(h, showing)),
      part('cuff', cuff(h, showing)),
      part('yarn', yarn(h, showing)),
      part('cautions', viewCautions(h, showing)),
    ),
    part('strip', [
      h(
        'h3',
        {},
        words.strip.title,
        ' ',
        h(
          'span',
          {},
          words.strip.key +
            (isWidened(plan) ? words.strip.keyWider : '') +
            explainRing(showing, ['rounds', 'toe', 'yarn', 'mass']),
        ),
      ),
      drawStripRows(document, plan, {
        name: words.strip.name(formatCount(plan.totalRounds)),
        marks: marksOf(plan, ribTrack(plan, false)),
      }),
    ]),
    part('care', viewCare(h)),
  ];
}
