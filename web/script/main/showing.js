// What the views are given, put together from all that knows a part of it.
import { examplesLeft, tellGood, tellProblems, tellSeat, valuesOf } from '../form.js';
import { linkOfPart, linkOfRequest } from '../link.js';
import { helpingFor } from './helping.js';
import { seatSheet } from './seat_sheet.js';
import { isProjected } from '../projector.js';
import { addressOf } from '../share.js';
import { withinPlan } from '../state.js';
import { troubleText } from '../view.js';

/** @typedef {import('../view/showing.js').Showing} Showing */

/**
 * @param {import('../ask.js').Good} good
 * @param {Document} document
 * @param {object} page
 * @param {import('../state.js').State} page.state
 * @param {ReturnType<typeof import('../ask.js').openAsking>} page.asking
 * @param {ReturnType<typeof import('../view.js').keepScale>} page.scaleFor
 * @param {Showing['copied']} page.copied
 * @param {Showing['beside']} page.beside
 * @param {ReturnType<typeof import('../needles.js').openNeedles>} page.needles
 * @param {boolean} page.isKept whether the browser keeps anything
 * @returns {Showing}
 */
export function showingFor(
  good,
  document,
  { state, asking, scaleFor, copied, beside, needles, isKept },
) {
  const { plan, request, isRemade } = good;
  const { started, system, shown, name } = state;
  const problems = tellProblems(asking.problems(), state);
  const trouble = asking.isStopped() ? troubleText('stopped') : '';
  // What was kept of it may be another plan than the one that is shown.
  const place = started && withinPlan({ ...started, reply: good.reply });
  return {
    plan,
    request,
    isRemade,
    // The sentence says what the drawing shows: of the last good plan, in today's units.
    values: valuesOf({ ...good.state, shown, system }),
    system,
    problems,
    lastGood: tellGood(problems, good.state).join(', '),
    examples: examplesLeft(state),
    scale: scaleFor(plan, request, state.isHeld),
    copied,
    trouble,
    name,
    lesson: state.lesson,
    isProjected: isProjected(document),
    // Hers, or of the class whose link is open.
    classTitle: state.lesson.title || state.course.title,
    classYarns: state.course.yarns,
    linkTo(asked, clear, change) {
      const text = linkOfRequest(asking.answer(), system, asked, clear, change);
      return text && addressOf(document, text);
    },
    linkToPart(asked, part, made) {
      const text = linkOfPart(asking.answer(), system, asked, part, made);
      return text && addressOf(document, text);
    },
    seatSheet: (asked, part, seat) =>
      seatSheet(document, asking, { system, trouble }, asked, part, seat),
    tellSeat: (problem, about, part) => tellSeat(problem, about, part, system),
    beside,
    helping: helpingFor(state, beside?.odd, asking),
    isBegun: started !== undefined,
    place,
    atHand: place && {
      place,
      clock: state.clock,
      isLate: Boolean(state.isLate),
      isKept,
      ...asking.place(),
      wishes: needles.wishes(),
      device: needles.device(),
    },
  };
}
