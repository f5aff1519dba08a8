// The pair lying, toe left, for a narrow page.
import { bracketsBelow, stairAbove, stairStep } from '../../draw/brackets.js';
import { greatToes, levelLength } from '../../draw/measures.js';
import { svg, text, write } from '../../draw/svg.js';
import { tightLabel } from '../../draw/tight.js';
import { drawingWords, measureWords } from '../../../words/en.js';
import { formatPercent } from '../../units.js';
import { drawBoth, hasGreatToe, nameOfPair, widestFlat } from '../knit/both_socks.js';
import { figuresIn } from '../figures.js';
import { bracketFigure, bracketWords, partsOf } from '../parts.js';
import { tightAtHeel } from './stretch.js';

/** @typedef {import('../showing.js').Showing} Showing */

/** The foot, and by how much the sock's is shorter or longer. @param {Showing['plan']} plan @param {(mm: number) => string} length */
function sayFoot(plan, length) {
  const ease = plan.working.find(({ figure }) => figure === 'lengthMm')?.numbers.lengthEase ?? 0;
  const share = ease === 0 ? '' : formatPercent(Math.abs(ease));
  return measureWords.foot(length(plan.foot.lengthMm), share, ease < 0);
}

const wide = 340;
const [left, end, most] = [14, 34, 112];

/** Every part of the sock, bracketed: what widens above it, the rest below. @param {Showing} showing @param {number} round length of one */
function partsFrom(showing, round) {
  const { plan } = showing;
  const parts = partsOf(plan).map((part) => ({
    section: part.section,
    from: left + part.from * round,
    to: left + (part.from + part.rounds) * round,
    figure: bracketFigure(showing, part),
    lines: bracketWords(showing, part),
  }));
  const isWider = (/** @type {{ section: string }} */ { section }) => section === 'widening';
  return { above: parts.filter(isWider), below: parts.filter((part) => !isWider(part)) };
}

/**
 * Foot and leg stand in words under the pair, for the fields come below.
 * @param {Document} document @param {Showing} showing @param {string} [id] what its patterns' names begin with
 */
export function lyingPair(document, showing, id = 'lying') {
  const { plan, request, system, values } = showing;
  const isPaired = hasGreatToe(plan);
  const { length } = figuresIn(system);
  const fit = (wide - left - end) / (plan.totalRounds / plan.gauge.roundsPerMm);
  const scale = Math.min(fit, most / widestFlat(plan));
  const how = {
    scale,
    gap: isPaired ? 30 : 12,
    rise: 22,
    id,
    heel: request.legHeightMm / plan.lengthMm,
  };
  const { size, every, right, middles, node } = drawBoth(document, plan, how);
  const { above, below } = partsFrom(showing, size.round);
  // A foot's name stands at its own toe, out of the way of the brackets.
  const named = isPaired ? 18 : 0;
  const stair = above.length === 0 ? 0 : 12 + above.length * stairStep;
  const top = Math.max(20, stair + named + 6);
  const under = top + right + named;
  const cuff = left + size.height;
  const heel = cuff - size.height * (request.legHeightMm / plan.lengthMm);
  const tight = tightAtHeel(plan);
  const letter = (/** @type {'a' | 'b'} */ sock, /** @type {number} */ y) =>
    text(document, drawingWords.sock[sock], {
      class: 'letter',
      x: 4,
      y: top + y + 5,
      'text-anchor': 'middle',
    });
  const foot = (/** @type {'a' | 'b'} */ sock, /** @type {number} */ y) =>
    text(document, drawingWords.foot[sock], { class: 'measure-text', x: left, y });
  const narrow = size.widest / 2 - size.width / 2;
  const toes = {
    x: left + plan.toe.rounds * size.round,
    y: top + right / 2 + 5,
    label: drawingWords.greatToes,
    isLying: true,
  };
  return svg(
    document,
    'svg',
    {
      class: 'pair narrow-only',
      viewBox: `0 0 ${wide} ${write(under + 82)}`,
      role: 'img',
      'aria-label': nameOfPair(plan, system),
      'data-every': every,
    },
    svg(document, 'g', { transform: `matrix(0 1 -1 0 ${write(cuff)} ${top})` }, node),
    ...(above.length > 0 ? [stairAbove(document, { y: top - 4 - named, parts: above })] : []),
    ...(isPaired
      ? [
          greatToes(document, toes),
          foot('a', top + narrow - 6),
          foot('b', top + right - narrow + 16),
        ]
      : []),
    bracketsBelow(document, { y: under + 7, parts: below, width: wide }),
    levelLength(document, {
      y: under + 60,
      from: left,
      to: heel,
      goto: '/foot/lengthMm' in values ? '/foot/lengthMm' : '/foot/shoe/size',
      label: sayFoot(plan, length),
    }),
    levelLength(document, {
      y: under + 60,
      from: heel,
      to: cuff,
      goto: '/legHeightMm',
      label: measureWords.leg(length(request.legHeightMm)),
    }),
    letter('a', middles[0]),
    letter('b', middles[1]),
    ...(tight === '' ? [] : [tightLabel(document, { x: heel, y: top + right / 2, words: tight })]),
  );
}
