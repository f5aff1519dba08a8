// Leftovers: which lot knits what, and what is missing where they do not make the pair.
import { stripesWords } from '../../../words/en.js';
import { formatCount, formatPercent } from '../../units.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { markLastGood } from '../page/page_state.js';
import { nameOf } from '../parts.js';
import { besideDrawing, stripesOf, typedColours } from './stripes.js';
import { stripedSocks } from './stripes_pair.js';
import { sayColour } from './stripes_table.js';
import { drawingWords } from '../../../words/en.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Stripes} Stripes */
/** @typedef {NonNullable<Stripes['leftovers']>} Leftovers */
/** @typedef {import('../../units/list.js').Colour} Colour */

const words = stripesWords.leftovers;

/** @param {Leftovers} found @param {Showing} showing */
function sayResult(found, { system, request }) {
  const { reaches, keepsMargin, rounds, joins, joinsInside, missingM, legHeightMm } = found;
  const { yarn, length } = figuresIn(system);
  const inside =
    joinsInside > 0 &&
    (joinsInside === 1 ? words.inside : words.insideMore(formatCount(joinsInside)));
  if (keepsMargin) return [words.reaches(joins), inside];
  if (reaches) {
    const share = request.yarnMargin === undefined ? '' : formatPercent(request.yarnMargin);
    return [words.just(joins, share, yarn(missingM)), inside];
  }
  const last = formatCount(rounds);
  const ends =
    rounds === 0
      ? words.nothing
      : legHeightMm
        ? words.ends(last, length(legHeightMm))
        : words.endsInFoot(last);
  return [words.short(yarn(missingM)), ends, inside];
}

/** @param {Leftovers['lots'][number]} lot */
function sayMakes({ makesToe, makesSpiral, makesWidening, makesCuff }) {
  const makes = { toe: makesToe, spiral: makesSpiral, widening: makesWidening, cuff: makesCuff };
  const named = Object.entries(makes).filter(([, does]) => does);
  return named.map(([section]) => nameOf(section)).join(', ') || words.lots.makesNone;
}

/** @param {Make} h @param {Leftovers} found @param {Colour[]} colours @param {Showing['system']} system */
function tables(h, { parts, lots }, colours, system) {
  const { yarn } = figuresIn(system);
  const laid = parts.map(({ lot, section, fromRound, toRound }) => ({
    name: nameOf(section),
    cells: [sayColour(colours[lot - 1]), drawingWords.strip.span(fromRound, toRound)],
  }));
  const each = lots.map((lot, i) => ({
    name: sayColour(colours[i]),
    cells: [yarn(lot.mPerSock), lot.usedM > 0 ? yarn(lot.usedM) : words.lots.none, sayMakes(lot)],
  }));
  return [
    laid.length > 0 && table(h, { ...words.parts, rows: laid }),
    table(h, { ...words.lots, rows: each }),
  ];
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewLeftovers(h, document, showing) {
  const { leftovers } = stripesOf(showing);
  if (!leftovers) return [];
  const { system } = showing;
  const colours = typedColours(showing, '/stripes/leftovers/lots', true);
  const { bands, lots, keepsMargin } = leftovers;
  const others = lots.flatMap(({ thicknessApart = 0, isOtherThickness }, i) =>
    isOtherThickness
      ? [
          words.otherThickness(
            sayColour(colours[i]),
            formatPercent(Math.abs(thicknessApart)),
            thicknessApart > 0,
          ),
        ]
      : [],
  );
  const socks = [
    { name: stripesWords.sock.a, bands },
    { name: stripesWords.sock.b, bands, isSecond: true },
  ];
  return [
    markLastGood(h, showing),
    besideDrawing(
      h,
      [stripedSocks(document, showing, 'lots', stripesWords.drawing.leftovers, colours, socks)],
      [
        ...sayResult(leftovers, showing).map(
          (line) => line && h('p', keepsMargin ? {} : { class: 'yarn-caution' }, line),
        ),
        ...others.map((line) => h('p', { class: 'yarn-caution' }, line)),
        ...tables(h, leftovers, colours, system),
        h('p', {}, words.halve),
      ],
    ),
  ];
}
