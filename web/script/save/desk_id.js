// A number of the desk's own, drawn once and kept with what is typed there: what is handed out from it can be told from
// everybody else's, and says nothing of whose it is.

const pointer = '/weeks/calendar';

/** @typedef {import('../state.js').State['lesson']} Lesson */

/** @param {Lesson} lesson as it was kept @param {Crypto} crypto @returns {Lesson} */
export function withDeskId(lesson, crypto) {
  if (lesson.desk[pointer]) return lesson;
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const typed = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return { ...lesson, desk: { ...lesson.desk, [pointer]: { typed, unit: '' } } };
}
