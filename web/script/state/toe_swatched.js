// The toe on the needles taken for a reading of the swatch, so that a sock begun anew is planned by both,
// or in the place of all of them, where it counts alone.
import { withoutStrangers } from './own.js';

/** @typedef {import('../state.js').State} State */

export const firstStitches = '/swatch/readings/0/stitches';

// What the toe's measures are called among a reading's.
const parts = [
  ['stitches', 'stitches'],
  ['widthMm', 'widthMm'],
  ['rounds', 'rounds'],
  ['heightMm', 'lengthMm'],
];

// How a toe on the needle is, and what was found of the swatch that it takes the place of.
const asKnit = { fabric: 'stockinette', washed: 'false' };
const ofAnother = ['stretchedWidthMm', 'massG', 'massStitches'];

/**
 * The toe's measures leave the needles: there would be nothing left to hold them against. The new plan comes in sight.
 * Alone, the toe is the whole swatch, and no more washed than it was measured; what it does not say of rounds stays as
 * the first reading has it.
 * @param {State} state @param {number} readings how many rows there are @param {number} most how many there may be
 * @param {boolean} isAlone
 * @returns {State}
 */
export function swatchToe(state, readings, most, isAlone) {
  const own = withoutStrangers(state, firstStitches, '');
  /** @type {State['draft']} */
  const draft = { ...own.draft, '/swatch': { typed: 'swatch', unit: '' } };
  const example = { ...own.example };
  const isSwatched = state.draft['/swatch']?.typed !== 'label' && !state.example[firstStitches];
  const row = isSwatched && !isAlone ? Math.min(readings, most - 1) : 0;
  const at = (/** @type {string} */ part) => `/swatch/readings/${row}/${part}`;
  const keepsRounds = state.draft['/swatch']?.typed !== 'label' && !draft['/needles/rounds']?.typed;
  if (row === 0) {
    // Rounds counted over the swatch's width keep it when that goes.
    if (keepsRounds && !draft[at('heightMm')]?.typed) draft[at('heightMm')] = draft[at('widthMm')];
    for (const pointer of Object.keys(draft)) {
      if (/^\/swatch\/readings\/[1-9]/.test(pointer)) delete draft[pointer];
    }
    for (const [name, typed] of Object.entries(asKnit)) {
      draft[`/swatch/${name}`] = { typed, unit: '' };
      delete example[`/swatch/${name}`];
    }
    for (const name of ofAnother) delete draft[`/swatch/${name}`];
  }
  for (const [part, measure] of parts) {
    const toe = `/needles/${measure}`;
    const isKept = row === 0 && keepsRounds && (measure === 'rounds' || measure === 'lengthMm');
    if (!isKept) draft[at(part)] = draft[toe] ?? { typed: '', unit: '' };
    delete draft[toe];
    delete example[at(part)];
  }
  delete draft['/needles/roundsDone'];
  return { ...own, draft, example, moment: 'count', fresh: '' };
}
