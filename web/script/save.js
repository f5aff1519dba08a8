// Every change is kept at once, each sock under its own name; what another tab has changed is asked about, and what
// cannot be read is set aside.
import { deedsOf } from './save/deeds.js';
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

/**
 * @typedef {object} Now
 * @property {string} current the id of the sock on the page, or of her own while a link's is looked at
 * @property {State} latest the sock as it stands on the page
 * @property {Map<string, State>} turned of socks that were turned away from: what can still be taken back
 * @property {Sheet} theirs what another tab has kept, until it is said which of the two holds
 * @property {{ link: string, own: State } | undefined} visit the link whose sock is looked at, and what was her own before it
 * @property {{ id: string, text: string, name: string } | undefined} removed the sock removed last, until the page is left
 * @property {string} badFile why a file was not opened, as a code, or ''
 */

const visitName = 'visit';
const lessonName = 'lesson';

/** @param {Document} document */
export function openKeeper(document) {
  const store = openStore(/** @type {Window} */ (document.defaultView));
  const shelf = openShelf(store);
  const current = shelf.last() ?? shelf.newId();
  const sheet = shelf.open(current);
  const lesson = lessonIn(parse(store.read(lessonName)));
  /** @type {Now} */
  const now = {
    current,
    latest: { ...startState(), ...sheet, lesson },
    turned: new Map(),
    theirs: undefined,
    visit: undefined,
    removed: undefined,
    badFile: '',
  };

  return {
    /** What was kept when the page was left. */
    sheet,
    lesson,

    /** @param {State} state */
    keep(state) {
      if (state.lesson !== now.latest.lesson) store.put(lessonName, JSON.stringify(state.lesson));
      now.latest = state;
      const { visit } = now;
      if (visit) store.put(visitName, JSON.stringify({ link: visit.link, sheet: toSheet(state) }));
      else if (!now.theirs) now.theirs = shelf.keep(now.current, state);
    },

    /**
     * A link's sock is kept by itself, until she says whose it is to be.
     * @param {string} link @param {State} own
     * @returns {Sheet} what she had made of it when she left it
     */
    visit(link, own) {
      now.visit = { link, own: now.visit?.own ?? own };
      const kept = /** @type {any} */ (parse(store.read(visitName)));
      return kept?.link === link ? fromSheet(kept.sheet) : undefined;
    },

    /** What there is to say about it. */
    tell: () => ({
      canUndo: now.latest.past.length > 0 && !now.latest.started,
      canRedo: now.latest.future.length > 0 && !now.latest.started,
      isKept: store.isKept(),
      isElsewhere: now.theirs !== undefined,
      aside: store.lastAside(),
      isVisit: now.visit !== undefined,
      removed: now.removed?.name,
      badFile: now.badFile,
    }),

    /** All socks, the one on the page as it stands there. */
    socks: () =>
      [...new Set([...shelf.ids(), ...(now.visit ? [] : [now.current])])].flatMap((id) => {
        const isOpen = id === now.current && !now.visit;
        const kept = isOpen ? now.latest : sheetIn(shelf.textOf(id));
        return kept && (isOpen || !isUntouched(kept)) ? [{ id, isOpen, sheet: kept }] : [];
      }),

    /** @param {Hands} hands */
    listen(hands) {
      store.listen((name, text) => {
        if (!now.visit && shelf.isOf(now.current, name)) now.theirs = sheetIn(text);
        hands.show();
      });
      const { does, openFile } = deedsOf({ document, store, shelf, now, hands });
      document.addEventListener('click', ({ target }) => {
        const button = target instanceof Element && target.closest('[data-kept]');
        if (!button || button.getAttribute('aria-disabled') === 'true') return;
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
