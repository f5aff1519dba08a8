// Every change is kept at once, each sock under its own name; what another tab has changed is asked about, and what
// cannot be read is set aside.
import { deedsOf } from './save/deeds.js';
import { withDeskId } from './save/desk_id.js';
import { openNotes } from './save/notes.js';
import { openShelf, parse } from './save/shelf.js';
import { openStore } from './save/store.js';
import { recallSock, rememberSock } from './save/tab.js';
import { openVisits } from './save/visit.js';
import {
  isSameButBegun,
  isSameButPlace,
  isSameSock,
  isUntouched,
  lessonIn,
  placeOf,
  startState,
  wishesIn,
} from './state.js';

/** @typedef {import('./state.js').State} State */
/** @typedef {import('./state.js').Action} Action */
/** @typedef {ReturnType<typeof import('./state.js').fromSheet>} Sheet */

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
 * @property {Map<string, State>} turned socks that were turned away from, as they were left
 * @property {{ sheet: NonNullable<Sheet>, mine: State, fork: string } | undefined} question what another tab has kept of
 *   this sock, until it is said which of the two holds; what is mine is kept as the sock `fork` meanwhile
 * @property {import('./save/visit.js').Visit | undefined} visit
 * @property {Array<{ id: string, state: State }>} removed since the page was opened, the last one last
 * @property {{ count: number, known: number } | undefined} opened socks of the last file: made, and here already
 * @property {string} badFile why a file was not opened, as a code, or ''
 */

/** @typedef {import('./state/place.js').Place} Place */

const lessonName = 'lesson';
const wishesName = 'needles';

/** Of two copies of one sock: the later one, or as late and kept. @param {NonNullable<Sheet>} theirs @param {State} mine */
const isFurther = (theirs, mine) => (theirs.started?.taps ?? 0) >= (mine.started?.taps ?? 0);

export { socksIn } from './save/file.js';

