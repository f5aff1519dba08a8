// The long table of a class: up to a thousand rows, so it is built once for an answer and then left alone; and a seat's link is
// made when its row is opened, for a thousand of them take seconds.
import { rosterWords as words } from '../../../words/en.js';
import { formatCount, formatTime } from '../../units.js';
import { figuresIn, writeNeedle } from '../figures.js';
import { sayCable } from './roster.js';
import { sendBack } from './odd.js';
import { rosterRows } from './roster_rows.js';
import { sayCell } from './supply.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('./roster_rows.js').SeatRow} SeatRow */

/** @param {SeatRow & { line: NonNullable<SeatRow['line']> }} row @param {Showing['system']} system */
export function cellsOf({ line, odd }, system) {
  const { yarn } = figuresIn(system);
  const { stitchCount, totalRounds, mWithMargin, yarnError, needle, minutes } = line;
  return [
    formatCount(stitchCount),
    formatCount(totalRounds),
    words.error(yarn(mWithMargin), yarn(mWithMargin * yarnError)),
    words.needle(writeNeedle(needle.mm), needle.us ?? '', sayCable(needle.cableMm, system)),
    formatTime(minutes),
    odd.join('; '),
  ];
}

/** What an open row says besides: its plan's address. @param {Make} h @param {Showing} showing @param {SeatRow} row */
function viewMore(h, { system, linkToPart, beside }, { part, line, oddities }) {
  const href = part && line ? linkToPart?.(beside?.roster.request.class, part, line) : '';
  const copy = { type: 'button', class: 'quiet', 'data-copy': href ?? '' };
  return h(
    'tr',
    { class: 'seat-more' },
    h(
      'td',
      { colspan: String(words.columns.length) },
      h('p', {}, line ? sayCell(line, system).filter(Boolean).join('; ') : ''),
      oddities.length > 0 && h('p', {}, words.send),
      oddities.map((one) => h('p', {}, sendBack(one, system))),
      href
        ? h(
            'p',
            { class: 'print-it' },
            h('a', { href }, words.open),
            h('button', copy, words.copyLink),
          )
        : h('p', {}, words.noLink),
    ),
  );
}

/** @param {Make} h @param {SeatRow} row @param {number} at @param {Showing['system']} system */
function viewRow(h, row, at, system) {
  const { seat, line, faults } = row;
  if (!line) {
    const why = faults.map(({ column, text }) => [column, text].filter(Boolean).join(': '));
    return h(
      'tr',
      { class: 'none' },
      h('th', { scope: 'row' }, seat),
      h('td', { colspan: String(words.columns.length - 1) }, words.none + why.join(' ')),
    );
  }
  const name = {
    type: 'button',
    class: 'quiet',
    'aria-expanded': 'false',
    'data-seat': String(at),
  };
  return h(
    'tr',
    { class: row.odd.length > 0 ? 'harmful' : '' },
    h('th', { scope: 'row' }, h('button', name, seat)),
    cellsOf({ ...row, line }, system).map((text) => h('td', {}, text)),
  );
}

/** @param {Make} h @param {Showing} showing @param {string} key of its own, so that it is put in whole */
function build(h, showing, key) {
  const rows = rosterRows(showing);
  const heads = words.columns.map((text) => h('th', { scope: 'col' }, text));
  const node = h(
    'div',
    { class: 'table', 'data-key': key },
    h(
      'table',
      { class: 'roster' },
      h('caption', {}, h('span', {}, words.caption)),
      h('thead', {}, h('tr', {}, heads)),
      h(
        'tbody',
        {},
        rows.map((row, at) => viewRow(h, row, at, showing.system)),
      ),
    ),
  );
  node.addEventListener('click', ({ target }) => {
    const button = target instanceof Element && target.closest('[data-seat]');
    const row = button && button.closest('tr');
    if (!row) return;
    const isOpen = button.getAttribute('aria-expanded') === 'true';
    button.setAttribute('aria-expanded', String(!isOpen));
    if (isOpen) row.nextElementSibling?.remove();
    else row.after(viewMore(h, showing, rows[Number(button.getAttribute('data-seat'))]));
  });
  return node;
}

/** @type {{ rows: SeatRow[], node: HTMLElement, number: number } | undefined} */
let last;

/** @param {Make} h @param {Showing} showing */
export function viewSeats(h, showing) {
  const { reply, request, isLate } = showing.beside?.roster ?? {};
  const rows = rosterRows(showing);
  // Where no row could be read nothing was asked: each then says why.
  const isUnread = rows.length > 0 && !request && !isLate;
  if (!reply && !isUnread) return [];
  if (last?.rows !== rows) {
    const number = (last?.number ?? 0) + 1;
    last = { rows, node: build(h, showing, `roster-${number}`), number };
  }
  return [last.node];
}
