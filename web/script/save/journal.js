// The socks that are on the needles, written through to the disk. What a browser keeps otherwise it writes seconds later,
// and a phone that takes the page away meanwhile would take the last taps with it.

const name = 'twinround';
const begun = 'begun';

/** @template T @param {IDBRequest<T>} request @returns {Promise<T>} */
const answerTo = (request) =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** @param {Window & { indexedDB?: IDBFactory }} view @returns {Promise<IDBDatabase>} refused in a frame that is denied it */
function openBase(view) {
  // Where it is denied the name itself may throw.
  return new Promise((resolve, reject) => {
    const request = /** @type {IDBFactory} */ (view.indexedDB).open(name, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(begun);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** @param {Window} view */
export function openJournal(view) {
  /** @type {Promise<IDBDatabase> | undefined} */
  let opened;
  const base = () => (opened ??= openBase(view));

  /** @param {(store: IDBObjectStore) => void} change @returns {Promise<boolean>} true once it is on the disk */
  async function write(change) {
    try {
      const transaction = (await base()).transaction(begun, 'readwrite', { durability: 'strict' });
      const done = new Promise((resolve, reject) => {
        transaction.oncomplete = () => resolve(true);
        transaction.onabort = () => reject(transaction.error);
      });
      change(transaction.objectStore(begun));
      await done;
      return true;
    } catch {
      return false;
    }
  }

  return {
    /** @param {string} id @param {string} text of its sheet */
    note: (id, text) => write((store) => store.put(text, id)),

    /** No longer on the needles. @param {string} id */
    forget: (id) => write((store) => store.delete(id)),

    /** @returns {Promise<Array<[string, string]>>} ids, and texts of sheets */
    async all() {
      try {
        const store = (await base()).transaction(begun).objectStore(begun);
        const [ids, texts] = await Promise.all([
          answerTo(store.getAllKeys()),
          answerTo(store.getAll()),
        ]);
        return ids.map((id, i) => [String(id), String(texts[i])]);
      } catch {
        return [];
      }
    },
  };
}
