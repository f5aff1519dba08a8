// What the core is told of a sock that is being knit: the very rounds it was begun with, whatever the rules have become.
import { lapsThatCount, withinPlan } from '../state.js';
import { sockInMaking } from './making.js';

/** @typedef {import('../contract.js').Plan} Plan */

/** @param {Plan} plan @param {Record<string, any>} request @param {import('../state/place.js').Place} place */
const placeRequest = (plan, { pace }, { round, pass, laps }) => ({
  version: 1,
  // Which rounds move the rib is told by their lines.
  sock: { ...sockInMaking(plan), rounds: plan.rounds },
  done: { rounds: round, passes: pass },
  ...(pace?.stitchesPerMinute ? { stitchesPerMinute: pace.stitchesPerMinute } : {}),
  ...(laps.length > 0 ? { laps: laps.map(([stitches, seconds]) => ({ stitches, seconds })) } : {}),
});

/**
 * What there is to say of the place a sock is knit to, by the plan that it was begun with.
 * @param {import('../ask.js').Answer} answer @param {import('../ask.js').Good} good
 * @returns {{ told: any, laps: number } | undefined} `laps`: of how many timed rounds the pace is
 */
export function askPlace(answer, good) {
  const { plan, request, state } = good;
  if (!state.started) return undefined;
  // What was kept of it may be another plan than the one that is shown.
  const here = withinPlan({ ...state.started, reply: good.reply });
  const place = { ...here, laps: lapsThatCount(state.started.laps) };
  let reply = answer('place', placeRequest(plan, request, place));
  if (
    reply.problems?.some((/** @type {{ code: string }} */ { code }) => code === 'lap_too_short')
  ) {
    const isShort = (/** @type {number} */ i) =>
      reply.problems.some(
        (/** @type {{ field: string }} */ { field }) => field === `/laps/${i}/seconds`,
      );
    place.laps = place.laps.filter((_lap, i) => !isShort(i));
    reply = answer('place', placeRequest(plan, request, place));
  }
  return reply.ok ? { told: reply.place, laps: place.laps.length } : undefined;
}
