// Asks the core about a sock, as its draft has it or as it was begun.
import { besidePieces, besidePlaces, besideRequests } from './ask/beside.js';
import { openDesk } from './ask/desk.js';
import { categoryOfGauge } from './ask/gauge_category.js';
import { askPlace } from './ask/place.js';
import { gatherProblems, readBeside, readDraft } from './form.js';
import { replyOfBegun, startState, withDesk } from './state.js';

/** @typedef {import('./state.js').State} State */
/** @typedef {(question: string, request: unknown) => any} Answer */
/** @typedef {import('./form.js').Problem} Problem */

/**
 * @typedef {object} Good a plan that can be shown
 * @property {State} state what it was made of
 * @property {Record<string, any>} request
 * @property {Record<string, any>} reply
 * @property {import('./contract.js').Plan} plan
 * @property {Record<string, any>} [today] of a begun sock: the core's reply to the same request now
 * @property {Record<string, any>} [spare] of a begun sock by other rules: today's reply, should the plan turn out to be none
 * @property {boolean} [isRemade] whether a begun sock cannot be shown as it was begun
 */

// On a sheet for a whole class: fewer go round no foot in the thickest yarn, more are for the finest.
const leastOffered = 24;
const mostOffered = 80;

/** @param {Answer} answer @returns {Good} the plan that the page was delivered with */
function askExample(answer) {
  const state = startState();
  const { request } = readDraft(state.draft);
  const reply = answer('plan', request);
  return { state, request, reply, plan: reply.plan };
}

/** A sock on the needles, as it was begun. @param {Answer} answer @param {State} state @returns {Good | undefined} */
function askBegun(answer, state) {
  const begun = /** @type {NonNullable<State['started']>} */ (state.started);
  const { request } = begun;
  const today = answer('plan', request);
  // Only its shape is looked at, and only where the rules have changed.
  const sample = today.ok || begun.reply.rules === today.rules ? today : askExample(answer).reply;
  const { reply, spare, isRemade } = replyOfBegun(begun, today, sample);
  return reply && { state, request, reply, plan: reply.plan, today, spare, isRemade };
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
function askFor(answer, state) {
  const begun = state.started && askBegun(answer, state);
  if (begun) return { good: begun, problems: [] };
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

/**
 * @typedef {{ reply?: any, problems: Problem[], refused?: Problem[], request?: any, about?: any, next?: any, said?: any, isLate?: boolean, isOld?: boolean }} Beside the
 *   core's reply where it has one, else what is in its way; of the desk's questions also the request that was answered, what goes with
 *   it (`about`), what is wrong with a sock that is not on the page, whether another answer is on its way (`next` goes with
 *   that), and what was typed for it, with what is no part of the request (`said`); `isOld`, where it answers what
 *   was typed before something could not be read
 */

/**
 * Asks another question than the plan's about a sock, where anything was typed for it.
 * @param {Answer} answer @param {Good} good @param {State['draft']} draft
 * @returns {(asked: [string, import('./ask/beside.js').Make]) => [string, Beside]}
 */
const askBeside =
  (answer, good, draft) =>
  ([question, make]) => {
    const asks = /** @type {keyof typeof besideRequests} */ (question);
    const { said, isEmpty, problems } = readBeside(draft, asks);
    if (isEmpty) return [question, { problems: [] }];
    // Nothing that can be read: there is nothing to ask.
    if (Object.keys(said).length === 0) return [question, { problems }];
    const replies = besidePieces(question, said).map((piece) =>
      answer(question, make(good, piece)),
    );
    const refused = replies.flatMap((reply) => (reply.ok ? [] : reply.problems));
    const all = gatherProblems(problems, refused, besidePlaces[asks] ?? ((pointer) => pointer));
    const told = replies.filter(({ ok }) => ok).map((reply) => reply[question]);
    const reply = told.length > 0 ? Object.assign({}, ...told) : undefined;
    return [question, { reply, problems: all }];
  };

/** What the page has asked, and what it shows of the answers. @param {() => void} show called when an answer can be had that was waited for */
export function openAsking(show) {
  /** @type {Answer | undefined} not before the module has started */
  let answer;
  /** @type {Good | undefined} */
  let good;
  /** @type {Problem[]} */
  let problems = [];
  let isStopped = false;
  /** Plans of socks that are not on the page. @type {WeakMap<object, import('./contract.js').Plan | undefined>} */
  const others = new WeakMap();
  const desk = openDesk(show);

  return {
    /** @param {Answer} core @param {State} state */
    start(core, state) {
      answer = core;
      this.ask(state);
    },

    answer: () => answer,
    /** The last good plan. */
    good: () => good,
    /** The plan, where nothing is to be mended. */
    goodNow: () => (problems.length === 0 ? good : undefined),
    problems: () => problems,
    isStopped: () => isStopped,

    /** Asks the core, if it is another draft. @param {State} state @param {State} [before] what was asked last, of the same sock */
    ask(state, before) {
      const isSame =
        before?.draft === state.draft && before.started?.request === state.started?.request;
      if (good && isSame) good = { ...good, state: { ...good.state, started: state.started } };
      if (!answer || isSame) return;
      try {
        const asked = askFor(answer, state);
        problems = asked.problems;
        // Of another sock than the last one nothing good is known yet: the example's stays in view then.
        good = asked.good ?? (before && good) ?? askExample(answer);
      } catch {
        isStopped = true;
      }
    },

    /** What there is to say of the place the sock is knit to. */
    place: () => (answer && good && !isStopped ? askPlace(answer, good) : undefined),

    /** The sock at every count, both halves alike, that feet from a child's to a broad man's take. */
    atCounts() {
      if (!answer || !good) return [];
      const { request, plan } = good;
      const repeats = 2 * (plan.rib.knit + plan.rib.purl);
      /** @type {import('./contract.js').Plan[]} */
      const plans = [];
      for (let stitchCount = repeats; stitchCount <= mostOffered; stitchCount += repeats) {
        if (stitchCount < leastOffered) continue;
        const reply = answer('plan', { ...request, stitchCount });
        if (reply.ok) plans.push(reply.plan);
      }
      return plans;
    },

    /** What was asked beside the plan, by question. @param {State} state @returns {Record<string, Beside>} */
    beside(state) {
      if (!answer || !good || isStopped) return {};
      try {
        const ask = askBeside(answer, good, state.draft);
        const ofSock = Object.fromEntries(Object.entries(besideRequests).map(ask));
        if (state.course.yarns.length > 0)
          ofSock.classYarns = { reply: categoryOfGauge(answer, good), problems: [] };
        return state.moment === 'class'
          ? { ...ofSock, ...desk.ask(answer, good, withDesk(state)) }
          : ofSock;
      } catch {
        isStopped = true;
        return {};
      }
    },

    /** What was kept of a begun sock looks like a plan and is none. @returns {boolean} whether there is another to show */
    showSpare() {
      if (!good?.spare) return false;
      good = {
        ...good,
        reply: good.spare,
        plan: good.spare.plan,
        spare: undefined,
        isRemade: true,
      };
      return true;
    },

    /** The plan of a sock that is not on the page. @param {Partial<State>} sheet */
    planOf(sheet) {
      if (!answer) return undefined;
      if (!others.has(sheet)) {
        others.set(sheet, askFor(answer, { ...startState(), ...sheet }).good?.plan);
      }
      return others.get(sheet);
    },
  };
}
