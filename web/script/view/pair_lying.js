// The pair lying, toe left, for a narrow page.
import { levelLength } from '../draw/measures.js';
import { svg, text, write } from '../draw/svg.js';
import { drawingWords, measureWords } from '../../words/en.js';
import { formatPercent } from '../units.js';
import { drawBoth, knitLength, nameOfPair } from './both_socks.js';
import { figuresIn } from './figures.js';

/** @typedef {import('./showing.js').Showing} Showing */

/** The foot, and by how much the sock's is shorter or longer. @param {Showing['plan']} plan @param {(mm: number) => string} length */
function sayFoot(plan, length) {
  const ease = plan.working.find(({ figure }) => figure === 'lengthMm')?.numbers.lengthEase ?? 0;
  const share = ease === 0 ? '' : formatPercent(Math.abs(ease));
  return measureWords.foot(length(plan.foot.lengthMm), share, ease < 0);
}

/** Foot and leg stand in words under the pair, for the fields come below. @param {Document} document @param {Showing} showing */
export function lyingPair(document, { plan, request, system }) {
  const wide = 340;
  const [left, top, end, gap, rise] = [14, 20, 34, 12, 22];
  const scale = (wide - left - end) / (plan.totalRounds / plan.gauge.roundsPerMm);
  const most = 112;
  const { size, right, node } = drawBoth(document, plan, {
    scale: Math.min(scale, most / (plan.finishedGirthMm / 2)),
    gap,
    rise,
    id: 'lying',
  });
  const { length } = figuresIn(system);
  const tall = top + right;
  const cuff = left + size.height;
  const heel = cuff - size.height * (request.legHeightMm / plan.lengthMm);
  const total = drawingWords.whole(drawingWords.rounds(plan.totalRounds), length(knitLength(plan)));
  const letter = (/** @type {string} */ name, /** @type {number} */ y) =>
    text(document, name, { class: 'letter', x: 4, y: y + 5, 'text-anchor': 'middle' });
  return svg(
    document,
    'svg',
    {
      class: 'pair narrow-only',
      viewBox: `0 0 ${wide} ${write(tall + 66)}`,
      role: 'img',
      'aria-label': nameOfPair(plan, system),
    },
    svg(document, 'g', { transform: `matrix(0 1 -1 0 ${cuff} ${top})` }, node),
    levelLength(document, {
      y: tall + 22,
      from: left,
      to: heel,
      label: sayFoot(plan, length),
    }),
    levelLength(document, {
      y: tall + 22,
      from: heel,
      to: cuff,
      label: measureWords.leg(length(request.legHeightMm)),
    }),
    text(document, total, {
      class: 'part-figure',
      x: (left + cuff) / 2,
      y: tall + 60,
      'text-anchor': 'middle',
    }),
    letter(drawingWords.sock.a, top + size.width / 2),
    letter(drawingWords.sock.b, top + size.width * 1.5 + gap),
  );
}
