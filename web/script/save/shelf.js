// All socks that are kept, each under an id of its own.
import { fromSheet, toSheet } from '../state.js';

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
  return {
    ids,
    newId,

    /** The sock that was looked at last, if it is there. @returns {string | undefined} */
    last() {
      const all = ids();
      return all.find((id) => id === store.read(lastName)) ?? all[all.length - 1];
    },

    /** @param {string} id @returns {string | null} */
    textOf: (id) => store.read(prefix + id),

    /** The one that is changed here from now on. @param {string} id @returns {Sheet} */
    open(id) {
      store.put(lastName, id);
      return sheetIn(store.open(prefix + id));
    },

    /** @param {string} id @param {State} state @returns {Sheet} what another tab has made of it meanwhile */
    keep(id, state) {
      const text = JSON.stringify(toSheet(state));
      const theirs = store.write(prefix + id, text);
      if (theirs === undefined) return undefined;
      const sheet = sheetIn(theirs);
      if (sheet) return sheet;
      // Of a page that knows more than this one: neither is lost.
      store.setAside(prefix + id);
      store.put(prefix + id, text);
      return undefined;
    },

    /** @param {string} id @param {string} text */
    put: (id, text) => store.put(prefix + id, text),

    /** @param {string} id */
    remove: (id) => store.remove(prefix + id),

    /** @param {string} id @param {string} name of what was changed in another tab */
    isOf: (id, name) => name === prefix + id,
  };
}
