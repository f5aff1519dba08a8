// A class seat by seat: what of the pasted table is to be mended, what all of it takes together, and each seat's sock.
import { rosterWords as words, optionWords } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { soldLength } from '../buy/buy_tools.js';
import { table } from '../dom.js';
import { figuresIn, writeNeedle } from '../figures.js';
import { headFaults, rosterRows, rowFaults } from './roster_rows.js';
import { printButton } from '../paper/print_button.js';
import { mostSheets } from './sheets.js';
import { fileButtons } from './take.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Roster} Roster */

// More are not read one by one: each stands in its row besides.
const mostTold = 20;

/** @param {Make} h @param {string[]} texts @param {string} className */
function listOf(h, texts, className) {
  const rest = texts.length - mostTold;
  return h(
    'ul',
    { class: className },
    texts.slice(0, mostTold).map((text) => h('li', {}, text)),
    rest > 0 && h('li', {}, words.more(formatCount(rest))),
  );
}

/** @param {Make} h */
const viewHeads = (h) => [
  h('p', {}, words.noHeads),
  h(
    'ul',
    { class: 'faults' },
    words.heads.map((text) => h('li', {}, text)),
  ),
  h('label', { for: 'roster-sample' }, words.sampleLabel),
  h(
    'textarea',
    { id: 'roster-sample', readonly: '', rows: '5', spellcheck: 'false' },
    sampleText(),
  ),
  h(
    'p',
    { class: 'print-it' },
    h('button', { type: 'button', class: 'quiet', 'data-copy': sampleText() }, words.copySample),
  ),
];

/** A table to begin with, as a spreadsheet takes it. */
export const sampleText = () => words.sample.map((row) => row.join('\t')).join('\n');

/** Wool by the label's number, line by line. @param {Roster} roster @param {Showing['system']} system */
export function woolRows({ wool }, system) {
  const { yarn, mass } = figuresIn(system);
  return wool.map(({ category, pairs, m, g, balls, pairsWithoutBall }) => ({
    name: optionWords['/supply/yarns'][category],
    cells: [
      formatCount(pairs),
      yarn(m),
      mass(g),
      [
        formatCount(balls),
        pairsWithoutBall > 0 && words.wool.withoutBall(formatCount(pairsWithoutBall)),
      ]
        .filter(Boolean)
        .join(', '),
    ],
  }));
}

/** @param {number | undefined} cableMm @param {Showing['system']} system */
export const sayCable = (cableMm, system) =>
  cableMm === undefined ? words.needles.noCable : soldLength(cableMm, system)[0];

/** @param {Roster} roster @param {Showing['system']} system */
export const needleRows = ({ needles }, system) =>
  needles.map(({ mm, us = '', cableMm, count }) => ({
    name: writeNeedle(mm),
    cells: [us, sayCable(cableMm, system), formatCount(count)],
  }));

/** Seats whose gauge is odd, in words. @param {Showing} showing */
export const oddGauges = (showing) =>
  rosterRows(showing)
    .filter(({ oddGauge }) => oddGauge.length > 0)
    .map(({ seat, oddGauge }) => words.odd(seat, oddGauge.join('; ')));

/** @param {Showing} showing */
export function sayPlanned({ beside }) {
  const { about, reply } = beside?.roster ?? {};
  return words.planned(formatCount(reply.planned), formatCount(about.rows.length));
}

/** @param {Make} h @param {Showing} showing */
function viewTotals(h, showing) {
  /** @type {Roster} */
  const reply = showing.beside?.roster.reply;
  const { system } = showing;
  const odd = oddGauges(showing);
  return [
    h('p', { class: 'planned' }, sayPlanned(showing)),
    odd.length > 0 && h('p', {}, words.oddGauge(formatCount(odd.length))),
    odd.length > 0 && listOf(h, odd, 'faults odd-gauges'),
    reply.planned > 0 &&
      h(
        'div',
        { class: 'roster-totals' },
        table(h, { ...words.wool, rows: woolRows(reply, system), className: 'figures' }),
        table(h, { ...words.needles, rows: needleRows(reply, system), className: 'figures' }),
      ),
    fileButtons(h, 'roster', ['csv', 'copy']),
    reply.planned > 0 &&
      printButton(
        h,
        'sheets',
        words.sheets,
        reply.planned > mostSheets ? words.firstSheets(formatCount(mostSheets)) : '',
      ),
    h('p', { class: 'aside' }, words.seatHint),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function viewRoster(h, showing) {
  const { about, next, reply, refused = [], isLate } = showing.beside?.roster ?? {};
  const newest = next ?? about;
  const faults = [
    ...headFaults(showing),
    ...refused.map((one) => words.whole(showing.tellSeat?.(one, about).text ?? '')),
    ...rowFaults(showing),
  ];
  return [
    h('p', { class: 'aside' }, words.hint),
    newest?.isFull && h('p', { class: 'problem' }, words.full),
    h(
      'output',
      { class: 'aside', 'aria-live': 'polite' },
      isLate ? words.late(formatCount(newest.seats.length)) : '',
    ),
    ...(newest && newest.heads.length > 0 ? [] : viewHeads(h)),
    faults.length > 0 && h('h3', {}, words.faultsTitle),
    faults.length > 0 && listOf(h, faults, 'faults to-mend'),
    ...(reply ? viewTotals(h, showing) : []),
  ];
}
