// Wiring only: form -> request -> core -> reply -> drawing, one way, at every change.
import { startCore } from './core.js';
import {
  closeForm,
  examplesLeft,
  gatherProblems,
  listen,
  readDraft,
  showForm,
  tellGood,
  tellProblems,
  valuesOf,
} from './form.js';
import { reduce, startState } from './state.js';
import { answerText, say, showPlan, showTrouble, troubleText } from './view.js';

/** @typedef {import('./state.js').State} State */

// A listener hears the answer once the hand rests, not at every key.
const restMs = 900;

/** @param {(question: string, request: unknown) => any} answer */
function begin(answer) {
  let state = startState();
  /** @type {{ state: State, request: Record<string, any>, plan: any } | undefined} */
  let good;
  /** @type {import('./form.js').Problem[]} */
  let problems = [];
  let trouble = '';
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting;

  /** Asks the core, if the draft is another one. @param {State} before */
  function ask(before) {
    if (good && before.draft === state.draft) return;
    const { request, problems: unread, locate } = readDraft(state.draft);
    try {
      const reply = answer('plan', request);
      problems = gatherProblems(unread, reply.ok ? [] : reply.problems, locate);
      if (problems.length === 0) good = { state, request, plan: reply.plan };
    } catch {
      trouble = troubleText('stopped');
    }
  }

  function draw() {
    const told = tellProblems(problems, state);
    showForm(document, state, told);
    if (!good) return undefined;
    const showing = {
      plan: good.plan,
      request: good.request,
      // The sentence says what the drawing shows: of the last good plan, in today's units.
      values: valuesOf({ ...good.state, shown: state.shown, system: state.system }),
      system: state.system,
      problems: told,
      lastGood: tellGood(told, good.state).join(', '),
      examples: examplesLeft(state),
      trouble,
    };
    showPlan(document, showing);
    return showing;
  }

  /** Said aloud a while after the last change, and not for the page's opening. @param {ReturnType<typeof draw>} showing */
  function sayLater(showing) {
    clearTimeout(resting);
    if (showing) resting = setTimeout(() => say(document, answerText(showing)), restMs);
  }

  listen(
    document,
    () => state,
    (action) => {
      const before = state;
      state = reduce(state, action);
      ask(before);
      sayLater(draw());
    },
  );
  ask(state);
  draw();
  performance.mark('first-answer');
}

async function start() {
  const core = await startCore();
  if (core.ok) begin(core.answer);
  else {
    closeForm(document);
    showTrouble(document, troubleText(core.code));
  }
}

void start();
