// The fields of the form: where each goes in the request, how it is typed, and in which group it stands.
// Ranges and defaults are the core's; here is only what typing needs.
import { countReadings } from '../state.js';
import { choice, list, quantity } from './field.js';
import { deskFields } from './fields_desk.js';

/** @typedef {import('../state.js').Draft} Draft */
/** @typedef {import('./field.js').Field} Field */

const way = /** @type {const} */ (['swatch', 'label', 'tape', 'shoe']);
const [swatch, , tape, shoe] = way;

/** @param {number} index @returns {Field[]} */
export const readingFields = (index) => {
  const at = `/swatch/readings/${index}`;
  return [
    quantity('readings', `${at}/stitches`, 'stitches', { way: swatch }),
    quantity('readings', `${at}/widthMm`, 'length', { way: swatch }),
    quantity('readings', `${at}/rounds`, 'rounds', { way: swatch }),
    quantity('readings', `${at}/heightMm`, 'length', { way: swatch }),
  ];
};

/** All but the readings, in the order they are read. @type {readonly Field[]} */
export const fixedFields = [
  {
    pointer: '/swatch',
    as: 'mode',
    kind: 'number',
    group: 'swatchWay',
    options: ['swatch', 'label'],
  },
  choice('yarn', '/yarn/category', ['', '0', '1', '2', '3', '4', '5', '6', '7'], { whole: true }),
  quantity('yarn', '/yarn/ballG', 'mass'),
  quantity('yarn', '/yarn/ballM', 'yarn'),
  quantity('substitute', '/yarn/substitute/ballG', 'mass'),
  quantity('substitute', '/yarn/substitute/ballM', 'yarn'),
  { pointer: '/foot', as: 'mode', kind: 'number', group: 'footWay', options: ['tape', 'shoe'] },
  choice('shoe', '/foot/shoe/scale', ['eu', 'us-women', 'us-men', 'uk', 'mondopoint'], {
    way: shoe,
  }),
  quantity('shoe', '/foot/shoe/size', 'number', { way: shoe }),
  choice('shoe', '/foot/body', ['', 'woman', 'man', 'child'], { asideIn: tape }),
  // From the toe up: so the sock is knit, and so the fields stand along the drawing.
  quantity('foot', '/foot/ballGirthMm', 'length', { way: tape }),
  quantity('foot', '/foot/lengthMm', 'length', { way: tape }),
  quantity('foot', '/foot/heelAnkleGirthMm', 'length'),
  quantity('foot', '/legHeightMm', 'length'),
  quantity('leg', '/cuffMm', 'length'),
  quantity('leg', '/foot/ankleGirthMm', 'length'),
  quantity('leg', '/foot/calfGirthMm', 'length'),
  quantity('rib', '/rib/knit', 'stitches'),
  quantity('rib', '/rib/purl', 'stitches'),
  quantity('rib', '/rib/roundsPerShift', 'rounds'),
  choice('rib', '/rib/lean', ['left', 'right', 'mirrored']),
  quantity('fit', '/girthEase', 'percent'),
  quantity('fit', '/lengthEase', 'percent'),
  quantity('fit', '/stitchCount', 'stitches'),
  choice('toe', '/toe/shape', ['round', 'even', 'left-right']),
  quantity('toe', '/toe/share', 'percent'),
  quantity('toe', '/toe/tipShare', 'percent'),
  choice('more', '/swatch/fabric', ['stockinette', 'rib'], { way: swatch, isRadios: true }),
  choice('more', '/swatch/washed', ['true', 'false'], { way: swatch, isRadios: true }),
  quantity('more', '/swatch/needleMm', 'needle', { way: swatch }),
  quantity('more', '/swatch/stretchedWidthMm', 'length', { way: swatch }),
  quantity('more', '/swatch/massG', 'mass', { way: swatch }),
  quantity('more', '/swatch/massStitches', 'stitches', { way: swatch }),
  quantity('pace', '/pace/stitchesPerMinute', 'stitches'),
  quantity('pace', '/yarnMargin', 'percent'),
];

