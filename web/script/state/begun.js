// A sock that is on the needles keeps what it was asked with and what it was answered: a page of newer rules must not
// change it in mid-sock.
import { isPlace } from './place.js';
import { isLike, isRecord } from './shape.js';

/** @typedef {{ request: Record<string, any>, reply: Record<string, any> } & import('./place.js').Place} Begun */

/** @param {unknown} begun @returns {begun is Begun} */
export const isBegun = (begun) =>
  isRecord(begun) &&
  isRecord(begun.request) &&
  isRecord(begun.reply) &&
  isRecord(begun.reply.plan) &&
  isPlace(begun);

const isBetween = (/** @type {number} */ count, /** @type {number} */ most) =>
  count >= 1 && count <= most;

/** As long and as broad as a plan can be; more would keep the page drawing for ever. @param {any} plan */
const isOfASize = ({ totalRounds, rounds, lines }) =>
  isBetween(totalRounds, 2000) &&
  rounds.every(
    (/** @type {any} */ run) => isBetween(run.rounds, 2000) && isBetween(run.stitches, 800),
  ) &&
  lines.every((/** @type {any} */ { halves }) =>
    halves.flat().every((/** @type {any} */ [, count]) => isBetween(count, 800)),
  );

/**
 * The reply it was begun with, as far as it can be shown. By today's rules the core says the same again, and is
 * asked, for what was kept may have been changed by hand; of other rules what was kept holds, if it is built as a plan is.
 * @param {Begun} begun @param {Record<string, any>} today the core's reply to the same request now
 * @param {Record<string, any>} sample any reply of today's core that holds a plan
 * @returns {{ reply?: Record<string, any>, spare?: Record<string, any>, isRemade: boolean }} `reply`: none where there is
 *   nothing to show; `spare`: to be shown should the other turn out to be no plan
 */
export function replyOfBegun({ reply }, today, sample) {
  const now = today.ok ? today : undefined;
  if (reply.rules === today.rules) return { reply: now, isRemade: false };
  return isLike((now ?? sample).plan, reply.plan) && isOfASize(reply.plan)
    ? { reply, spare: now, isRemade: false }
    : { reply: now, isRemade: true };
}
