// What the teacher's desk asks: of many socks at once, so it costs more than one plan. Asked only while the desk is on the
// page, and anew only where something has changed.
import { readBeside } from '../form.js';
import { deskAbout, deskPlaces, deskRequests } from './desk_requests.js';
import { askTags } from './tags.js';

/** @typedef {import('../ask.js').Answer} Answer */
/** @typedef {import('../ask.js').Good} Good */
/** @typedef {import('../ask.js').Beside} Beside */
/** @typedef {import('./desk_requests.js').Question} Question */

// These take longer than a key is down: they wait until the hand rests, and the last answer stays meanwhile.
const isSlow = new Set(['roster', 'drive']);
const restMs = 250;
// The calendar's fields are no part of what the weeks ask, and the roster tells its own faults.
const needsAll = new Set(['supply', 'drive', 'odd']);

/** @param {() => void} show called when an answer that was waited for can be had */
export function openDesk(show) {
  /** @type {Map<Question, { text: string, beside: Beside }>} */
  const known = new Map();
  /** What may be asked now, the hand having rested. */
  let isRested = false;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting;

  function waitForRest() {
    clearTimeout(resting);
    resting = setTimeout(() => {
      isRested = true;
      show();
      isRested = false;
    }, restMs);
  }

  /** @param {Answer} answer @param {Good} good @param {import('../state.js').State} state with the desk @param {Question} question */
  function askOne(answer, good, state, question) {
    const { said, isEmpty, problems } = readBeside(state.draft, question);
    const request = deskRequests[question](good, said, state, isEmpty);
    const about = deskAbout[question]?.(state);
    // What cannot be read would be taken for left out, and another question be answered.
    if (problems.length > 0 && needsAll.has(question)) {
      const old = known.get(question)?.beside;
      return { ...old, about, said: said[question], problems, isOld: old !== undefined };
    }
    if (!request) {
      known.delete(question);
      return { problems, about };
    }
    const text = JSON.stringify(request);
    const last = known.get(question);
    const typed = said[question];
    // What could not be read is told anew at every key; what was answered stands.
    if (last?.text === text)
      return {
        ...last.beside,
        about,
        said: typed,
        problems: [...problems, ...last.beside.problems],
      };
    if (isSlow.has(question) && !isRested) {
      waitForRest();
      return { about, ...last?.beside, next: about, said: typed, problems, isLate: true };
    }
    const reply = answer(question, request);
    /** @type {import('../form.js').Problem[]} */
    const all = reply.ok ? [] : reply.problems;
    const at = (/** @type {string} */ pointer) => deskPlaces[question](pointer, request);
    const refused = all
      .filter(({ field }) => at(field) !== '')
      .map((problem) => ({ ...problem, field: at(problem.field) }));
    const beside = {
      reply: reply.ok ? reply[question] : undefined,
      request,
      about,
      problems: refused,
      refused: all.filter(({ field }) => at(field) === ''),
    };
    known.set(question, { text, beside });
    return { ...beside, problems: [...problems, ...refused], said: typed };
  }

  return {
    /** By question. @param {Answer} answer @param {Good} good @param {import('../state.js').State} state @returns {Record<string, Beside>} */
    ask: (answer, good, state) => ({
      ...Object.fromEntries(
        /** @type {Question[]} */ (Object.keys(deskRequests)).map((question) => [
          question,
          askOne(answer, good, state, question),
        ]),
      ),
      tags: askTags(state),
    }),
  };
}
