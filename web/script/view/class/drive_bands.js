// Bands for socks that are given to many: one a pair, to be cut out.
import { bandWords, driveWords } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { band, sayFeet, sayShoes } from '../paper/band.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Drive['sizes'][number]} Size */

const words = driveWords.bands;

// Fifty sides of paper. For more pairs a side of each size is copied.
const mostPrinted = 200;
const onOneSide = 4;

/** @param {import('../../contract.js').DriveRequest} request */
const isCopied = ({ drive }) => drive.pairs > mostPrinted;

/** Beside the button: what comes out. @param {import('../../contract.js').DriveRequest} request */
export const sayBands = (request) =>
  isCopied(request) ? words.once : words.each(formatCount(request.drive.pairs));

/** @param {Make} h @param {Showing} showing */
export function printBands(h, { beside, plan, system, lesson }) {
  const typed = (/** @type {string} */ pointer) => lesson?.desk[pointer]?.typed ?? '';
  const filled = ['/drive/fibre', '/drive/washing'].map(typed);
  const { reply, request } = beside?.drive ?? {};
  /** @type {Size[]} */
  const sizes = reply?.sizes ?? [];
  const bandOf = (/** @type {Size} */ { band: told, stitchCount }, /** @type {string} */ number) =>
    band(h, plan, {
      filled,
      rows: [
        [bandWords.foot, sayFeet(told.footFromMm, told.footToMm, system)],
        [bandWords.shoes, sayShoes(told.shoes)],
        [words.size, [words.ofSize(number, formatCount(stitchCount))]],
      ],
    });
  return sizes.flatMap((size, i) => {
    const number = formatCount(i + 1);
    if (size.pairs === 0) return [];
    const times = isCopied(request) ? onOneSide : size.pairs;
    const bands = Array.from({ length: times }, () => bandOf(size, number));
    const head = words.copies(driveWords.size(number), formatCount(size.pairs));
    return isCopied(request)
      ? [h('section', { class: 'bands-of-size' }, h('h3', {}, head), bands)]
      : bands;
  });
}
