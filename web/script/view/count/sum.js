// A big figure of the shopping page, what it is, and where it leads.

import { workingWords } from '../../../words/en.js';

/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../dom.js').Child} Child */

const sayOpening = workingWords.opens;

/** A link to a field. @param {Make} h @param {string} pointer @param {string} text @param {string} [className] */
export const jumpTo = (h, pointer, text, className = 'jump') =>
  h(
    'a',
    { class: className, href: `#f${pointer.replaceAll('/', '-')}`, 'data-goto': pointer },
    text,
  );

/**
 * A figure that opens to its working.
 * @param {Make} h @param {string} figure as told @param {string} working its name there
 */
export const opening = (h, figure, working) =>
  h('a', { class: 'opens', href: `#working-${working}`, 'aria-label': sayOpening(figure) }, figure);

/**
 * @param {Make} h
 * @param {{ figure: string, working: string, also: Child, mark: Child, what: string, jump?: { to: string, text: string } }} parts
 */
export const sum = (h, { figure, working, also, mark, what, jump }) =>
  h(
    'div',
    { class: 'sum' },
    h(
      'p',
      { class: 'sum-figure' },
      h('strong', {}, opening(h, figure, working)),
      also ? ' ' : null,
      also ? h('span', { class: 'sum-also' }, also) : null,
      mark ? ' ' : null,
      mark,
    ),
    what === '' ? null : h('p', { class: 'sum-what' }, what),
    jump ? h('p', {}, jumpTo(h, jump.to, jump.text)) : null,
  );
