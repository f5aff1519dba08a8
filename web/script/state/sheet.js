// A sheet: what is kept of a sock, so that the page can be left half-filled and come back to as it was.

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Draft} Draft */

const version = 1;

// More than any sheet of ours; what is longer is not one.
const most = { entries: 120, pointer: 64, typed: 200, unit: 8 };

const moments = ['buy', 'count', 'knit', 'class'];

/** @param {State} state */
export const toSheet = ({ draft, example, shown, system, moment }) => ({
  kind: 'sheet',
  version,
  view: moment,
  system,
  draft,
  example: Object.keys(example),
  shown,
});

/** @param {unknown} value @param {number} long */
const isText = (value, long) => typeof value === 'string' && value.length <= long;

/** @param {unknown} value @returns {value is Record<string, unknown>} */
const isRecord = (value) => typeof value === 'object' && value !== null && !Array.isArray(value);

/** @param {unknown} value @param {(one: unknown) => boolean} isOne */
const isTable = (value, isOne) =>
  isRecord(value) &&
  Object.keys(value).length <= most.entries &&
  Object.entries(value).every(
    ([pointer, one]) => pointer.startsWith('/') && pointer.length <= most.pointer && isOne(one),
  );

/** @param {unknown} entry */
const isEntry = (entry) =>
  isRecord(entry) && isText(entry.typed, most.typed) && isText(entry.unit, most.unit);

/**
 * What a sheet says about a state, or nothing if it is none that this page can read.
 * @param {unknown} sheet
 * @returns {Pick<State, 'draft' | 'example' | 'shown' | 'system' | 'moment'> | undefined}
 */
export function fromSheet(sheet) {
  if (!isRecord(sheet) || sheet.kind !== 'sheet' || sheet.version !== version) return undefined;
  const { draft, example, shown, system, view } = sheet;
  if (!isTable(draft, isEntry) || !isTable(shown, (unit) => isText(unit, most.unit)))
    return undefined;
  if (!Array.isArray(example) || !example.every((one) => isText(one, most.pointer)))
    return undefined;
  return {
    draft: /** @type {Draft} */ (draft),
    shown: /** @type {Record<string, string>} */ (shown),
    example: Object.fromEntries(example.map((pointer) => [pointer, true])),
    system: system === 'inch' ? 'inch' : 'metric',
    moment: /** @type {State['moment']} */ (moments.includes(String(view)) ? view : 'count'),
  };
}
