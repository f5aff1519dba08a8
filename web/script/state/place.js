// Where the knitting stands: the rounds that are done, and the passes done of the round in hand. Every change of it has a
// number, so that of two copies of a place the later one is known.
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
const most = { trail: 12, laps: 9, rounds: 2000 };

// Nobody knits three stitches a second: a lap that says so is somebody catching up with her taps. A lap takes more than
// its two turns, and none takes a day.
const fastest = 3;
const turns = 20;
const day = 24 * 60 * 60;

/** @type {Omit<Place, 'since'>} */
export const beginning = { round: 0, pass: 0, taps: 0, trail: [], laps: [] };

const isCount = (/** @type {unknown} */ value) => Number.isInteger(value) && Number(value) >= 0;

/** @param {unknown} value @param {number} longest @param {(one: unknown) => boolean} isOne */
const isListOf = (value, longest, isOne) =>
  Array.isArray(value) && value.length <= longest && value.every(isOne);

/** @param {unknown} lap */
const isLap = (lap) =>
  Array.isArray(lap) && lap.length === 2 && lap.every((one) => Number.isFinite(one) && one > 0);

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
  isListOf(place.laps, most.laps, isLap);

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

/** @param {Begun} begun */
const lastStep = ({ reply }) =>
  // What was kept may have been changed by hand; then the page shows today's plan, and its end.
  passesOfRound * (isCount(reply.plan.totalRounds) ? reply.plan.totalRounds : most.rounds);

/** Of other rules the sock may have become shorter than it is knit. @param {Begun} begun @returns {Begun} */
export const withinPlan = (begun) =>
  stepsOf(begun) <= lastStep(begun)
    ? begun
    : { ...begun, round: begun.reply.plan.totalRounds, pass: 0 };

/** @param {Begun} begun @param {number} step @param {number[]} trail @returns {Begun} */
function moved(begun, step, trail) {
  const to = Math.min(Math.max(0, step), lastStep(begun));
  if (to === stepsOf(begun)) return begun;
  return {
    ...begun,
    round: (to - (to % passesOfRound)) / passesOfRound,
    pass: to % passesOfRound,
    taps: begun.taps + 1,
    trail: trail.slice(-most.trail),
  };
}

/** @param {Begun} begun @param {number} step @returns {Begun} */
const goTo = (begun, step) => moved(begun, step, [...begun.trail, stepsOf(begun)]);

/** Stitches of a round, from 0, of the pair. @param {Begun} begun @param {number} round */
export function stitchesOfRound({ reply }, round) {
  let done = 0;
  for (const span of isRecord(reply.plan) && Array.isArray(reply.plan.rounds)
    ? reply.plan.rounds
    : []) {
    done += span.rounds;
    if (round < done) return 2 * span.stitches;
  }
  return 0;
}

/** @param {Begun} begun @param {number} seconds @returns {Begun} of the round that was just ended */
function withLap(begun, seconds) {
  const stitches = stitchesOfRound(begun, begun.round - 1);
  const isOne = seconds * fastest > stitches && seconds > turns && seconds < day;
  if (!isOne) return begun;
  return {
    ...begun,
    laps: [...begun.laps, /** @type {[number, number]} */ ([stitches, seconds])].slice(-most.laps),
  };
}

/**
 * @typedef {{ type: 'tapped', now: number } | { type: 'untapped' } | { type: 'tap undone' }
 *   | { type: 'placed', round: number, pass: number }
 *   | { type: 'followed', place: Place, isLate?: boolean }
 *   | { type: 'timed', isOn: boolean, now: number }} PlaceAction `now` in milliseconds;
 *   `isLate`: the reader has tapped on a page that was behind
 */

/** @typedef {{ started: Begun, lapFrom?: number }} Knitting `lapFrom`: when the round in hand was begun; 0 where that is not known; nothing while no round is timed */

/** Any change but the next pass ends the lap, which is then none. @param {Knitting} knitting @param {Begun} started @returns {Knitting} */
const unclocked = ({ lapFrom }, started) => ({
  started,
  lapFrom: lapFrom === undefined ? undefined : 0,
});

/** @param {Knitting} knitting @param {number} now @returns {Knitting} */
function tapped({ started, lapFrom }, now) {
  const next = goTo(started, stepsOf(started) + 1);
  const isRoundDone = next.round > started.round;
  if (lapFrom === undefined || !isRoundDone) return { started: next, lapFrom };
  return { started: lapFrom > 0 ? withLap(next, (now - lapFrom) / 1000) : next, lapFrom: now };
}

/** @param {Knitting} knitting @param {PlaceAction} action @returns {Knitting} */
export function knitOn(knitting, action) {
  const { started, lapFrom } = knitting;
  switch (action.type) {
    case 'tapped':
      return tapped(knitting, action.now);
    case 'untapped':
      return unclocked(knitting, goTo(started, stepsOf(started) - 1));
    case 'placed':
      return unclocked(knitting, goTo(started, action.round * passesOfRound + action.pass));
    case 'tap undone': {
      const before = started.trail[started.trail.length - 1];
      if (before === undefined) return knitting;
      return unclocked(knitting, moved(started, before, started.trail.slice(0, -1)));
    }
    case 'followed':
      return unclocked(knitting, withinPlan({ ...started, ...placeOf(action.place) }));
    case 'timed':
      if (!action.isOn) return { started, lapFrom: undefined };
      return { started, lapFrom: lapFrom ?? (started.pass === 0 ? action.now : 0) };
    default:
      return knitting;
  }
}

/** @param {import('../state.js').Action} action @returns {action is PlaceAction} */
export const isOfPlace = (action) =>
  ['tapped', 'untapped', 'placed', 'tap undone', 'followed', 'timed'].includes(action.type);
