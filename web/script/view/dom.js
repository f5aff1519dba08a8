// Nodes for the views: data in, nodes out, text only ever as text.

/** @typedef {Node | string | null | undefined | false} Child */
/** @typedef {(name: string, attributes?: Record<string, string>, ...children: Array<Child | Child[]>) => HTMLElement} Make */

/** @param {Document} document @returns {Make} */
export const maker =
  (document) =>
  (name, attributes = {}, ...children) => {
    const element = document.createElement(name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    for (const child of children.flat()) if (child) element.append(child);
    return element;
  };

/**
 * A table with a caption, a row of heads, and rows whose first cell names them.
 * @param {Make} h
 * @param {{ caption: Child | Child[], heads: string[], rows: Array<{ name: Child | Child[], cells: Child[], mark?: string }>, className?: string, region?: string }} table `region` names one that may be wider than a screen, and
 *   holds nothing else that keys reach: they move it then
 */
export function table(h, { caption, heads, rows, className = '', region }) {
  const cell = (/** @type {Child} */ child) => h('td', {}, child);
  const row = (/** @type {(typeof rows)[number]} */ { name, cells, mark = '' }) =>
    h('tr', { class: mark }, h('th', { scope: 'row' }, name), cells.map(cell));
  const head = h(
    'tr',
    {},
    heads.map((text) => h('th', { scope: 'col' }, text)),
  );
  return h(
    'div',
    // Very large letters on a very small screen: the table moves, not the page.
    region
      ? { class: 'table', role: 'region', tabindex: '0', 'aria-label': region }
      : { class: 'table' },
    h(
      'table',
      { class: className },
      h('caption', {}, caption),
      h('thead', {}, head),
      h('tbody', {}, rows.map(row)),
    ),
  );
}
