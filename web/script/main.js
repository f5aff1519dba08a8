// Wiring only: form -> request -> core -> reply -> drawing, one way, at every change.
import { startCore } from './core.js';
import {
  closeForm,
  examplesLeft,
  gatherProblems,
  listen,
  listenStretch,
  readDraft,
  saidOf,
  separatorIn,
  sheetOfLink,
  showForm,
  showWindow,
  tellGood,
  tellProblems,
  valuesOf,
} from './form.js';
import { listenForSaving } from './drawing_file.js';
import { listenExports } from './export.js';
import { openKeeper } from './save.js';
import { fragmentOf, leaveLink, listenLinks, listenSharing } from './share.js';
import { reduce, startState, windowOf } from './state.js';
import {
  answerText,
  copiedText,
  keepReadingOrder,
  keepScale,
  listenHow,
  listenMoments,
  listenPrinting,
  makeSheet,
  pointToShared,
  say,
  serveWorkings,
  showChart,
  showKept,
  showMoment,
  showPlan,
  showTrouble,
  troubleText,
} from './view.js';

/** @typedef {import('./state.js').State} State */

// A listener hears the answer once the hand rests, not at every key.
const restMs = 900;

function start() {
  const keeper = openKeeper(document);
  /** What there is to say of a link opened or made. @type {Pick<import('./view/kept.js').Kept, 'badLink' | 'made' | 'shared'>} */
  let link = { badLink: '' };
  let state = { ...startState(), ...keeper.sheet };
  /** @type {((question: string, request: unknown) => any) | undefined} not before the module has started */
  let answer;
  /** @type {{ state: State, request: Record<string, any>, plan: any, reply: any } | undefined} */
  let good;
  /** @type {import('./export.js').Copied | undefined} */
  let copied;
  /** @type {import('./form.js').Problem[]} */
  let problems = [];
  let trouble = '';
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting;
  const scaleFor = keepScale();

  /**
   * Beside a count that is none: the one that would be advised in its place.
   * @param {import('./form.js').Problem} problem @param {Record<string, any>} request
   */
  function withAdvice(problem, { stitchCount: _own, ...others }) {
    if (problem.code !== 'not_a_count') return problem;
    const reply = answer?.('plan', others);
    return reply?.ok ? { ...problem, advised: reply.plan.stitchCount } : problem;
  }

  /** Asks the core, if the draft is another one. @param {State} before */
  function ask(before) {
    if (!answer || (good && before.draft === state.draft)) return;
    const { request, problems: unread, locate } = readDraft(state.draft);
    try {
      const reply = answer('plan', request);
      const refused = (reply.ok ? [] : reply.problems).map(
        (/** @type {import('./form.js').Problem} */ problem) => withAdvice(problem, request),
      );
      problems = gatherProblems(unread, refused, locate);
      if (problems.length === 0) good = { state, request, plan: reply.plan, reply };
    } catch {
      trouble = troubleText('stopped');
    }
  }

  /** The plan that the page was delivered with. */
  function askExample() {
    const example = startState();
    const { request } = readDraft(example.draft);
    const reply = answer?.('plan', request);
    if (reply?.ok) good = { state: example, request, plan: reply.plan, reply };
  }

  function draw() {
    const told = tellProblems(problems, state);
    showMoment(document, state.moment);
    showForm(document, state, told);
    showKept(document, { ...keeper.tell(state), ...link, plan: good?.plan });
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
      scale: scaleFor(good.plan, good.request, state.isHeld),
      copied,
      trouble,
    };
    showPlan(document, showing);
    const window = windowOf(good.plan, state.window);
    showWindow(document, window, good.plan.totalRounds);
    showChart(document, showing, window);
    return showing;
  }

  /** What the address brings. What is her own stays kept beside it until she says otherwise. */
  function followLink() {
    const text = fragmentOf(document);
    if (!answer || text === '') return;
    const reply = answer('link', { version: 1, text });
    link = { badLink: reply.ok ? '' : reply.problems[0].code, made: reply.link?.echo };
    if (!reply.ok) {
      draw();
      return;
    }
    const hasOwn = keeper.sheet !== undefined || state.past.length > 0;
    const sheet = hasOwn ? keeper.visit(text, state) : undefined;
    if (!hasOwn) leaveLink(document);
    act({ type: 'opened', sheet: sheet ?? sheetOfLink(reply.link) });
  }

  /** What a link to this sock says. */
  function writeLink() {
    const { stitchCount, totalRounds } = good?.plan ?? {};
    const { moment: view, system } = state;
    const echo = problems.length === 0 ? { stitchCount, totalRounds } : undefined;
    const reply = answer?.('link', { version: 1, fields: saidOf(state), view, system, echo });
    return reply?.ok ? reply.link.text : '';
  }

  /** Said aloud a while after the last change, and not for the page's opening. @param {ReturnType<typeof draw>} showing */
  function sayLater(showing) {
    clearTimeout(resting);
    if (showing) resting = setTimeout(() => say(document, answerText(showing)), restMs);
  }

  const now = () => state;
  /** @type {ReturnType<typeof draw>} what is on the page */
  let drawn;
  /** @param {import('./state.js').Action} action */
  function act(action) {
    const before = state;
    state = reduce(state, action);
    // Of another sock than the one on the page now there is nothing to say.
    if (state.draft !== before.draft && action.type !== 'opened') link = { badLink: '' };
    if (action.type !== 'left') copied = undefined;
    keeper.keep(state);
    ask(before);
    drawn = draw();
    // A moment is said by its name; leaving a field, or coming back to the page, changes no answer.
    if (action.type === 'moment') clearTimeout(resting);
    else if (action.type !== 'left') sayLater(drawn);
  }
  keepReadingOrder(document);
  listenMoments(
    document,
    (moment) => act({ type: 'moment', moment }),
    (text) => say(document, text),
  );
  listen(document, now, act);
  listenStretch(document, now, act);
  keeper.listen(act, draw, () => leaveLink(document));
  listenLinks(document, followLink);
  listenSharing(document, writeLink, (shared) => {
    link = { ...link, shared };
    draw();
    pointToShared(document);
  });

  listenExports(
    document,
    () =>
      drawn && good && problems.length === 0 && trouble === ''
        ? { showing: drawn, reply: good.reply, separator: separatorIn(document) }
        : undefined,
    (text) => {
      copied = text;
      drawn = draw();
      say(document, copiedText(text));
    },
  );

  serveWorkings(document);
  listenPrinting(document, () => makeSheet(document, drawn));
  listenForSaving(document, () => say(document, troubleText('notPainted')));
  listenHow(document);

  // The fields are there before the module has started: what is typed meanwhile is kept, and asked then.
  void startCore().then((core) => {
    if (!core.ok) {
      closeForm(document);
      showTrouble(document, troubleText(core.code));
      return;
    }
    answer = core.answer;
    ask(state);
    // What was typed first may be no plan yet; the example's stays in view then, as the last good one.
    if (!good) askExample();
    drawn = draw();
    followLink();
    performance.mark('first-answer');
  });
}

start();
