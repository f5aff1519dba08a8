// Lines of knitting as people say them: "p1, *k2, p2* 4 times, k2, p1".
import { planWords } from '../../words/en.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {Plan['lines'][number]} Line */

const words = planWords.knit;

const sayRun = (/** @type {readonly [string, number]} */ [work, times]) =>
  work === 'k' || work === 'p' ? `${words.work[work]}${times}` : (words.work[work] ?? work);

/** One half, told. @param {Line} line @param {0 | 1} half */
export function sayHalf(line, half) {
  const [first, ...others] = line.halves[half];
  if (others.length === 0 && words.allHalf[first[0]]) return words.allHalf[first[0]];
  return line.told[half]
    .map(({ runs, times }) => {
      const said = runs.map(sayRun).join(', ');
      return times === 1 ? said : words.times(said, times);
    })
    .join(', ');
}

/** Both halves, or the one text where they are alike. @param {Line} line @returns {string[]} */
export function sayHalves(line) {
  const first = sayHalf(line, 0);
  const second = sayHalf(line, 1);
  return first === second ? [first] : [first, second];
}

/**
 * An increase round, told so that it fits every stitch count: "k1, M1R, knit to the last stitch, M1L, k1".
 * @param {Line} line
 */
export function sayIncrease(line) {
  const runs = line.halves[0];
  const widest = runs.reduce((most, run) => (run[1] > most[1] ? run : most), runs[0]);
  return runs.map((run) => (run === widest && run[1] > 1 ? words.toLast : sayRun(run))).join(', ');
}