/** @param {Document} document */
export function openKeeper(document) {
  const view = /** @type {Window} */ (document.defaultView);
  const store = openStore(view);
  const shelf = openShelf(store);
  const visits = openVisits(store);
  const recalled = recallSock(view);
  const current =
    shelf.ids().find((id) => id === recalled) ?? shelf.last() ?? recalled ?? shelf.newId();
  const sheet = shelf.open(current);
  rememberSock(view, current);
  const lesson = withDeskId(lessonIn(parse(store.read(lessonName))), view.crypto);
  /** @type {Now} */
  const now = {
    current,
    latest: { ...startState(), ...sheet, lesson },
    turned: new Map(),
    question: undefined,
    visit: undefined,
    removed: [],
    opened: undefined,
    badFile: '',
  };

  const notes = openNotes(document, shelf, now);

  /** Mine, beside what another tab has made of the same sock. @param {State} state */
  function keepFork(state) {
    const { question } = now;
    if (!question || isSameSock(question.mine, state)) return;
    question.fork ||= shelf.newId();
    shelf.put(question.fork, state);
    notes.take(question.fork, state);
  }

  /** @param {State} state @returns {Place | undefined} where another tab has knit this very sock to */
  function keepOwn(state) {
    // An untouched example is nothing to keep.
    if (isUntouched(state) && !shelf.sheetOf(now.current)) return undefined;
    const theirs = shelf.keep(now.current, state);
    if (!theirs) return undefined;
    if (isSameButPlace(theirs, state)) {
      // A tap on a page that was behind is a tap on a place that is past: it counts nowhere.
      if (isFurther(theirs, state)) {
        shelf.open(now.current);
        return theirs.started && placeOf(theirs.started);
      }
      shelf.put(now.current, state);
      return undefined;
    }
    now.question = { sheet: theirs, mine: startState(), fork: '' };
    keepFork(state);
    return undefined;
  }

  /**
   * Another tab has but begun this sock, or knit on with it: nothing of one's own stands against that.
   * @param {NonNullable<Sheet>} theirs @param {Hands['act']} act @returns {boolean} whether it is so
   */
  function follow(theirs, act) {
    const { latest } = now;
    if (now.visit || now.question || isSameSock(theirs, latest)) return false;
    if (!isSameButBegun(theirs, latest)) return false;
    if (!isSameButPlace(theirs, latest)) {
      shelf.open(now.current);
      act({ type: 'begun', started: theirs.started });
    } else if (theirs.started && isFurther(theirs, latest)) {
      shelf.open(now.current);
      act({ type: 'followed', place: placeOf(theirs.started) });
    } else shelf.put(now.current, latest);
    return true;
  }

  return {
    /** What was kept when the page was left. */
    sheet,
    lesson,
    /** What this device is to do while one knits. */
    wishes: wishesIn(parse(store.read(wishesName))),
    keepWishes: (/** @type {object} */ wishes) => store.put(wishesName, JSON.stringify(wishes)),

    /** Her own sock, be it on the page or not. */
    own: () => now.visit?.own ?? now.latest,

    /**
     * @param {State} state @param {boolean} [isFollowed] whether it stands so already
     * @returns {Place | undefined} where another tab has knit it to: that holds then
     */
    keep(state, isFollowed = false) {
      if (state.lesson !== now.latest.lesson) store.put(lessonName, JSON.stringify(state.lesson));
      now.latest = state;
      now.badFile = '';
      now.opened = undefined;
      if (isFollowed) return undefined;
      if (now.visit) visits.keep(now.visit, state);
      else if (now.question) keepFork(state);
      else {
        const theirs = keepOwn(state);
        if (theirs) return theirs;
        if (!now.question) notes.take(now.current, state);
      }
      return undefined;
    },

    /** What there is to say about it. */
    tell: () => ({
      canUndo: now.latest.past.length > 0 && !now.latest.started,
      canRedo: now.latest.future.length > 0 && !now.latest.started,
      isKept: store.isKept(),
      isElsewhere: now.question !== undefined,
      aside: store.allAside(),
      isVisit: now.visit !== undefined,
      removed: now.removed[now.removed.length - 1]?.state.name,
      opened: now.opened,
      badFile: now.badFile,
      hasSocks: shelf.ids().length > 0,
    }),

    /** All socks, the one on the page as it stands there. */
    socks() {
      const unkept = [...now.turned.keys()].filter(shelf.isUnkept);
      const here = now.visit ? [] : [now.current];
      return [...new Set([...shelf.ids(), ...unkept, ...here])].flatMap((id) => {
        const isOpen = id === now.current && !now.visit;
        const kept = isOpen ? now.latest : (shelf.sheetOf(id) ?? now.turned.get(id));
        return kept && (isOpen || !isUntouched(kept)) ? [{ id, isOpen, sheet: kept }] : [];
      });
    },

    /** @param {Hands} hands */
    listen(hands) {
      const { does, visit, endVisit, openFile } = deedsOf({
        document,
        store,
        shelf,
        notes,
        visits,
        now,
        hands,
      });
      store.listen((name, text) => {
        const theirs = shelf.isOf(now.current, name) ? shelf.sheetOf(now.current) : undefined;
        if (name === lessonName && text !== null) {
          const theirLesson = lessonIn(parse(text));
          // Not written back: the other tab may have gone on since, and would take its own echo for news.
          now.latest = { ...now.latest, lesson: theirLesson };
          hands.act({ type: 'lesson followed', lesson: theirLesson });
        } else if (theirs && !now.visit && !follow(theirs, hands.act)) {
          const mine = now.question?.mine ?? now.latest;
          const isSame = isSameSock(theirs, now.latest) && !now.question?.fork;
          if (isSame) shelf.open(now.current);
          now.question = isSame
            ? undefined
            : { sheet: theirs, mine, fork: now.question?.fork ?? '' };
        }
        hands.show();
      });
      document.addEventListener('click', ({ target }) => {
        const button = target instanceof Element && target.closest('[data-kept]');
        if (!button || button.getAttribute('aria-disabled') === 'true') return;
        does[button.getAttribute('data-kept') ?? '']?.(button.getAttribute('data-id') ?? '');
      });
      return { visit, endVisit, openFile, recalled: notes.recall(hands.act, does.turn) };
    },
  };
}
