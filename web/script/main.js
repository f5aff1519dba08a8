// Wiring only: form -> request -> core -> reply -> drawing, one way, at every change.
import { askExample, askFor } from './ask.js';
import { startCore } from './core.js';
import {
  closeForm,
  examplesLeft,
  listen,
  listenStretch,
  readDraft,
  separatorIn,
  sheetOfRequest,
  showForm,
  showWindow,
  tellGood,
  tellProblems,
  valuesOf,
} from './form.js';
import { listenForSaving } from './drawing_file.js';
import { listenExports } from './export.js';
import { standInFrame } from './frame.js';
import { linkOf, linkOfClass, openLink } from './link.js';
import { watchOffline } from './offline.js';
import { openKeeper } from './save.js';
import { addressOf, fragmentOf, leaveLink, listenLinks, listenSharing } from './share.js';
import { isUntouched, reduce, startState, windowOf } from './state.js';
import {
  answerText,
  copiedText,
  keepReadingOrder,
  keepScale,
  listenHow,
  listenMoments,
  listenPrinting,
  listenShelf,
  makeSheet,
  pointToLink,
  say,
  serveWorkings,
  showChart,
  showKept,
  showMoment,
  showOffline,
  showPlan,
  showTrouble,
  troubleText,
} from './view.js';

/** @typedef {import('./state.js').State} State */

// A listener hears the answer once the hand rests, not at every key.
const restMs = 900;

function start() {
  const keeper = openKeeper(document);
  const isOpaque = standInFrame(document);
  /** What there is to say of a link opened or made. @type {Pick<import('./view/kept.js').Kept, 'badLink' | 'made' | 'shared' | 'isClassCopied'>} */
  let link = { badLink: '' };
  let state = { ...startState(), ...keeper.sheet, lesson: keeper.lesson };
  /** @type {import('./ask.js').Answer | undefined} not before the module has started */
  let answer;
  /** @type {import('./ask.js').Good | undefined} */
  let good;
  /** @type {import('./export.js').Copied | undefined} */
  let copied;
  /** @type {import('./form.js').Problem[]} */
  let problems = [];
  let trouble = '';
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting;
  const scaleFor = keepScale();

  /** Asks the core, if it is another sock. @param {State} before */
  function ask(before) {
    const isSame = before.draft === state.draft && before.started === state.started;
    if (!answer || (good && isSame)) return;
    try {
      const asked = askFor(answer, state);
      problems = asked.problems;
      good = asked.good ?? good;
    } catch {
      trouble = troubleText('stopped');
    }
  }

  /** The plan of a sock that is not on the page. @param {Partial<State>} sheet */
  function planOf(sheet) {
    try {
      return answer && askFor(answer, { ...startState(), ...sheet }).good?.plan;
    } catch {
      return undefined;
    }
  }

  const goodNow = () => (problems.length === 0 ? good : undefined);
  const addressNow = () => addressOf(document, linkOf(answer, state, goodNow()));
  const classAddress = () => addressOf(document, linkOfClass(answer, state));

  /** @returns {import('./view/showing.js').Showing | undefined} what is on the page now */
  function draw() {
    const told = tellProblems(problems, state);
    showMoment(document, state.moment);
    showForm(document, state, told);
    const { plan, isRemade } = good ?? {};
    const kept = { ...keeper.tell(), ...link, state, isOpaque, plan, isRemade };
    showKept(document, kept, {
      socks: () => keeper.socks().map((sock) => ({ ...sock, plan: planOf(sock.sheet) })),
      classLink: classAddress,
    });
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
      name: state.name,
      isBegun: state.started !== undefined,
    };
    try {
      showPlan(document, showing);
      const window = windowOf(good.plan, state.window);
      showWindow(document, window, good.plan.totalRounds);
      showChart(document, showing, window);
    } catch (error) {
      // What was kept of a begun sock looks like a plan and is none.
      if (!good.spare) throw error;
      good = { ...good, plan: good.spare, spare: undefined, isRemade: true };
      return draw();
    }
    return showing;
  }

  /** What the address brings. What is her own stays kept beside it until she says otherwise. */
  function followLink() {
    const text = fragmentOf(document);
    if (!answer || text === '') return;
    const opened = openLink(answer, text, state);
    link = { badLink: opened.problem ?? '', made: opened.made };
    if (!opened.sheet) {
      draw();
      return;
    }
    const sheet = isUntouched(state) ? undefined : keeper.visit(text, state);
    if (isUntouched(state)) leaveLink(document);
    act({ type: 'opened', sheet: sheet ?? opened.sheet });
  }

  /** Said aloud a while after the last change, and not for the page's opening. @param {import('./view/showing.js').Showing | undefined} showing */
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
    const { draft, started, lesson } = before;
    const isOther = state.draft !== draft || state.started !== started || state.lesson !== lesson;
    if (isOther && action.type !== 'opened') link = { badLink: '' };
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
  keeper.listen({
    act,
    show: draw,
    leave: () => leaveLink(document),
    requestOf: ({ draft, started }) => started?.request ?? readDraft(draft).request,
    sheetOf: sheetOfRequest,
    begun() {
      const plan = goodNow();
      return plan && { request: plan.request, reply: plan.reply, round: 0, pass: 0 };
    },
  });
  listenLinks(document, followLink);
  listenSharing(
    document,
    (what) => (what === 'class' ? classAddress() : addressNow()),
    (shared, what) => {
      const said = what === 'class' ? { isClassCopied: shared.isCopied } : { shared };
      link = { ...link, ...said };
      draw();
      pointToLink(document, what);
    },
  );

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
  listenPrinting(document, () => makeSheet(document, drawn, addressNow()));
  listenForSaving(document, () => say(document, troubleText('notPainted')));
  listenHow(document);
  listenShelf(document, draw);

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
    good ??= askExample(answer);
    drawn = draw();
    followLink();
    performance.mark('first-answer');
    watchOffline(document, (offline) =>
      showOffline(document, { ...offline, isKept: keeper.tell().isKept }),
    );
  });
}

start();
