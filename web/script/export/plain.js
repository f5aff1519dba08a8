// What a view makes, as plain text of so many columns: its nodes are made as values and written one below the other.
// Nothing of the page is needed for it, and no sentence is written twice.

/** @typedef {import('../view/dom.js').Make} Make */
/** @typedef {{ name: string, kind: string, children: Part[] }} Plain a node: `kind` is its class */
/** @typedef {Plain | string} Part */

// Mails are read in windows as narrow as that.
const columns = 72;

/** Makes nodes that are values. @type {Make} */
export const plainly = (name, { class: kind = '' } = {}, ...children) =>
  /** @type {any} */ ({ name, kind, children: children.flat().filter(Boolean) });

// What is a mark beside a figure, or a line of its own on the page, and what is of use there alone.
/** @type {Record<string, (text: string) => string>} */
const byKind = {
  guess: (text) => `(${text})`,
  line: (text) => ` ${text}`,
  'mark-of': (text) => ` ${text}`,
  more: (text) => `, ${text}`,
  take: (text) => `, ${text}`,
  'print-it': () => '',
  'aside form-only': () => '',
};

/** @param {Part} part @returns {string} */
function say(part) {
  if (typeof part === 'string') return part;
  const text = part.children.map(say).join('');
  return byKind[part.kind]?.(text) ?? text;
}

/** Words that belong together stay so: only then is their space one like others. @param {string} text */
const loosen = (text) => text.replace(/[\u00a0\u202f]/g, ' ');

/** @param {string} text @param {string} [lead] before it; the lines that follow stand as far in */
function wrap(text, lead = '') {
  const lines = [''];
  for (const word of text.split(/[ \n]+/).filter(Boolean)) {
    const last = lines[lines.length - 1];
    const longer = last === '' ? word : `${last} ${word}`;
    if (last !== '' && lead.length + longer.length > columns) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return loosen(lines.join(`\n${' '.repeat(lead.length)}`).replace(/^/, lead)).trimEnd();
}

/** Every node of a name, however deep. @param {Plain} node @param {string} name @returns {Plain[]} */
const all = (node, name) =>
  node.children.flatMap((child) =>
    typeof child === 'string' ? [] : child.name === name ? [child] : all(child, name),
  );

/** In columns where there is room, else each row as a line with its heads. @param {Plain} node */
function writeTable(node) {
  const rows = all(node, 'tr').map((row) => row.children.map((cell) => loosen(say(cell)).trim()));
  const widths = rows[0].map((_, i) => Math.max(...rows.map((row) => row[i].length)));
  const used = widths.flatMap((width, i) => (width > 0 ? [i] : []));
  const across = used.reduce((sum, i) => sum + widths[i] + 2, -2);
  const [heads, ...body] = rows;
  const lines =
    across <= columns
      ? rows.map((row) =>
          used
            .map((i) => row[i].padEnd(widths[i]))
            .join('  ')
            .trimEnd(),
        )
      : body.map((row) => wrap(used.map((i) => `${heads[i]} ${row[i]}`).join('; '), '- '));
  return [...all(node, 'caption').map((caption) => wrap(say(caption))), ...lines]
    .filter(Boolean)
    .join('\n');
}

/** @type {Record<string, (node: Plain) => string>} */
const byName = {
  h1: (node) => underline(node, '='),
  h2: (node) => underline(node, '='),
  h3: (node) => underline(node, '-'),
  ol: ({ children }) => children.map((item, i) => wrap(say(item), `${i + 1}. `)).join('\n'),
  ul: ({ children }) => children.map((item) => wrap(say(item), '- ')).join('\n'),
  // The figure before what it counts.
  dl: (node) =>
    all(node, 'div')
      .map(({ children: [term, figure, ...more] }) =>
        wrap(`${say(figure)} ${say(term)}${more.map(say).join('')}`),
      )
      .join('\n'),
  table: writeTable,
};

/** @param {Plain} node @param {string} stroke */
function underline(node, stroke) {
  const text = wrap(say(node));
  return `${text}\n${stroke.repeat(Math.max(...text.split('\n').map(({ length }) => length)))}`;
}

/** @param {Part} part @returns {string[]} one text a block */
function blocksOf(part) {
  if (typeof part !== 'string' && part.name === 'div') return part.children.flatMap(blocksOf);
  const write = typeof part === 'string' ? undefined : byName[part.name];
  return [write ? write(/** @type {Plain} */ (part)) : wrap(say(part))];
}

/** @param {unknown[]} children what a view has made */
export const writePlainly = (children) =>
  `${children
    .filter(Boolean)
    .flatMap((child) => blocksOf(/** @type {Part} */ (child)))
    .filter(Boolean)
    .join('\n\n')}\n`;
