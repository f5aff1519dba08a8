// How much of a girth's scale the stretch line shows. It holds still while the knitter goes from count to
// count, for a mark that stays where it is teaches more than one that is drawn anew; above all it never
// moves under a finger.

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {{ from: number, to: number }} Scale in millimetres */

/** Takes in everything that is marked. @param {Plan} plan @returns {Scale} */
export function freshScale(plan) {
  const { ballGirthMm, heelToPassMm } = plan.foot;
  const others = [ballGirthMm, heelToPassMm, plan.legFit.edgeGirthMm];
  const from = Math.min(plan.restGirthMm, ...others);
  const to = Math.max(plan.widestGirthMm, ...others);
  // Room at both ends, so that the next count or two still fit.
  const room = (to - from) * 0.05;
  return { from: from - room, to: to + room };
}

/** Whether a scale shows enough of a plan; its very ends may run off. @param {Scale} scale @param {Plan} plan */
const shows = ({ from, to }, plan) =>
  [plan.finishedGirthMm, plan.passGirthMm, plan.foot.heelToPassMm].every(
    (mm) => mm >= from && mm <= to,
  );

/**
 * Remembers the scale last shown. The same sock on another count keeps it while it will do, and, held by
 * the hand, in any case.
 */
export function keepScale() {
  /** @type {Scale | undefined} */
  let last;
  let lastSock = '';
  return (
    /** @type {Plan} */ plan,
    /** @type {Record<string, any>} */ request,
    /** @type {boolean} */ isHeld,
  ) => {
    const sock = JSON.stringify({ ...request, stitchCount: undefined });
    const mayStay = last !== undefined && sock === lastSock && (isHeld || shows(last, plan));
    lastSock = sock;
    last = mayStay && last ? last : freshScale(plan);
    return last;
  };
}
