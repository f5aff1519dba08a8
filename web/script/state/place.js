// Where the knitting stands: the rounds that are done, and the passes done of the round in hand. Every change of it has a
// number, so that of two copies of a place the later one is known.
import { isLap, mostLaps, paused, withLap } from './laps.js';
import { isRecord } from './shape.js';

/**
 * @typedef {object} Place
 * @property {number} round rounds that are done
 * @property {number} pass passes done of the next: A first half, B first half, B second half, A second half
 * @property {string} since when the sock was begun: a place is of one beginning
 * @property {number} taps how often the place was changed since
 * @property {number[]} trail where it stood before, the last one last, in passes from the beginning
 * @property {Array<[number, number]>} laps rounds that were timed: stitches of the pair, and seconds
 */

/** @typedef {import('./begun.js').Begun} Begun */

export const passesOfRound = 4;
const most = { trail: 12 };

/** @type {Omit<Place, 'since'>} */
export const beginning = { round: 0, pass: 0, taps: 0, trail: [], laps: [] };

const isCount = (/** @type {unknown} */ value) => Number.isInteger(value) && Number(value) >= 0;

/** @param {unknown} value @param {number} longest @param {(one: unknown) => boolean} isOne */
const isListOf = (value, longest, isOne) =>
  Array.isArray(value) && value.length <= longest && value.every(isOne);

/** @param {unknown} place @returns {place is Place} */
export const isPlace = (place) =>
  isRecord(place) &&
  isCount(place.round) &&
  isCount(place.pass) &&
  place.pass < passesOfRound &&
  isCount(place.taps) &&
  typeof place.since === 'string' &&
  place.since.length <= 40 &&
  isListOf(place.trail, most.trail, isCount) &&
  isListOf(place.laps, mostLaps, isLap);

/** @param {Place} place @returns {Place} */
export const placeOf = ({ round, pass, since, taps, trail, laps }) => ({
  round,
  pass,
  since,
  taps,
  trail,
  laps,
});

// No place's JSON is longer, however far the knitting has come.
const longest = 480;

/**
 * Spaces that make a sheet as long as it will ever be with this sock in it: a disk that has no room left still takes a
 * text as long as the one before.
 * @param {Place} place
 */
export const roomFor = (place) =>
  ' '.repeat(Math.max(0, longest - JSON.stringify(placeOf(place)).length));

/** Passes from the beginning. @param {Place} place */
const stepsOf = ({ round, pass }) => round * passesOfRound + pass;

// What was kept may have been changed by hand, and its plan be none.
const mostRounds = 2000;

/** @param {Begun} begun */
function lastStep({ reply }) {
  const { totalRounds } = reply.plan;
  return passesOfRound * (isCount(totalRounds) ? Math.min(totalRounds, mostRounds) : mostRounds);
}

/** @param {number} step */
function placeAt(step) {
  const pass = step % passesOfRound;
  return { round: (step - pass) / passesOfRound, pass };
}

/** Of other rules the sock may have become shorter than it is knit. @param {Begun} begun @returns {Begun} */
export const withinPlan = (begun) =>
  stepsOf(begun) <= lastStep(begun) ? begun : { ...begun, ...placeAt(lastStep(begun)) };

/** Of two places of a sock: whether the first is of a later beginning, or was moved oftener since. @param {Place} a @param {Place} b */
export const isLater = (a, b) => (a.since === b.since ? a.taps > b.taps : a.since > b.since);

/** @param {Place} a @param {Place} b */
export const isSamePlace = (a, b) =>
  /** @type {const} */ (['since', 'taps', 'round', 'pass']).every((part) => a[part] === b[part]);

/** Of one beginning that two tabs know, the one that was knit on. @template {Begun | undefined} T @param {T} a @param {T} b @returns {T} */
export const laterOf = (a, b) => (a && b && a.since === b.since && isLater(b, a) ? b : a);

/** @param {Begun} begun @param {number} step @param {number[]} trail @returns {Begun} */
function moved(begun, step, trail) {
  const to = Math.min(Math.max(0, step), lastStep(begun));
  if (to === stepsOf(begun) || !Number.isInteger(to)) return begun;
  return { ...begun, ...placeAt(to), taps: begun.taps + 1, trail: trail.slice(-most.trail) };
}

/** @param {Begun} begun @param {number} step @returns {Begun} */
const goTo = (begun, step) => moved(begun, step, [...begun.trail, stepsOf(begun)]);

/**
 * @typedef {{ type: 'tapped', now: number } | { type: 'untapped' } | { type: 'tap undone' }
 *   | { type: 'placed', round: number, pass: number, now?: number }
 *   | { type: 'followed', place: Place, isLate?: boolean }
 *   | { type: 'timed', isOn: boolean, now: number }
 *   | { type: 'paused', isOn: boolean, now: number }} PlaceAction `now` in milliseconds;
 *   `isLate`: the reader has tapped on a page that was behind
 */

/** @typedef {import('./laps.js').Clock} Clock */
/** @typedef {{ started: Begun, clock?: Clock }} Knitting `clock`: while rounds are timed */

/** Any change but the next pass ends the lap, which is then none. @param {Knitting} knitting @param {Begun} started @returns {Knitting} */
const unclocked = ({ clock }, started) => ({ started, clock: clock && { ...clock, from: 0 } });

/** @param {Knitting} knitting @param {number} now @returns {Knitting} */
function tapped({ started, clock }, now) {
  const next = goTo(started, stepsOf(started) + 1);
  if (!clock) return { started: next };
  // Knit in what was called a pause: of this round nothing can be said.
  const from = clock.pausedAt === undefined ? clock.from : 0;
  if (next.round === started.round) return { started: next, clock: { from } };
  return {
    started: from > 0 ? withLap(next, (now - from) / 1000) : next,
    clock: { from: now },
  };
}

/** @param {Knitting} knitting @param {PlaceAction} action @returns {Knitting} */
export function knitOn(knitting, action) {
  const { started, clock } = knitting;
  switch (action.type) {
    case 'tapped':
      return tapped(knitting, action.now);
    case 'untapped':
      return unclocked(knitting, goTo(started, stepsOf(started) - 1));
    case 'placed': {
      const step = action.round * passesOfRound + action.pass;
      // On the pass in hand it is a tap like any other.
      if (action.now !== undefined && step === stepsOf(started) + 1)
        return tapped(knitting, action.now);
      return unclocked(knitting, goTo(started, step));
    }
    case 'tap undone': {
      const before = started.trail[started.trail.length - 1];
      if (before === undefined) return knitting;
      return unclocked(knitting, moved(started, before, started.trail.slice(0, -1)));
    }
    case 'followed':
      return unclocked(knitting, withinPlan({ ...started, ...placeOf(action.place) }));
    case 'timed':
      if (!action.isOn) return { started, clock: undefined };
      return { started, clock: clock ?? { from: started.pass === 0 ? action.now : 0 } };
    case 'paused':
      return { started, clock: clock && paused(clock, action) };
    default:
      return knitting;
  }
}

/** @param {import('../state.js').Action} action @returns {action is PlaceAction} */
export const isOfPlace = (action) =>
  ['tapped', 'untapped', 'placed', 'tap undone', 'followed', 'timed', 'paused'].includes(
    action.type,
  );
