// Asks the core about a sock, as its draft has it or as it was begun.
import { gatherProblems, readDraft } from './form.js';
import { planOfBegun, startState } from './state.js';

/** @typedef {import('./state.js').State} State */
/** @typedef {(question: string, request: unknown) => any} Answer */
/** @typedef {import('./form.js').Problem} Problem */

/**
 * @typedef {object} Good a plan that can be shown
 * @property {State} state what it was made of
 * @property {Record<string, any>} request
 * @property {Record<string, any>} reply
 * @property {import('./contract.js').Plan} plan
 * @property {import('./contract.js').Plan} [spare] of a begun sock by other rules: what they make of it today
 * @property {boolean} [isRemade] whether a begun sock cannot be shown as it was begun
 */

/** @param {Answer} answer @returns {Good} the plan that the page was delivered with */
export function askExample(answer) {
  const state = startState();
  const { request } = readDraft(state.draft);
  const reply = answer('plan', request);
  return { state, request, reply, plan: reply.plan };
}

/**
 * Beside a count that is none: the one that would be advised in its place.
 * @param {Answer} answer @param {Problem} problem @param {Record<string, any>} request
 */
function withAdvice(answer, problem, { stitchCount: _own, ...others }) {
  if (problem.code !== 'not_a_count') return problem;
  const reply = answer('plan', others);
  return reply.ok ? { ...problem, advised: reply.plan.stitchCount } : problem;
}

/** @param {Answer} answer @param {State} state @returns {{ good?: Good, problems: Problem[] }} */
export function askFor(answer, state) {
  if (state.started) {
    const { request, reply } = state.started;
    const today = answer('plan', request);
    const shown = planOfBegun(state.started, today, askExample(answer).reply);
    return { good: { state, request, reply, ...shown }, problems: [] };
  }
  const { request, problems: unread, locate } = readDraft(state.draft);
  const reply = answer('plan', request);
  const refused = (reply.ok ? [] : reply.problems).map((/** @type {Problem} */ problem) =>
    withAdvice(answer, problem, request),
  );
  const problems = gatherProblems(unread, refused, locate);
  return problems.length === 0
    ? { good: { state, request, reply, plan: reply.plan }, problems }
    : { problems };
}
