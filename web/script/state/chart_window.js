// Which rounds the chart shows: what was asked for, or one whole turn of the rib.

/** @typedef {{ from: number, to: number }} Window first and last round of the sock, from 1 */

// More than this is no longer read, only looked at.
const mostRounds = 48;

// A straight rib is the same every round; a few of them show that it is.
const fewest = 4;

/** @param {{ toe: { rounds: number }, spiral: { rounds: number, periodRounds: number } }} plan @returns {Window} */
function turnOf({ toe, spiral }) {
  const turn = Math.min(Math.max(spiral.periodRounds, fewest), spiral.rounds, mostRounds);
  return { from: toe.rounds + 1, to: toe.rounds + turn };
}

/**
 * What is asked for, moved into a sock that has become shorter; and how many rounds may be asked for.
 * @param {{ totalRounds: number, toe: { rounds: number }, spiral: { rounds: number, periodRounds: number } }} plan
 * @param {Window | undefined} asked
 */
export function windowOf(plan, asked) {
  const { from, to } = asked ?? turnOf(plan);
  const last = Math.min(to, plan.totalRounds);
  return { from: Math.max(1, from - (to - last)), to: last, most: mostRounds };
}

/**
 * One end moved by the reader: the other gives way.
 * @param {Window} window @param {boolean} isFrom which end was moved
 * @returns {Window}
 */
export function settleWindow({ from, to }, isFrom) {
  if (isFrom) return { from, to: Math.min(Math.max(from, to), from + mostRounds - 1) };
  return { from: Math.max(Math.min(from, to), to - mostRounds + 1), to };
}
