// All socks that are kept, each under an id of its own.
import { fromSheet, isSameSock, writeSheet } from '../state.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {ReturnType<typeof fromSheet>} Sheet */

const prefix = 'sock/';
const lastName = 'last';
// Where a page that knew one sock kept it.
const onlyName = 'sheet';

let lastTime = 0;

/** In the order they were begun in, and another one in another tab. */
function newId() {
  lastTime = Math.max(Date.now(), lastTime + 1);
  return lastTime.toString(36) + Math.random().toString(36).slice(2, 4);
}

/** @param {string | null} text @returns {unknown} nothing where it is no JSON */
export function parse(text) {
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** @param {string | null} text */
export const sheetIn = (text) => fromSheet(parse(text));

/** @param {ReturnType<typeof import('./store.js').openStore>} store */
export function openShelf(store) {
  const only = store.read(onlyName);
  if (only !== null && sheetIn(only)) {
    const id = newId();
    store.put(prefix + id, only);
    // Gone from its old place only once it stands in the new one: a page may be closed between the two.
    if (store.read(prefix + id) === only) {
      store.put(lastName, id);
      store.remove(onlyName);
    }
  } else if (only !== null) store.setAside(onlyName);
  for (const name of store.names(prefix)) if (!sheetIn(store.read(name))) store.setAside(name);

  const ids = () => store.names(prefix).map((name) => name.slice(prefix.length));
  /** Read anew only where the text is another: the same sock is then the same value. @type {Map<string, { text: string, sheet: Sheet }>} */
  const read = new Map();

  /** @param {string} id @returns {Sheet} */
  function sheetOf(id) {
    const text = store.read(prefix + id);
    if (text === null) return undefined;
    const last = read.get(id);
    if (last?.text === text) return last.sheet;
    const sheet = sheetIn(text);
    read.set(id, { text, sheet });
    return sheet;
  }

  return {
    ids,
    newId,
    sheetOf,

    /** The sock that was looked at last, if it is there. @returns {string | undefined} */
    last() {
      const all = ids();
      return all.find((id) => id === store.read(lastName)) ?? all[all.length - 1];
    },

    /** The one that is changed here from now on. @param {string} id @returns {Sheet} */
    open(id) {
      store.put(lastName, id);
      return sheetIn(store.open(prefix + id));
    },

    /** Whether there was no room for it as it was left here. @param {string} id */
    isUnkept: (id) => !store.isKeptAs(prefix + id),

    /** @param {string} id @param {State} state @returns {Sheet} what another tab has made of it meanwhile */
    keep(id, state) {
      const text = writeSheet(state);
      const theirs = store.write(prefix + id, text);
      if (theirs === undefined) return undefined;
      const sheet = sheetIn(theirs);
      if (sheet && !isSameSock(sheet, state)) return sheet;
      // Of a page that knows more than this one: neither is lost. Of the same sock in another moment: neither is more.
      if (!sheet) store.setAside(prefix + id);
      store.put(prefix + id, text);
      return undefined;
    },

    /** Whatever stands there. @param {string} id @param {State} state @returns {boolean} whether it is kept */
    put(id, state) {
      store.put(prefix + id, writeSheet(state));
      return store.isKeptAs(prefix + id);
    },

    /** @param {string} id */
    remove: (id) => store.remove(prefix + id),

    /** Only as this tab knows it. @param {string} id */
    removeKnown: (id) => store.removeKnown(prefix + id),

    /** @param {string} id @param {string} name of what was changed in another tab */
    isOf: (id, name) => name === prefix + id,
  };
}
