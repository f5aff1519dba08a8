// How far each figure may be off, in the reader's units.
import { formatPercent, formatTime } from '../units.js';
import { figuresIn } from './figures.js';

/** @typedef {import('./showing.js').Showing} Showing */

/** @param {Pick<Showing, 'plan' | 'system'>} showing */
export function takesIn({ plan, system }) {
  const { length, yarn } = figuresIn(system);
  return {
    girth: length(plan.finishedGirthMm * plan.girthError),
    yarn: yarn(plan.yarn.mWithMargin * plan.yarn.relativeError),
    // As coarse as the time itself is told.
    time: formatTime(plan.minutes * plan.minutesError, plan.minutes),
    heelUse: formatPercent(plan.heelUse * plan.heelUseError),
  };
}

/** What is bought to spare, as a share of the pair's yarn. @param {Pick<Showing, 'plan'>} showing */
export const sayMargin = ({ plan }) =>
  formatPercent(plan.working.find(({ figure }) => figure === 'mWithMargin')?.numbers.margin ?? 0);
