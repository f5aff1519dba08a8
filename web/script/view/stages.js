// The stages of the pair, from the cast-on to the band for giving: what to do at each, by the plan's own numbers.
import { ribTrack } from '../draw/rib_track.js';
import { formatCount } from '../units.js';
import { drawingWords, planWords, stagesWords as words } from '../../words/en.js';
import { splitWords } from './buy_yarn.js';
import { figuresIn } from './figures.js';
import { sayRounds, spansOf } from './knit_rib.js';
import { makesOf, sayCrossing, sayMakes, wideningsOf } from './knit_wider.js';
import { saySocks } from './lines.js';
import { lengthAt, partsOf, writeRib } from './parts.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./showing.js').Showing} Showing */

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

/** Which way the rib moves, or '' for one that stands straight. @param {Plan} plan */
export function wayOf({ rib, spiral }) {
  if (rib.roundsPerShift === 0) return '';
  return spiral.pitchDeg === undefined ? 'change' : rib.lean;
}

/** The rounds in which the rib moves, from 0. @param {Plan} plan */
export const movesOf = (plan) =>
  ribTrack(plan, false)
    .filter(({ isMove }) => isMove)
    .map(({ from }) => from);

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

/** The rib up to the cuff, cut where it widens, and where it is tried on if that is before. @param {Showing} showing @returns {Stage[]} */
function ribStages({ plan, system }) {
  const { toe, tryOnRound } = plan;
  const wider = wideningsOf(plan);
  const cuff = partsOf(plan).find(({ section }) => section === 'cuff')?.from ?? plan.totalRounds;
  const straightEnd = wider[0]?.widening.from ?? cuff;
  const end = Math.min(tryOnRound, straightEnd);
  const way = wayOf(plan);
  const moves = movesOf(plan);
  const [first] = spansOf(plan, 'spiral');
  const every = drawingWords.rounds(plan.rib.roundsPerShift);
  const lines = (/** @type {Plan['rounds'][number]} */ span) => saySocks(plan, span).join(' ');
  return [
    {
      key: 'rib',
      title: words.rib.title,
      from: toe.rounds,
      to: end,
      steps: [
        first ? `${words.rib.first(toe.rounds + 1)} ${lines(first)}` : '',
        planWords.knit.rib.forward,
        way !== '' && moves.length > 0
          ? words.rib.lean[way](
              plan.rib.roundsPerShift === 1 ? planWords.knit.rib.everyRound : every,
              moves[0] + 1,
            )
          : '',
      ].filter(Boolean),
      drawing: way === '' ? [] : ['rib'],
      link: { to: 'knit-rib', text: words.table },
    },
    {
      key: 'tryOn',
      title: words.tryOn.title,
      from: tryOnRound,
      to: tryOnRound,
      steps: [words.tryOn.text(figuresIn(system).length(lengthAt(plan, tryOnRound)))],
      drawing: ['tryOn'],
    },
    {
      key: 'leg',
      title: words.leg.title,
      from: end,
      to: straightEnd,
      steps: [
        words.leg.on,
        moves.length > 0 ? words.leg.last(moves[moves.length - 1] + 1) : '',
      ].filter(Boolean),
      link: { to: 'knit-rib', text: words.table },
    },
    ...wider.map(({ stage, widening }, i) => ({
      key: `wider${i}`,
      title: planWords.knit.wider.stage(writeRib(stage), formatCount(stage.stitches)),
      from: widening.from,
      to: wider[i + 1]?.widening.from ?? cuff,
      steps: [
        `${words.wider.first(widening.from + 1)} ${lines(widening)}`,
        ...sayMakes(makesOf(plan, [widening])),
        stage.crossing ? sayCrossing(plan, stage.crossing) : '',
      ].filter(Boolean),
      drawing: makesOf(plan, [widening]),
      link: { to: 'knit-wider', text: words.table },
    })),
    {
      key: 'cuff',
      title: words.cuff.title,
      from: cuff,
      to: plan.totalRounds,
      steps: [words.cuff.text],
      link: { to: 'knit-cuff', text: words.table },
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
