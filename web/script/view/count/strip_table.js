// What the round strip shows, as a table: each part's rounds, and what happens in them.
import { chartWords, drawingWords } from '../../../words/en.js';
import { table } from '../dom.js';
import { partsOf, sayMove, titleOf } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../parts.js').Part} Part */
/** @typedef {import('../dom.js').Make} Make */

const words = chartWords.strip;

/** The rounds of a part after which there are more stitches, from 1. @param {Plan} plan @param {Part} part */
function increasesOf(plan, part) {
  /** @type {number[]} */
  const found = [];
  let round = 0;
  let { stitches } = plan.castOn;
  for (const span of plan.rounds) {
    const isHere = round >= part.from && round < part.from + part.rounds;
    if (isHere && span.stitches !== stitches) found.push(round + 1);
    round += span.rounds;
    stitches = span.stitches;
  }
  return found;
}

/** @param {Plan} plan @param {Part} part */
function sayWhat(plan, part) {
  const { section } = part;
  const adds = increasesOf(plan, part);
  const isRib = section === 'spiral' || section === 'widening';
  const said = [
    adds.length > 0 && words.adds(adds.length, adds.join(', ')),
    isRib && (sayMove(plan) ? words.moves(sayMove(plan)) : words.straight),
    section === 'cuff' && words.straight,
  ].filter(Boolean);
  return said.join('; ') || words.plain;
}

/** @param {Make} h @param {Showing} showing */
export function viewStripTable(h, { plan }) {
  const rows = partsOf(plan).map((part) => ({
    name: titleOf(plan, part),
    cells: [drawingWords.strip.span(part.from + 1, part.from + part.rounds), sayWhat(plan, part)],
  }));
  return h(
    'details',
    { 'data-key': 'table' },
    h('summary', {}, words.open),
    table(h, { caption: words.caption, heads: [words.part, words.rounds, words.what], rows }),
  );
}
