// Wool for the class, as a table for a spreadsheet and as text for a mail.
import { plainNumber, unitsIn } from './numbers.js';
import { sayCell, saySize, sayYarn } from '../view/class/supply.js';
import { supplyWords as words } from '../../words/en.js';

/** @typedef {import('../view/showing.js').Showing} Showing */
/** @typedef {import('../contract.js').Supply['cells'][number]} Cell */

/** Every pair there is, with its yarn and size in words. @param {Showing} showing */
function pairsOf({ beside, system }) {
  const { reply, request } = beside?.supply ?? {};
  /** @type {Cell[]} */
  const cells = reply?.cells ?? [];
  return cells.flatMap(({ row, column, line }) =>
    line
      ? [{ yarn: sayYarn(request.rows[row]), size: saySize(request.columns[column], system), line }]
      : [],
  );
}

/** Numbers in the reader's units, the unit in the head, so that a spreadsheet can reckon with them. @param {Showing} showing */
export function supplyTable(showing) {
  const [length, yarn, mass] = unitsIn(showing.system);
  const rows = pairsOf(showing).map(({ yarn: name, size, line }) => {
    const { stitchCount, mWithMargin, yarnError, ball, gPerSock, needle } = line;
    return [
      name,
      size,
      stitchCount,
      plainNumber(mWithMargin, yarn),
      plainNumber(mWithMargin * yarnError, yarn),
      ball?.count ?? '',
      plainNumber(ball?.g, mass),
      plainNumber(gPerSock, mass),
      needle.mm,
      plainNumber(needle.cableMm, length),
    ];
  });
  return [words.heads(length, yarn, mass), ...rows];
}

/** @param {Showing} showing */
export const supplyText = (showing) =>
  [
    words.title,
    ...pairsOf(showing).map(
      ({ yarn, size, line }) =>
        `${yarn}, ${size}: ${sayCell(line, showing.system).filter(Boolean).join('; ')}`,
    ),
  ].join('\n');
