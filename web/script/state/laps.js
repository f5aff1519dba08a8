// Rounds by the clock: how long they took, and which of them say how fast she knits.

/** @typedef {[number, number]} Lap stitches of the pair, and seconds */
/** @typedef {{ reply: Record<string, any>, round: number, laps: Lap[] }} Begun */
/** @typedef {{ from: number, pausedAt?: number }} Clock `from`: when the round in hand was begun, pauses taken off; 0 where that is not known */

export const mostLaps = 9;

// Nobody knits three stitches a second: a lap that says so is somebody catching up with her taps. None takes a day.
const fastest = 3;
const day = 24 * 60 * 60;

/** @param {unknown} lap */
export const isLap = (lap) =>
  Array.isArray(lap) && lap.length === 2 && lap.every((one) => Number.isFinite(one) && one > 0);

/** Stitches of a round, from 0, of the pair. @param {Begun} begun @param {number} round */
export function stitchesOfRound({ reply }, round) {
  let done = 0;
  // What was kept may have been changed by hand, and its plan be none.
  const { rounds } = reply.plan;
  for (const span of Array.isArray(rounds) ? rounds : []) {
    done += span.rounds;
    if (round < done) return 2 * span.stitches;
  }
  return 0;
}

/** @template {Begun} T @param {T} begun @param {number} seconds @returns {T} of the round that was just ended */
export function withLap(begun, seconds) {
  const stitches = stitchesOfRound(begun, begun.round - 1);
  if (seconds * fastest <= stitches || seconds >= day) return begun;
  /** @type {Lap} */
  const lap = [stitches, seconds];
  return { ...begun, laps: [...begun.laps, lap].slice(-mostLaps) };
}

// Longer than this many times what a lap usually takes, and she did something else meanwhile.
const tooLong = 3;

/** The laps that say how fast she knits. @param {Lap[]} laps */
export function lapsThatCount(laps) {
  const slow = (/** @type {Lap} */ [stitches, seconds]) => seconds / stitches;
  const usual = laps.map(slow).sort((a, b) => a - b)[(laps.length - 1) >> 1];
  return laps.filter((lap) => slow(lap) <= tooLong * usual);
}

/** @param {Clock} clock @param {{ isOn: boolean, now: number }} action @returns {Clock} */
export function paused({ from, pausedAt }, { isOn, now }) {
  if (isOn) return { from, pausedAt: pausedAt ?? now };
  return { from: from > 0 && pausedAt !== undefined ? from + now - pausedAt : from };
}
