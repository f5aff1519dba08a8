// The sentence that is the sock. Each measure in it leads to its field.
import { pageWords } from '../../words/en.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */

const words = pageWords.sentence;
const reading = '/swatch/readings/0';

/** @param {Make} h @param {Showing} showing */
export function viewSentence(h, { values }) {
  const link = (/** @type {string} */ pointer, /** @type {string} */ text) =>
    h('a', { href: `#f${pointer.replaceAll('/', '-')}`, 'data-goto': pointer }, text || '…');
  const isSwatch = `${reading}/stitches` in values;
  const isTape = '/foot/lengthMm' in values;
  const gauge = isSwatch
    ? [
        link(`${reading}/stitches`, words.gauge(values[`${reading}/stitches`])),
        words.over,
        link(`${reading}/widthMm`, values[`${reading}/widthMm`]),
      ]
    : [words.noSwatch, link('/yarn/category', words.yarn(values['/yarn/category']))];
  const foot = isTape
    ? [
        words.foot,
        link('/foot/lengthMm', values['/foot/lengthMm']),
        words.long,
        link('/foot/ballGirthMm', values['/foot/ballGirthMm']),
        words.round,
      ]
    : [
        words.shoe,
        link('/foot/shoe/size', `${values['/foot/shoe/size']} ${values['/foot/shoe/scale']}`),
        words.shoeLeg,
      ];
  const leg = link('/legHeightMm', values['/legHeightMm']);
  return [...gauge, ...foot, leg, words.high];
}
