// The round strip cut into rows for paper: a box a round, for a pen to tick.
import { at, svg, text } from './svg.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {ReturnType<typeof import('./strip.js').marksOf>} Marks */

const wide = 1000;
const between = 17;

/** So few that a pen finds its box, so many that the rows fit on the sheet. @param {number} rounds */
const inARow = (rounds) => (rounds <= 60 ? 30 : rounds <= 320 ? 50 : 100);

/**
 * @param {Document} document @param {Plan} plan
 * @param {{ name: string, marks: Marks }} how
 */
export function drawStripRows(document, plan, { name, marks }) {
  const { increases, oneSided, widenings, moves, sections } = marks;
  const count = inARow(plan.totalRounds);
  const cell = wide / count;
  const tall = Math.max(17, Math.min(cell, 24));
  const rows = Math.ceil(plan.totalRounds / count);
  const left = (/** @type {number} */ round) => (round % count) * cell;
  const top = (/** @type {number} */ round) =>
    between + Math.floor(round / count) * (tall + between);
  const path = (
    /** @type {string} */ kind,
    /** @type {number[]} */ rounds,
    /** @type {(x: number, y: number) => string} */ mark,
  ) =>
    svg(document, 'path', {
      class: kind,
      d: rounds.map((round) => mark(left(round), top(round))).join(''),
    });
  const all = Array.from({ length: plan.totalRounds }, (_, round) => round);
  const bands = sections.flatMap(({ section, from, to }) =>
    all
      .slice(from, to)
      .filter((round) => round === from || round % count === 0)
      .map((round) => {
        const end = Math.min(to, (Math.floor(round / count) + 1) * count);
        return svg(document, 'rect', {
          class: section,
          x: left(round),
          y: top(round),
          width: (end - round) * cell,
          height: tall,
        });
      }),
  );
  const half = cell / 2;
  const arm = Math.min(half, tall / 2) * 0.6;
  return svg(
    document,
    'svg',
    {
      class: 'strip rows',
      viewBox: `0 0 ${wide} ${rows * (tall + between)}`,
      role: 'img',
      'aria-label': name,
    },
    ...bands,
    path('box', all, (x, y) => `M${at(x, y)}h${at(cell)}v${at(tall)}h${at(-cell)}z`),
    path(
      'ten',
      all.filter((round) => round % 10 === 0),
      (x, y) => `M${at(x, y - 4)}v${at(tall + 4)}`,
    ),
    path(
      'adds',
      [...increases, ...oneSided],
      (x, y) =>
        `M${at(x + half - arm, y + tall / 2)}h${at(arm * 2)}M${at(x + half, y + tall / 2 - arm)}v${at(arm * 2)}`,
    ),
    path(
      'moved',
      moves,
      (x, y) => `M${at(x, y + tall)}v${at(-arm * 1.2)}l${at(arm * 1.2, arm * 1.2)}z`,
    ),
    path('moved', widenings, (x, y) => `M${at(x, y)}h${at(cell)}l${at(-half, arm * 1.6)}z`),
    ...all
      .filter((round) => round % 10 === 0)
      .map((round) =>
        text(document, String(round + 1), {
          class: 'strip-text',
          x: left(round) + 2,
          y: top(round) - 5,
        }),
      ),
  );
}
