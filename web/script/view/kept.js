// Under the sentence: a step back or forth, and whatever is to be said about what is kept.
import { keptWords as words } from '../../words/en.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */

/**
 * @typedef {object} Kept
 * @property {boolean} canUndo
 * @property {boolean} canRedo
 * @property {boolean} isKept whether the browser keeps anything for the page
 * @property {boolean} isElsewhere whether another tab has kept another sheet
 * @property {string} aside a text that could not be read
 */

/** @param {Make} h @param {Kept} kept */
export function viewKept(h, { canUndo, canRedo, isKept, isElsewhere, aside }) {
  const button = (/** @type {string} */ does, /** @type {string} */ label, isOn = true) =>
    h(
      'button',
      {
        type: 'button',
        class: 'quiet',
        'data-kept': does,
        'data-key': does,
        ...(isOn ? {} : { 'aria-disabled': 'true' }),
      },
      label,
    );
  return [
    (canUndo || canRedo) &&
      h(
        'p',
        { class: 'steps-back', 'data-key': 'steps' },
        button('undo', words.undo, canUndo),
        button('redo', words.redo, canRedo),
        button('anew', words.anew),
      ),
    isElsewhere &&
      h(
        'p',
        { class: 'asked', role: 'alert', 'data-key': 'elsewhere' },
        h('strong', {}, words.elsewhere),
        button('theirs', words.theirs),
        button('mine', words.mine),
      ),
    aside !== '' &&
      h(
        'p',
        { class: 'asked', 'data-key': 'aside' },
        words.aside,
        ' ',
        button('aside', words.download),
      ),
    !isKept && h('p', { class: 'not-kept', 'data-key': 'not-kept' }, words.notKept),
  ];
}
