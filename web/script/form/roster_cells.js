// What stands in one cell of a class's table, by its column. Quantities are read by the page's one parser.
import { optionWords } from '../../words/en.js';
import { parseQuantity, toBase, unitsOfKind } from '../units.js';
import { scaleOf, wordsOf } from './roster_heads.js';

/** @typedef {{ ok: true, value: any } | { ok: false, code: string, units?: string }} Read */

const bodies = /** @type {Record<string, string>} */ ({});
for (const [body, all] of Object.entries({
  woman: 'woman women female lady w f',
  man: 'man men male m',
  child: 'child children kid girl boy c',
}))
  for (const word of all.split(' ')) bodies[word] = body;

/** @param {string} code @param {string} [units] @returns {Read} */
const refuse = (code, units) => ({ ok: false, code, units });

const measured = new Set(['length', 'mass']);

/** @param {string} cell @param {keyof typeof unitsOfKind} kind @param {string} unit of one without @returns {Read} */
function quantity(cell, kind, unit) {
  const units = unitsOfKind[kind];
  const parsed = parseQuantity(cell, units);
  if (!parsed.ok)
    return refuse(parsed.code, units.filter((one) => one !== 'st' && one !== 'r').join(', '));
  // Nothing is guessed: centimetres and inches are both read, and so are grams and ounces.
  if (parsed.unit === '' && unit === '' && measured.has(kind))
    return refuse('which_unit', units.slice(0, 2).join(' or '));
  return { ok: true, value: toBase(parsed.value, parsed.unit || unit) };
}

const byWord = /^(.*\S)\s*\b(?:per|over|in|to|on)\b\s*(\d.*)$/i;
const bySlash = /^(.*\S)\s*[/=]\s*(\d.*[a-z"”″])$/i;

/**
 * Stitches or rounds, with what they were counted over or without.
 * @param {string} cell @param {'stitches' | 'rounds'} kind @returns {Read} its value is `{ count, overMm }`
 */
function gauge(cell, kind) {
  const [, front = cell, over] = byWord.exec(cell) ?? bySlash.exec(cell) ?? [];
  const count = quantity(front, kind, '');
  if (!count.ok) return count;
  if (over === undefined) return { ok: true, value: { count: count.value } };
  const parsed = parseQuantity(over, unitsOfKind.length);
  if (!parsed.ok) return refuse(parsed.code, unitsOfKind.length.join(', '));
  if (parsed.unit === '') return refuse('over_what');
  return { ok: true, value: { count: count.value, overMm: toBase(parsed.value, parsed.unit) } };
}

/** A yarn by the number on its label, its name, or both. @param {string} cell @returns {Read} */
function yarn(cell) {
  const text = cell.toLowerCase().replace(/\s+/g, ' ');
  const known = Object.entries(optionWords['/supply/yarns']).find(([number, words]) => {
    const [short, more = ''] = words.split(' (');
    const name = short.slice(number.length + 1);
    const others = more.replace(')', '').split(', ');
    return [words, short, name, ...others].some((each) => each.toLowerCase() === text);
  });
  if (known) return { ok: true, value: Number(known[0]) };
  const read = quantity(cell, 'number', '');
  return read.ok ? read : refuse('not_a_yarn');
}

/** A shoe's size, its scale beside it or not. @param {string} cell @returns {Read} its value is `{ size, scale }` */
function shoe(cell) {
  const words = cell.replace(/[\d.,/½¼¾⅓⅔]+/g, ' ');
  const scale = scaleOf(wordsOf(words));
  if (words.trim() !== '' && scale === '') return refuse('not_a_scale');
  const size = quantity(cell.replace(/[^\d.,/½¼¾⅓⅔ ]+/g, ' ').trim(), 'number', '');
  return size.ok ? { ok: true, value: { size: size.value, scale } } : size;
}

/** @param {unknown} value @param {string} code @returns {Read} */
const orElse = (value, code) => (value ? { ok: true, value } : refuse(code));

/** @type {Record<string, (cell: string, unit: string) => Read>} by column */
export const readCell = {
  seat: (cell) => ({ ok: true, value: cell }),
  yarn,
  stitches: (cell) => gauge(cell, 'stitches'),
  width: (cell, unit) => quantity(cell, 'length', unit),
  rounds: (cell) => gauge(cell, 'rounds'),
  height: (cell, unit) => quantity(cell, 'length', unit),
  length: (cell, unit) => quantity(cell, 'length', unit),
  girth: (cell, unit) => quantity(cell, 'length', unit),
  heel: (cell, unit) => quantity(cell, 'length', unit),
  scale: (cell) => orElse(scaleOf(wordsOf(cell)), 'not_a_scale'),
  size: shoe,
  body: (cell) => orElse(bodies[cell.toLowerCase()], 'not_a_wearer'),
  leg: (cell, unit) => quantity(cell, 'length', unit),
  pace: (cell) => quantity(cell, 'stitches', ''),
  balls: (cell) => quantity(cell.replace(/\s*(?:balls?|skeins?|hanks?)$/i, ''), 'number', ''),
  grams: (cell, unit) => quantity(cell, 'mass', unit),
};
