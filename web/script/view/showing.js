// What the views are given: the plan and how to write it. Types only.

/** @typedef {import('../contract.js').Plan} Plan */

/**
 * @typedef {object} Showing
 * @property {Plan} plan the last good one
 * @property {Record<string, any>} request what it was made from
 * @property {Record<string, string>} values every asked field's value in words, by pointer
 * @property {import('../units.js').System} system
 * @property {Array<{ pointer: string, id: string, name: string, text: string }>} problems
 * @property {string} lastGood what the plan was made from, at the fields now wrong
 * @property {string[]} examples the parts of the sheet that are still the example's
 * @property {string} trouble what keeps the page from answering, in words, or ''
 */
export {};
