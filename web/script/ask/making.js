// A sock in the making, as the questions beside the plan are asked about it: its rounds and its yarn, out of its plan.

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('../contract.js').StripesRequest['sock']} Sock */

/** Runs of rounds that differ in nothing but their line are one. @param {Plan} plan @returns {Sock} */
export function sockInMaking({ rounds, yarn }) {
  /** @type {Sock['rounds']} */
  const spans = [];
  for (const { section, rounds: more, stitches } of rounds) {
    const last = spans[spans.length - 1];
    if (last?.section === section && last.stitches === stitches) last.rounds += more;
    else spans.push({ section, rounds: more, stitches });
  }
  const metres = (/** @type {string} */ name) =>
    yarn.sections.find(({ section }) => section === name)?.m ?? 0;
  return {
    rounds: spans,
    mmPerStitch: yarn.mmPerStitch,
    castOnM: metres('castOn'),
    bindOffM: metres('bindOff'),
    tailsM: metres('tails'),
  };
}
