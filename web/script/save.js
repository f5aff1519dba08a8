// Every change is kept at once; what another tab has changed is asked about, and what cannot be read is set aside.
import { handOver } from './download.js';
import { openStore } from './save/store.js';
import { fromSheet, toSheet } from './state.js';

/** @typedef {import('./state.js').State} State */
/** @typedef {import('./state.js').Action} Action */

/** @param {Document} document */
export function openKeeper(document) {
  const store = openStore(/** @type {Window} */ (document.defaultView), (sheet) =>
    Boolean(fromSheet(sheet)),
  );
  const found = store.open();
  const { aside } = found;
  let { isKept } = found;
  /** @type {ReturnType<typeof fromSheet>} what another tab has kept, until it is said which of the two holds */
  let theirs;
  /** The link whose sock is looked at, and what was her own before it. @type {{ link: string, own: State } | undefined} */
  let visit;

  return {
    /** What was kept when the page was left. */
    sheet: fromSheet(found.sheet),

    /** @param {State} state */
    keep(state) {
      if (visit) isKept = store.keepVisit(visit.link, toSheet(state));
      else if (!theirs) isKept = store.keep(toSheet(state));
    },

    /**
     * A link's sock is kept by itself, until she says whose it is to be.
     * @param {string} link @param {State} own
     * @returns {ReturnType<typeof fromSheet>} what she had made of it when she left it
     */
    visit(link, own) {
      visit = { link, own: visit?.own ?? own };
      return fromSheet(store.openVisit(link));
    },

    /** What there is to say about it. @param {State} state */
    tell: ({ past, future }) => ({
      canUndo: past.length > 0,
      canRedo: future.length > 0,
      isKept,
      isElsewhere: theirs !== undefined,
      aside,
      isVisit: visit !== undefined,
    }),

    /**
     * @param {(action: Action) => void} act @param {() => void} ask shows that there is something to say
     * @param {() => void} leave goes from the link's address to the page's own
     */
    listen(act, ask, leave) {
      store.listen((sheet) => {
        theirs = fromSheet(sheet);
        ask();
      });
      /** @type {Record<string, () => void>} */
      const does = {
        undo: () => act({ type: 'undo' }),
        redo: () => act({ type: 'redo' }),
        anew: () => act({ type: 'anew' }),
        theirs() {
          const sheet = theirs;
          theirs = undefined;
          if (sheet) act({ type: 'opened', sheet });
        },
        mine() {
          theirs = undefined;
          act({ type: 'left' });
        },
        makeMine() {
          visit = undefined;
          leave();
          act({ type: 'left' });
        },
        backToMine() {
          const own = visit?.own;
          visit = undefined;
          leave();
          if (own) act({ type: 'opened', sheet: own });
        },
        aside() {
          const blob = new Blob([aside], { type: 'application/json' });
          handOver(document, blob, 'twinround-set-aside.json');
        },
      };
      document.addEventListener('click', ({ target }) => {
        const button = target instanceof Element && target.closest('[data-kept]');
        if (button) does[button.getAttribute('data-kept') ?? '']?.();
      });
    },
  };
}
