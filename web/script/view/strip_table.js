// What the round strip shows, as a table: each part's rounds, and what happens in them.
import { chartWords, drawingWords } from '../../words/en.js';
import { table } from './dom.js';
import { nameOf, partsOf, ribTitle, sayMove } from './parts.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./dom.js').Make} Make */

const words = chartWords.strip;

/** The rounds of a section after which there are more stitches, from 1. @param {Plan} plan @param {string} section */
function increasesOf(plan, section) {
  /** @type {number[]} */
  const found = [];
  let round = 0;
  let stitches = plan.castOn.stitches;
  for (const span of plan.rounds) {
    if (span.section === section && span.stitches !== stitches) found.push(round + 1);
    round += span.rounds;
    stitches = span.stitches;
  }
  return found;
}

/** @param {Plan} plan @param {string} section */
function sayWhat(plan, section) {
  const adds = increasesOf(plan, section);
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
  const rows = partsOf(plan).map(({ section, from, rounds }) => ({
    name: section === 'spiral' ? ribTitle(plan) : nameOf(section),
    cells: [drawingWords.strip.span(from + 1, from + rounds), sayWhat(plan, section)],
  }));
  return h(
    'details',
    { 'data-key': 'table' },
    h('summary', {}, words.open),
    table(h, { caption: words.caption, heads: [words.part, words.rounds, words.what], rows }),
  );
}
