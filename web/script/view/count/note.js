// The hand note: the five numbers a knitter writes on the back of her hand, and the next thing to do.
// Each with how far it may be off, and with its mark where it is a guess.
import { formatCount, formatPercent, formatTime } from '../../units.js';
import { noteWords as words } from '../../../words/en.js';
import { figuresIn } from '../figures.js';
import { sayMargin, takesIn } from '../give_or_take.js';
import { explainGuess, guessMark } from '../guess.js';
import { markLastGood } from '../page/page_state.js';
import { takeAlong } from '../paper/print_button.js';
import { opening } from './sum.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

// Each figure opens to how it came about.
const workingOf = {
  wraps: 'castOn',
  stitches: 'stitchCount',
  toe: 'toeRounds',
  rounds: 'totalRounds',
  yarn: 'mWithMargin',
  time: 'minutes',
  heelUse: 'heelUse',
};

/** @param {Make} h @param {Showing} showing */
export function viewNote(h, showing) {
  const { plan, system } = showing;
  const { length, yarn } = figuresIn(system);
  const take = takesIn(showing);
  const wraps = formatCount(plan.castOn.wraps);
  const margin = sayMargin(showing);
  /** @param {keyof typeof workingOf} name @param {string} label @param {string} figure @param {string} [more] */
  const line = (name, label, figure, more = '') => {
    const mark = guessMark(h, showing, name);
    return h(
      'div',
      {},
      h('dt', {}, label),
      h('dd', { class: 'figure' }, opening(h, figure, workingOf[name])),
      mark && h('dd', { class: 'mark-of' }, mark),
      more === '' ? null : h('dd', { class: 'take' }, more),
    );
  };
  return [
    h('h2', { class: 'unseen' }, words.title),
    markLastGood(h, showing) ?? h('p', { class: 'next' }, words.next(wraps)),
    h(
      'dl',
      { class: 'hand' },
      line('wraps', words.wraps, wraps),
      line(
        'stitches',
        words.stitches,
        formatCount(plan.stitchCount),
        words.girth(length(plan.finishedGirthMm), take.girth),
      ),
      line('toe', words.toe, formatCount(plan.toe.rounds)),
      line('rounds', words.rounds, formatCount(plan.totalRounds)),
      line('yarn', words.yarn, yarn(plan.yarn.mWithMargin), words.take(take.yarn)),
    ),
    h(
      'dl',
      { class: 'hand-more' },
      line('time', words.time, formatTime(plan.minutes), words.take(take.time)),
      line(
        'heelUse',
        words.heel,
        formatPercent(plan.heelUse),
        words.heelTake(take.heelUse, formatPercent(plan.passUse)),
      ),
    ),
    h('p', { class: 'aside' }, words.margin(margin)),
    explainGuess(h, showing),
    takeAlong(h),
  ];
}
