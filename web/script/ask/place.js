// What the core is told of a sock that is being knit: the very rounds it was begun with, whatever the rules have become.
import { sockInMaking } from './making.js';

/** @typedef {import('../contract.js').Plan} Plan */

/** @param {Plan} plan @param {Record<string, any>} request @param {import('../state/place.js').Place} place */
export const placeRequest = (plan, { pace }, { round, pass, laps }) => ({
  version: 1,
  // Which rounds move the rib is told by their lines.
  sock: { ...sockInMaking(plan), rounds: plan.rounds },
  done: { rounds: round, passes: pass },
  ...(pace?.stitchesPerMinute ? { stitchesPerMinute: pace.stitchesPerMinute } : {}),
  ...(laps.length > 0 ? { laps: laps.map(([stitches, seconds]) => ({ stitches, seconds })) } : {}),
});
