// The one thing to do before a round or in it, beyond its lines.
import { formatCount } from '../../units.js';
import { planWords, stagesWords as words } from '../../../words/en.js';
import { figuresIn } from '../figures.js';
import { makesOf, sayCrossing, sayMakes, wideningsOf } from './knit_wider.js';
import { movesOf, wayOf } from './stages_rib.js';

/**
 * What comes before a round, or is done in it, told beside its lines; '' for a round like the one before.
 * @param {Pick<import('../showing.js').Showing, 'plan' | 'system'>} showing
 * @param {number} round the one in hand, from 0: as many as are done
 */
export function sayStage({ plan, system }, round) {
  const { toe, totalRounds, tryOnRound, cuff } = plan;
  if (round >= totalRounds) return words.bindOff.say;
  const wider = wideningsOf(plan).find(({ widening }) => widening.from === round);
  const way = wayOf(plan);
  return [
    round === 0 && words.castOn.say(plan.castOn.wraps),
    round === toe.rounds && words.measure.say,
    round === tryOnRound && words.tryOn.say,
    round < toe.rounds && toe.sides[round] !== 'none' && planWords.knit.toe.made,
    round === toe.rounds && words.rib.say,
    way !== '' && movesOf(plan).includes(round) && words.rib.move[way],
    ...(wider
      ? [
          words.wider.say(formatCount(wider.stage.stitches)),
          ...sayMakes(makesOf(plan, [wider.widening])),
          wider.stage.crossing ? sayCrossing(plan, wider.stage.crossing) : '',
        ]
      : []),
    cuff.rounds > 0 && round === totalRounds - cuff.rounds && words.cuff.say,
    round === totalRounds - 1 && words.sayLast(figuresIn(system).yarn(plan.yarn.mOfLastRound)),
  ]
    .filter(Boolean)
    .join(' ');
}
