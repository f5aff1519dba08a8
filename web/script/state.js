// What the page knows: the draft as typed, and how it is shown. Plain values and one pure function;
// nothing here parses, rounds or touches the document.
import { isOfDesk, putOnDesk } from './state/desk.js';
import { exampleDraft } from './state/example.js';
import { redo, remember, undo } from './state/history.js';
import { withoutStrangers } from './state/own.js';
import { isOfPlace, knitOn } from './state/place.js';
import {
  addReading,
  countReadings,
  mostReadings,
  removeReading,
  shownUnit,
} from './state/readings.js';
import { isSettled, ofTheClass } from './state/settled.js';
import { swatchToe } from './state/toe_swatched.js';

/** @typedef {{ typed: string, unit: string }} Entry a field's text and the unit it was typed with */
/** @typedef {Record<string, Entry>} Draft by JSON pointer */

/**
 * @typedef {object} State
 * @property {Draft} draft the truth: what was typed
 * @property {Record<string, true>} example fields still as the worked example has them
 * @property {Record<string, string>} shown the unit a field is shown in, where it is not the typed one
 * @property {string} fresh the field typed in since the reader came to it, or ''
 * @property {'metric' | 'inch'} system units of the page's own figures
 * @property {Moment} moment what the page is for just now
 * @property {string} name the sock's, or ''
 * @property {string} note what its knitter wants to remember
 * @property {string[]} locks the parts that a class has settled: rib, toe, yarn
 * @property {{ title: string, note: string, yarns: number[] }} course what the class says, or nothing; the yarns it may use, or any
 * @property {Lesson} lesson what a teacher's link is to say besides
 * @property {import('./state/begun.js').Begun} [started] what it was begun with, once it is on the needles
 * @property {import('./state/place.js').Clock} [clock] while rounds are timed
 * @property {boolean} [isLate] whether the last tap was not counted, for another tab had come further
 * @property {import('./state/history.js').Past[]} past drafts that can be come back to, the last one last
 * @property {import('./state/history.js').Past[]} future drafts that were taken back
 * @property {Helping} [helping] a student's sock that the teacher looks at; kept nowhere
 * @property {boolean} isHeld whether the count is in the reader's hand: what she holds must not move
 * @property {import('./state/chart_window.js').Window} [window] rounds asked for in the chart
 */

/** @typedef {import('./state/place.js').Place} Place */
/** @typedef {{ problem: string, isFile: boolean, sheet?: Partial<State> }} Helping `problem`: why her link or file was not opened, as a code, or '' */
/** @typedef {'buy' | 'count' | 'knit' | 'class'} Moment */
/**
 * @typedef {object} Lesson
 * @property {string} title @property {string} note @property {string[]} locks @property {string} view @property {number[]} yarns
 * @property {Draft} desk what is typed at the teacher's desk
 * @property {string} roster her class's seats, as pasted
 */

/**
 * @typedef {{ type: 'typed', pointer: string, typed: string, unit: string }
 *   | { type: 'unit', pointer: string, unit: string, typed: string, isWritten: boolean }
 *   | { type: 'left' }
 *   | { type: 'undo' } | { type: 'redo' } | { type: 'anew' }
 *   | { type: 'opened', sheet: Partial<State>, isLink?: true }
 *   | { type: 'turned', state: State, isLink?: true }
 *   | { type: 'named', name: string } | { type: 'noted', note: string }
 *   | { type: 'helped', helping: Helping | undefined }
 *   | { type: 'class left' } | { type: 'helped', helping: Helping | undefined } | { type: 'lesson', lesson: Partial<Lesson> }
 *   | { type: 'lesson followed', lesson: Lesson }
 *   | { type: 'begun', started: import('./state/begun.js').Begun | undefined }
 *   | import('./state/place.js').PlaceAction
 *   | { type: 'moment', moment: Moment }
 *   | { type: 'held', isHeld: boolean }
 *   | { type: 'window', window: import('./state/chart_window.js').Window | undefined }
 *   | { type: 'rib', knit: string, purl: string }
 *   | { type: 'system', system: 'metric' | 'inch', shown: Record<string, string> }
 *   | { type: 'reading added' } | { type: 'toe swatched', isAlone: boolean }
 *   | { type: 'reading removed', index: number }} Action
 */

export { firstStitches } from './state/toe_swatched.js';
export { replyOfBegun } from './state/begun.js';
export { windowOf } from './state/chart_window.js';
export { isRecord } from './state/shape.js';
export { isOfOne, lockOf } from './state/settled.js';
export { countReadings, mostReadings, shownUnit };
export { withDesk } from './state/desk.js';
export { lapsThatCount } from './state/laps.js';
export {
  beginning,
  isLater,
  isOfPlace,
  isPlace,
  isSamePlace,
  laterOf,
  placeOf,
  withinPlan,
} from './state/place.js';
export {
  fromSheet,
  isSameButBegun,
  isSameButPlace,
  isSameSock,
  lessonIn,
  lockable,
  mostRoster,
  toSheet,
  wishesIn,
  writeSheet,
} from './state/sheet.js';

/** @type {State['course']} */
const noCourse = { title: '', note: '', yarns: [] };

