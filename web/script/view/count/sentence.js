// The sentence that is the sock. Each measure in it leads to its field.
import { leanWords, pageWords, scaleWords } from '../../../words/en.js';
import { formatNumber } from '../../units.js';
import { figuresIn } from '../figures.js';
import { sayRib } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

const words = pageWords.sentence;
const reading = '/swatch/readings/0';

/** Several readings as one, over 4 in or 10 cm as gauges are told. @param {Showing} showing */
function meanOf({ plan, values }) {
  const { stitches = 0, widthMm = 1 } =
    plan.working.find(({ figure }) => figure === 'gauge')?.numbers ?? {};
  const unit = /[cm]m$/.test(values[`${reading}/widthMm`] ?? '') ? 'cm' : 'in';
  const over = { cm: 100, in: 101.6 }[unit];
  return { stitches: formatNumber((stitches / widthMm) * over, 1), over: words.overFour[unit] };
}

/** @param {Make} h @param {Showing} showing */
export function viewSentence(h, showing) {
  const { values, plan, request, system } = showing;
  const link = (/** @type {string} */ pointer, /** @type {string} */ text) =>
    h('a', { href: `#f${pointer.replaceAll('/', '-')}`, 'data-goto': pointer }, text || '…');
  const isSwatch = `${reading}/stitches` in values;
  const isTape = '/foot/lengthMm' in values;
  const readings = request.swatch?.readings?.length ?? 0;
  const mean = meanOf(showing);
  const { length } = figuresIn(system);
  const gauge =
    readings > 1
      ? [
          link(`${reading}/stitches`, words.readings(readings, mean.stitches)),
          words.over,
          mean.over,
        ]
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
        link(
          '/foot/shoe/size',
          words.size(scaleWords[request.foot.shoe?.scale] ?? '', values['/foot/shoe/size']),
        ),
        words.about(length(plan.foot.lengthMm), length(plan.foot.ballGirthMm)),
      ];
  const leg = link('/legHeightMm', values['/legHeightMm']);
  const { pitchDeg } = plan.spiral;
  const lean =
    pitchDeg === undefined
      ? ''
      : pitchDeg === 0
        ? words.straight
        : words.leaning(leanWords[plan.rib.lean]);
  const rib = link('/rib/knit', words.rib(sayRib(plan)));
  return [...gauge, ...foot, leg, words.high, rib, lean, words.end];
}
