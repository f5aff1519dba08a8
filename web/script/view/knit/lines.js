// Lines of knitting as people say them: "p1, *k2, p2* 4 times, k2, p1".
import { planWords } from '../../../words/en.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {Plan['lines'][number]} Line */

const words = planWords.knit;

export const sayRun = (/** @type {readonly [string, number]} */ [work, times]) =>
  work === 'k' || work === 'p' ? `${words.work[work]}${times}` : (words.work[work] ?? work);

/** @typedef {ReadonlyArray<readonly [string, number]>} Runs */

const isRun = (
  /** @type {Runs[number]} */ [work, times],
  /** @type {Runs[number] | undefined} */ other,
) => other !== undefined && work === other[0] && times === other[1];

/** How often a group of runs, from a place on, is worked without a break. @param {Runs} runs @param {number} start @param {number} long */
function timesOver(runs, start, long) {
  let times = 1;
  while (
    runs.slice(start, start + long).every((run, i) => isRun(run, runs[start + times * long + i]))
  )
    times += 1;
  return times;
}

/**
 * A widening round's repeats are three or four runs long: folded here, for the reply folds pairs.
 * @param {Runs} runs
 */
function foldMade(runs) {
  let best = { start: 0, long: runs.length, times: 1 };
  for (const long of [3, 4]) {
    for (let start = 0; start + 2 * long <= runs.length; start += 1) {
      const times = timesOver(runs, start, long);
      if (times > 1 && times * long > best.times * best.long * (best.times > 1 ? 1 : 0))
        best = { start, long, times };
    }
  }
  const say = (/** @type {Runs} */ some) => some.map(sayRun).join(', ');
  if (best.times === 1) return say(runs);
  const { start, long, times } = best;
  return [
    say(runs.slice(0, start)),
    words.times(say(runs.slice(start, start + long)), times),
    say(runs.slice(start + long * times)),
  ]
    .filter(Boolean)
    .join(', ');
}

/** One half, told. @param {Line} line @param {0 | 1} half */
export function sayHalf(line, half) {
  const runs = line.halves[half];
  const [first, ...others] = runs;
  if (others.length === 0 && words.allHalf[first[0]]) return words.allHalf[first[0]];
  if (runs.some(([work]) => work.startsWith('m1'))) return foldMade(runs);
  return line.told[half]
    .map(({ runs: folded, times }) => {
      const said = folded.map(sayRun).join(', ');
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

/** A run of rounds, told for each sock where they differ. @param {Plan} plan @param {{ line: number, secondLine?: number }} span */
export function saySocks(plan, { line, secondLine }) {
  const a = sayHalves(plan.lines[line]);
  if (secondLine === undefined) return [words.cuff.halves('', a)];
  return [
    words.cuff.halves(words.rib.sockA, a),
    words.cuff.halves(words.rib.sockB, sayHalves(plan.lines[secondLine])),
  ];
}

/**
 * A half of an increase round, told so that it fits every stitch count: "k1, M1R, knit to the last stitch, M1L, k1".
 * @param {Line} line @param {0 | 1} half
 */
export function sayIncrease(line, half) {
  const runs = line.halves[half];
  const widest = runs.reduce((most, run) => (run[1] > most[1] ? run : most), runs[0]);
  const toEnd = runs[runs.length - 1] === widest ? words.toEnd : words.toLast;
  return runs.map((run) => (run === widest && run[1] > 1 ? toEnd : sayRun(run))).join(', ');
}
