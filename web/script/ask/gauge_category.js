// Which category of yarn the swatch itself is of, whatever is chosen from the label.
import { firstStitches } from '../state.js';

/** @param {import('../ask.js').Answer} answer @param {import('../ask.js').Good} good @returns {number | undefined} nothing of a swatch that is nobody's own */
export function categoryOfGauge(answer, { state, request, plan }) {
  if (plan.gauge.from === 'label' || state.example[firstStitches]) return undefined;
  if (!plan.categoryGiven) return plan.category;
  const { category: _chosen, ...yarn } = request.yarn;
  const reply = answer('plan', { ...request, yarn });
  return reply.ok ? reply.plan.category : undefined;
}
