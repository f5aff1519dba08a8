// What was there before, and what was taken back: of the draft, the class's settings and the beginning, for units and moments are no work lost.

/** @typedef {import('../state.js').State} State */
/** @typedef {Pick<State, 'draft' | 'example' | 'locks' | 'course' | 'started'>} Past */

const mostSteps = 100;

const now = (/** @type {State} */ { draft, example, locks, course, started }) => ({
  draft,
  example,
  locks,
  course,
  started,
});

/**
 * A step that can be taken back. One field typed on is one step, however many keys it took.
 * @param {State} before @param {State} after @param {boolean} isSameField
 * @returns {State}
 */
export function remember(before, after, isSameField) {
  const isSame = /** @type {const} */ (['draft', 'locks']).every(
    (part) => after[part] === before[part],
  );
  if (isSame && after.started?.since === before.started?.since) return after;
  const past = isSameField && before.past.length > 0 ? before.past : [...before.past, now(before)];
  return { ...after, past: past.slice(-mostSteps), future: [] };
}

/** @param {State} state @returns {State} */
export function undo(state) {
  const last = state.past[state.past.length - 1];
  if (!last) return state;
  return {
    ...state,
    ...last,
    past: state.past.slice(0, -1),
    future: [...state.future, now(state)],
    fresh: '',
  };
}

/** @param {State} state @returns {State} */
export function redo(state) {
  const next = state.future[state.future.length - 1];
  if (!next) return state;
  return {
    ...state,
    ...next,
    past: [...state.past, now(state)],
    future: state.future.slice(0, -1),
    fresh: '',
  };
}
