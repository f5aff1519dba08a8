// Does a line of working as somebody with paper and pencil would: reads the sum out of the sentence.

import { runInNewContext } from 'node:vm';

const words = /[a-z,:’]+/gi;

/** The sum in a line, as the language of this test: "22.8 cm × (1 − 10 %)" is (22.8)*(1-(10/100)). */
function sumOf(text) {
  return (
    text
      .replace(/[\u00a0\u202f]/g, ' ')
      // A hyphen stands in words; what is taken away has a true minus.
      .replaceAll('-', '')
      .replaceAll('\u2212', '-')
      .replace(/(-?[\d.]+) %/g, '($1/100)')
      .replace(/the larger of (\S+) and ([^)]+\))/g, '@[$1;$2]')
      .replace(/√([\d.]+)/g, '($1)**0.5')
      .replaceAll('²', '**2')
      .replaceAll('×', '*')
      .replaceAll('÷', '/')
      .replaceAll('√', '#')
      .replaceAll('arctan', '$')
      .replace(words, '')
      .replaceAll('@[', 'Math.max(')
      .replaceAll(']', ')')
      .replaceAll(';', ',')
      .replaceAll('#', 'Math.sqrt')
      .replaceAll('$', '57.29577951308232*Math.atan')
  );
}

/** @param {string} text a number as told */
function lastPlace(text) {
  const [, decimals = ''] = /\d+(?:\.(\d+))?/.exec(text) ?? [];
  return 10 ** -decimals.length / (text.includes('%') ? 100 : 1);
}

const evaluate = (text) => Number(runInNewContext(sumOf(text)));

/**
 * What a line says comes out, and what does. Undefined for a line without a sum in it.
 * @param {string} line
 * @returns {{ told: number, done: number, last: number } | undefined} `last`: what one in the last
 *   place is worth, nothing for a count
 */
export function doOnPaper(line) {
  const toWhole = /^(.*?), (to whole rounds|up to whole balls): (\d+)$/.exec(line);
  if (toWhole) {
    const [, sum, how, told] = toWhole;
    // The product is told too, rounded: it is the sum before it that counts.
    const exact = evaluate(sum.split(' = ')[0]);
    const done = how === 'up to whole balls' ? Math.ceil(exact) : Math.floor(exact + 0.5);
    return { told: Number(told), done, last: 0 };
  }
  const end = line.lastIndexOf(' = ');
  if (end < 0) return undefined;
  const result = line.slice(end + 3).replace('°', '');
  return { told: evaluate(result), done: evaluate(line.slice(0, end)), last: lastPlace(result) };
}
