// The sentence that is the sock. Each measure in it leads to its field.
import { pageWords } from '../../words/en.js';
import { formatNumber } from '../units.js';
import { sayRib } from './parts.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */

const words = pageWords.sentence;
const reading = '/swatch/readings/0';

/** @param {Make} h @param {Showing} showing */
export function viewSentence(h, { values, plan, request }) {
  const link = (/** @type {string} */ pointer, /** @type {string} */ text) =>
    h('a', { href: `#f${pointer.replaceAll('/', '-')}`, 'data-goto': pointer }, text || '…');
  const isSwatch = `${reading}/stitches` in values;
  const isTape = '/foot/lengthMm' in values;
  const readings = request.swatch?.readings?.length ?? 0;
  // Over 4 in, as gauges are told; the core pooled them.
  const pooled = formatNumber(plan.gauge.stitchesPerMm * 101.6, 1);
  const gauge =
    readings > 1
      ? [link(`${reading}/stitches`, words.readings(readings, pooled)), words.over, words.overFour]
      : isSwatch
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
        words.shoe(values['/foot/body']),
        link('/foot/shoe/size', `${values['/foot/shoe/size']} ${values['/foot/shoe/scale']}`),
        words.shoeLeg,
      ];
  const leg = link('/legHeightMm', values['/legHeightMm']);
  const { pitchDeg } = plan.spiral;
  const lean =
    pitchDeg === undefined
      ? ''
      : pitchDeg === 0
        ? words.straight
        : words.leaning(values['/rib/lean']);
  const rib = link('/rib/knit', words.rib(sayRib(plan)));
  return [...gauge, ...foot, leg, words.high, rib, lean, words.end];
}
