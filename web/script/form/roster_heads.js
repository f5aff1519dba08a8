// The heading row of a class's table: which column is what, in whatever words and order, and with what unit.
import { parseQuantity, toBase, unitsOfKind } from '../units.js';

/**
 * @typedef {object} Head
 * @property {string} text as it stands
 * @property {string} column what it is, by its name here; '' where that is not known
 * @property {string} unit of what stands below it without one, or ''
 * @property {number} [overMm] what a gauge below it was counted over
 * @property {string} scale the shoe scale it names, or ''
 */

const one = /** @type {Record<string, string>} */ ({});
for (const [word, all] of Object.entries({
  st: 'stitch stitches sts',
  rounds: 'round row rows rnd rnds',
  gauge: 'tension',
  girth: 'circumference around',
  min: 'minute minutes',
  g: 'gram grams gr',
  oz: 'ounce ounces',
  balls: 'skeins hanks',
  no: 'nr number #',
  shoe: 'shoes',
  women: "w woman womens women’s women's ladies",
  men: "m man mens men’s men's",
}))
  for (const other of all.split(' ')) one[other] = word;

const fillers = new Set('a an at by for its of on per the to was were'.split(' '));

// Each by its words in the order of the alphabet, so that "girth of the ball" is "ball girth".
const names = /** @type {Record<string, string>} */ ({});
for (const [column, all] of Object.entries({
  seat: 'seat, no, place, no seat',
  yarn: 'yarn, weight, category, label, weight yarn, category yarn, label weight, category weight',
  stitches: 'st, gauge, gauge st',
  width: 'width, over, counted over, st width, over st, gauge over, swatch width',
  rounds: 'rounds, gauge rounds',
  height: 'height rounds, over rounds, height swatch',
  length: 'foot, length, foot length',
  girth: 'girth, ball girth, ball foot, ball foot girth, foot girth',
  heel: 'heel, heel girth, ankle heel, ankle heel girth',
  scale: 'scale, scale shoe, scale size',
  size: 'size, shoe, shoe size',
  body: 'worn, wearer, body, foot wearer',
  leg: 'leg, height leg, leg length',
  pace: 'pace, speed, min st, min pace st, min pace, gauge pace',
  balls: 'balls, balls hand, balls left',
  grams: 'g, oz, hand, g hand, hand oz, hand yarn, g left, left oz, left yarn, left',
}))
  for (const name of all.split(', ')) names[name] = column;

const overAtEnd =
  /(?:\b(?:per|over|in|on|to)\b|[/(=])?\s*(\d[\d.,/ ½¼¾⅛⅜⅝⅞]*(?:cm|mm|inch(?:es)?|in|["”″]))[.)\]]?$/;
const perOne = /(?:\bper|\/)\s*(cm|mm|inch|in|["”″])[.)\]]?$/;

const measures = [...unitsOfKind.length, ...unitsOfKind.mass];

/** @param {string} word @returns {string} the unit that it is, or '' */
function unitOf(word) {
  const parsed = parseQuantity(`1 ${word}`, measures);
  return parsed.ok ? parsed.unit : '';
}

/** A shoe's scale by the words that name it: "us" alone could be two. @param {string[]} words */
export function scaleOf(words) {
  const has = (/** @type {string} */ word) => words.some((each) => (one[each] ?? each) === word);
  if (has('us')) return has('women') ? 'us-women' : has('men') ? 'us-men' : 'us';
  if (has('eu') || has('european')) return 'eu';
  if (has('uk')) return 'uk';
  return has('mondopoint') || has('mondo') ? 'mondopoint' : '';
}
const ofScale = new Set('us uk eu european mondopoint mondo women men'.split(' '));

/** @param {string} text */
export const wordsOf = (text) =>
  text
    .toLowerCase()
    .split(/[\s()[\]:;,./_–-]+/)
    .filter(Boolean);

const nameOf = (/** @type {string[]} */ words) =>
  names[
    words
      .filter((word) => !fillers.has(word))
      .sort()
      .join(' ')
  ] ?? '';

/** @param {string} text @returns {Head} */
export function readHead(text) {
  // No head is longer; the patterns take seconds for a page of one.
  const plain = text.slice(0, 200).toLowerCase().replace(/\s+/g, ' ').trim();
  const [over, long] = overAtEnd.exec(plain) ?? [];
  const [per, short] = (!over && perOne.exec(plain)) || [];
  const parsed = parseQuantity(long ?? `1 ${short ?? ''}`, unitsOfKind.length);
  const isOver = parsed.ok && parsed.unit !== '';
  const front = isOver ? plain.slice(0, plain.length - (over ?? per ?? '').length) : plain;
  const words = wordsOf(front).map((word) => one[word] ?? word);
  const overMm = isOver ? toBase(parsed.value, parsed.unit) : undefined;
  const head = { text, column: nameOf(words), unit: '', scale: '', overMm };
  if (isOver) {
    const isGauge = ['stitches', 'rounds'].includes(head.column);
    return isGauge ? head : { ...head, column: '' };
  }
  // "in" is the inch at the end alone: "in cm", "in hand".
  const units = words.filter((word) => word !== 'in' && unitOf(word));
  const unit = unitOf(units.at(-1) ?? (words.at(-1) === 'in' ? 'in' : '-'));
  const bare = words.filter((word) => word !== 'in');
  const named = nameOf(bare) || nameOf(bare.filter((word) => !units.includes(word)));
  const scale = scaleOf(words);
  const rest = bare.filter((word) => !ofScale.has(word));
  const isSize = scale !== '' && (rest.length === 0 || nameOf(rest) === 'size');
  if (isSize) return { ...head, column: 'size', scale };
  return { ...head, column: named, unit: named === 'seat' ? '' : unit };
}
