// A place a sock, written through to the disk, and beside it once the sheet that was begun. What a browser keeps otherwise
// it writes seconds later, and a phone that takes the page away meanwhile would take the last taps with it.
import { isLater, isPlace, isSamePlace } from '../state.js';

/** @typedef {import('../state.js').Place} Place */
/** @typedef {{ id: string, place: Place, sheet: unknown }} Noted `sheet`: the text of the sheet */

const name = 'twinround';
const places = 'places';
const sheets = 'sheets';

/** @param {IDBRequest} request @returns {Promise<any>} */
const answerTo = (request) =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** @param {IDBTransaction} transaction @returns {Promise<void>} once it is on the disk */
const endOf = (transaction) =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
  });

/**
 * @param {Window & { indexedDB?: IDBFactory }} view @param {boolean} isMade whether it is made where there is none
 * @returns {Promise<IDBDatabase>} refused where there is none, and in a frame that is denied it
 */
function openBase(view, isMade) {
  // Where it is denied the name itself may throw.
  return new Promise((resolve, reject) => {
    const request = /** @type {IDBFactory} */ (view.indexedDB).open(name, 1);
    request.onupgradeneeded = () => {
      if (!isMade) return request.transaction?.abort();
      for (const store of [places, sheets]) request.result.createObjectStore(store);
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('blocked'));
  });
}

/** @param {Window} view */
export function openJournal(view) {
  /** @type {Promise<IDBDatabase> | undefined} */
  let opened;

  /**
   * @template T
   * @param {boolean} isMade @param {(store: (name: string) => IDBObjectStore) => Promise<T>} does
   * @returns {Promise<T | undefined>} nothing where it could not be done; else once it is on the disk
   */
  async function write(isMade, does) {
    try {
      const base = await (opened ??= openBase(view, isMade));
      const transaction = base.transaction([places, sheets], 'readwrite', { durability: 'strict' });
      const end = endOf(transaction);
      const [done] = await Promise.all([does((store) => transaction.objectStore(store)), end]);
      return done;
    } catch {
      // Another time it may be there: made by then, or given back by the browser.
      opened = undefined;
      return undefined;
    }
  }

  return {
    /**
     * Never over what another tab has noted meanwhile, but where one has come further.
     * @param {string} id @param {Place} place @param {Place | undefined} known what was noted there last, as this tab knows
     * @param {string} sheet its text, or '' where it is in there
     * @returns {Promise<{ theirs?: Place } | undefined>} nothing where it could not be noted
     */
    note: (id, place, known, sheet) =>
      write(true, async (store) => {
        const there = await answerTo(store(places).get(id));
        if (isPlace(there) && !isLater(place, there)) {
          const isAsKnown = known !== undefined && isSamePlace(known, there);
          // As late, and changed by hand since.
          if (!isAsKnown || isLater(there, place)) return { theirs: there };
        }
        store(places).put(place, id);
        if (sheet) store(sheets).put(sheet, id);
        return {};
      }),

    /** @param {string} id */
    remove: (id) =>
      write(false, async (store) => {
        store(places).delete(id);
        store(sheets).delete(id);
      }),

    /** Everything that is noted. @returns {Promise<Noted[]>} */
    async all() {
      const noted = await write(false, async (store) => {
        const [ids, all, texts, of] = await Promise.all([
          answerTo(store(places).getAllKeys()),
          answerTo(store(places).getAll()),
          answerTo(store(sheets).getAll()),
          answerTo(store(sheets).getAllKeys()),
        ]);
        return ids.map((/** @type {string} */ id, /** @type {number} */ i) => ({
          id,
          place: all[i],
          sheet: texts[of.indexOf(id)],
        }));
      });
      return noted?.filter((/** @type {Noted} */ { place }) => isPlace(place)) ?? [];
    },
  };
}
