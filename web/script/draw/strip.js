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

/** @typedef {{ text: string, from: number }} Label `from` the round its part begins with, from 0 */

/**
 * Labels at their parts' beginnings; one that would run into another
 * stands a row lower.
 * @param {Label[]} labels @param {number} step @param {number} width
 */
function placeLabels(labels, step, width) {
  // Where each row is taken up to.
  const ends = [0, 0, 0];
  return labels.map(({ text: words, from }, i) => {
    const long = words.length * 6.2;
    const isLast = i === labels.length - 1;
    // A short last part has its label end with the strip.
    const isEnding = isLast && from * step > width - long;
    const start = isEnding ? width - long : from * step;
    const free = ends.findIndex((end) => start >= end);
    const row = free < 0 ? ends.length - 1 : free;
    ends[row] = start + long + 8;
    return { words, x: isEnding ? width : start, row, isEnding };
  });
}

/**
 * @param {Document} document @param {Plan} plan
 * @param {{ width: number, name: string, labels: Label[] }} how
 */
export function drawStrip(document, plan, { width, name, labels }) {
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
  const placed = placeLabels(labels, step, width);
  const rows = Math.max(...placed.map(({ row }) => row)) + 1;
  return svg(
    document,
    'svg',
    {
      class: 'strip',
      viewBox: `0 0 ${width} ${34 + rows * 16}`,
      role: 'img',
      'aria-label': name,
    },
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
    ...placed.map(({ words, x, row, isEnding }) =>
      text(document, words, {
        class: 'strip-text',
        x,
        y: 44 + row * 16,
        'text-anchor': isEnding ? 'end' : 'start',
      }),
    ),
  );
}
