// What a knitter types, read as a number and perhaps a unit. Nothing is guessed: a text that could
// mean two numbers is refused by name, for the page to say so in words.

/** @typedef {{ ok: true, value: number, unit: string } | { ok: false, code: string }} Parsed */

const vulgar = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

// Each unit by every way it is written.
const spellings = {
  cm: ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  in: ['in', 'in.', 'ins', 'inch', 'inches', '"', '″', '”', "''", '′′'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
  yd: ['yd', 'yds', 'yard', 'yards'],
  g: ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes'],
  oz: ['oz', 'oz.', 'ounce', 'ounces'],
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
  lb: ['lb', 'lb.', 'lbs', 'pound', 'pounds'],
  st: ['st', 'sts', 'stitch', 'stitches'],
  r: ['r', 'rnd', 'rnds', 'round', 'rounds', 'row', 'rows'],
  min: ['min', 'min.', 'mins', 'minute', 'minutes'],
  '%': ['%'],
};

/** @type {Map<string, string>} */
const unitBySpelling = new Map(
  Object.entries(spellings).flatMap(([unit, all]) =>
    all.map((spelling) => /** @type {[string, string]} */ ([spelling, unit])),
  ),
);

// No number is longer. A page of letters would keep the patterns below at work for seconds.
const longest = 1000;

/** @param {string} code @returns {Parsed} */
const refuse = (code) => ({ ok: false, code });

/** Every space a phone or a copied text may hold, every dash, and the fraction slash, made plain. */
const plain = (/** @type {string} */ text) =>
  text
    // Marks that nobody sees come along with copied text; full-width digits are digits.
    .replace(/\p{Cf}/gu, '')
    .replace(/[\uff10-\uff19]/g, (digit) => String.fromCharCode(digit.charCodeAt(0) - 0xfee0))
    .replace(/[\s\u00a0\u2007\u2009\u202f]+/g, ' ')
    .replace(/[\u2012\u2013\u2212]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .trim()
    .toLowerCase();

/**
 * A comma or a point is a decimal sign. Both in one number, the same one twice, or a comma before
 * exactly three digits could also group thousands.
 * @param {string} digits
 */
function isAmbiguous(digits) {
  const signs = digits.match(/[.,]/g) ?? [];
  return signs.length > 1 || /^[1-9]\d{0,2},\d{3}$/.test(digits);
}

/** @param {string} text digits with a fraction behind, or not @returns {number | string} a value, or why not */
function readNumber(text) {
  const glyph = /^(\d*) ?([½⅓⅔¼¾⅛⅜⅝⅞])$/.exec(text);
  if (glyph) {
    const [above, below] = vulgar[/** @type {keyof typeof vulgar} */ (glyph[2])];
    return Number(glyph[1] || 0) + above / below;
  }
  const fraction = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (fraction) {
    const [above, below] = [Number(fraction[2]), Number(fraction[3])];
    // "9 11/2" is a slip of the hand, not fourteen and a half.
    const isProper = fraction[1] === undefined || above < below;
    return below === 0 || !isProper ? 'not_a_number' : Number(fraction[1] ?? 0) + above / below;
  }
  if (/^[\d.,]+( [\d.,]+)+$/.test(text)) return 'two_numbers';
  if (!/^[\d.,]*\d[\d.,]*$/.test(text)) return 'not_a_number';
  if (isAmbiguous(text)) return 'ambiguous_number';
  return Number(text.replace(',', '.'));
}

/**
 * @param {string} text as typed, not empty
 * @param {readonly string[]} units those that may be written behind the number
 * @returns {Parsed} `unit` is '' when none was written
 */
export function parseQuantity(text, units) {
  if (text.length > longest) return refuse('not_a_number');
  const split = /^([+-]?)\s*(.*?)\s*([a-z%"″”'′]+\.?)?$/.exec(plain(text));
  const [, sign, number, suffix = ''] = split ?? ['', '', '', ''];
  if (number === '') return refuse('not_a_number');
  const unit = suffix === '' ? '' : unitBySpelling.get(suffix);
  if (unit === undefined) return refuse('unknown_unit');
  if (unit !== '' && !units.includes(unit)) return refuse('wrong_unit');
  const value = readNumber(number);
  if (typeof value === 'string') return refuse(value);
  if (!Number.isFinite(value)) return refuse('number_too_large');
  return { ok: true, value: sign === '-' ? -value : value, unit };
}

/** The typed text without the unit written behind it. */
export const withoutUnit = (/** @type {string} */ text) =>
  text.replace(/\s*[a-z%"″”'′]+\.?\s*$/i, '');
