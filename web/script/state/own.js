// What a value of the reader's own makes of the example around it. A sock for her child must not be
// held to the example's heel, nor her fine yarn be sold by the example's ball.

/** @typedef {import('../state.js').State} State */

// Girths that the plan can do without: it then goes by what such feet usually measure.
const guessable = ['/foot/heelAnkleGirthMm', '/foot/ankleGirthMm', '/foot/calfGirthMm'];
const ofTheYarn = ['/yarn/ballG', '/yarn/ballM', '/swatch/needleMm'];
const leg = '/legHeightMm';
// A grown woman's: to a child they are no first guess, but asked for again.
const ofTheGrown = [...guessable, leg, '/foot/lengthMm', '/foot/ballGirthMm', '/foot/shoe/size'];
const ofTheShoe = ['/foot/shoe/scale', '/foot/shoe/size'];
// Her own gauge tells the weight of her yarn; the example's would call a fine one firm.
const yarnOfSwatch = ['/yarn/category', ...ofTheYarn];

const isOfTheFoot = (/** @type {string} */ pointer) =>
  pointer === '/foot' || pointer.startsWith('/foot/');

/**
 * Which fields no longer belong to what is being told, now that this one is the reader's own.
 * @param {string} pointer @param {string} typed @returns {string[]}
 */
function nowOutOfPlace(pointer, typed) {
  if (pointer === '/foot/body' && typed === 'child') return ofTheGrown;
  // A size says nothing of its foot's girth until it is said whose it is.
  if (ofTheShoe.includes(pointer)) return [...guessable, '/foot/body'];
  if (isOfTheFoot(pointer)) return guessable;
  if (pointer === '/yarn/category') return ofTheYarn;
  if (/^\/swatch\/readings\/\d+\/stitches$/.test(pointer)) return yarnOfSwatch;
  if (pointer === '/swatch' && typed === 'label') return ofTheYarn;
  return [];
}

/**
 * Empties what is still the example's and out of place beside a field just typed in.
 * @param {State} state @param {string} pointer @param {string} typed @returns {State}
 */
export function withoutStrangers(state, pointer, typed) {
  const gone = nowOutOfPlace(pointer, typed).filter(
    (other) => other !== pointer && state.example[other],
  );
  if (gone.length === 0) return state;
  const draft = { ...state.draft };
  const example = { ...state.example };
  for (const other of gone) {
    draft[other] = { typed: '', unit: draft[other].unit };
    delete example[other];
  }
  return { ...state, draft, example };
}
