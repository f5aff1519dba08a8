// The teacher's desk, put together: by place on the page, and by page for paper.
import { takeWords } from '../../../words/en.js';
import { viewHelping } from './helping.js';
import { viewDrive } from './drive.js';
import { printBands } from './drive_bands.js';
import { viewRoster } from './roster.js';
import { viewSeats } from './roster_seats.js';
import { isStale, markOld } from './stale.js';
import { printSheets } from './sheets.js';
import { printSupply, viewSupply } from './supply.js';
import { printWeeks, viewWeeks } from './weeks.js';
import { printTags } from './tags.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../dom.js').Child} Child */

/** @param {Make} h @param {Document} document @param {Showing} showing @returns {Record<string, () => Child[]>} */
export const deskViews = (h, document, showing) => ({
  supply: () => [markOld(h, showing, 'supply'), ...viewSupply(h, showing)],
  helping: () => [markOld(h, showing, 'helping'), ...viewHelping(h, showing)],
  drive: () => [markOld(h, showing, 'drive'), ...viewDrive(h, document, showing)],
  roster: () => viewRoster(h, showing),
  'roster-seats': () => viewSeats(h, showing),
  weeks: () => viewWeeks(h, showing),
});

/** @param {Make} h @param {Document} document @returns {Record<string, (showing: Showing) => Child[]>} */
export function deskPages(h, document) {
  /** @type {Record<string, (showing: Showing) => Child[]>} */
  const pages = {
    sheets: (showing) => printSheets(h, document, showing),
    supply: (showing) => printSupply(h, showing),
    bands: (showing) => printBands(h, showing),
    weeks: (showing) => printWeeks(h, showing),
    tags: (showing) => printTags(h, showing),
  };
  // What waits for an answer says so on paper too.
  /** @param {[string, (showing: Showing) => Child[]]} page @returns {[string, (showing: Showing) => Child[]]} */
  const orWaits = ([name, print]) => [
    name,
    (showing) => (isStale(showing, name) ? [h('p', {}, takeWords.waits)] : print(showing)),
  ];
  return Object.fromEntries(Object.entries(pages).map(orWaits));
}
