// One round of a plan: which line each pass works, on which sock and half.

/** @typedef {import('../../contract.js').Plan} Plan */

// A first half, B first half, B second half, A second half: back along the other side of the needle.
const halves = /** @type {const} */ ([0, 0, 1, 1]);
const isOnB = [false, true, true, false];

/** The run of rounds that a round, from 0, is in; nothing once all are knit. @param {Plan} plan @param {number} round */
export function runAt(plan, round) {
  let from = 0;
  for (const run of plan.rounds) {
    if (round < from + run.rounds) return { ...run, from };
    from += run.rounds;
  }
  return undefined;
}

/**
 * @param {Plan} plan @param {NonNullable<ReturnType<typeof runAt>>} run
 * @returns {Array<{ line: Plan['lines'][number], half: 0 | 1 }>} by pass
 */
export const passesOf = (plan, { line, secondLine = line }) =>
  halves.map((half, pass) => ({ line: plan.lines[isOnB[pass] ? secondLine : line], half }));
