// A request that somebody else has written, as if it had been typed in.
import { startState } from '../state.js';
import { fromBase, unitsOfKind } from '../units.js';
import { fieldsOf } from './fields.js';
import { readDraft } from './request.js';

/** @typedef {import('../state.js').Draft} Draft */

/** Every value in it by its JSON pointer. @param {unknown} value @param {string} at @returns {Array<[string, unknown]>} */
const leaves = (value, at = '') =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([name, one]) => leaves(one, `${at}/${name}`))
    : [[at, value]];

/**
 * The sheet of a request, or nothing where the form could not have made it.
 * @param {any} request @returns {ReturnType<typeof startState> | undefined}
 */
export function sheetOfRequest(request) {
  const said = leaves(request).filter(([pointer]) => pointer !== '/version');
  const mode = (/** @type {string} */ typed) => ({ typed, unit: '' });
  /** @type {Draft} */
  const draft = {
    ...Object.fromEntries(said.map(([pointer]) => [pointer, mode('')])),
    '/swatch': mode(request?.swatch?.readings ? 'swatch' : 'label'),
    '/foot': mode(request?.foot?.shoe ? 'shoe' : 'tape'),
  };
  const fields = new Map(fieldsOf(draft).map((field) => [field.pointer, field]));
  for (const [pointer, value] of said) {
    const field = fields.get(pointer);
    if (!field || typeof value === 'object') return undefined;
    const unit = field.as === 'quantity' ? (unitsOfKind[field.kind][0] ?? '') : '';
    const isMeasure = typeof value === 'number' && unit !== '' && unit !== 'st' && unit !== 'r';
    const shown = isMeasure ? Number(fromBase(value, unit).toPrecision(12)) : value;
    draft[pointer] = { typed: String(shown), unit: isMeasure ? unit : '' };
  }
  // What the form would not ask for as it was written is none of its requests.
  const isSame = leaves(readDraft(draft).request).length === said.length + 1;
  return isSame && request.version === 1 ? { ...startState(), draft, example: {} } : undefined;
}