const found = /** @type {const} */ ({ asks: 'found' });
const onNeedles = /** @type {const} */ ({ asks: 'adjust' });
const striped = /** @type {const} */ ({ asks: 'stripes' });

/**
 * Of a sock that is on the needles: asked beside the plan, of no part of its request, and open when the rest of the form
 * is settled. Their pointers begin with the name they have in state/settled.js.
 * @type {readonly Field[]}
 */
export const besideFields = [
  ...['a', 'b'].flatMap((sock) => [
    quantity(`lost-${sock}`, `/found/${sock}/columns`, 'number', found),
    quantity(`lost-${sock}`, `/found/${sock}/since`, 'rounds', found),
    quantity('lost-place', `/found/${sock}/place`, 'number', found),
    quantity('lost-place', `/found/${sock}/near`, 'rounds', found),
    quantity('lost-toe', `/found/${sock}/rounds`, 'rounds', found),
  ]),
  quantity('misstep', '/found/misstep/roundsSince', 'rounds', found),
  quantity('rounds-done', '/needles/roundsDone', 'rounds', onNeedles),
  quantity('toe-gauge', '/needles/stitches', 'stitches', onNeedles),
  quantity('toe-gauge', '/needles/widthMm', 'length', onNeedles),
  quantity('toe-gauge', '/needles/rounds', 'rounds', onNeedles),
  quantity('toe-gauge', '/needles/lengthMm', 'length', onNeedles),
  quantity('yarn-left', '/needles/gramsLeftA', 'mass', onNeedles),
  quantity('yarn-left', '/needles/gramsLeftB', 'mass', onNeedles),
  list('repeat', '/stripes/repeat/stripes', 'yarn', striped),
  choice('repeat-more', '/stripes/repeat/from', ['two-balls', 'two-ends', 'halves'], striped),
  quantity('repeat-more', '/stripes/repeat/ballM', 'yarn', striped),
  quantity('repeat-more', '/stripes/repeat/startAM', 'yarn', striped),
  quantity('repeat-more', '/stripes/repeat/startBM', 'yarn', striped),
  list('own-stripes', '/stripes/own/stripes', 'rounds', striped),
  list('leftovers', '/stripes/leftovers/lots', 'mass', striped),
  ...deskFields,
];

/**
 * Whether a field is of a gauge: it stays in the units it was counted over, for nobody counts over 10.16 cm.
 * @param {Field} field
 */
export const isOfGauge = ({ group }) => group === 'readings' || group === 'toe-gauge';

/** Every field of a draft, its rows of readings included. @param {Draft} draft */
export function fieldsOf(draft) {
  const rows = Array.from({ length: countReadings(draft) }, (_, index) => readingFields(index));
  return [fixedFields[0], ...rows.flat(), ...fixedFields.slice(1), ...besideFields];
}

/** The two ways the form is asked in now. @param {Draft} draft */
export const waysOf = (draft) => ({
  swatch: draft['/swatch']?.typed ?? 'swatch',
  foot: draft['/foot']?.typed ?? 'tape',
});

/** Whether a field is asked at all. @param {Field} field @param {Draft} draft */
export function isAsked(field, draft) {
  const ways = waysOf(draft);
  return !field.way || field.way === ways.swatch || field.way === ways.foot;
}

/** Whether a field that is asked says nothing of the sock itself. @param {Field} field @param {Draft} draft */
export const isAside = (field, draft) =>
  field.asideIn !== undefined && field.asideIn === waysOf(draft).foot;

/** An id for the document. @param {string} pointer */
export const idOf = (pointer) => `f${pointer.replaceAll('/', '-')}`;

/** The name its words are under: rows of readings share theirs. @param {string} pointer */
export const wordsKey = (pointer) => pointer.replace(/\/readings\/\d+\//, '/readings/');
