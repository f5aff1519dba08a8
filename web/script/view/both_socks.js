// Both socks on their needle in one frame, and what the whole is called.
import { drawNeedle } from '../draw/needle.js';
import { increaseDots, outline, sizeSock } from '../draw/outline.js';
import { purlBands } from '../draw/ribs.js';
import { drawSock } from '../draw/sock.js';
import { svg } from '../draw/svg.js';
import { drawingWords } from '../../words/en.js';
import { figuresIn } from './figures.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./showing.js').Showing} Showing */

/** As long as its rounds make it, which is not quite what foot and leg add up to. @param {Plan} plan */
export const knitLength = (plan) => plan.totalRounds / plan.gauge.roundsPerMm;

/** @param {Plan} plan @param {Showing['system']} system */
export function nameOfPair(plan, system) {
  const { length } = figuresIn(system);
  return drawingWords.pairName(
    String(plan.stitchCount),
    length(knitLength(plan)),
    length(plan.finishedGirthMm),
  );
}

/** Both socks and their needle in one frame: tops on y = 0, x from the left edge of A. @param {Document} document @param {Plan} plan @param {{ scale: number, gap: number, rise: number, id: string }} how */
export function drawBoth(document, plan, { scale, gap, rise, id }) {
  const size = sizeSock(plan, scale);
  const edge = outline(plan, size);
  const increases = increaseDots(plan, size);
  const giveOrTake = plan.gauge.from === 'label' ? plan.gauge.relativeError : 0;
  const place = (/** @type {boolean} */ isSecond) =>
    svg(
      document,
      'g',
      { transform: `translate(${isSecond ? size.width * 1.5 + gap : size.width / 2} 0)` },
      drawSock(
        document,
        size,
        { edge, increases, purl: purlBands(plan, size, isSecond) },
        { id: `${id}-${isSecond ? 'b' : 'a'}`, isSecond, giveOrTake },
      ),
    );
  const right = size.width * 2 + gap;
  return {
    size,
    right,
    node: svg(
      document,
      'g',
      {},
      drawNeedle(document, { left: 0, right, rise }),
      place(false),
      place(true),
    ),
  };
}
