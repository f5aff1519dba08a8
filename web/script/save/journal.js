// A place a sock, written through to the disk. What a browser keeps otherwise it writes seconds later, and a phone that
// takes the page away meanwhile would take the last taps with it.

/** @typedef {import('../state/place.js').Place} Place */

const name = 'twinround';
const places = 'places';

/** @param {IDBRequest} request @returns {Promise<any>} */
const answerTo = (request) =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** @param {Window & { indexedDB?: IDBFactory }} view @returns {Promise<IDBDatabase>} refused in a frame that is denied it */
function openPlaces(view) {
  // Where it is denied the name itself may throw.
  return new Promise((resolve, reject) => {
    const request = /** @type {IDBFactory} */ (view.indexedDB).open(name, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(places);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('blocked'));
  });
}

/** @param {Window} view */
export function openJournal(view) {
  /** Not before there is a place to note: most readers have none. @type {Promise<IDBDatabase> | undefined} */
  let opened;
  const base = () => (opened ??= openPlaces(view));

  return {
    /** @param {string} id @param {Place} place @returns {Promise<boolean>} true once it is on the disk */
    async note(id, place) {
      try {
        const transaction = (await base()).transaction(places, 'readwrite', {
          durability: 'strict',
        });
        const done = new Promise((resolve, reject) => {
          transaction.oncomplete = () => resolve(true);
          transaction.onabort = () => reject(transaction.error);
        });
        transaction.objectStore(places).put(place, id);
        await done;
        return true;
      } catch {
        return false;
      }
    },

    /** @param {string} id @returns {Promise<unknown>} */
    async read(id) {
      try {
        return await answerTo((await base()).transaction(places).objectStore(places).get(id));
      } catch {
        return undefined;
      }
    },
  };
}
