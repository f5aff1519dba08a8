// The round strip: every round of a sock as a tick in one thin band.
import { at, svg, text } from './svg.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./rib_track.js').Run} Run */

/**
 * Which rounds (from 0) add stitches at both sides of the toe or at one, which widen the leg, which move the rib,
 * and where a section begins.
 * @param {Plan} plan @param {Run[]} track
 */
export function marksOf(plan, track) {
  const toe = (/** @type {(sides: string) => boolean} */ is) =>
    plan.toe.sides.flatMap((sides, j) => (is(sides) ? [j] : []));
  /** @type {Array<{ section: string, from: number, to: number }>} */
  const sections = [];
  let round = 0;
  for (const span of plan.rounds) {
    const last = sections[sections.length - 1];
    if (last && last.section === span.section) last.to += span.rounds;
    else sections.push({ section: span.section, from: round, to: round + span.rounds });
    round += span.rounds;
  }
  return {
    increases: toe((sides) => sides === 'both'),
    oneSided: toe((sides) => sides === 'great' || sides === 'little'),
    widenings: track.filter(({ before }) => before).map(({ from }) => from),
    moves: track.filter(({ isMove, before }) => isMove && !before).map(({ from }) => from),
    sections,
  };
}

/** Over a widening round: a small wedge that opens upwards, as the leg does. @param {number} x @param {number} tall */
const wedge = (x, tall) => `M${at(x, tall)}V${at(0)}M${at(x - 4, 0)}h8l-4 9z`;

// Ticks closer than this run together; a line along them says the same.
const leastApart = 3;

/** @param {number[]} rounds @param {number} step */
const areTold = (rounds, step) =>
  rounds.length < 3 ||
  ((rounds[rounds.length - 1] - rounds[0]) / (rounds.length - 1)) * step >= leastApart;

/** @typedef {{ text: string, from: number }} Label `from` the round its part begins with, from 0 */

/**
 * Labels at their parts' beginnings; one that would run into another
 * stands a row lower.
 * @param {Label[]} labels @param {number} step @param {number} width
 */
function placeLabels(labels, step, width) {
  // Where each row is taken up to.
  const ends = labels.map(() => 0);
  return labels.map(({ text: words, from }) => {
    const long = words.length * 6.2;
    // A part near the end has its label end with the strip.
    const isEnding = from * step > width - long;
    const start = isEnding ? width - long : from * step;
    const free = ends.findIndex((end) => start >= end);
    const row = free < 0 ? ends.length - 1 : free;
    ends[row] = start + long + 8;
    return { words, x: isEnding ? width : start, row, isEnding };
  });
}

/**
 * @param {Document} document @param {Plan} plan
 * @param {{ width: number, name: string, labels: Label[], track: Run[], done?: number }} how `done`: rounds that are knit, of a begun sock
 */
export function drawStrip(document, plan, { width, name, labels, track, done }) {
  const { increases, oneSided, widenings, moves, sections } = marksOf(plan, track);
  const step = width / plan.totalRounds;
  const tall = 28;
  const thin = 0.8;
  const tick = (/** @type {number} */ round, /** @type {number} */ high) =>
    `M${at((round + 0.5) * step, tall)}v${at(-high)}`;
  // A dashed line is a tick a round in few words. Closer than this they run together into a grey.
  const all = step < 1.6 ? '' : `M${at(step / 2 - thin / 2, tall - 2.5)}H${width}`;
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
    svg(document, 'path', {
      class: 'tick all',
      d: all,
      'stroke-dasharray': `${thin} ${(step - thin).toFixed(5)}`,
    }),
    areTold(moves, step)
      ? path('tick moves', moves, 13)
      : svg(document, 'path', {
          class: 'tick moves',
          d: `M${at(moves[0] * step, tall - 13)}H${at((moves[moves.length - 1] + 1) * step)}`,
        }),
    path('tick increases', increases, 24),
    path('tick increases', oneSided, 16),
    ...(widenings.length > 0
      ? [
          svg(document, 'path', {
            class: 'widens',
            d: widenings.map((round) => wedge((round + 0.5) * step, tall)).join(''),
          }),
        ]
      : []),
    ...(done === undefined
      ? []
      : [
          svg(document, 'rect', {
            class: 'knit',
            x: 0,
            y: tall + 1,
            width: done * step,
            height: 3,
          }),
          svg(document, 'path', { class: 'here', d: `M${at(done * step, 0)}V${at(tall + 5)}` }),
        ]),
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
