// The pair standing, for a wide page: its lead lines begin at the fields beside it.
import { brackets } from '../../draw/brackets.js';
import { girth, greatToes, uprightLength } from '../../draw/measures.js';
import { svg, text } from '../../draw/svg.js';
import { tightLabel } from '../../draw/tight.js';
import { drawingWords, measureWords } from '../../../words/en.js';
import { drawBoth, hasGreatToe, nameOfPair, widestFlat } from '../knit/both_socks.js';
import { figuresIn } from '../figures.js';
import { bracketFigure, bracketWords, isWidened, partsOf } from '../parts.js';
import { tightAtHeel } from './stretch.js';

/** @typedef {import('../showing.js').Showing} Showing */

// Where the ball of the foot lies, from the toe, as a share of the foot: only for the drawing.
const ballShare = 0.28;

// The heights of the fields beside the standing pair; style/stage.css puts the fields there.
const slots = { leg: 134, heel: 268, foot: 402, ball: 536 };

const [wide, tall] = [470, 604];
const [left, top, bottom] = [62, 62, 34];

/** Every part of the sock, bracketed. @param {Showing} showing @param {number} tip @param {number} round height of one */
function partsFrom(showing, tip, round) {
  const { plan } = showing;
  return partsOf(plan).map((part) => ({
    from: tip - (part.from + part.rounds) * round,
    to: tip - part.from * round,
    figure: bracketFigure(showing, part),
    lines: bracketWords(showing, part),
  }));
}

/** @param {Document} document @param {Showing} showing */
export function standingPair(document, showing) {
  const { plan, request, system, values } = showing;
  const { length } = figuresIn(system);
  // A wider leg keeps the feet apart by itself.
  const [gap, most] = isWidened(plan) ? [16, 122] : [36, 112];
  const fit = (tall - top - bottom) / (plan.totalRounds / plan.gauge.roundsPerMm);
  const scale = Math.min(fit, most / widestFlat(plan));
  const how = { scale, gap, rise: 44, id: 'standing', heel: request.legHeightMm / plan.lengthMm };
  const { size, every, right, middles, halfWidth, node } = drawBoth(document, plan, how);
  // A short sock hangs lower, its toe by the note.
  const tip = tall - bottom;
  const start = tip - size.height;
  const heel = start + size.height * (request.legHeightMm / plan.lengthMm);
  const ball = tip - plan.foot.lengthMm * ballShare * (size.height / plan.lengthMm);
  const isTape = '/foot/lengthMm' in values;
  const across = (
    /** @type {number} */ y,
    /** @type {string} */ goto,
    /** @type {number | undefined} */ field,
  ) => {
    const half = halfWidth(y - start);
    const middle = left + middles[0];
    return girth(document, {
      from: middle - half,
      to: middle + half,
      y,
      turn: left - 30,
      field,
      goto,
    });
  };
  const tight = tightAtHeel(plan);
  const letter = (/** @type {'a' | 'b'} */ sock, /** @type {number} */ x) =>
    text(document, hasGreatToe(plan) ? drawingWords.footOf[sock] : drawingWords.sock[sock], {
      class: 'letter',
      x: left + x,
      y: tall - 10,
      'text-anchor': 'middle',
    });
  return svg(
    document,
    'svg',
    {
      class: 'pair wide-only',
      viewBox: `0 0 ${wide} ${tall}`,
      role: 'img',
      'aria-label': nameOfPair(plan, system),
      'data-every': every,
    },
    svg(document, 'g', { transform: `translate(${left} ${start})` }, node),
    uprightLength(document, {
      x: left - 18,
      from: start,
      to: heel,
      field: slots.leg,
      goto: '/legHeightMm',
      label: measureWords.leg(length(request.legHeightMm)),
    }),
    uprightLength(document, {
      x: left - 18,
      from: heel,
      to: tip,
      field: isTape ? slots.foot : undefined,
      goto: isTape ? '/foot/lengthMm' : '/foot/shoe/size',
      label: measureWords.foot(length(plan.foot.lengthMm), '', false),
    }),
    across(heel, '/foot/heelAnkleGirthMm', slots.heel),
    across(ball, isTape ? '/foot/ballGirthMm' : '/foot/shoe/size', isTape ? slots.ball : undefined),
    brackets(document, left + right + 12, partsFrom(showing, tip, size.round).reverse(), tall),
    ...(hasGreatToe(plan)
      ? [greatToes(document, { x: left + right / 2, y: tip + 2, label: drawingWords.greatToes })]
      : []),
    letter('a', middles[0]),
    letter('b', middles[1]),
    ...(tight === '' ? [] : [tightLabel(document, { x: left + right / 2, y: heel, words: tight })]),
  );
}
