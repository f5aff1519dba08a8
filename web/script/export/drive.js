// Sizes for many feet, as a table for a spreadsheet and as text for a mail.
import { fromBase } from '../units.js';
import { plainNumber, unitsIn } from './numbers.js';
import {
  sayAnswer,
  sayCaption,
  sayCautions,
  sayLot,
  saySize,
  sayWool,
} from '../view/class/drive_says.js';
import { sayShoes } from '../view/paper/band.js';
import { driveWords as words } from '../../words/en.js';

/** @typedef {import('../view/showing.js').Showing} Showing */
/** @typedef {import('../contract.js').Drive} Drive */

/** Numbers in the reader's units, the unit in the head, so that a spreadsheet can reckon with them. @param {Showing} showing */
export function driveTable({ beside, system }) {
  const [length, yarn, mass] = unitsIn(system);
  /** @type {Drive['sizes']} */
  const sizes = beside?.drive?.reply?.sizes ?? [];
  const rows = sizes.map((size, i) => {
    const { band } = size;
    const lengths = (/** @type {number[]} */ ...all) => all.map((mm) => plainNumber(mm, length));
    return [
      i + 1,
      size.pairs,
      size.stitchCount,
      size.totalRounds,
      ...lengths(size.lengthMm, size.legHeightMm, size.finishedGirthMm),
      ...lengths(band.footFromMm, band.footToMm, band.fitsFromMm, band.fitsToMm),
      ...lengths(band.ballFromMm, band.ballToMm),
      sayShoes(band.shoes).join('; '),
      plainNumber(size.share, '%'),
      plainNumber(size.mPerPair, yarn),
      plainNumber(size.m, yarn),
      plainNumber(size.g, mass),
      Number(fromBase(size.minutes / 60, '').toFixed(1)),
    ];
  });
  return [words.heads(length, yarn, mass), ...rows];
}

/** @param {Showing} showing */
export function driveText(showing) {
  const { reply, request } = showing.beside?.drive ?? {};
  if (!reply) return '';
  const { system } = showing;
  /** @type {Drive} */
  const { sizes, atHand } = reply;
  const nameOf = (/** @type {number} */ at) => words.size(String(at + 1));
  const each = sizes.map((size, i) => {
    const { pairs, sock, feet, serves, yarn } = saySize(size, system);
    const [count, time] = pairs;
    const told = [words.pairs(count), time, ...sock, ...feet, ...serves, ...yarn];
    return `${nameOf(i)}: ${told.join('; ')}`;
  });
  const lots = (atHand?.lots ?? []).map(({ isSameYarn, pairsOfSize }, at) =>
    words.lots.makes(
      sayLot(reply, at, system),
      isSameYarn
        ? pairsOfSize.map((pairs, i) => `${nameOf(i)} × ${pairs}`).join(', ')
        : words.lots.other,
    ),
  );
  return [
    words.title,
    ...sayAnswer(reply, request),
    ...sayCautions(reply, system, false),
    sayCaption(reply, request, showing),
    ...each,
    `${words.wool.title}: ${sayWool(reply, request, system).join(' ')}`,
    ...(lots.length > 0 ? [`${words.lots.title}:`, ...lots] : []),
    ...sayCautions(reply, system, true),
  ].join('\n');
}
