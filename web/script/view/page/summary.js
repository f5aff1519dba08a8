// The plan in a line: said aloud after a change, and kept in sight of a reader at the fields of a
// narrow page.
import { guessWords, pageWords } from '../../../words/en.js';
import { figuresIn } from '../figures.js';
import { guessMark, isGuess } from '../guess.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** What is said aloud: the answer, or what is wrong. @param {Showing} showing */
export function answerText(showing) {
  const { plan, problems, system } = showing;
  if (problems.length > 0) {
    const told = problems.map(({ name, text }) => `${name}: ${text}`);
    return [pageWords.problems(problems.length), ...told].join(' ');
  }
  const { yarn } = figuresIn(system);
  const answer = pageWords.answered(
    String(plan.stitchCount),
    String(plan.totalRounds),
    yarn(plan.yarn.mWithMargin),
  );
  return isGuess(showing, 'yarn') ? `${answer} ${guessWords.said}` : answer;
}

/** @param {Make} h @param {Showing} showing */
export function viewSummary(h, showing) {
  const { plan, problems, lastGood, system } = showing;
  const { yarn } = figuresIn(system);
  const { castOn, stitchCount, toe, totalRounds } = plan;
  const figures = pageWords.inShort(
    [castOn.wraps, stitchCount, toe.rounds, totalRounds].map(String),
    yarn(plan.yarn.mWithMargin),
  );
  return [
    problems.length > 0 && h('strong', {}, pageWords.lastGood(lastGood)),
    ...figures.map(([figure, what]) => h('span', {}, h('b', {}, figure), ` ${what}`)),
    guessMark(h, showing, 'yarn'),
  ];
}

/** @param {keyof typeof pageWords.trouble} code */
export const troubleText = (code) => pageWords.trouble[code];
