// A pass as it is read aloud: no letters and stars, but the words they stand for.
import { needlesWords as words } from '../../../words/en.js';
import { passesOf, runAt } from './needles_round.js';

/** @typedef {import('../../contract.js').Plan} Plan */

const { spoken } = words;

const sayCount = (/** @type {number} */ n) => spoken.counts[n] ?? String(n);

/** @param {readonly [string, number]} run */
const sayRun = ([work, times]) =>
  work === 'k' || work === 'p' ? `${spoken.work[work]} ${sayCount(times)}` : spoken.work[work];

/** @param {Plan['lines'][number]} line @param {0 | 1} half */
function sayLine(line, half) {
  const [[work], ...others] = line.halves[half];
  if (others.length === 0 && spoken.allHalf[work]) return spoken.allHalf[work];
  return line.told[half]
    .map(({ runs, times }) =>
      times === 1
        ? runs.map(sayRun).join(', ')
        : spoken.times(runs.map(sayRun).join(' '), sayCount(times)),
    )
    .join(', then ');
}

/** What to do now. @param {Plan} plan @param {{ round: number, pass: number }} place */
export function sayPass(plan, { round, pass }) {
  const run = runAt(plan, round);
  if (!run) return words.done;
  const { sock, half } = words.pass[pass];
  const { line, half: side } = passesOf(plan, run)[pass];
  // Before the third pass, and before the next round, the needles are turned.
  const before = pass === 0 ? spoken.round(String(round + 1)) : '';
  const turn = pass === 2 || (pass === 0 && round > 0) ? spoken.turn : '';
  return [turn, before, spoken.pass(sock, half, sayLine(line, side))].filter(Boolean).join(' ');
}
