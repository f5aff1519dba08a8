// The stages of the pair, from the cast-on to the band for giving: what to do at each, by the plan's own numbers.
import { formatCount } from '../../units.js';
import { planWords, stagesWords as words } from '../../../words/en.js';
import { splitWords } from '../buy/buy_yarn.js';
import { figuresIn } from '../figures.js';
import { sayRounds } from './knit_rib.js';
import { ribStages } from './stages_rib.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../showing.js').Showing} Showing */

/**
 * @typedef {object} Stage
 * @property {string} key
 * @property {string} title
 * @property {number} from rounds done when it begins
 * @property {number} to rounds done when it is over; equal to `from` where there is no round to it
 * @property {string[]} steps
 * @property {string[]} [drawing] the cards that show how
 * @property {{ to: string, text: string }} [link] where there is more of it
 */

/** "2–3, 5–6, 8": rounds counted from 1. @param {number[]} rounds from 0, ascending */
function sayList(rounds) {
  const first = rounds.filter((round) => !rounds.includes(round - 1));
  const last = rounds.filter((round) => !rounds.includes(round + 1));
  return first.map((round, i) => sayRounds(round + 1, last[i] + 1)).join(', ');
}

/** @param {Showing} showing @returns {Stage[]} */
function tipStages({ plan, system }) {
  const { yarn, mass } = figuresIn(system);
  const { passes, toe: toeWords } = planWords.knit;
  const { castOn, setUp } = words;
  const { mPerSock, gPerSock = 0 } = plan.yarn;
  const { rounds, sides } = plan.toe;
  const increases = sides.flatMap((side, j) => (side === 'none' ? [] : [j]));
  return [
    {
      key: 'castOn',
      title: castOn.title,
      from: 0,
      to: 0,
      steps: [
        castOn.yarn(yarn(mPerSock), mass(gPerSock)),
        `${splitWords(plan.yarn, figuresIn(system))} ${castOn.ends}`,
        ...castOn.steps(plan.castOn.wraps, plan.castOn.stitches),
      ],
      drawing: ['castOn'],
    },
    {
      key: 'setUp',
      title: setUp.title,
      from: 0,
      to: 1,
      steps: [setUp.knit, setUp.passes, passes.turn],
      drawing: ['round', 'turn'],
    },
    {
      key: 'toe',
      title: toeWords.title,
      from: 1,
      to: rounds,
      steps:
        increases.length === 0
          ? [toeWords.allPlain]
          : [words.toe.increase(sayList(increases), formatCount(plan.stitchCount)), toeWords.made],
      drawing: increases.length === 0 ? [] : ['m1r', 'm1l'],
      link: { to: 'knit-toe', text: words.table },
    },
    {
      key: 'measure',
      title: words.measure.title,
      from: rounds,
      to: rounds,
      steps: [words.measure.text],
      link: { to: 'measured', text: words.measure.link },
    },
  ];
}

/** @param {Showing} showing @returns {Stage[]} */
function lastStages({ plan, system }) {
  const { length, yarn } = figuresIn(system);
  const bindOff = plan.yarn.sections.find(({ section }) => section === 'bindOff')?.m ?? 0;
  const end = { from: plan.totalRounds, to: plan.totalRounds };
  return [
    {
      key: 'bindOff',
      title: words.bindOff.title,
      ...end,
      steps: words.bindOff.steps(yarn(bindOff)),
      drawing: ['bindOff'],
    },
    { key: 'finish', title: words.finish.title, ...end, steps: [words.finish.text] },
    {
      key: 'again',
      title: words.again.title,
      ...end,
      steps: [
        words.again.text(
          length(plan.lengthMm),
          length(plan.restGirthMm),
          length(plan.finishedGirthMm),
        ),
      ],
      link: { to: 'socks', text: words.again.link },
    },
    { key: 'give', title: words.give.title, ...end, steps: [words.give.text] },
  ];
}

/** @param {Showing} showing */
export function stagesOf(showing) {
  const { plan, system } = showing;
  const isPause = new Set(['castOn', 'measure', 'tryOn']);
  const stages = [...tipStages(showing), ...ribStages(showing)]
    .filter(({ key, from, to }) => from < to || isPause.has(key))
    // Where it widens below the heel, it is tried on later than that.
    .sort((one, other) => one.from - other.from || one.to - other.to);
  const last = figuresIn(system).yarn(plan.yarn.mOfLastRound);
  stageOfRound(stages, plan.totalRounds - 1)?.steps.push(words.enough(last));
  return [...stages, ...lastStages(showing)];
}

/** The stage that a round is worked in. @param {Stage[]} stages @param {number} round from 0 */
export const stageOfRound = (stages, round) =>
  stages.find(({ from, to }) => from <= round && round < to);

/**
 * The stage a place is in: before a round is begun, what comes before it.
 * @param {Stage[]} stages @param {{ round: number, pass: number }} place rounds done, and passes done of the next
 */
export const stageAt = (stages, { round, pass }) =>
  (pass === 0 && stages.find(({ from, to }) => from === to && from === round)) ||
  stageOfRound(stages, round) ||
  stages.find(({ key }) => key === 'bindOff');
