// Between the form's draft and a link: a field's number in the unit it was typed in, or its choice. What is still the
// example's is left out, and stands as the example's again where the link is opened.
import { startState } from '../state.js';
import { parseQuantity, unitsOfKind } from '../units.js';
import { fieldsOf } from './fields.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {{ field: string, typed?: string, value?: number, unit?: string }} Said */

/** @param {State} state @returns {Said[]} */
export function saidOf({ draft, example }) {
  return fieldsOf(draft)
    .filter(({ pointer }) => pointer in draft && !example[pointer])
    .map(({ pointer, as, kind, whole }) => {
      const { typed, unit } = draft[pointer];
      if (as !== 'quantity' && !whole) return { field: pointer, typed };
      const parsed = parseQuantity(typed, unitsOfKind[kind]);
      // Left empty, or no number yet: the link says so, and the unit it would have had.
      if (!parsed.ok) return { field: pointer, unit };
      const written = parsed.unit === 'st' ? '' : parsed.unit || unit;
      return { field: pointer, value: parsed.value, unit: written };
    });
}

/**
 * The sheet that a link opens to.
 * @param {{ fields: Array<{ field: string, typed: string, unit: string }>, view?: string, system?: string }} link
 * @returns {Pick<State, 'draft' | 'example' | 'shown' | 'system' | 'moment'>}
 */
export function sheetOfLink({ fields, view, system }) {
  const start = startState();
  const said = new Set(fields.map(({ field }) => field));
  return {
    draft: {
      ...start.draft,
      ...Object.fromEntries(fields.map(({ field, typed, unit }) => [field, { typed, unit }])),
    },
    example: Object.fromEntries(
      Object.entries(start.example).filter(([pointer]) => !said.has(pointer)),
    ),
    shown: {},
    system: system === 'inch' ? 'inch' : 'metric',
    moment: /** @type {State['moment']} */ (view ?? 'count'),
  };
}
