// What a reader does with her socks: turn to another, look at a link's, remove one, begin it, take it along as a file.
import { handOver } from '../download.js';
import { isSameSock, isUntouched, startState } from '../state.js';
import { fileOf, socksIn } from './file.js';
import { turnsOf } from './turns.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('./turns.js').Parts} Parts */

/** @param {Parts} parts @param {(id: string) => void} turn */
function filesOf({ document, shelf, now, hands }, turn) {
  /** As they stand here, kept or not. */
  function allStates() {
    const ids = [...new Set([...shelf.ids(), ...now.turned.keys()])];
    const kept = ids
      .filter((id) => id !== now.current || now.visit)
      .flatMap((id) => shelf.sheetOf(id) ?? now.turned.get(id) ?? []);
    return [...kept.map((sheet) => ({ ...startState(), ...sheet })), now.latest];
  }

  /** @param {State[]} states */
  function handFile(states) {
    if (states.length === 0) return;
    const { text, name } = fileOf(states, hands.requestOf);
    handOver(document, new Blob([text], { type: 'application/json' }), name);
  }

  return {
    one: () => handFile([now.latest]),
    all: () => handFile(allStates().filter((state) => !isUntouched(state))),

    /** Each sock of it becomes one more on the shelf; the last is turned to. @param {File} file */
    async open(file) {
      const { sheets, problem } = await socksIn(file, hands.sheetOf);
      const here = allStates();
      const anew = sheets.filter((sheet) => !here.some((one) => isSameSock(one, sheet)));
      const opened = anew.map((sheet) => {
        const id = shelf.newId();
        const state = { ...startState(), ...sheet };
        const isKept = shelf.put(id, state);
        if (!isKept) now.turned.set(id, state);
        return { id, isKept };
      });
      const last = opened[opened.length - 1];
      if (last) turn(last.id);
      if (now.latest.started && last) hands.act({ type: 'moment', moment: 'knit' });
      now.opened = { count: opened.length, known: sheets.length - opened.length };
      now.badFile = opened.every(({ isKept }) => isKept) ? problem : 'no_room';
      hands.show();
    },
  };
}

/** @param {Parts} parts */
export function deedsOf(parts) {
  const { document, store, shelf, now, hands, notes } = parts;
  const { act, show } = hands;
  const { turn, anew, visit, makeMine, leaveVisit } = turnsOf(parts);
  const files = filesOf(parts, turn);

  /** @param {string} id */
  function remove(id) {
    const isOnPage = id === now.current && !now.visit;
    const stored = shelf.sheetOf(id);
    const state = isOnPage ? now.latest : { ...startState(), ...(stored ?? now.turned.get(id)) };
    // What another tab has made of it can be put back too.
    if (stored && !isSameSock(stored, state)) {
      now.removed.push({ id: shelf.newId(), state: { ...startState(), ...stored } });
    }
    now.removed.push({ id, state });
    shelf.remove(id);
    notes.forget(id);
    now.turned.delete(id);
    if (!isOnPage) return show();
    now.question = undefined;
    const other = shelf.last();
    now.latest = anew();
    return other ? turn(other) : turn(shelf.newId(), now.latest);
  }

  function putBack() {
    const last = now.removed.pop();
    if (last) shelf.put(shelf.sheetOf(last.id) ? shelf.newId() : last.id, last.state);
    show();
  }

  /** One of the two holds; the other can be put back. @param {boolean} isMine */
  function settle(isMine) {
    const { question } = now;
    if (!question) return;
    const { sheet, fork } = question;
    const other = isMine ? { ...startState(), ...sheet } : now.latest;
    if (isMine || fork) now.removed.push({ id: shelf.newId(), state: other });
    if (fork) shelf.remove(fork);
    now.question = undefined;
    shelf.open(now.current);
    const { moment, system, shown } = now.latest;
    act(isMine ? { type: 'left' } : { type: 'opened', sheet: { ...sheet, moment, system, shown } });
  }

  /** @type {Record<string, (id: string) => void>} by what a button says it does */
  const does = {
    undo: () => act({ type: 'undo' }),
    redo: () => act({ type: 'redo' }),
    anew: () => act({ type: 'anew' }),
    leaveClass: () => (now.visit ? leaveVisit() : act({ type: 'class left' })),
    begin() {
      const started = hands.begun();
      // What is on her needles is hers.
      makeMine();
      if (started) act({ type: 'begun', started });
    },
    notBegun: () => act({ type: 'begun', started: undefined }),
    theirs: () => settle(false),
    mine: () => settle(true),
    makeMine,
    backToMine: leaveVisit,
    turn: (id) => turn(id),
    newSock: () => turn(shelf.newId(), anew()),
    another() {
      const { latest } = now;
      turn(shelf.newId(), {
        ...latest,
        name: '',
        note: '',
        started: undefined,
        past: [],
        future: [],
      });
    },
    remove,
    putBack,
    toFile: files.one,
    allToFile: files.all,
    aside() {
      const blob = new Blob([store.allAside()], { type: 'application/json' });
      handOver(document, blob, 'twinround-set-aside.json');
    },
  };
  return { does, visit, endVisit: leaveVisit, openFile: files.open };
}
