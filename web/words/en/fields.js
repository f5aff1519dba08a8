// The form: a label for each field, its name inside a sentence where that is another, and in one line
// how to measure it. US terms, with UK ones where they differ.

import { deskFields } from './fields_desk.js';
import { lostFields } from './lost.js';
import { needlesFields } from './fields_needles.js';

/** @typedef {{ label: string, of?: string, short?: string, how?: string, needed?: string }} FieldWords */

/** @type {Record<string, FieldWords>} */
export const fieldWords = {
  ...lostFields,
  ...deskFields,
  '/swatch/readings/stitches': { label: 'Stitches', of: 'in the swatch', short: 'stitches' },
  '/swatch/readings/widthMm': { label: 'over', of: 'a width of', short: 'swatch width' },
  '/swatch/readings/rounds': { label: 'Rounds', of: 'in the swatch', short: 'rounds' },
  '/swatch/readings/heightMm': { label: 'over', of: 'a height of', short: 'swatch height' },
  '/yarn/category': {
    label: 'Weight on the label',
    short: 'yarn weight',
    how: 'The number in the little skein on the ball band.',
  },
  '/yarn/ballG': { label: 'One ball', of: 'weighs', short: 'ball weight' },
  '/yarn/ballM': { label: 'and holds', of: 'this length of yarn', short: 'ball length' },
  '/foot/shoe/scale': { label: 'Shoe scale', short: 'shoe scale' },
  '/foot/shoe/size': {
    label: 'Shoe size',
    short: 'shoe size',
    how: 'A shoe is a poor tape: the plan says give or take.',
  },
  '/foot/body': {
    label: 'Worn by',
    short: 'wearer',
    how: 'For a child the measures are asked for anew.',
    needed: 'Whose foot is it? How far round it is hangs on that.',
  },
  '/foot/ballGirthMm': {
    label: 'Ball of the foot, round',
    short: 'ball of the foot',
    how: 'Tape snug round the widest part, standing.',
  },
  '/foot/lengthMm': {
    label: 'Foot, heel to toe',
    short: 'foot',
    how: 'Stand on paper; heel to longest toe.',
  },
  '/foot/heelAnkleGirthMm': {
    label: 'Round heel and ankle',
    short: 'heel and ankle',
    how: 'Under the heel, over the bend in front.',
  },
  '/legHeightMm': {
    label: 'Leg, from the floor',
    short: 'leg',
    how: 'Floor to where the sock is to end.',
  },
  '/cuffMm': { label: 'Cuff', short: 'cuff', how: 'Straight rib at the top, part of the leg.' },
  '/foot/ankleGirthMm': {
    label: 'Ankle, round',
    short: 'ankle',
    how: 'Above the ankle bone.',
  },
  '/foot/calfGirthMm': {
    label: 'Calf, round',
    short: 'calf',
    how: 'Where it is widest.',
  },
  '/rib/knit': { label: 'Knit', of: 'stitches in the rib', short: 'knit of the rib' },
  '/rib/purl': { label: 'Purl', of: 'stitches in the rib', short: 'purl of the rib' },
  '/rib/roundsPerShift': {
    label: 'A step every',
    of: 'so many rounds',
    short: 'rounds a shift',
    how: 'Rounds between one step and the next. 0: straight up.',
  },
  '/rib/lean': { label: 'Leans', short: 'lean', how: 'Seen on the foot, from the toe up.' },
  '/girthEase': {
    label: 'Wider or tighter than the foot',
    short: 'girth ease',
    how: 'Minus is tighter. Usual: −10 % (negative ease).',
  },
  '/lengthEase': {
    label: 'Longer or shorter than the foot',
    short: 'length ease',
    how: 'Usual: −4 %, about 1 cm on a foot.',
  },
  '/stitchCount': {
    label: 'My own stitch count',
    short: 'own stitch count',
    how: 'Empty: as advised.',
  },
  '/toe/shape': { label: 'Toe', of: 'shape', short: 'toe shape' },
  '/toe/share': {
    label: 'Toe, of the foot’s length',
    short: 'toe length',
    how: 'Usual: a quarter.',
  },
  '/toe/tipShare': {
    label: 'Tip, of all stitches',
    short: 'toe tip',
    how: 'How much of the round is cast on. Usual: 40 %.',
  },
  '/swatch/washed': {
    label: 'The swatch is',
    short: 'washing',
    how: 'Wash it as the sock will be and let it dry flat; count it then.',
  },
  '/swatch/fabric': {
    label: 'Knit in',
    short: 'swatch fabric',
    how: 'Stockinette is stocking stitch. A swatch in the rib is counted lying relaxed, knits and purls alike.',
  },
  '/swatch/needleMm': {
    label: 'Needle of the swatch',
    short: 'needle',
    how: 'Its size in mm, as a needle gauge shows it.',
  },
  '/swatch/stretchedWidthMm': {
    label: 'Pulled sideways, it reaches',
    short: 'stretched width',
    how: 'Mark the first reading’s stitches, pull them as wide as hands can, and measure between the marks.',
  },
  '/swatch/massG': {
    label: 'Weighed piece',
    short: 'swatch weight',
    how: 'The larger the piece, the surer: a scale that shows whole grams may be half a gram off.',
  },
  '/swatch/massStitches': {
    label: 'and its stitches',
    of: 'in all',
    short: 'weighed stitches',
    how: 'Every stitch of the piece: stitches in a row times rows. The ball’s weight and length are needed too.',
  },
  '/yarn/substitute/ballG': {
    label: 'One ball of it',
    of: 'weighs',
    short: 'other ball weight',
  },
  '/yarn/substitute/ballM': {
    label: 'and holds',
    of: 'this length of the other yarn',
    short: 'other ball length',
  },
  '/pace/stitchesPerMinute': {
    label: 'Your own pace',
    of: 'in stitches a minute',
    short: 'pace',
    how: 'Stitches a minute. Knit one round of the pair by the clock, turns left out: its stitches (a round’s, twice) by its minutes. A learner: 15.',
  },
  '/yarnMargin': {
    label: 'Yarn to spare',
    short: 'yarn margin',
    how: 'Added to the need. Usual: 10 %.',
  },
  ...needlesFields,
};

