// The toe on the needles taken for a reading of the swatch, so that a sock begun anew is planned by both.
import { withoutStrangers } from './own.js';

/** @typedef {import('../state.js').State} State */

const first = '/swatch/readings/0/stitches';

// What the toe's measures are called among a reading's.
const parts = [
  ['stitches', 'stitches'],
  ['widthMm', 'widthMm'],
  ['rounds', 'rounds'],
  ['heightMm', 'lengthMm'],
];

/**
 * The toe's measures leave the needles: there would be nothing left to hold them against. The new plan comes in sight.
 * @param {State} state @param {number} next the row of readings that is to be written; the first one, where nothing of
 *   the reader's own was swatched
 * @returns {State}
 */
export function swatchToe(state, next) {
  const isSwatched = state.draft['/swatch']?.typed !== 'label' && !state.example[first];
  const row = isSwatched ? next : 0;
  const own = withoutStrangers(state, first, '');
  /** @type {State['draft']} */
  const draft = { ...own.draft, '/swatch': { typed: 'swatch', unit: '' } };
  const example = { ...own.example };
  for (const [part, measure] of parts) {
    const [reading, toe] = [`/swatch/readings/${row}/${part}`, `/needles/${measure}`];
    draft[reading] = draft[toe] ?? { typed: '', unit: '' };
    delete draft[toe];
    delete example[reading];
  }
  delete draft['/needles/roundsDone'];
  return { ...own, draft, example, moment: 'count', fresh: '' };
}
