// A sock on the needles is noted in the journal at every change of its place, and taken from there where it had come
// further than what the browser kept otherwise.
import { placeOf, startState, writeSheet } from '../state.js';
import { openJournal } from './journal.js';
import { sheetIn } from './shelf.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Action} Action */

/**
 * Whether a noted sock has come further than the one that is there.
 * @param {State['started']} noted @param {State['started']} here
 */
const isFurther = (noted, here) =>
  noted !== undefined &&
  (here === undefined || (noted.since === here.since && noted.taps > here.taps));

/** @param {Document} document @param {import('../save.js').Now} now @param {ReturnType<typeof import('./shelf.js').openShelf>} shelf */
export function openNotes(document, now, shelf) {
  const journal = openJournal(/** @type {Window} */ (document.defaultView));
  /** How the sock on the page stood when it was last noted. @type {{ id: string, started: State['started'] }} */
  let known = { id: '', started: undefined };
  // Nothing is noted over a sock that was not looked up yet.
  let recalled = Promise.resolve();

  /** For whoever wants to know what cannot be lost any more. @param {number} taps */
  const tell = (taps) => document.documentElement.setAttribute('data-noted', String(taps));

  async function note() {
    const { current: id, latest } = now;
    const { started } = latest;
    if (now.visit || now.question) return;
    const before = known.id === id ? known.started : undefined;
    if (before?.since === started?.since && before?.taps === started?.taps) return;
    known = { id, started };
    if (!started) return void journal.forget(id);
    const isNoted = await journal.note(id, writeSheet(latest));
    if (isNoted) tell(started.taps);
  }

  return {
    /** The sock on the page has changed. */
    take() {
      if (known.id !== now.current) known = { id: now.current, started: now.latest.started };
      void recalled.then(note);
    },

    /** @param {string} id */
    forget: (id) => void journal.forget(id),

    /** @param {{ act: (action: Action) => void, show: () => void, turn: (id: string) => void }} hands */
    recall({ act, show, turn }) {
      const { started } = now.latest;
      known = { id: now.current, started };
      recalled = journal.all().then((all) => {
        for (const [id, text] of all) {
          const sheet = sheetIn(text);
          const isHere = id === now.current && !now.visit;
          const here = isHere ? now.latest : shelf.sheetOf(id);
          if (!sheet?.started || !isFurther(sheet.started, here?.started)) continue;
          if (isHere && now.latest.started)
            act({ type: 'followed', place: placeOf(sheet.started) });
          else {
            // Begun, and the page taken away before the browser had written that down.
            shelf.put(id, { ...startState(), ...sheet });
            if (isHere) act({ type: 'opened', sheet });
            else if (!now.visit && !shelf.ids().includes(now.current)) {
              turn(id);
              act({ type: 'moment', moment: sheet.moment });
            } else show();
          }
        }
        tell(now.latest.started?.taps ?? 0);
      });
    },
  };
}