/** @returns {State} the worked example */
export function startState() {
  const example = Object.fromEntries(Object.keys(exampleDraft).map((pointer) => [pointer, true]));
  return {
    draft: { ...exampleDraft },
    example: /** @type {Record<string, true>} */ (example),
    shown: {},
    fresh: '',
    system: 'metric',
    moment: 'count',
    name: '',
    note: '',
    locks: [],
    course: noCourse,
    lesson: { title: '', note: '', locks: [], yarns: [], view: 'count', desk: {}, roster: '' },
    isHeld: false,
    past: [],
    future: [],
  };
}

/** Whether nothing in it is anybody's own. @param {import('./state/sheet.js').Sheet} state */
export const isUntouched = ({ draft, example, name, note, locks, course, started }) =>
  [name, note, course.title, course.note].every((text) => text === '') &&
  locks.length + course.yarns.length === 0 &&
  !started &&
  Object.keys(draft).every((pointer) => example[pointer]);

/** @template T @param {Record<string, T>} record @param {string} key @returns {Record<string, T>} */
function without(record, key) {
  const { [key]: _gone, ...rest } = record;
  return rest;
}

/** @param {State} state @param {string} pointer @param {Entry} entry @returns {State} */
function put(state, pointer, entry) {
  return {
    ...state,
    draft: { ...state.draft, [pointer]: entry },
    example: without(state.example, pointer),
    shown: without(state.shown, pointer),
    fresh: pointer,
  };
}

/**
 * A field's own unit control. Just typed in, and the control means "I meant this unit"; left and come
 * back to, it means "show it to me in this unit", and what was typed stays as it was.
 * @param {State} state @param {{ pointer: string, unit: string, typed: string, isWritten: boolean }} change
 * @returns {State}
 */
function changeUnit(state, { pointer, unit, typed, isWritten }) {
  const entry = state.draft[pointer];
  if (state.fresh === pointer && !isWritten) return put(state, pointer, { typed, unit });
  // Nothing stands there to be converted: the unit is for what will be typed.
  if (!entry || entry.typed.trim() === '') {
    return { ...state, draft: { ...state.draft, [pointer]: { typed: '', unit } } };
  }
  return { ...state, shown: { ...state.shown, [pointer]: unit } };
}

/** A rib offered in place of one that does not fit; a count named for the old one goes with it. @param {State} state @param {{ knit: string, purl: string }} rib @returns {State} */
function chooseRib(state, { knit, purl }) {
  const entry = (/** @type {string} */ typed) => ({ typed, unit: '' });
  const next = put(put(state, '/rib/knit', entry(knit)), '/rib/purl', entry(purl));
  return { ...put(next, '/stitchCount', entry('')), fresh: '' };
}

/** @param {State} state @param {Action} action @returns {State} */
function step(state, action) {
  switch (action.type) {
    case 'typed': {
      const { pointer, typed, unit } = action;
      if (isOfDesk(pointer)) return putOnDesk(state, pointer, { typed, unit });
      return put(withoutStrangers(state, pointer, typed), pointer, { typed, unit });
    }
    case 'rib':
      return chooseRib(state, action);
    case 'unit':
      return changeUnit(state, action);
    case 'anew':
      return {
        ...state,
        draft: { ...exampleDraft, ...ofTheClass(state, state.draft) },
        example: { ...startState().example, ...ofTheClass(state, state.example) },
        shown: {},
        fresh: '',
      };
    case 'opened':
      return { ...state, ...action.sheet, fresh: '' };
    case 'named':
      return { ...state, name: action.name };
    case 'noted':
      return { ...state, note: action.note };
    case 'class left':
      return { ...state, locks: [], course: noCourse };
    case 'lesson':
      return { ...state, lesson: { ...state.lesson, ...action.lesson } };
    case 'lesson followed':
      return { ...state, lesson: action.lesson };
    case 'begun':
      return { ...state, started: action.started };
    case 'helped':
      return { ...state, helping: action.helping };
    case 'moment':
      return { ...state, moment: action.moment };
    case 'held':
      return { ...state, isHeld: action.isHeld };
    case 'window':
      return { ...state, window: action.window };
    case 'left':
      return { ...state, fresh: '' };
    case 'system':
      return { ...state, system: action.system, shown: action.shown, fresh: '' };
    case 'reading added':
      return addReading(state);
    case 'toe swatched':
      return swatchToe(state, countReadings(state.draft), mostReadings, action.isAlone);
    case 'reading removed':
      return removeReading(state, action.index);
    default:
      return state;
  }
}

/**
 * @param {State} state @param {Action} action
 * @returns {State}
 */
export function reduce(state, action) {
  // To another sock: it has a history of its own, and nobody's clock runs on.
  if (action.type === 'turned') {
    const { lesson, helping } = state;
    return { ...action.state, lesson, helping, fresh: '', clock: undefined, isLate: false };
  }
  if (action.type !== 'opened' && isSettled(state, action)) return state;
  if (isOfPlace(action)) {
    const { started, clock } = state;
    if (!started) return state;
    const isLate = action.type === 'followed' && action.isLate === true;
    return { ...state, ...knitOn({ started, clock }, action), isLate };
  }
  if (action.type === 'undo') return undo(state);
  if (action.type === 'redo') return redo(state);
  const isSameField = action.type === 'typed' && action.pointer === state.fresh;
  return remember(state, step(state, action), isSameField);
}
