// What is odd about a sock, in words: at a glance for the teacher, and as a sentence to its knitter.
import { oddWords } from '../../../words/en.js';
import { cautionText } from '../count/cautions.js';
import { writeNamed } from '../figures.js';

/** @typedef {import('../../contract.js').Oddity} Oddity */

/** @param {Oddity} oddity */
export const glanceAt = ({ code, message }) => oddWords.glance[code] ?? message;

/** @param {Oddity} oddity @param {import('../../units.js').System} system */
export function sendBack({ harm: _harm, ...oddity }, system) {
  const say = oddWords.send[oddity.code];
  if (!say) return cautionText(oddity, system);
  const figures = Object.entries(oddity).map(([name, value]) => [
    name,
    writeNamed(name, value, system),
  ]);
  return say(Object.fromEntries(figures));
}
