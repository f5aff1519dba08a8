// The rib as it slants over the front of a sock: one band for every purl rib, from the lines that are knit.
import { at } from './svg.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {{ stitch: number, round: number, width: number, height: number }} Size */

/**
 * Where the rib stands in a line: stitches from the half's start to where a purl run begins, or
 * undefined where the half is all of one kind.
 * @param {ReadonlyArray<readonly [string, number]>} half @param {number} purl
 */
function phaseOf(half, purl) {
  if (half.length < 2) return half[0][0] === 'p' ? 0 : undefined;
  const first = half[0];
  return first[0] === 'p' ? first[1] - purl : first[1];
}

/** A rib that moves and leans nowhere: 1x1, whose columns only change places. @param {Plan} plan */
const isBroken = (plan) => plan.rib.roundsPerShift > 0 && plan.spiral.pitchDeg === undefined;

/** The rib's standing at the middle of each run of rounds, unwound so that it never jumps a repeat. @param {Plan} plan @param {Size} size @param {boolean} isSecond */
function ribTrack(plan, size, isSecond) {
  const repeat = plan.rib.knit + plan.rib.purl;
  /** @type {Array<{ phase: number, from: number, to: number, section: string }>} */
  const track = [];
  let done = 0;
  for (const span of plan.rounds) {
    const from = size.height - done * size.round;
    done += span.rounds;
    if (span.section === 'toe') continue;
    const line = plan.lines[isSecond ? (span.secondLine ?? span.line) : span.line];
    const phase = phaseOf(line.halves[0], plan.rib.purl);
    if (phase === undefined) continue;
    const last = track[track.length - 1];
    const turns = last && !isBroken(plan) ? Math.round((last.phase - phase) / repeat) : 0;
    track.push({
      phase: phase + turns * repeat,
      from,
      to: size.height - done * size.round,
      section: span.section,
    });
  }
  return track;
}

/**
 * Points of a band's edge, from the toe up: slanting through the middle of each step, upright in the
 * cuff and in a broken rib.
 * @param {ReturnType<typeof ribTrack>} track @param {boolean} isUpright
 */
function edgePoints(track, isUpright) {
  if (isUpright) {
    return track.flatMap(({ phase, from, to }) => [
      { phase, y: from },
      { phase, y: to },
    ]);
  }
  /** @type {Array<{ phase: number, y: number }>} */
  const points = [];
  track.forEach(({ phase, from, to, section }, i) => {
    if (i === 0 || section === 'cuff') points.push({ phase, y: from });
    if (section !== 'cuff') points.push({ phase, y: (from + to) / 2 });
    if (i === track.length - 1) points.push({ phase, y: to });
  });
  return points;
}

/**
 * Every purl rib of the front as a band. Seen from outside, knitting goes from right to left.
 * @param {Plan} plan @param {Size} size @param {boolean} isSecond
 */
export function purlBands(plan, size, isSecond) {
  const points = edgePoints(ribTrack(plan, size, isSecond), isBroken(plan));
  if (points.length === 0) return '';
  const { knit, purl } = plan.rib;
  const phases = points.map(({ phase }) => phase);
  const half = plan.stitchCount / 2;
  const first = Math.floor((-purl - Math.max(...phases)) / (knit + purl));
  const last = Math.ceil((half - Math.min(...phases)) / (knit + purl));
  const x = (/** @type {number} */ stitches) => size.width / 2 - stitches * size.stitch;
  const band = (/** @type {number} */ shift) => {
    const right = points.map(({ phase, y }) => at(x(phase + shift), y));
    const left = [...points].reverse().map(({ phase, y }) => at(x(phase + shift + purl), y));
    return `M${[...right, ...left].join('L')}Z`;
  };
  return Array.from({ length: last - first + 1 }, (_, i) => band((first + i) * (knit + purl))).join(
    '',
  );
}
