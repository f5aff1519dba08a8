// A sock that is on the needles keeps what it was asked with and what it was answered: a page of newer rules must not
// change it in mid-sock.
import { isLike, isRecord } from './shape.js';

/** @typedef {{ request: Record<string, any>, reply: Record<string, any>, round: number, pass: number }} Begun */

/** @param {unknown} begun @returns {begun is Begun} */
export const isBegun = (begun) =>
  isRecord(begun) &&
  isRecord(begun.request) &&
  isRecord(begun.reply) &&
  isRecord(begun.reply.plan) &&
  Number.isInteger(begun.round) &&
  Number.isInteger(begun.pass);

/** As long and as broad as a plan can be; more would keep the page drawing for ever. @param {any} plan */
const isOfASize = ({ totalRounds, rounds, lines }) =>
  totalRounds <= 2000 &&
  rounds.every((/** @type {any} */ run) => run.rounds <= 2000 && run.stitches <= 800) &&
  lines.every((/** @type {any} */ { halves }) =>
    halves.flat().every((/** @type {any} */ [, count]) => count <= 800),
  );

/**
 * The plan it was begun with, as far as it can be shown. By today's rules the core says the same again, and is
 * asked, for what was kept may have been changed by hand; of other rules what was kept holds, if it is built as a plan is.
 * @param {Begun} begun @param {Record<string, any>} today the core's reply to the same request now
 * @param {Record<string, any>} sample any reply of today's core
 * @returns {{ plan: any, spare?: any, isRemade: boolean }} `spare`: to be shown should the plan turn out to be none
 */
export function planOfBegun({ reply }, today, sample) {
  if (reply.rules === today.rules && today.ok) return { plan: today.plan, isRemade: false };
  const spare = today.ok ? today.plan : sample.plan;
  return isLike(spare, reply.plan) && isOfASize(reply.plan)
    ? { plan: reply.plan, spare, isRemade: false }
    : { plan: spare, isRemade: true };
}
