// Lists typed into one field, as the core is asked about them.
import { coloursOf, parseList, toBase, unitsOfKind } from '../units.js';

/** @typedef {import('./fields.js').Field} Field */
/** @typedef {import('../state.js').Entry} Entry */
/** @typedef {import('../units.js').Item} Item */
/** @typedef {Item['amounts'][number]} Amount */

// Wool for many may weigh more than any ball.
const massUnits = [...unitsOfKind.mass, 'kg', 'lb'];

/** The units that may stand in a list. @param {Field['kind']} kind */
export const unitsInList = (kind) =>
  kind === 'mass' ? [...massUnits, ...unitsOfKind.yarn] : unitsOfKind[kind];

// Numbers of one row belong together by a sign between them; without it a comma has been left out.
const isTied = (/** @type {Item} */ { amounts, text }) =>
  amounts.length === 1 || (amounts.length === 2 && /[x×:=(]/i.test(text));

/** @param {Amount} amount @param {string} unit of one without */
const baseOf = (amount, unit) => toBase(amount.value, amount.unit || unit);

/** A lot by its weight or its length, and with its label by both. @param {Item} item @param {string} unit */
function lotOf({ amounts, per }, unit) {
  const isMass = (/** @type {Amount} */ amount) => massUnits.includes(amount.unit || unit);
  const [first, second] = amounts;
  if (amounts.length > 2 || (second && isMass(second)) || (per && !(second && isMass(per))))
    return undefined;
  const [base, m] = [baseOf(first, unit), second && baseOf(second, unit)];
  if (m === undefined) return isMass(first) ? { g: base } : { m: base };
  const gPerM = per ? baseOf(per, unit) / m : undefined;
  if (!isMass(first)) return gPerM && { m: base, g: base * gPerM };
  return gPerM ? { g: base, mPer100G: 100 / gPerM } : { g: base, m };
}

/**
 * @param {Field} field @param {Entry} entry
 * @returns {{ ok: true, value: object[] } | { ok: false, code: string, item: string }}
 */
export function readList({ kind }, { typed, unit }) {
  const list = parseList(typed, unitsInList(kind));
  if (!list.ok) return list;
  // Nobody writes the unit behind every number of a row.
  const written = list.items.flatMap(({ amounts }) => amounts).find((amount) => amount.unit !== '');
  const { numbers } = coloursOf(list.items);
  /** @type {object[]} */
  const value = [];
  for (const [i, item] of list.items.entries()) {
    const colour = numbers[i];
    const [first] = item.amounts;
    const isOne = item.amounts.length === 1 && !item.per;
    const isRow = kind === 'number' || kind === 'length';
    // Of a foot's length and girth one unit is enough, behind the last.
    const own = item.amounts.find((amount) => amount.unit !== '') ?? written;
    const amounts = item.amounts.map((amount) => baseOf(amount, own?.unit || unit));
    const one = isRow
      ? item.name === '' && !item.per && isTied(item) && amounts
      : kind === 'mass'
        ? lotOf(item, unit)
        : !isOne
          ? undefined
          : kind === 'rounds'
            ? { colour, rounds: first.value }
            : { colour, m: baseOf(first, written?.unit || unit) };
    if (!one) return { ok: false, code: 'not_in_list', item: item.text };
    value.push(one);
  }
  return { ok: true, value };
}
