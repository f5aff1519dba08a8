// The stages of the rib: along the foot, tried on, up the leg, each widening, the cuff.
import { ribTrack } from '../../draw/rib_track.js';
import { formatCount } from '../../units.js';
import { drawingWords, planWords, stagesWords as words } from '../../../words/en.js';
import { figuresIn } from '../figures.js';
import { spansOf } from './knit_rib.js';
import { makesOf, sayCrossing, sayMakes, wideningsOf } from './knit_wider.js';
import { saySocks } from './lines.js';
import { lengthAt, partsOf, writeRib } from '../parts.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('./stages.js').Stage} Stage */

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

/** The rib up to the cuff, cut where it widens, and where it is tried on if that is before. @param {Showing} showing @returns {Stage[]} */
export function ribStages({ plan, system }) {
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
