// The page's first sight, made when it is built: the form, and the example's plan by the core itself.
import { buildForm, examplesLeft, readDraft, showForm, valuesOf } from './form.js';
import { startState } from './state.js';
import { showFixed, showPlan } from './view.js';
import { showHow, showWorks } from './view/page/how.js';

// What lies below the first screen waits for the page's own first answer: a kilobyte of it is a tenth of a
// second on a slow line, and nobody has scrolled there by then. The same for every stretch line but a
// phone's, where it is in the first view.
const later = ['working', 'strip', 'scatter', 'two-ways', 'substitute', 'along']
  .map((name) => `[data-view="${name}"] > *`)
  .concat('[data-view="choices"] :is(.middle-only, .wide-only)');

/**
 * @param {Document} document
 * @param {(question: string, request: unknown) => any} answer
 */
export async function firstPaint(document, answer) {
  const state = startState();
  const { request } = readDraft(state.draft);
  const reply = answer('plan', request);
  if (!reply.ok) throw new Error(`the example is refused: ${JSON.stringify(reply.problems)}`);
  // What is fixed has a place for fields in it.
  showFixed(document);
  buildForm(document);
  showForm(document, state, []);
  showHow(document);
  showWorks(document);
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
  for (const node of document.querySelectorAll(later.join())) node.remove();
}
