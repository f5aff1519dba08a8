// Rows as CSV: RFC 4180, and read as UTF-8 by spreadsheets, which take it for something older without the mark ahead.

/** @typedef {string | number} Cell */

const mark = '\ufeff';

// A spreadsheet reckons out what begins like this, also where it is written full width. An apostrophe ahead makes it a text.
const reckoned = /^[=+\-@\t\r\n＝＋－＠]/;

/** @param {Cell} cell @param {string} separator */
function writeCell(cell, separator) {
  const text = typeof cell === 'string' ? cell.replace(reckoned, "'$&") : String(cell);
  const isPlain = [separator, '"', '\r', '\n'].every((sign) => !text.includes(sign));
  return isPlain ? text : `"${text.replaceAll('"', '""')}"`;
}

/** @param {Cell[][]} rows @param {string} separator a comma or a semicolon */
export const writeCsv = (rows, separator) =>
  mark +
  rows
    .map((row) => `${row.map((cell) => writeCell(cell, separator)).join(separator)}\r\n`)
    .join('');
