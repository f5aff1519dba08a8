// The sock of a link, looked at beside one's own: kept by itself under that link, until it is said whose it is to be.
import { isSameSock, writeSheet } from '../state.js';
import { sheetIn } from './shelf.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {{ link: string, own: State, opened?: State, isEdited: boolean }} Visit */

const prefix = 'visit/';
// Links that were looked at and left open; of more the first ones are forgotten.
const most = 8;

/** @param {ReturnType<typeof import('./store.js').openStore>} store */
export function openVisits(store) {
  return {
    /** @param {string} link @param {State} own what stays as it is meanwhile @returns {{ visit: Visit, sheet: ReturnType<typeof sheetIn> }} `sheet`: what was made of it before */
    begin(link, own) {
      const sheet = sheetIn(store.read(prefix + link));
      return { visit: { link, own, isEdited: sheet !== undefined }, sheet };
    },

    /** @param {Visit} visit @param {State} state */
    keep(visit, state) {
      visit.opened ??= state;
      visit.isEdited ||= !isSameSock(visit.opened, state);
      if (!visit.isEdited) return;
      store.put(prefix + visit.link, writeSheet(state));
      const others = store.names(prefix).filter((name) => name !== prefix + visit.link);
      for (const name of others.slice(0, Math.max(0, others.length + 1 - most))) store.remove(name);
    },

    /** @param {Visit} visit */
    end: (visit) => store.remove(prefix + visit.link),
  };
}
