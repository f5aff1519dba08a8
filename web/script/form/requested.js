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

const isWhole = (/** @type {number} */ value) => Number.isInteger(Number(value.toPrecision(9)));

/**
 * The unit that a measure was told in, as far as it can be seen: a link has half millimetres, or eightieths of an inch.
 * @param {import('./fields.js').Field['kind']} kind @param {unknown} value
 */
const unitFor = (kind, value) =>
  kind === 'length' &&
  typeof value === 'number' &&
  !isWhole(value * 2) &&
  isWhole(fromBase(value, 'in') * 80)
    ? 'in'
    : (unitsOfKind[kind][0] ?? '');

/**
 * The sheet of a request, or nothing where the form could not have made it.
 * @param {any} request @param {Record<string, unknown>} [change] values it has besides, or in place of its own, by pointer
 * @returns {ReturnType<typeof startState> | undefined}
 */
export function sheetOfRequest(request, change = {}) {
  const whole = new Map([...leaves(request), ...Object.entries(change)]);
  const said = [...whole].filter(([pointer]) => pointer !== '/version');
  const mode = (/** @type {string} */ typed) => ({ typed, unit: '' });
  /** @type {Draft} */
  const draft = {
    ...Object.fromEntries(said.map(([pointer]) => [pointer, mode('')])),
    '/swatch': mode(whole.has('/swatch/readings/0/stitches') ? 'swatch' : 'label'),
    '/foot': mode(whole.has('/foot/shoe/scale') ? 'shoe' : 'tape'),
  };
  const fields = new Map(fieldsOf(draft).map((field) => [field.pointer, field]));
  for (const [pointer, value] of said) {
    const field = fields.get(pointer);
    if (!field || typeof value === 'object') return undefined;
    const unit = field.as === 'quantity' ? unitFor(field.kind, value) : '';
    const isMeasure = typeof value === 'number' && unit !== '' && unit !== 'st' && unit !== 'r';
    const shown = isMeasure ? Number(fromBase(value, unit).toPrecision(12)) : value;
    draft[pointer] = { typed: String(shown), unit: isMeasure ? unit : '' };
  }
  // What the form would not ask for as it was written is none of its requests.
  const isSame = leaves(readDraft(draft).request).length === said.length + 1;
  return isSame && request.version === 1 ? { ...startState(), draft, example: {} } : undefined;
}
