// The place of the sock on the page, noted in the journal at every change, and taken from there where it had come further
// than what the browser kept otherwise.
import { isPlace, placeOf } from '../state.js';
import { openJournal } from './journal.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Action} Action */

/** @param {Document} document @param {import('../save.js').Now} now */
export function openNotes(document, now) {
  const journal = openJournal(/** @type {Window} */ (document.defaultView));
  /** @type {(action: Action) => void} */
  let act = () => undefined;
  /** Whose place was looked up, and how it stood when it was last noted. */
  let known = { id: '', taps: 0 };
  // Nothing is noted over a place that was not looked at yet.
  let recalled = Promise.resolve();

  async function recall() {
    const { current: id } = now;
    const noted = await journal.read(id);
    const { started } = now.latest;
    const isHere = id === now.current && !now.visit && started !== undefined;
    if (!isHere || !isPlace(noted) || noted.since !== started.since) return;
    if (noted.taps > started.taps) act({ type: 'followed', place: noted });
  }

  async function note() {
    const { started } = now.latest;
    if (!started || known.id !== now.current || started.taps === known.taps) return;
    const { taps } = started;
    known = { id: now.current, taps };
    const isNoted = await journal.note(now.current, placeOf(started));
    // For whoever wants to know that it cannot be lost any more.
    if (isNoted) document.documentElement.setAttribute('data-noted', String(taps));
  }

  /** @param {State} state */
  function take({ started }) {
    if (!started || now.visit || now.question) return;
    if (known.id !== now.current) {
      known = { id: now.current, taps: started.taps };
      recalled = recall();
    }
    void recalled.then(note);
  }

  return {
    take,
    /** @param {(action: Action) => void} does */
    recall(does) {
      act = does;
      take(now.latest);
    },
  };
}
