// A pass as it is read aloud: no letters and stars, but the words they stand for.
import { needlesWords as words } from '../../words/en.js';
import { passesOf, runAt } from './needles_round.js';

/** @typedef {import('../contract.js').Plan} Plan */

const { spoken } = words;

/** @param {readonly [string, number]} run */
const sayRun = ([work, times]) => {
  const name =
    /** @type {Record<string, string>} */ (/** @type {unknown} */ (spoken))[work] ?? work;
  return work === 'k' || work === 'p' ? `${name} ${times}` : name;
};

/** @param {Plan['lines'][number]} line @param {0 | 1} half */
function sayLine(line, half) {
  const runs = line.halves[half];
  if (runs.length === 1 && spoken.allHalf[runs[0][0]]) return spoken.allHalf[runs[0][0]];
  return line.told[half]
    .map(({ runs: folded, times }) => {
      const said = folded.map(sayRun).join(', ');
      return times === 1 ? said : spoken.times(said, times);
    })
    .join('; ');
}

/** What to do now, or '' where all is knit. @param {Plan} plan @param {{ round: number, pass: number }} place */
export function sayPass(plan, { round, pass }) {
  const run = runAt(plan, round);
  if (!run) return words.done;
  const { sock, half } = words.pass[pass];
  const { line, half: side } = passesOf(plan, run)[pass];
  return [
    pass === 0 ? spoken.round(String(round + 1)) : pass === 2 ? spoken.turn : '',
    spoken.pass(sock, half, sayLine(line, side)),
  ]
    .filter(Boolean)
    .join(' ');
}
