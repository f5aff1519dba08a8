// A list as a knitter writes it into one field: "white 3.5 m, red 2 m", "A 3, B 2", "35 g of 210 m per 100 g, 60 m".
// Nothing is guessed: what is no such item is told by itself.
import { parseQuantity } from './parse.js';

/** @typedef {{ value: number, unit: string }} Amount `unit` is '' where none was written */
/** @typedef {{ text: string, name: string, amounts: Amount[], per?: Amount }} Item */
/** @typedef {{ ok: true, items: Item[] } | { ok: false, code: string, item: string }} List */

// A comma parts two items where it is no decimal sign: before a space or a word, or behind one.
const between = /[;\n]+|,(?=\s|\p{L}|$)/u;
const behindWord = /(\p{L}),/gu;
const amount = /(\d[\d.,]*(?: ?\d+\/\d+|\/\d+)?(?: ?[½⅓⅔¼¾⅛⅜⅝⅞])?|[½⅓⅔¼¾⅛⅜⅝⅞])\s*(\p{L}*\.?)/gu;
// What a label says of a weight: "… m per 100 g", "… m/100 g".
const perMass = /^(.*\p{L})\s*(?:\/|per)\s*(\d[\d.,]*\s*\p{L}+)\)?$/iu;
// A sign before a number is no part of a colour's name, nor is what has no letter.
const signed = /[-+\u2010-\u2015\u2212]\s*[\d½⅓⅔¼¾⅛⅜⅝⅞]/u;
const isName = (/** @type {string} */ name) =>
  name.split(' ').every((word) => /[\p{L}\d]/u.test(word));
const filling = /\b(?:of|at|with|x)\b|[():=×]/giu;

/** @param {string} text @param {readonly string[]} units @returns {Item | string} or what is wrong */
function readItem(text, units) {
  /** @type {Amount[]} */
  const amounts = [];
  let fault = '';
  const [, front = text, behind] = perMass.exec(text) ?? [];
  const read = (/** @type {string} */ written) => {
    const parsed = parseQuantity(written, units);
    if (!parsed.ok) fault ||= parsed.code;
    return parsed.ok ? { value: parsed.value, unit: parsed.unit } : { value: 0, unit: '' };
  };
  const name = front.replace(amount, (_, number, word) => {
    // A word behind a number is its unit, or the colour's name.
    const unit = parseQuantity(`1 ${word}`, units);
    const isUnit = word !== '' && unit.ok;
    if (!unit.ok && unit.code === 'wrong_unit') fault ||= unit.code;
    amounts.push(read(isUnit ? `${number} ${word}` : number));
    return isUnit ? ' ' : ` ${word}`;
  });
  if (amounts.length === 0 || signed.test(text)) return 'not_in_list';
  const per = behind === undefined ? undefined : read(behind);
  if (fault) return fault;
  const said = name.replace(filling, ' ').replace(/\s+/g, ' ').trim();
  return said === '' || isName(said) ? { text, name: said, amounts, per } : 'not_in_list';
}

// More than any field takes.
const longest = 1000;

/** @param {string} text @param {readonly string[]} units those that may stand in it @returns {List} */
export function parseList(text, units) {
  if (text.length > longest) return { ok: false, code: 'not_in_list', item: text.slice(0, 20) };
  /** @type {Item[]} */
  const items = [];
  for (const piece of text
    .replace(behindWord, '$1;')
    .split(between)
    .map((one) => one.trim())) {
    if (piece === '') continue;
    const item = readItem(piece, units);
    if (typeof item === 'string') return { ok: false, code: item, item: piece };
    items.push(item);
  }
  return items.length > 0 ? { ok: true, items } : { ok: false, code: 'not_in_list', item: text };
}

/** @typedef {{ sign: string, name: string }} Colour */

/**
 * The colours of a list's items, each by a sign to mark it with: its number, or the letter it was named by. A name that comes
 * again is the same colour, an item without one a colour of its own.
 * @param {Item[]} items @param {boolean} [isEach] whether each item is one of its own, whatever its name
 * @returns {{ colours: Colour[], numbers: number[] }} `numbers`, from 1, says which colour each item is
 */
export function coloursOf(items, isEach = false) {
  const keys = items.map(({ name }, i) => (isEach || name === '' ? `${i} ` : name.toLowerCase()));
  const each = [...new Set(keys)];
  const colours = each.map((key, i) => {
    const { name } = items[keys.indexOf(key)];
    const isLetter = /^\p{L}$/u.test(name) && !isEach;
    return isLetter ? { sign: name.toUpperCase(), name: '' } : { sign: String(i + 1), name };
  });
  return { colours, numbers: keys.map((key) => each.indexOf(key) + 1) };
}
