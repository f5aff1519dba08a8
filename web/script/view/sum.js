// A big figure of the shopping page, what it is, and where it leads.

/** @typedef {import('./dom.js').Make} Make */
/** @typedef {import('./dom.js').Child} Child */

/** A link to a field. @param {Make} h @param {string} pointer @param {string} text @param {string} [className] */
export const jumpTo = (h, pointer, text, className = 'jump') =>
  h(
    'a',
    { class: className, href: `#f${pointer.replaceAll('/', '-')}`, 'data-goto': pointer },
    text,
  );

/**
 * @param {Make} h
 * @param {{ figure: string, also: Child, mark: Child, what: string, jump?: { to: string, text: string } }} parts
 */
export const sum = (h, { figure, also, mark, what, jump }) =>
  h(
    'div',
    { class: 'sum' },
    h(
      'p',
      { class: 'sum-figure' },
      h('strong', {}, figure),
      also ? ' ' : null,
      also ? h('span', { class: 'sum-also' }, also) : null,
      mark ? ' ' : null,
      mark,
    ),
    what === '' ? null : h('p', { class: 'sum-what' }, what),
    jump ? h('p', {}, jumpTo(h, jump.to, jump.text)) : null,
  );
