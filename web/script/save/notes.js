// The places of socks on the needles, noted in the journal at every change, and taken from there where they had come
// further than what the browser kept otherwise.
import {
  isLater,
  isSamePlace,
  isUntouched,
  placeOf,
  startState,
  withinPlan,
  writeSheet,
} from '../state.js';
import { openJournal } from './journal.js';
import { sheetIn } from './shelf.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Place} Place */
/** @typedef {NonNullable<State['started']>} Begun */

// A browser that does not answer is no reason to show nothing.
const patienceMs = 3000;

/**
 * @param {Document} document @param {ReturnType<typeof import('./shelf.js').openShelf>} shelf
 * @param {import('../save.js').Now} now
 */
export function openNotes(document, shelf, now) {
  const journal = openJournal(/** @type {Window} */ (document.defaultView));
  const root = document.documentElement;
  /** As they are to be noted. @type {Map<string, Place>} */
  const known = new Map();
  /** @type {(action: import('../state.js').Action) => void} */
  let act = () => undefined;
  /** As they are noted, each with its sheet. @type {Map<string, Place>} */
  const there = new Map();
  // One after the other, and nothing before it was looked at what is noted.
  let queue = Promise.resolve();

  /** For whoever wants to know what cannot be lost any more. @param {Place | undefined} place */
  const tell = (place) => root.setAttribute('data-noted', String(place?.taps ?? 0));

  const isOnPage = (/** @type {string} */ id) => id === now.current && !now.visit;

  /** Another tab was quicker. @param {string} id @param {Place} place */
  function follow(id, place) {
    if (!isOnPage(id) || now.latest.started?.since !== place.since) return;
    act({ type: 'followed', place, isLate: true });
    shelf.put(id, now.latest);
  }

  /** What is not overtaken yet by another tap, or gone. @param {string} id @param {Place} place @param {State} state */
  async function write(id, place, state) {
    if (known.get(id) !== place) return;
    const before = there.get(id);
    const sheet = before?.since === place.since ? '' : writeSheet(state);
    const noted = await journal.note(id, place, before, sheet);
    const { theirs } = noted ?? {};
    if (noted) there.set(id, theirs ?? place);
    if (theirs && !isSamePlace(theirs, place)) follow(id, theirs);
    if (known.get(id) !== place) return;
    root.removeAttribute('data-unnoted');
    if (noted) tell(place);
  }

  /** @param {string} id @param {State} state */
  function note(id, state) {
    const place = placeOf(/** @type {Begun} */ (state.started));
    known.set(id, place);
    root.setAttribute('data-unnoted', '');
    queue = queue.then(() => write(id, place, state));
  }

  /** That it is noted so; unless she was quicker than the disk. @param {string} id @param {Place} place */
  function remember(id, place) {
    if (!known.has(id)) known.set(id, place);
    there.set(id, place);
  }

  /** A sock as it was noted, as far as it was knit; nothing where the shelf has it so. @param {import('./journal.js').Noted} noted */
  function furtherThanKept({ id, place, sheet }) {
    const kept = isOnPage(id) ? now.latest : shelf.sheetOf(id);
    if (kept?.started && !isLater(place, kept.started)) {
      remember(id, place);
      return undefined;
    }
    // The beginning itself had not come to the disk: the sheet was noted with it.
    const whole = kept?.started?.since === place.since ? kept : sheetIn(String(sheet));
    if (whole?.started?.since !== place.since) return undefined;
    remember(id, place);
    return { ...whole, started: withinPlan({ ...whole.started, ...place }) };
  }

  /** @returns {Promise<string>} the last sock that has come back from there */
  async function recall() {
    let last = '';
    for (const noted of await journal.all()) {
      const { id, place } = noted;
      const sheet = furtherThanKept(noted);
      if (!sheet) continue;
      last = id;
      const state = { ...startState(), ...sheet };
      if (!shelf.put(id, state)) now.turned.set(id, state);
      if (!isOnPage(id)) continue;
      const isBegun = now.latest.started?.since === place.since;
      act(isBegun ? { type: 'followed', place } : { type: 'opened', sheet });
    }
    return last;
  }

  const notes = {
    /** @param {string} id @param {State} state */
    take(id, state) {
      const { started } = state;
      const last = known.get(id);
      if (!started) notes.forget(id);
      else if (!last || !isSamePlace(last, started)) note(id, state);
    },

    /** It is on no needles any more. @param {string} id */
    forget(id) {
      if (!known.delete(id)) return;
      there.delete(id);
      queue = queue.then(() => journal.remove(id));
    },

    /** @param {import('../save.js').Hands['act']} does @param {(id: string) => void} turn @returns {Promise<void>} once the page is as it was left */
    recall(does, turn) {
      act = does;
      const done = recall().then((last) => {
        if (!last || !isUntouched(now.latest) || now.visit) return;
        turn(last);
        act({ type: 'moment', moment: 'knit' });
      });
      queue = done;
      void done.then(() => {
        if (!now.visit) notes.take(now.current, now.latest);
        tell(there.get(now.current));
      });
      const patience = new Promise((resolve) => setTimeout(resolve, patienceMs));
      return Promise.race([done, patience]).then(() => undefined);
    },
  };
  return notes;
}
