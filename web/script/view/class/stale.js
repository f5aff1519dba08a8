// Answers of the desk that are not to what stands in its fields now: shown, said to be, and not handed out.
import { takeWords as words } from '../../../words/en.js';

/** @typedef {import('../showing.js').Showing} Showing */

/** The question behind what is printed or taken along, where that has another name. @type {Record<string, string>} */
const questions = { sheets: 'roster', bands: 'drive', helping: 'odd' };

/** @param {Showing} showing @param {string} part */
export function isStale({ beside }, part) {
  const { isLate, isOld } = beside?.[questions[part] ?? part] ?? {};
  return Boolean(isLate || isOld);
}

/** @param {import('../dom.js').Make} h @param {Showing} showing @param {string} part */
export const markOld = (h, { beside }, part) =>
  beside?.[questions[part] ?? part]?.isOld && h('p', { class: 'yarn-caution' }, words.old);
