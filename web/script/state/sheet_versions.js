// Sheets as earlier pages kept them, brought to today's form step by step. A step is never changed once a page has
// kept sheets of its version.

/** @typedef {Record<string, any>} Sheet */

export const sheetVersion = 4;

/** From a version to the next. @type {Record<number, (sheet: Sheet) => Sheet>} */
const steps = {
  // There was one sock, without a name, and no class.
  1: (sheet) => ({
    ...sheet,
    version: 2,
    name: '',
    note: '',
    locks: [],
    course: { title: '', note: '' },
  }),
  // A begun sock stood at its beginning: nothing moved it yet.
  2: ({ started, ...sheet }) => ({
    ...sheet,
    version: 3,
    ...(started ? { started: { ...started, since: '', taps: 0, trail: [], laps: [] } } : {}),
  }),
  // A class had any yarn.
  3: (sheet) => ({ ...sheet, version: 4, course: { ...sheet.course, yarns: [] } }),
};

/** Its version is today's, or one that is not known here. @param {Sheet} sheet @returns {Sheet} */
export function upgrade(sheet) {
  const step = steps[sheet.version];
  return step ? upgrade(step(sheet)) : sheet;
}
