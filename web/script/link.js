// Links to a sock: what stands in the address, what a link of this sock says, and what opens.
import { saidOf, settingsOf, sheetOfLink, sheetOfRequest } from './form.js';
import { isOfOne, isSameSock, startState } from './state.js';

/** @typedef {import('./state.js').State} State */
/** @typedef {import('./ask.js').Answer} Answer */
/** @typedef {{ stitchCount: number, totalRounds: number }} Counts */

const emptied = Object.fromEntries(
  Object.keys(startState().draft).map((pointer) => [pointer, { typed: '', unit: '' }]),
);

/** @param {Answer | undefined} answer @param {unknown} link @returns {string} */
function make(answer, link) {
  const reply = answer?.('link', link);
  return reply?.ok ? reply.link.text : '';
}

/**
 * A link to this sock as it stands; `good` where it comes to a plan.
 * @param {Answer | undefined} answer @param {State} state @param {{ plan: Counts } | undefined} good
 */
export function linkOf(answer, state, good) {
  const { moment: view, system, locks, course } = state;
  const { stitchCount, totalRounds } = good?.plan ?? {};
  const echo = good && { stitchCount, totalRounds };
  return make(answer, { version: 1, fields: saidOf(state), view, system, locks, ...course, echo });
}

/**
 * The sheet of a request like another's, less some of its members and with other values by pointer; nothing where the form
 * could not ask for it. What it leaves out is said to be left out, for a link is opened over the example.
 * @param {Record<string, any>} request @param {string[]} clear @param {Record<string, any>} change
 */
function sheetLike(request, clear, change) {
  const kept = Object.entries(request).filter(([name]) => !clear.includes(`/${name}`));
  const sheet = sheetOfRequest(Object.fromEntries(kept), change);
  return sheet && { ...sheet, draft: { ...emptied, ...sheet.draft } };
}

/**
 * A link to such a sock, or ''.
 * @param {Answer | undefined} answer @param {State['system']} system @param {Record<string, any>} request
 * @param {string[]} clear @param {Record<string, any>} change
 */
export function linkOfRequest(answer, system, request, clear, change) {
  const sheet = sheetLike(request, clear, change);
  return sheet ? linkOf(answer, { ...sheet, system }, undefined) : '';
}

/**
 * The sheet of a part laid over a request. How that is done is the core's to say.
 * @param {Answer | undefined} answer @param {Record<string, any>} request @param {import('./contract.js').SeatPart} part
 */
export function sheetOfPart(answer, request, { inHand: _aside, ...part }) {
  const reply = answer?.('supply', { version: 1, class: request, rows: [part], columns: [{}] });
  const { clear, change } = reply?.ok ? reply.supply.cells[0] : {};
  return clear && sheetLike(request, clear, change);
}

/**
 * A link to it, or ''.
 * @param {Answer | undefined} answer @param {State['system']} system @param {Record<string, any>} request
 * @param {import('./contract.js').SeatPart} part @param {Counts} made what it comes to
 */
export function linkOfPart(answer, system, request, part, made) {
  const sheet = sheetOfPart(answer, request, part);
  return sheet ? linkOf(answer, { ...sheet, system }, { plan: made }) : '';
}

/** What a teacher gives her class. @param {Answer | undefined} answer @param {State} state */
export function linkOfClass(answer, state) {
  const { system, lesson } = state;
  const { title, note, yarns, view } = lesson;
  // Where several yarns may be used, which one is the student's to say.
  const locks = lesson.locks.filter((lock) => lock !== 'yarn' || yarns.length === 0);
  return make(answer, {
    version: 1,
    fields: settingsOf(state),
    view,
    system,
    locks,
    yarns,
    title,
    note,
  });
}

/**
 * What a link opens to. A class's link says what its socks have in common; the rest is as the student has it.
 * @param {Answer} answer @param {string} text @param {State} own
 */
export function openLink(answer, text, own) {
  const reply = answer('link', { version: 1, text });
  if (!reply.ok) return { problem: String(reply.problems[0].code) };
  const { link } = reply;
  const { totalRounds } = link.echo;
  const isOfClass =
    totalRounds === undefined &&
    !link.fields.some((/** @type {{ field: string }} */ { field }) => isOfOne(field));
  const sheet = sheetOfLink(link, isOfClass ? own : startState());
  // A student who comes by her class's link again has what it says already, be her sock begun or not.
  const { name, note, started } = own;
  const isKnown = isOfClass && isSameSock({ ...own, ...sheet, name, note, started }, own);
  return { made: link.echo, sheet, isKnown };
}
