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
 * @param {{ caption: string, heads: string[], rows: Array<{ name: string, cells: Child[], mark?: string }>, className?: string }} table
 */
export function table(h, { caption, heads, rows, className = '' }) {
  return h(
    'table',
    { class: className },
    h('caption', {}, caption),
    h(
      'thead',
      {},
      h(
        'tr',
        {},
        heads.map((head) => h('th', { scope: 'col' }, head)),
      ),
    ),
    h(
      'tbody',
      {},
      rows.map(({ name, cells, mark = '' }) =>
        h(
          'tr',
          { class: mark },
          h('th', { scope: 'row' }, name),
          cells.map((cell) => h('td', {}, cell)),
        ),
      ),
    ),
  );
}
