// Every change is kept at once, each sock under its own name; what another tab has changed is asked about, and what
// cannot be read is set aside.
import { handOver } from './download.js';
import { fileOf, socksIn } from './save/file.js';
import { openShelf, parse, sheetIn } from './save/shelf.js';
import { openStore } from './save/store.js';
import { fromSheet, isUntouched, lessonIn, startState, toSheet } from './state.js';

/** @typedef {import('./state.js').State} State */
/** @typedef {import('./state.js').Action} Action */
/** @typedef {ReturnType<typeof fromSheet>} Sheet */

/**
 * @typedef {object} Hands what the keeper asks of the page
 * @property {(action: Action) => void} act
 * @property {() => void} show that there is something to say
 * @property {() => void} leave the link's address for the page's own
 * @property {(state: State) => unknown} requestOf
 * @property {() => State['started']} begun what the sock is begun with now, if it is a plan
 * @property {(request: unknown) => Sheet} sheetOf a request that somebody else has written
 */

const visitName = 'visit';
const lessonName = 'lesson';

/** @param {Document} document */
export function openKeeper(document) {
  const store = openStore(/** @type {Window} */ (document.defaultView));
  const shelf = openShelf(store);
  let current = shelf.last() ?? shelf.newId();
  const sheet = shelf.open(current);
  const lesson = lessonIn(parse(store.read(lessonName)));
  /** The sock as it stands on the page. */
  let latest = { ...startState(), ...sheet, lesson };
  /** Of socks that were turned away from: what can still be taken back. @type {Map<string, State>} */
  const turned = new Map();
  /** What another tab has kept, until it is said which of the two holds. @type {Sheet} */
  let theirs;
  /** The link whose sock is looked at, and what was her own before it. @type {{ link: string, own: State } | undefined} */
  let visit;
  /** The sock removed last, until the page is left. @type {{ id: string, text: string, name: string } | undefined} */
  let removed;
  /** Why a file was not opened, as a code, or ''. */
  let badFile = '';

  /** The sock as it is kept, and as it was left here. @param {string} id @returns {State} */
  function stateOf(id) {
    const { system, moment, shown } = latest;
    const { past, future } = turned.get(id) ?? startState();
    const kept = shelf.open(id);
    return { ...startState(), system, shown, ...kept, moment, past, future };
  }

  return {
    /** What was kept when the page was left. */
    sheet,
    lesson,

    /** @param {State} state */
    keep(state) {
      if (state.lesson !== latest.lesson) store.put(lessonName, JSON.stringify(state.lesson));
      latest = state;
      if (visit) store.put(visitName, JSON.stringify({ link: visit.link, sheet: toSheet(state) }));
      else if (!theirs) theirs = shelf.keep(current, state);
    },

    /**
     * A link's sock is kept by itself, until she says whose it is to be.
     * @param {string} link @param {State} own
     * @returns {Sheet} what she had made of it when she left it
     */
    visit(link, own) {
      visit = { link, own: visit?.own ?? own };
      const kept = /** @type {any} */ (parse(store.read(visitName)));
      return kept?.link === link ? fromSheet(kept.sheet) : undefined;
    },

    /** What there is to say about it. */
    tell: () => ({
      canUndo: latest.past.length > 0 && !latest.started,
      canRedo: latest.future.length > 0 && !latest.started,
      isKept: store.isKept(),
      isElsewhere: theirs !== undefined,
      aside: store.lastAside(),
      isVisit: visit !== undefined,
      removed: removed?.name,
      badFile,
    }),

    /** All socks, the one on the page last as it stands there. */
    socks: () =>
      [...new Set([...shelf.ids(), ...(visit ? [] : [current])])].flatMap((id) => {
        const isOpen = id === current && !visit;
        const kept = isOpen ? latest : sheetIn(shelf.textOf(id));
        return kept && (isOpen || !isUntouched(kept)) ? [{ id, isOpen, sheet: kept }] : [];
      }),

    /** @param {Hands} hands */
    listen({ act, show, leave, requestOf, sheetOf, begun }) {
      /** To another sock, the one on the page staying as it is. @param {string} id @param {State} [state] */
      function turn(id, state = stateOf(id)) {
        const left = visit?.own ?? latest;
        if (visit) leave();
        if (isUntouched(left)) shelf.remove(current);
        else if (id !== current) turned.set(current, left);
        visit = undefined;
        theirs = undefined;
        current = id;
        shelf.open(id);
        act({ type: 'turned', state });
      }

      const anew = () => {
        const { system, shown, moment } = latest;
        return { ...startState(), system, shown, moment };
      };

      /** @param {string} id */
      function remove(id) {
        const kept = id === current ? toSheet(latest) : undefined;
        const text = kept ? JSON.stringify(kept) : (shelf.textOf(id) ?? '');
        removed = { id, text, name: sheetIn(text)?.name ?? '' };
        shelf.remove(id);
        if (id !== current) return show();
        const other = shelf.last();
        latest = anew();
        return other ? turn(other) : turn(shelf.newId(), anew());
      }

      /** @param {File} file */
      async function openFile(file) {
        const { sheets, problem } = await socksIn(file, sheetOf);
        badFile = problem;
        const ids = sheets.map((one) => {
          const id = shelf.newId();
          shelf.put(id, JSON.stringify(toSheet({ ...startState(), ...one })));
          return { id, one };
        });
        const last = ids.pop();
        if (last) turn(last.id, { ...startState(), ...last.one, moment: latest.moment });
        else show();
      }

      const handFile = (/** @type {State[]} */ states) => {
        const { text, name } = fileOf(states, requestOf);
        handOver(document, new Blob([text], { type: 'application/json' }), name);
      };

      store.listen((name, text) => {
        if (!visit && shelf.isOf(current, name)) theirs = sheetIn(text);
        show();
      });
      /** @type {Record<string, (id: string) => void>} */
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
          const taken = theirs;
          theirs = undefined;
          shelf.open(current);
          if (taken) act({ type: 'opened', sheet: taken });
        },
        mine() {
          theirs = undefined;
          shelf.open(current);
          act({ type: 'left' });
        },
        makeMine: () => turn(visit && isUntouched(visit.own) ? current : shelf.newId(), latest),
        backToMine: () => visit && turn(current, visit.own),
        turn: (id) => turn(id),
        newSock: () => turn(shelf.newId(), anew()),
        another: () =>
          turn(shelf.newId(), { ...latest, name: '', started: undefined, past: [], future: [] }),
        remove,
        putBack() {
          if (removed) shelf.put(removed.id, removed.text);
          removed = undefined;
          show();
        },
        toFile: () => handFile([latest]),
        allToFile: () =>
          handFile(
            shelf.ids().flatMap((id) => {
              const kept = sheetIn(shelf.textOf(id));
              return kept ? [{ ...startState(), ...kept }] : [];
            }),
          ),
        aside() {
          const blob = new Blob([store.lastAside()], { type: 'application/json' });
          handOver(document, blob, 'twinround-set-aside.json');
        },
      };
      document.addEventListener('click', ({ target }) => {
        const button = target instanceof Element && target.closest('[data-kept]');
        if (!button) return;
        does[button.getAttribute('data-kept') ?? '']?.(button.getAttribute('data-id') ?? '');
      });
      document.addEventListener('change', ({ target }) => {
        const isFile = target instanceof HTMLInputElement && target.type === 'file';
        const file = isFile ? target.files?.[0] : undefined;
        if (file) void openFile(file);
      });
    },
  };
}
