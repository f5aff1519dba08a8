// The round strip: every round of a sock as a tick in one thin band.
import { at, svg, text } from './svg.js';

/** @typedef {import('../contract.js').Plan} Plan */

/** Which rounds (from 0) add stitches, which move the rib, where a section begins. @param {Plan} plan */
function marksOf(plan) {
  const increases = plan.toe.counts.flatMap((count, j) =>
    count === (j === 0 ? plan.castOn.stitches : plan.toe.counts[j - 1]) ? [] : [j],
  );
  /** @type {number[]} */
  const moves = [];
  /** @type {Array<{ section: string, from: number, to: number }>} */
  const sections = [];
  let round = 0;
  for (const span of plan.rounds) {
    const last = sections[sections.length - 1];
    if (last && last.section === span.section) {
      last.to += span.rounds;
      if (span.section !== 'toe') moves.push(round);
    } else sections.push({ section: span.section, from: round, to: round + span.rounds });
    round += span.rounds;
  }
  return { increases, moves, sections };
}

/**
 * @param {Document} document @param {Plan} plan
 * @param {{ width: number, name: string, labels: Record<string, string>, end: string }} how
 */
export function drawStrip(document, plan, { width, name, labels, end }) {
  const { increases, moves, sections } = marksOf(plan);
  const step = width / plan.totalRounds;
  const tall = 28;
  const tick = (/** @type {number} */ round, /** @type {number} */ high) =>
    `M${at((round + 0.5) * step, tall)}v${at(-high)}`;
  // Ticks closer than this run together into a grey.
  const all = step < 1.6 ? [] : Array.from({ length: plan.totalRounds }, (_, round) => round);
  const path = (
    /** @type {string} */ kind,
    /** @type {number[]} */ rounds,
    /** @type {number} */ high,
  ) => svg(document, 'path', { class: kind, d: rounds.map((round) => tick(round, high)).join('') });
  // A short cuff's name would stand in the words at the end.
  const hasRoom = (/** @type {{ from: number }} */ { from }) =>
    from === 0 || width - from * step > 96;
  return svg(
    document,
    'svg',
    { class: 'strip', viewBox: `0 0 ${width} 50`, role: 'img', 'aria-label': name },
    ...sections.map(({ section, from, to }) =>
      svg(document, 'rect', {
        class: `band ${section}`,
        x: from * step,
        y: 0,
        width: (to - from) * step,
        height: tall,
      }),
    ),
    path('tick', all, 5),
    path('tick moves', moves, 13),
    path('tick increases', increases, 24),
    ...sections
      .filter(hasRoom)
      .map(({ section, from }) =>
        text(document, labels[section] ?? section, { class: 'strip-text', x: from * step, y: 44 }),
      ),
    text(document, end, { class: 'strip-text', x: width, y: 44, 'text-anchor': 'end' }),
  );
}
