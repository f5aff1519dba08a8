// Wiring only: form -> request -> core -> reply -> drawing, one way, at every change.
import { openAsking } from './ask.js';
import { startCore } from './core.js';
import {
  closeForm,
  listen,
  listenFile,
  listenStretch,
  readDraft,
  separatorIn,
  sheetOfRequest,
  showForm,
  showWindow,
  tellProblems,
} from './form.js';
import { listenForSaving } from './drawing_file.js';
import { listenExports, listenTakes } from './export.js';
import { standInFrame } from './frame.js';
import { linkOf, linkOfClass } from './link.js';
import { openHelping } from './main/helping.js';
import { linkFollower } from './main/link.js';
import { openForTheRoom } from './main/projector.js';
import { showingFor } from './main/showing.js';
import { openNeedles } from './needles.js';
import { watchOffline } from './offline.js';
import { openKeeper } from './save.js';
import { addressOf, leaveLink, listenLinks, listenSharing } from './share.js';
import { beginning, isOfPlace, reduce, startState, windowOf, withDesk } from './state.js';
import {
  answerText,
  copiedText,
  keepPassInSight,
  keepReadingOrder,
  keepScale,
  listenHow,
  listenMoments,
  listenPrinting,
  listenShelf,
  listenStages,
  pagesFor,
  pointToLink,
  say,
  sayPass,
  serveWorkings,
  showChart,
  showKept,
  showMoment,
  showNeedles,
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
  const asking = openAsking(() => draw());
  const isOpaque = standInFrame(document);
  /** What there is to say of a link opened or made. @type {Pick<import('./view/page/kept.js').Kept, 'badLink' | 'made' | 'shared' | 'isClassCopied'>} */
  let link = { badLink: '' };
  let state = { ...startState(), ...keeper.sheet, lesson: keeper.lesson };
  /** @type {import('./export.js').Copied | undefined} */
  let copied;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let resting;
  const scaleFor = keepScale();
  /** @type {ReturnType<typeof asking.beside>} */
  let beside = {};

  const addressNow = () => addressOf(document, linkOf(asking.answer(), state, asking.goodNow()));
  const classAddress = () => addressOf(document, linkOfClass(asking.answer(), state));

  /** What the plan's views are given. @param {import('./ask.js').Good} good */
  const showingOf = (good) =>
    showingFor(good, document, {
      state,
      asking,
      scaleFor,
      copied,
      beside,
      needles,
      isKept: keeper.tell().isKept,
    });

  /** @returns {import('./view/showing.js').Showing | undefined} what is on the page now */
  function drawPlan() {
    const good = asking.good();
    if (!good) return undefined;
    const showing = showingOf(good);
    try {
      showPlan(document, showing);
      const window = windowOf(good.plan, state.window);
      showWindow(document, window, good.plan.totalRounds);
      showChart(document, showing, window);
    } catch (error) {
      if (!asking.showSpare()) throw error;
      return drawPlan();
    }
    return showing;
  }

  /** What is on the page. @type {ReturnType<typeof drawPlan>} */
  let drawn;
  let pass = ''; // In hand, in words.
  function draw() {
    showMoment(document, state.moment);
    beside = asking.beside(state);
    const problems = Object.values(beside).flatMap((one) => one.problems);
    const all = withDesk(state);
    showForm(document, all, tellProblems([...asking.problems(), ...problems], all));
    drawn = drawPlan();
    const kept = { ...keeper.tell(), ...link, state, isOpaque, plan: asking.good()?.plan };
    showKept(document, kept, {
      socks: () => keeper.socks().map((sock) => ({ ...sock, plan: asking.planOf(sock.sheet) })),
      classLink: classAddress,
    });
    const place = isKnitting() ? drawn?.place : undefined;
    pass = drawn && place ? sayPass(drawn.plan, place) : '';
    needles.follow(pass);
  }

  /** Said aloud a while after the last change, and not for the page's opening. @param {import('./view/showing.js').Showing | undefined} showing */
  function sayLater(showing) {
    clearTimeout(resting);
    if (showing) resting = setTimeout(() => say(document, answerText(showing)), restMs);
  }

  const now = () => state;
  const isKnitting = () => state.started !== undefined && state.moment === 'knit';
  /** @param {import('./state.js').Action} action */
  function act(action) {
    const before = state;
    state = reduce(state, action);
    const isLink = 'isLink' in action;
    const isOther = /** @type {const} */ (['draft', 'started', 'locks', 'lesson']).some(
      (part) => state[part] !== before[part],
    );
    // Of another sock than the one on the page now there is nothing to say.
    if (isOther && !isLink) link = { badLink: '' };
    if (action.type !== 'left') copied = undefined;
    const place = keeper.keep(state, action.type === 'followed');
    if (place) {
      state = reduce(state, { type: 'followed', place, isLate: true });
      keeper.keep(state, true);
    }
    asking.ask(state, action.type === 'turned' ? undefined : before);
    draw();
    if (action.type === 'begun' && state.started) showNeedles(document);
    if (action.type === 'tapped') keepPassInSight(document);
    // A pass is said at once, a moment by its name; leaving a field, or coming back to the page, changes no answer.
    const isTap = isOfPlace(action) && state.started !== before.started;
    if (isTap && !needles.wishes().aloud) say(document, pass);
    if (action.type === 'moment' || isOfPlace(action)) clearTimeout(resting);
    else if (action.type !== 'left') sayLater(drawn);
  }
  const needles = openNeedles(document, {
    wishes: keeper.wishes,
    keep: keeper.keepWishes,
    act: (action) => act(action),
    show: () => draw(),
    isKnitting,
  });
  const followRoom = openForTheRoom(document, draw);
  keepReadingOrder(document);
  listenMoments(
    document,
    (moment) => act({ type: 'moment', moment }),
    (text) => say(document, text),
  );
  listen(document, now, act);
  listenStretch(document, now, act);
  const keeping = keeper.listen({
    act,
    show: draw,
    leave: () => leaveLink(document),
    requestOf: ({ draft, started }) => started?.request ?? readDraft(draft).request,
    sheetOf: sheetOfRequest,
    begun() {
      const good = asking.goodNow();
      const since = new Date().toISOString();
      return good && { ...beginning, request: good.request, reply: good.reply, since };
    },
  });
  const followLink = linkFollower(document, {
    answer: asking.answer,
    own: keeper.own,
    keeping,
    act,
    tell: (said) => void (link = said),
    show: draw,
  });
  listenFile(document, keeping.openFile);
  openHelping(document, asking.answer, act);
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

  const taken = () => {
    const good = asking.goodNow();
    return drawn && good && !asking.isStopped()
      ? { showing: drawn, reply: good.reply, separator: separatorIn(document) }
      : undefined;
  };
  listenExports(document, taken, (text) => {
    copied = text;
    draw();
    say(document, copiedText(text));
  });
  listenTakes(document, taken, (said) => say(document, said));

  serveWorkings(document);
  listenPrinting(
    document,
    pagesFor(document, () => drawn, { url: addressNow, counts: asking.atCounts }),
  );
  listenStages(document);
  listenForSaving(document, () => say(document, troubleText('notPainted')));
  listenHow(document);
  listenShelf(document, draw);

  // The fields are there before the module has started: what is typed meanwhile is kept, and asked then.
  void Promise.all([startCore(), keeping.recalled]).then(([core]) => {
    if (!core.ok) {
      closeForm(document);
      showTrouble(document, troubleText(core.code));
      return;
    }
    asking.start(core.answer, state);
    draw();
    followRoom();
    followLink();
    performance.mark('first-answer');
    watchOffline(document, (offline) =>
      showOffline(document, { ...offline, isKept: keeper.tell().isKept }),
    );
  });
}

start();
