// A seat's own printed sheet: her sock as if she had it on a page of her own.
import { readDraft, valuesOf } from '../form.js';
import { linkOf, sheetOfPart } from '../link.js';
import { addressOf } from '../share.js';

/** @typedef {import('../view/showing.js').Showing} Showing */

/**
 * @param {Document} document @param {ReturnType<typeof import('../ask.js').openAsking>} asking
 * @param {Pick<Showing, 'system' | 'trouble'>} page
 * @param {Record<string, any>} request the class's @param {import('../contract.js').SeatPart} part @param {string} name of the seat
 * @returns {{ showing: Showing, url: string } | undefined} nothing where the form could not have asked for it
 */
export function seatSheet(document, asking, { system, trouble }, request, part, name) {
  const sheet = sheetOfPart(asking.answer(), request, part);
  const plan = sheet && asking.planOf(sheet);
  if (!plan) return undefined;
  const state = { ...sheet, system };
  return {
    showing: {
      plan,
      request: readDraft(state.draft).request,
      values: valuesOf(state),
      system,
      problems: [],
      lastGood: '',
      examples: [],
      name,
      trouble,
    },
    url: addressOf(document, linkOf(asking.answer(), state, { plan })),
  };
}
