// A button that the keeper answers: what it does, and to which sock.

/** @typedef {import('../dom.js').Make} Make */

/**
 * @param {Make} h @param {string} does @param {string} label
 * @param {{ id?: string, isOn?: boolean, name?: string }} [more] `name`: what it is called where its label is not enough
 */
export const keptButton = (h, does, label, { id = '', isOn = true, name = '' } = {}) =>
  h(
    'button',
    {
      type: 'button',
      class: 'quiet',
      'data-kept': does,
      'data-key': does + id,
      ...(id ? { 'data-id': id } : {}),
      ...(name ? { 'aria-label': name } : {}),
      ...(isOn ? {} : { 'aria-disabled': 'true' }),
    },
    label,
  );
