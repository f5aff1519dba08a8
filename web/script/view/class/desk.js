// The teacher's desk, put together: by place on the page, and by page for paper.
import { viewHelping } from './helping.js';
import { viewDrive } from './drive.js';
import { printBands } from './drive_bands.js';
import { viewRoster } from './roster.js';
import { viewSeats } from './roster_seats.js';
import { printSheets } from './sheets.js';
import { printSupply, viewSupply } from './supply.js';
import { printWeeks, viewWeeks } from './weeks.js';
import { printTags } from './tags.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../dom.js').Child} Child */

/** @param {Make} h @param {Document} document @param {Showing} showing @returns {Record<string, () => Child[]>} */
export const deskViews = (h, document, showing) => ({
  supply: () => viewSupply(h, showing),
  helping: () => viewHelping(h, showing),
  drive: () => viewDrive(h, document, showing),
  roster: () => viewRoster(h, showing),
  'roster-seats': () => viewSeats(h, showing),
  weeks: () => viewWeeks(h, showing),
});

/** @param {Make} h @param {Document} document */
export const deskPages = (h, document) => ({
  sheets: (/** @type {Showing} */ showing) => printSheets(h, document, showing),
  supply: (/** @type {Showing} */ showing) => printSupply(h, showing),
  bands: (/** @type {Showing} */ showing) => printBands(h, showing),
  weeks: (/** @type {Showing} */ showing) => printWeeks(h, showing),
  tags: (/** @type {Showing} */ showing) => printTags(h, showing),
});
