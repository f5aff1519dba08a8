// Socks in a file of the reader's own: the lasting copy. What she typed is in it, and the request that it makes, which
// any program that asks the core can use.
import { fromSheet, isRecord, toSheet } from '../state.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {ReturnType<typeof fromSheet>} Sheet */

// More than a browser keeps; what is larger is not read.
const mostBytes = 3e7;
const manyVersion = 1;

/** @param {string} name */
const asFileName = (name) => name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'sock';

/** @param {State[]} states @param {(state: State) => unknown} requestOf */
export function fileOf(states, requestOf) {
  const sheets = states.map((state) => ({ ...toSheet(state), request: requestOf(state) }));
  const isOne = sheets.length === 1;
  const whole = isOne ? sheets[0] : { kind: 'socks', version: manyVersion, socks: sheets };
  const name = isOne ? asFileName(sheets[0].name) : 'all-socks';
  return { text: `${JSON.stringify(whole, null, 1)}\n`, name: `twinround-${name}.json` };
}

/** @param {unknown} value @param {(request: unknown) => Sheet} sheetOf @returns {Sheet} */
function sheetFrom(value, sheetOf) {
  if (!isRecord(value)) return undefined;
  // A request by itself, written by hand or by another program, or with the reply it got.
  if (value.kind === undefined) return sheetOf(isRecord(value.request) ? value.request : value);
  return fromSheet(value) ?? (isRecord(value.draft) ? undefined : sheetOf(value.request));
}

/**
 * @param {File} file @param {(request: unknown) => Sheet} sheetOf
 * @returns {Promise<{ sheets: NonNullable<Sheet>[], problem: string }>} `problem`: a code, or '' if all is read
 */
export async function socksIn(file, sheetOf) {
  if (file.size > mostBytes) return { sheets: [], problem: 'too_large' };
  /** @type {any} */
  let whole;
  try {
    whole = JSON.parse(await file.text());
  } catch {
    return { sheets: [], problem: 'no_json' };
  }
  const isMany = isRecord(whole) && whole.kind === 'socks';
  const all = isMany && Array.isArray(whole.socks) ? whole.socks : [whole];
  const read = all.map((/** @type {unknown} */ one) => sheetFrom(one, sheetOf));
  const sheets = read.filter((/** @type {Sheet} */ sheet) => sheet !== undefined);
  const isWhole = sheets.length === all.length && sheets.length > 0;
  return { sheets, problem: isWhole ? '' : sheets.length > 0 ? 'some_unread' : 'not_ours' };
}
