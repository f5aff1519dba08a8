// Wool for the class: one pair for every yarn by every size. Each cell is a plan of its own, and opens as one.
import { optionWords, supplyWords as words } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { table } from '../dom.js';
import { figuresIn, writeNeedle } from '../figures.js';
import { sayMargin } from '../give_or_take.js';
import { fileButtons } from './take.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Supply['cells'][number]} Cell */
/** @typedef {NonNullable<Cell['line']>} Line */

/** A size as it heads its column: a shoe's, or a foot's length and girth. @param {Record<string, any>} column @param {Showing['system']} system */
export function saySize({ foot: { shoe, lengthMm, ballGirthMm } }, system) {
  if (shoe) return words.shoe(words.scale[shoe.scale], String(shoe.size));
  const { length } = figuresIn(system);
  return words.foot(length(lengthMm), length(ballGirthMm));
}

/** @param {Record<string, any>} row */
export const sayYarn = ({ yarn }) => optionWords['/supply/yarns'][yarn.category];

/** What stands in a cell, line by line. @param {Line} line @param {Showing['system']} system */
export function sayCell({ stitchCount, mWithMargin, yarnError, gPerSock, ball, needle }, system) {
  const { yarn, mass, length } = figuresIn(system);
  return [
    words.stitches(formatCount(stitchCount)),
    words.yarn(yarn(mWithMargin), yarn(mWithMargin * yarnError)),
    ball && words.balls(formatCount(ball.count), mass(ball.g), ball.just),
    words.sock(mass(gPerSock)),
    words.needle(writeNeedle(needle.mm), needle.us ?? ''),
    needle.cableMm === undefined ? words.noCable : words.cable(length(needle.cableMm)),
  ];
}

/** @param {Make} h @param {Cell} cell @param {Showing} showing @param {Record<string, any>} asked */
function cellOf(h, { line, problems, clear, change }, { system, linkTo }, asked) {
  if (!line) return h('span', { class: 'none' }, words.none(String(problems?.[0].code)));
  const [stitches, ...rest] = sayCell(line, system);
  const href = linkTo?.(asked, clear, change);
  return h(
    'div',
    { class: 'pair-cell' },
    h('strong', {}, href ? h('a', { href }, stitches) : stitches),
    rest.map((text) => text && h('span', {}, text)),
  );
}

/** @param {Make} h @param {Showing} showing */
function supplyTable(h, showing) {
  const { reply, request } = showing.beside?.supply ?? {};
  if (!reply) return undefined;
  const { rows, columns, class: common } = request;
  /** @type {Cell[]} */
  const cells = reply.cells;
  return table(h, {
    caption: h('span', {}, words.caption(sayMargin(showing))),
    heads: [
      words.yarnHead,
      ...columns.map((/** @type {any} */ one) => saySize(one, showing.system)),
    ],
    rows: rows.map((/** @type {any} */ row, /** @type {number} */ at) => ({
      name: sayYarn(row),
      cells: cells
        .filter((cell) => cell.row === at)
        .map((cell) => cellOf(h, cell, showing, common)),
    })),
    className: 'supply',
  });
}

/** @param {Make} h @param {Showing} showing */
export function viewSupply(h, showing) {
  const shown = supplyTable(h, showing);
  if (!shown) return [h('p', { class: 'aside' }, words.empty)];
  return [
    shown,
    h('p', { class: 'aside' }, words.hint),
    fileButtons(h, 'supply', ['csv', 'copy', 'print']),
  ];
}

/** The table on paper. @param {Make} h @param {Showing} showing */
export function printSupply(h, showing) {
  const shown = supplyTable(h, showing);
  return shown ? [h('h1', {}, words.title), shown] : [];
}
