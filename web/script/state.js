// What the page knows: the draft as typed, and how it is shown. Plain values and one pure function;
// nothing here parses, rounds or touches the document.
import { exampleDraft } from './state/example.js';
import { redo, remember, undo } from './state/history.js';
import { withoutStrangers } from './state/own.js';
import { isOfPlace, knitOn } from './state/place.js';
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
 * @property {{ title: string, note: string }} course what the class says, or nothing
 * @property {Lesson} lesson what a teacher's link is to say besides
 * @property {import('./state/begun.js').Begun} [started] what it was begun with, once it is on the needles
 * @property {number} [lapFrom] while rounds are timed: when the one in hand was begun, or 0
 * @property {boolean} [isLate] whether the last tap was on a page that was behind another tab's
 * @property {import('./state/history.js').Past[]} past drafts that can be come back to, the last one last
 * @property {import('./state/history.js').Past[]} future drafts that were taken back
 * @property {boolean} isHeld whether the count is in the reader's hand: what she holds must not move
 * @property {import('./state/chart_window.js').Window} [window] rounds asked for in the chart
 */

/** @typedef {'buy' | 'count' | 'knit' | 'class'} Moment */
/** @typedef {{ title: string, note: string, locks: string[], view: string }} Lesson */

/**
 * @typedef {{ type: 'typed', pointer: string, typed: string, unit: string }
 *   | { type: 'unit', pointer: string, unit: string, typed: string, isWritten: boolean }
 *   | { type: 'left' }
 *   | { type: 'undo' } | { type: 'redo' } | { type: 'anew' }
 *   | { type: 'opened', sheet: Partial<State>, isLink?: true }
 *   | { type: 'turned', state: State, isLink?: true }
 *   | { type: 'named', name: string } | { type: 'noted', note: string }
 *   | { type: 'class left' } | { type: 'lesson', lesson: Partial<Lesson> }
 *   | { type: 'begun', started: import('./state/begun.js').Begun | undefined }
 *   | import('./state/place.js').PlaceAction
 *   | { type: 'moment', moment: Moment }
 *   | { type: 'held', isHeld: boolean }
 *   | { type: 'window', window: import('./state/chart_window.js').Window | undefined }
 *   | { type: 'rib', knit: string, purl: string }
 *   | { type: 'system', system: 'metric' | 'inch', shown: Record<string, string> }
 *   | { type: 'reading added' } | { type: 'toe swatched' }
 *   | { type: 'reading removed', index: number }} Action
 */

export { replyOfBegun } from './state/begun.js';
export { windowOf } from './state/chart_window.js';
export { isRecord } from './state/shape.js';
export { isOfOne, lockOf } from './state/settled.js';
export { beginning, isPlace, placeOf } from './state/place.js';
export {
  fromSheet,
  isSameButPlace,
  isSameSock,
  lessonIn,
  lockable,
  toSheet,
  wishesIn,
  writeSheet,
} from './state/sheet.js';

export const mostReadings = 12;
const readingParts = ['stitches', 'widthMm', 'rounds', 'heightMm'];
const readingPointers = (/** @type {number} */ index) =>
  readingParts.map((part) => `/swatch/readings/${index}/${part}`);

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
    course: { title: '', note: '' },
    lesson: { title: '', note: '', locks: [], view: 'count' },
    isHeld: false,
    past: [],
    future: [],
  };
}

/** Whether nothing in it is anybody's own. @param {import('./state/sheet.js').Sheet} state */
export const isUntouched = ({ draft, example, name, note, locks, course, started }) =>
  [name, note, course.title, course.note].every((text) => text === '') &&
  locks.length === 0 &&
  !started &&
  Object.keys(draft).every((pointer) => example[pointer]);

/** How many readings of the swatch the form has rows for; at least one. @param {Draft} draft */
export function countReadings(draft) {
  let count = 1;
  while (readingPointers(count).some((pointer) => pointer in draft)) count += 1;
  return count;
}

/** The unit a field is shown in. @param {State} state @param {string} pointer */
export const shownUnit = (state, pointer) =>
  state.shown[pointer] ?? state.draft[pointer]?.unit ?? '';

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

/** @param {State} state @returns {State} a row more, in the units of the last one */
function addReading(state) {
  const count = countReadings(state.draft);
  if (count >= mostReadings) return state;
  const draft = { ...state.draft };
  const last = readingPointers(count - 1);
  readingPointers(count).forEach((pointer, i) => {
    draft[pointer] = { typed: '', unit: shownUnit(state, last[i]) };
  });
  return { ...state, draft };
}

/** @param {State} state @param {number} index @returns {State} the rows after it move up */
function removeReading(state, index) {
  const count = countReadings(state.draft);
  if (count < 2) return state;
  const next = {
    ...state,
    draft: { ...state.draft },
    example: { ...state.example },
    shown: { ...state.shown },
  };
  /** @type {Array<Record<string, any>>} */
  const records = [next.draft, next.example, next.shown];
  for (let row = index; row < count; row += 1) {
    const from = readingPointers(row + 1);
    readingPointers(row).forEach((pointer, i) => {
      for (const record of records) {
        if (row + 1 < count && from[i] in record) record[pointer] = record[from[i]];
        else delete record[pointer];
      }
    });
  }
  return next;
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
      return { ...state, locks: [], course: { title: '', note: '' } };
    case 'lesson':
      return { ...state, lesson: { ...state.lesson, ...action.lesson } };
    case 'begun':
      return { ...state, started: action.started };
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
      return swatchToe(state, Math.min(countReadings(state.draft), mostReadings - 1));
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
  // To another sock: it has a history of its own.
  if (action.type === 'turned') return { ...action.state, lesson: state.lesson, fresh: '' };
  if (action.type !== 'opened' && isSettled(state, action)) return state;
  if (isOfPlace(action)) {
    const { started, lapFrom } = state;
    if (!started) return state;
    return {
      ...state,
      ...knitOn({ started, lapFrom }, action),
      isLate: action.type === 'followed' && action.isLate === true,
    };
  }
  if (action.type === 'undo') return undo(state);
  if (action.type === 'redo') return redo(state);
  const isSameField = action.type === 'typed' && action.pointer === state.fresh;
  return remember(state, step(state, action), isSameField);
}
