// Between the form's draft and a link: a field's number in the unit it was typed in, or its choice. What is still the
// example's is left out, and stands as the example's again where the link is opened.
import { isOfOne, lockOf } from '../state.js';
import { parseQuantity, unitsOfKind } from '../units.js';
import { fieldsOf } from './fields.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Draft} Draft */
/** @typedef {{ field: string, typed?: string, value?: number, unit?: string }} Said */

/** @param {Draft} draft @param {(pointer: string) => boolean} isSaid @returns {Said[]} */
function say(draft, isSaid) {
  return fieldsOf(draft)
    .filter(({ pointer, asks }) => !asks && pointer in draft && isSaid(pointer))
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

/** @param {State} state */
export const saidOf = ({ draft, example }) => say(draft, (pointer) => !example[pointer]);

/** What a class has in common: of what is the teacher's own, or settled though it is the example's. @param {State} state */
export const settingsOf = ({ draft, example, lesson }) =>
  say(
    draft,
    (pointer) => !isOfOne(pointer) && (!example[pointer] || lockOf(lesson, pointer) !== undefined),
  );

/**
 * The sheet that a link opens to.
 * @param {{ fields: Array<{ field: string, typed: string, unit: string }>, view?: string, system?: string, locks: string[], yarns?: number[], title?: string, note?: string }} link
 * @param {State} base what stands where the link says nothing
 * @returns {Partial<State>}
 */
export function sheetOfLink(link, base) {
  const { fields, view, system, locks, title = '', note = '', yarns = [] } = link;
  const said = new Set(fields.map(({ field }) => field));
  return {
    // Those of the reader's own sock are not this one's.
    name: '',
    note: '',
    draft: {
      ...base.draft,
      ...Object.fromEntries(fields.map(({ field, typed, unit }) => [field, { typed, unit }])),
    },
    example: Object.fromEntries(
      Object.entries(base.example).filter(([pointer]) => !said.has(pointer)),
    ),
    shown: {},
    system: system === 'inch' ? 'inch' : 'metric',
    moment: /** @type {State['moment']} */ (view ?? 'count'),
    locks,
    course: { title, note, yarns },
    started: undefined,
  };
}
