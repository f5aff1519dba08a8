// A table pasted from a spreadsheet, or out of a CSV file: rows of cells, whatever stands between them.

const separators = ['\t', ';', ','];

/**
 * Rows of cells. A quote that is never closed was none: it would swallow every row below it.
 * @param {string} text @param {string} separator @param {boolean} [hasQuotes] @returns {string[][]}
 */
function cellsOf(text, separator, hasQuotes = true) {
  /** @type {string[][]} */
  const rows = [[]];
  let cell = '';
  let isQuoted = false;
  const end = () => {
    rows[rows.length - 1].push(cell.trim());
    cell = '';
  };
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i];
    if (isQuoted) {
      // A quote within quotes is written twice (RFC 4180).
      if (sign !== '"') cell += sign;
      else if (text[i + 1] === '"') {
        cell += '"';
        i += 1;
      } else isQuoted = false;
    } else if (hasQuotes && sign === '"' && cell.trim() === '') {
      cell = '';
      isQuoted = true;
    } else if (sign === separator) end();
    else if (sign === '\n') {
      end();
      rows.push([]);
    } else cell += sign;
  }
  if (isQuoted) return cellsOf(text, separator, false);
  end();
  return rows;
}

/**
 * What stands between the cells: a tab if there is one (nobody types those), else a semicolon, for where that is used a
 * comma is the decimal one; else a comma.
 * @param {string} text
 */
export const separatorOf = (text) => separators.find((sign) => text.includes(sign)) ?? ',';

/**
 * @param {string} text
 * @returns {string[][]} each row with its cells, spaces around them taken off; rows with nothing in them are left out of
 *   the end alone, so that a row keeps its number
 */
export function readTable(text) {
  const plain = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const rows = cellsOf(plain, separatorOf(plain));
  while (rows.length > 0 && rows[rows.length - 1].every((cell) => cell === '')) rows.pop();
  return rows;
}
