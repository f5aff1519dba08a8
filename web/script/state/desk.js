// The teacher's desk: what she has typed for her class. It is hers, not one sock's, and stays whichever is on the page.

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Entry} Entry */

const ofTheDesk = /^\/(supply|weeks|drive|inHand|tags)\//;

/** @param {string} pointer */
export const isOfDesk = (pointer) => ofTheDesk.test(pointer);

/** @param {State} state @param {string} pointer @param {Entry} entry @returns {State} */
export function putOnDesk(state, pointer, entry) {
  const { lesson } = state;
  return {
    ...state,
    lesson: { ...lesson, desk: { ...lesson.desk, [pointer]: entry } },
    fresh: pointer,
  };
}

/** The state whose draft holds the desk's fields too, for those who read or show fields. @param {State} state @returns {State} */
export const withDesk = (state) => ({
  ...state,
  draft: { ...state.draft, ...state.lesson.desk },
});