const yarnWeights = {
  0: '0 lace',
  1: '1 super fine (fingering, 4-ply)',
  2: '2 fine (sport)',
  3: '3 light (DK)',
  4: '4 medium (worsted, aran)',
  5: '5 bulky (chunky)',
  6: '6 super bulky',
  7: '7 jumbo',
};

const shoeScales = {
  eu: 'European',
  'us-women': 'US women',
  'us-men': 'US men',
  uk: 'UK',
  mondopoint: 'mm (mondopoint)',
};

const wearers = { woman: 'a woman', man: 'a man', child: 'a child' };

/** What stands in a list of choices. @type {Record<string, Record<string, string>>} */
export const optionWords = {
  '/swatch': { swatch: 'measured', label: 'not yet' },
  '/foot': { tape: 'by tape', shoe: 'by shoe' },
  '/yarn/category': { '': 'as the swatch tells', ...yarnWeights },
  '/supply/yarns': yarnWeights,
  '/foot/shoe/scale': shoeScales,
  '/supply/scale': shoeScales,
  '/foot/body': { '': 'choose', ...wearers },
  '/supply/body': wearers,
  '/tags/lines': { pen: 'lines to fill in by pen', sock: 'rib and cast-on of the sock here' },
  '/rib/lean': { left: 'to the left', right: 'to the right', mirrored: 'mirrored, as a pair' },
  '/toe/shape': { round: 'round', even: 'even, like a wedge', 'left-right': 'a left and a right' },
  '/stripes/repeat/from': {
    'two-balls': 'two balls, one each',
    'two-ends': 'both ends of one ball',
    halves: 'one ball, cut in two',
  },
  '/swatch/washed': { true: 'washed and dry', false: 'not washed' },
  '/swatch/fabric': { stockinette: 'stockinette', rib: 'the sock’s own rib' },
};

/** The rib's lean inside a sentence. @type {Record<string, string>} */
export const leanWords = {
  left: 'leaning to the left',
  right: 'leaning to the right',
  mirrored: 'mirrored as a pair',
};

/** A shoe's scale inside a sentence. @type {Record<string, string>} */
export const scaleWords = {
  eu: 'EU',
  'us-women': 'US women’s',
  'us-men': 'US men’s',
  uk: 'UK',
  mondopoint: 'mondopoint',
};

export const formWords = {
  example: 'example',
  usual: 'usual',
  guessed: 'guessed from the foot',
  ofClass: 'set by the class',
  notInClass: (/** @type {string} */ yarn) => `${yarn}: not in this class`,
  begun: 'begun: it stays',
  stranger: 'not yours yet',
  // The parts of the sheet by the first step of their pointers.
  part: /** @type {Record<string, string>} */ ({
    swatch: 'swatch',
    yarn: 'yarn',
    foot: 'foot',
    legHeightMm: 'leg',
  }),
  sheet: 'the sheet',
  unit: /** @type {Record<string, string>} */ ({
    cm: 'cm',
    in: 'in',
    m: 'm',
    yd: 'yd',
    g: 'g',
    oz: 'oz',
  }),
  unitOf: (/** @type {string} */ name) => `Unit of ${name}`,
  reading: (/** @type {number} */ n) => `Reading ${n}`,
  allReadings: 'Twelve is the most a page takes. Take one away to count in another place.',
  removeReading: (/** @type {number} */ n) => `remove reading ${n}`,
};
