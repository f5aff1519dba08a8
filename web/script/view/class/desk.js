// The teacher's desk, put together: by place on the page, and by page for paper.
import { printSupply, viewSupply } from './supply.js';
import { printTags } from './tags.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../dom.js').Child} Child */

/** @param {Make} h @param {Showing} showing @returns {Record<string, () => Child[]>} */
export const deskViews = (h, showing) => ({
  supply: () => viewSupply(h, showing),
});

/** @param {Make} h */
export const deskPages = (h) => ({
  supply: (/** @type {Showing} */ showing) => printSupply(h, showing),
  tags: (/** @type {Showing} */ showing) => printTags(h, showing),
});
