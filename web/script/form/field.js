// What a field of the form is, and how one is made.

/** @typedef {import('../units.js').Kind} Kind */

/**
 * @typedef {object} Field
 * @property {string} pointer in the request; a mode's pointer names the part it opens
 * @property {'quantity' | 'choice' | 'mode' | 'list' | 'many' | 'day' | 'time' | 'text'} as typed, chosen from a list, or chosen between two ways; a list of
 *   quantities in one text; any number of options; a day or a time of day; words
 * @property {Kind} kind
 * @property {string} group
 * @property {readonly string[]} [options] the first one stands where nothing was chosen
 * @property {boolean} [whole] options are numbers
 * @property {boolean} [isRadios] all options in sight, for two or three that are to be weighed
 * @property {'swatch' | 'label' | 'tape' | 'shoe'} [way] only asked in this way
 * @property {'adjust' | 'found' | 'stripes' | 'supply' | 'weeks' | 'roster' | 'drive' | 'odd' | 'tags'} [asks] the question it is part of, where that is not the plan
 * @property {readonly [number, number]} [limits] whole, from and to: of a number that is asked of nobody but the page
 * @property {'tape'} [asideIn] in this way it only says what else to ask, and is no part of the request
 */

/** @param {string} group @param {string} pointer @param {Kind} kind @param {Partial<Field>} [more] @returns {Field} */
export const quantity = (group, pointer, kind, more) => ({
  pointer,
  as: 'quantity',
  kind,
  group,
  ...more,
});

/** @param {string} group @param {string} pointer @param {readonly string[]} options @param {Partial<Field>} [more] @returns {Field} */
export const choice = (group, pointer, options, more) => ({
  pointer,
  as: 'choice',
  kind: 'number',
  group,
  options,
  ...more,
});

/** @param {string} group @param {string} pointer @param {Kind} kind @param {Partial<Field>} [more] @returns {Field} */
export const list = (group, pointer, kind, more) => ({ pointer, as: 'list', kind, group, ...more });
