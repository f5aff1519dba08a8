// The pair standing, for a wide page: its lead lines begin at the fields beside it.
import { brackets, girth, uprightLength } from '../draw/measures.js';
import { svg, text } from '../draw/svg.js';
import { drawingWords } from '../../words/en.js';
import { drawBoth, nameOfPair } from './both_socks.js';
import { figuresIn } from './figures.js';
import { nameOf, partsOf, ribTitle, sayMove, sayRib } from './parts.js';

/** @typedef {import('./showing.js').Showing} Showing */

// Where the ball of the foot lies, from the toe, as a share of the foot: only for the drawing.
const ballShare = 0.28;

// The heights of the fields beside the standing pair; style/stage.css puts the fields there.
const slots = { leg: 134, heel: 268, foot: 402, ball: 536 };

/** @param {Document} document @param {Showing} showing */
export function standingPair(document, { plan, request, system, values }) {
  const wide = 470;
  const tall = 604;
  const [left, top, bottom, gap, most] = [62, 62, 34, 36, 112];
  const fit = (tall - top - bottom) / (plan.totalRounds / plan.gauge.roundsPerMm);
  const scale = Math.min(fit, most / (plan.finishedGirthMm / 2));
  const { size, right, node } = drawBoth(document, plan, { scale, gap, rise: 44, id: 'standing' });
  const { length } = figuresIn(system);
  // A short sock hangs lower, its toe by the note.
  const start = tall - bottom - size.height;
  const tip = tall - bottom;
  const heel = start + size.height * (request.legHeightMm / plan.lengthMm);
  const parts = partsOf(plan).map(({ section, rounds, from }) => ({
    from: tip - (from + rounds) * size.round,
    to: tip - from * size.round,
    figure: drawingWords.whole(
      drawingWords.rounds(rounds),
      length(rounds / plan.gauge.roundsPerMm),
    ),
    lines:
      section === 'spiral'
        ? [`${sayRib(plan)} ${ribTitle(plan)}`, sayMove(plan)].filter(Boolean)
        : [nameOf(section)],
  }));
  const isTape = '/foot/lengthMm' in values;
  const ball = tip - plan.foot.lengthMm * ballShare * (size.height / plan.lengthMm);
  const letter = (/** @type {string} */ name, /** @type {number} */ x) =>
    text(document, name, { class: 'letter', x, y: tall - 10, 'text-anchor': 'middle' });
  return svg(
    document,
    'svg',
    {
      class: 'pair wide-only',
      viewBox: `0 0 ${wide} ${tall}`,
      role: 'img',
      'aria-label': nameOfPair(plan, system),
    },
    svg(document, 'g', { transform: `translate(${left} ${start})` }, node),
    uprightLength(document, { x: left - 18, from: start, to: heel, field: slots.leg }),
    uprightLength(document, {
      x: left - 18,
      from: heel,
      to: tip,
      field: isTape ? slots.foot : undefined,
    }),
    girth(document, {
      from: left,
      to: left + size.width,
      y: heel,
      turn: left - 30,
      field: slots.heel,
    }),
    girth(document, {
      from: left,
      to: left + size.width,
      y: ball,
      turn: left - 30,
      field: isTape ? slots.ball : undefined,
    }),
    brackets(document, left + right + 12, parts.reverse(), tall),
    letter(drawingWords.sock.a, left + size.width / 2),
    letter(drawingWords.sock.b, left + size.width * 1.5 + gap),
  );
}
