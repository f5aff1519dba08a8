// What the core is told of a sock that is being knit: the very rounds it was begun with, whatever the rules have become.

/** @typedef {import('../contract.js').Plan} Plan */

/** The sock in the making, as several questions ask for it. @param {Plan} plan */
export function makingOf({ rounds, yarn }) {
  const metres = Object.fromEntries(yarn.sections.map(({ section, m }) => [section, m]));
  return {
    rounds,
    castOnM: metres.castOn,
    bindOffM: metres.bindOff,
    tailsM: metres.tails,
    mmPerStitch: yarn.mmPerStitch,
  };
}

/** @param {Plan} plan @param {Record<string, any>} request @param {import('../state/place.js').Place} place */
export const placeRequest = (plan, { pace }, { round, pass, laps }) => ({
  version: 1,
  sock: makingOf(plan),
  done: { rounds: round, passes: pass },
  ...(pace?.stitchesPerMinute ? { stitchesPerMinute: pace.stitchesPerMinute } : {}),
  ...(laps.length > 0 ? { laps: laps.map(([stitches, seconds]) => ({ stitches, seconds })) } : {}),
});
