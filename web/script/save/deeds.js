// What a reader does with her socks: turn to another, remove one, put it back, begin it, take it along as a file.
import { handOver } from '../download.js';
import { isUntouched, startState, toSheet } from '../state.js';
import { fileOf, socksIn } from './file.js';
import { sheetIn } from './shelf.js';

/** @typedef {import('../state.js').State} State */

/**
 * @param {object} parts
 * @param {Document} parts.document
 * @param {ReturnType<typeof import('./store.js').openStore>} parts.store
 * @param {ReturnType<typeof import('./shelf.js').openShelf>} parts.shelf
 * @param {import('../save.js').Now} parts.now
 * @param {import('../save.js').Hands} parts.hands
 */
export function deedsOf({ document, store, shelf, now, hands }) {
  const { act, show, leave, requestOf, sheetOf, begun } = hands;

  /** A sock as it is kept, and as it was left here. @param {string} id @returns {State} */
  function stateOf(id) {
    const { system, moment, shown } = now.latest;
    const { past, future } = now.turned.get(id) ?? startState();
    return { ...startState(), system, shown, ...shelf.open(id), moment, past, future };
  }

  /** The example again, in today's moment and units. @returns {State} */
  function anew() {
    const { system, shown, moment } = now.latest;
    return { ...startState(), system, shown, moment };
  }

  /** To another sock, the one on the page staying as it is. @param {string} id @param {State} [state] */
  function turn(id, state = stateOf(id)) {
    const left = now.visit?.own ?? now.latest;
    if (now.visit) leave();
    if (isUntouched(left)) shelf.remove(now.current);
    else if (id !== now.current) now.turned.set(now.current, left);
    now.visit = undefined;
    now.theirs = undefined;
    now.current = id;
    shelf.open(id);
    act({ type: 'turned', state });
  }

  /** @param {string} id */
  function remove(id) {
    const isOnPage = id === now.current && !now.visit;
    const text = isOnPage ? JSON.stringify(toSheet(now.latest)) : (shelf.textOf(id) ?? '');
    now.removed = { id, text, name: sheetIn(text)?.name ?? '' };
    shelf.remove(id);
    if (!isOnPage) return show();
    const other = shelf.last();
    now.latest = anew();
    return other ? turn(other) : turn(shelf.newId(), now.latest);
  }

  /** @param {File} file */
  async function openFile(file) {
    const { sheets, problem } = await socksIn(file, sheetOf);
    now.badFile = problem;
    const opened = sheets.map((sheet) => {
      const id = shelf.newId();
      shelf.put(id, JSON.stringify(toSheet({ ...startState(), ...sheet })));
      return { id, sheet };
    });
    const last = opened[opened.length - 1];
    if (!last) return show();
    return turn(last.id, { ...startState(), ...last.sheet, moment: now.latest.moment });
  }

  /** @param {State[]} states */
  function handFile(states) {
    if (states.length === 0) return;
    const { text, name } = fileOf(states, requestOf);
    handOver(document, new Blob([text], { type: 'application/json' }), name);
  }

  /** As they stand here, kept or not. */
  function allStates() {
    const others = shelf.ids().filter((id) => id !== now.current);
    const kept = others.flatMap((id) => sheetIn(shelf.textOf(id)) ?? []);
    const here = now.visit ? [now.visit.own, now.latest] : [now.latest];
    return [...kept.map((sheet) => ({ ...startState(), ...sheet })), ...here];
  }

  /** @type {Record<string, (id: string) => void>} by what a button says it does */
  const does = {
    undo: () => act({ type: 'undo' }),
    redo: () => act({ type: 'redo' }),
    anew: () => act({ type: 'anew' }),
    leaveClass: () => act({ type: 'class left' }),
    begin() {
      const started = begun();
      if (started) act({ type: 'begun', started });
    },
    notBegun: () => act({ type: 'begun', started: undefined }),
    theirs() {
      const sheet = now.theirs;
      now.theirs = undefined;
      shelf.open(now.current);
      if (sheet) act({ type: 'opened', sheet });
    },
    mine() {
      now.theirs = undefined;
      shelf.open(now.current);
      act({ type: 'left' });
    },
    makeMine() {
      const isFirst = now.visit && isUntouched(now.visit.own);
      turn(isFirst ? now.current : shelf.newId(), now.latest);
    },
    backToMine: () => now.visit && turn(now.current, now.visit.own),
    turn: (id) => turn(id),
    newSock: () => turn(shelf.newId(), anew()),
    another() {
      const { latest } = now;
      turn(shelf.newId(), { ...latest, name: '', started: undefined, past: [], future: [] });
    },
    remove,
    putBack() {
      if (now.removed) shelf.put(now.removed.id, now.removed.text);
      now.removed = undefined;
      show();
    },
    toFile: () => handFile([now.latest]),
    allToFile: () => handFile(allStates().filter((state) => !isUntouched(state))),
    aside() {
      const blob = new Blob([store.lastAside()], { type: 'application/json' });
      handOver(document, blob, 'twinround-set-aside.json');
    },
  };
  return { does, openFile };
}
