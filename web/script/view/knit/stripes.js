// Stripes of a self-striping yarn and of one's own: what the pair comes to, and how both socks come to the same.
import { stripesWords as words } from '../../../words/en.js';
import { coloursOf, formatCount, parseList, unitsOfKind } from '../../units.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { markLastGood } from '../page/page_state.js';
import { stripedSocks } from './stripes_pair.js';
import { bandTable, sayColour } from './stripes_table.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Stripes} Stripes */
/** @typedef {NonNullable<Stripes['repeat']>} Repeat */
/** @typedef {import('./stripes_pair.js').Striped} Striped */

/** What the core said of them. @param {Showing} showing @returns {Stripes} */
export const stripesOf = ({ beside }) => beside?.stripes?.reply ?? {};

/** The colours that were typed. @param {Showing} showing @param {string} pointer @param {boolean} [isEach] */
export function typedColours({ values }, pointer, isEach) {
  const units = Object.values(unitsOfKind).flat();
  const list = parseList(values[pointer] ?? '', units);
  return list.ok ? coloursOf(list.items, isEach).colours : [];
}

/** Drawing, table, and words beside them. @param {Make} h @param {Node[]} drawn @param {Array<import('../dom.js').Child>} said */
export const besideDrawing = (h, drawn, said) =>
  h('div', { class: 'stripes' }, h('div', {}, drawn), h('div', {}, said));

/** How the two come to match, in sentences. @param {Repeat} repeat @param {Showing['system']} system */
function sayMatch({ isAlike, isOpposite, isMirror, canMatch, pullOffA, pullOffB, cut }, system) {
  const { yarn, mass } = figuresIn(system);
  const { repeat: say } = words;
  const pulled =
    pullOffB &&
    say.pull(yarn(pullOffB.m), mass(pullOffB.g)) +
      (pullOffA ? say.orPull(yarn(pullOffA.m), mass(pullOffA.g)) : '.');
  return [
    cut && say.cut(mass(cut.g), yarn(cut.m)),
    isOpposite && say.opposite,
    isAlike ? (cut ? say.matched : say.alike) : !isOpposite && say.unalike,
    !isAlike && isOpposite && isMirror && say.mirror,
    !isAlike && (canMatch ? pulled : say.noMatch),
  ];
}

/** @param {Repeat} repeat @param {Showing['system']} system */
function sayEnough({ balls }, system) {
  const { yarn } = figuresIn(system);
  return balls.map(({ spareM, enough }, i) =>
    words.repeat.enough[enough](words.sock[i === 0 ? 'a' : 'b'], yarn(Math.abs(spareM))),
  );
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewRepeat(h, document, showing) {
  const { repeat } = stripesOf(showing);
  if (!repeat) return [];
  const { system } = showing;
  const colours = typedColours(showing, '/stripes/repeat/stripes');
  /** @type {Striped[]} */
  const socks = [
    { name: words.sock.a, bands: repeat.bandsA },
    { name: words.sock.b, bands: repeat.bandsB, isSecond: true },
  ];
  const matched =
    repeat.isAlike || !repeat.canMatch
      ? []
      : [{ name: words.repeat.pulled, bands: repeat.bandsA, isSecond: true }];
  const { yarn } = figuresIn(system);
  const lines = [...sayMatch(repeat, system), words.repeat.length(yarn(repeat.repeatM))];
  return [
    markLastGood(h, showing),
    besideDrawing(
      h,
      [
        stripedSocks(document, showing, 'repeat', words.drawing.repeat, colours, [
          ...socks,
          ...matched,
        ]),
      ],
      [
        ...[...lines, ...sayEnough(repeat, system)].map((line) => line && h('p', {}, line)),
        bandTable(h, showing, colours, socks),
      ],
    ),
  ];
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewOwnStripes(h, document, showing) {
  const { own } = stripesOf(showing);
  if (!own) return [];
  const { yarn, mass } = figuresIn(showing.system);
  const colours = typedColours(showing, '/stripes/own/stripes');
  const socks = [
    { name: words.sock.a, bands: own.bands },
    { name: words.sock.b, bands: own.bands, isSecond: true },
  ];
  const rows = own.colours.map(({ colour, bands, mPerPair, gPerPair }) => ({
    name: sayColour(colours[colour - 1]),
    cells: [formatCount(bands), yarn(mPerPair), mass(gPerPair)],
  }));
  const { changes, moreIfCutM } = own;
  return [
    markLastGood(h, showing),
    besideDrawing(
      h,
      [stripedSocks(document, showing, 'own', words.drawing.own, colours, socks)],
      [
        table(h, { ...words.own.table, rows, className: 'figures' }),
        h(
          'p',
          {},
          changes === 0
            ? words.own[colours.length === 1 ? 'one' : 'never']
            : words.own.changes(words.own.times(changes), yarn(moreIfCutM)),
        ),
        bandTable(h, showing, colours, [{ name: words.both, bands: own.bands }]),
      ],
    ),
  ];
}
