// The rows that the form has for readings of the swatch.

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Draft} Draft */

export const mostReadings = 12;
const readingParts = ['stitches', 'widthMm', 'rounds', 'heightMm'];
const readingPointers = (/** @type {number} */ index) =>
  readingParts.map((part) => `/swatch/readings/${index}/${part}`);

/** How many readings of the swatch the form has rows for; at least one. @param {Draft} draft */
export function countReadings(draft) {
  let count = 1;
  while (readingPointers(count).some((pointer) => pointer in draft)) count += 1;
  return count;
}

/** The unit a field is shown in. @param {Pick<State, 'draft' | 'shown'>} state @param {string} pointer */
export const shownUnit = (state, pointer) =>
  state.shown[pointer] ?? state.draft[pointer]?.unit ?? '';

/** @param {State} state @returns {State} a row more, in the units of the last one */
export function addReading(state) {
  const count = countReadings(state.draft);
  if (count >= mostReadings) return state;
  const draft = { ...state.draft };
  const last = readingPointers(count - 1);
  readingPointers(count).forEach((pointer, i) => {
    draft[pointer] = { typed: '', unit: shownUnit(state, last[i]) };
  });
  return { ...state, draft };
}

/** @param {State} state @param {number} index @returns {State} the rows after it move up */
export function removeReading(state, index) {
  const count = countReadings(state.draft);
  if (count < 2) return state;
  const next = {
    ...state,
    draft: { ...state.draft },
    example: { ...state.example },
    shown: { ...state.shown },
  };
  /** @type {Array<Record<string, any>>} */
  const records = [next.draft, next.example, next.shown];
  for (let row = index; row < count; row += 1) {
    const from = readingPointers(row + 1);
    readingPointers(row).forEach((pointer, i) => {
      for (const record of records) {
        if (row + 1 < count && from[i] in record) record[pointer] = record[from[i]];
        else delete record[pointer];
      }
    });
  }
  return next;
}
