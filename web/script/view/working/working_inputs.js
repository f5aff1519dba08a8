// What a sheet of workings came from: everything asked for, as it was told.
import { fieldWords, workingWords as words } from '../../../words/en.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

const rowPattern = /^\/swatch\/readings\/(\d+)\/(\w+)$/;

/** @param {string[][]} parts of one reading: what and its value */
function tellReading(parts) {
  const { stitches, widthMm, rounds, heightMm } = Object.fromEntries(parts);
  return [
    stitches && words.stitchesOver(stitches, widthMm),
    rounds && words.roundsOver(rounds, heightMm),
  ]
    .filter(Boolean)
    .join(', ');
}

/** Names and values, readings as one each. @param {Record<string, string>} values @returns {string[][]} */
function inputsOf(values) {
  /** @type {string[][][]} */
  const readings = [];
  /** @type {string[][]} */
  const others = [];
  for (const [pointer, value] of Object.entries(values)) {
    const [, row, part] = rowPattern.exec(pointer) ?? [];
    const { short, label } = fieldWords[pointer] ?? {};
    if (value === '') continue;
    if (row) (readings[Number(row)] ??= []).push([part, value]);
    else if (label) others.push([short ?? label, value]);
  }
  const rows = readings.map((parts, i) => [words.reading(i + 1), tellReading(parts)]);
  return [...rows.filter(Boolean), ...others];
}

/** @param {Make} h @param {Showing} showing */
export const viewInputs = (h, { values }) =>
  h(
    'div',
    { class: 'came-from' },
    h('h3', {}, words.from),
    h(
      'dl',
      {},
      inputsOf(values).map(([name, value]) =>
        h('div', {}, h('dt', {}, name), ' ', h('dd', {}, value)),
      ),
    ),
  );
