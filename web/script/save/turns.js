// From one sock to another: the one on the page stays as it is, wherever one goes.
import { isUntouched, startState } from '../state.js';
import { rememberSock } from './tab.js';

/** @typedef {import('../state.js').State} State */

/**
 * @typedef {object} Parts
 * @property {Document} document
 * @property {ReturnType<typeof import('./store.js').openStore>} store
 * @property {ReturnType<typeof import('./shelf.js').openShelf>} shelf
 * @property {ReturnType<typeof import('./visit.js').openVisits>} visits
 * @property {ReturnType<typeof import('./notes.js').openNotes>} notes
 * @property {import('../save.js').Now} now
 * @property {import('../save.js').Hands} hands
 */

/** @param {Parts} parts */
export function turnsOf({ document, shelf, visits, now, hands }) {
  const { act, show, leave } = hands;

  /** The example again, in today's moment and units. @returns {State} */
  function anew() {
    const { system, shown, moment } = now.latest;
    return { ...startState(), system, shown, moment };
  }

  /** A sock as it is kept, or as it was left here where it could not be. @param {string} id @returns {State | undefined} */
  function stateOf(id) {
    const left = now.turned.get(id);
    const sock = shelf.isUnkept(id) ? left : shelf.sheetOf(id);
    const { past, future } = left ?? startState();
    return sock && { ...anew(), ...sock, moment: now.latest.moment, past, future };
  }

  /** What was made of a link's sock stays, as one more of hers. */
  function dropVisit() {
    const { visit, latest } = now;
    if (!visit) return;
    if (visit.isEdited) shelf.put(shelf.newId(), latest);
    visits.end(visit);
    now.visit = undefined;
    now.latest = visit.own;
  }

  /** @param {string} id @param {State} [state] */
  function turn(id, state = stateOf(id)) {
    // Removed in another tab, just now.
    if (!state) return show();
    if (now.visit) leave();
    dropVisit();
    const left = now.latest;
    if (id !== now.current) {
      // Mine stands beside what another tab has made of it, if the two differ.
      const isAsked = now.question !== undefined;
      if (!isAsked && isUntouched(left)) shelf.removeKnown(now.current);
      else now.turned.set((isAsked && now.question?.fork) || now.current, left);
      now.question = undefined;
      now.current = id;
      shelf.open(id);
      rememberSock(/** @type {Window} */ (document.defaultView), id);
    }
    return act({ type: 'turned', state });
  }

  return {
    turn,
    anew,

    /**
     * A link's sock, looked at beside her own.
     * @param {string} link @param {State} state what it opens to
     */
    visit(link, state) {
      dropVisit();
      const { visit, sheet } = visits.begin(link, now.latest);
      now.visit = visit;
      act({ type: 'turned', state: { ...state, ...sheet }, isLink: true });
    },

    /** The link's sock becomes hers, beside the one that she had. */
    makeMine() {
      const { visit, latest } = now;
      if (!visit) return;
      visit.isEdited = false;
      const isFirst = isUntouched(visit.own);
      turn(isFirst ? now.current : shelf.newId(), latest);
    },

    /** Back to her own. */
    leaveVisit() {
      if (!now.visit) return;
      const { own } = now.visit;
      turn(now.current, own);
    },
  };
}
