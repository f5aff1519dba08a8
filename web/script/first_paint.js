// The page's first sight, made when it is built: the form, and the example's plan by the core itself.
import { buildForm, examplesLeft, readDraft, showForm, valuesOf } from './form.js';
import { startState } from './state.js';
import { showCare, showPlan } from './view.js';

/**
 * @param {Document} document
 * @param {(question: string, request: unknown) => any} answer
 */
export async function firstPaint(document, answer) {
  const state = startState();
  const { request } = readDraft(state.draft);
  const reply = answer('plan', request);
  if (!reply.ok) throw new Error(`the example is refused: ${JSON.stringify(reply.problems)}`);
  buildForm(document);
  showForm(document, state, []);
  showCare(document);
  showPlan(document, {
    plan: reply.plan,
    request,
    values: valuesOf(state),
    system: state.system,
    problems: [],
    lastGood: '',
    examples: examplesLeft(state),
    trouble: '',
  });
}
