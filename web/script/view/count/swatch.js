// The swatch as all its readings say it is: drawn, and told with its give or take.
import { drawScatter } from '../../draw/scatter.js';
import { drawSwatch } from '../../draw/swatch.js';
import { perWords, swatchWords } from '../../../words/en.js';
import { formatNumber, overGauge } from '../../units.js';
import { table } from '../dom.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../units.js').System} System */

// A side of the drawing, in its units.
const side = 104;

const firstWidth = '/swatch/readings/0/widthMm';

/** A gauge is told over what the swatch was counted over, whatever the page's own units are. @param {Showing} showing @returns {System} */
export const gaugeSystem = ({ values, system }) => {
  const width = values[firstWidth] ?? '';
  return width === '' ? system : /[cm]m$/.test(width) ? 'metric' : 'inch';
};

/** The gauge as it is told. @param {Showing} showing */
function gaugeIn(showing) {
  const { gauge } = showing.plan;
  const system = gaugeSystem(showing);
  const write = (/** @type {number} */ perMm, most = 1) =>
    formatNumber(overGauge(perMm, system), most);
  return {
    gauge,
    system,
    write,
    over: perWords[system],
    stitches: write(gauge.stitchesPerMm),
    rounds: write(gauge.roundsPerMm),
    stitchesTake: write(gauge.stitchesPerMm * gauge.relativeError),
    roundsTake: write(gauge.roundsPerMm * gauge.roundsRelativeError),
  };
}

/** @param {Document} document @param {Showing} showing */
export function viewSwatch(document, showing) {
  const { gauge, system, over, stitches, rounds } = gaugeIn(showing);
  if (gauge.from === 'label') return [];
  return [
    drawSwatch(document, {
      stitches: overGauge(gauge.stitchesPerMm, system),
      rounds: overGauge(gauge.roundsPerMm, system),
      wide: side,
      tall: side,
      across: swatchWords.stitches(stitches),
      up: swatchWords.rounds(rounds),
      over,
      name: swatchWords.name(stitches, rounds, over),
    }),
  ];
}

/** @param {Make} h @param {ReturnType<typeof gaugeIn>} told */
function readingsTable(h, { gauge, write, over, stitches, rounds, stitchesTake, roundsTake }) {
  const words = swatchWords.table;
  const rows = gauge.readings.map(({ stitchesPerMm, roundsPerMm }, i) => ({
    name: String(i + 1),
    cells: [write(stitchesPerMm, 2), roundsPerMm ? write(roundsPerMm, 2) : words.none],
  }));
  return h(
    'details',
    { class: 'readings-table', 'data-key': 'readings-table' },
    h('summary', {}, words.open),
    table(h, {
      className: 'figures',
      caption: words.caption(over),
      heads: [words.reading, words.stitches, words.rounds],
      rows: [
        ...rows,
        { name: words.mean, cells: [stitches, rounds], mark: 'sum' },
        { name: words.take, cells: [stitchesTake, roundsTake] },
      ],
    }),
  );
}

/** How far the readings scatter; of one reading, how far it can be trusted. @param {Make} h @param {Document} document @param {Showing} showing */
export function viewScatter(h, document, showing) {
  const told = gaugeIn(showing);
  const { gauge, over, write, stitches, rounds, stitchesTake, roundsTake } = told;
  const { scatter: words } = swatchWords;
  const n = gauge.readings.length;
  if (n === 0) return [];
  const isRib =
    gauge.from === 'rib-swatch' && h('p', { class: 'aside' }, swatchWords.inStockinette);
  if (n === 1) return [h('p', { class: 'aside' }, swatchWords.one(stitchesTake, over)), isRib];
  const strips = [
    {
      label: words.stitches,
      mean: words.mean(stitches, stitchesTake),
      middle: gauge.stitchesPerMm,
      error: gauge.relativeError,
      values: gauge.readings.map(({ stitchesPerMm }) => stitchesPerMm),
      write: (/** @type {number} */ value) => write(value),
    },
    {
      label: words.rounds,
      mean: words.mean(rounds, roundsTake),
      middle: gauge.roundsPerMm,
      error: gauge.roundsRelativeError,
      values: gauge.readings.flatMap(({ roundsPerMm }) => roundsPerMm ?? []),
      write: (/** @type {number} */ value) => write(value),
    },
  ];
  return [
    h('p', { class: 'mean' }, swatchWords.mean(n, stitches, rounds, over)),
    drawScatter(document, strips, words.name(n)),
    h('p', { class: 'aside' }, words.key),
    isRib,
    readingsTable(h, told),
  ];
}
