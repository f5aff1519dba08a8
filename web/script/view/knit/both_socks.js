// Both socks on their needle in one frame, and what the whole is called.
import { checks } from '../../draw/checks.js';
import { drawNeedle } from '../../draw/needle.js';
import { increaseDots, outline } from '../../draw/outline.js';
import { profileOf, sizeSock } from '../../draw/profile.js';
import { ribTrack } from '../../draw/rib_track.js';
import { purlBands, ribsPerBand, wideningDots } from '../../draw/ribs.js';
import { drawSock } from '../../draw/sock.js';
import { svg } from '../../draw/svg.js';
import { drawTight } from '../../draw/tight.js';
import { drawingWords } from '../../../words/en.js';
import { figuresIn } from '../figures.js';
import { tightAtHeel } from '../count/stretch.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../showing.js').Showing} Showing */

/** As long as its rounds make it, which is not quite what foot and leg add up to. @param {Plan} plan */
export const knitLength = (plan) => plan.totalRounds / plan.gauge.roundsPerMm;

/** Half as many stitches as stand at the sock's widest, as a width in millimetres. @param {Plan} plan */
export const widestFlat = (plan) => plan.edgeStitches / 2 / plan.gauge.stitchesPerMm;

/** Whether the toes of a left and a right sock differ. @param {Plan} plan */
export const hasGreatToe = (plan) =>
  plan.toe.sides.some((sides) => sides === 'great' || sides === 'little');

/** @param {Plan} plan @param {Showing['system']} system */
export function nameOfPair(plan, system) {
  const { length } = figuresIn(system);
  const name = drawingWords.pairName(
    String(plan.stitchCount),
    length(knitLength(plan)),
    length(plan.finishedGirthMm),
  );
  const wider =
    plan.widening.stages.length > 0 && drawingWords.pairWider(String(plan.edgeStitches));
  const toes = hasGreatToe(plan) && drawingWords.pairToes;
  return [name, wider, toes, drawingWords.pairTable].filter(Boolean).join(' ');
}

/** Both socks and their needle in one frame: tops on y = 0, x from the left edge of A. @param {Document} document @param {Plan} plan @param {{ scale: number, gap: number, rise: number, id: string, heel: number }} how `heel` is where it lies, as a share of the sock from its edge */
export function drawBoth(document, plan, { scale, gap, rise, id, heel }) {
  const size = sizeSock(plan, scale);
  const leg = profileOf(plan, size);
  const giveOrTake = plan.gauge.from === 'label' ? plan.gauge.relativeError : 0;
  const middles = [size.widest / 2, size.widest * 1.5 + gap];
  const place = (/** @type {boolean} */ isSecond) => {
    const track = ribTrack(plan, isSecond);
    const how = { id: `${id}-${isSecond ? 'b' : 'a'}`, isSecond, giveOrTake };
    const paths = {
      edge: outline(plan, size, leg, isSecond),
      increases: increaseDots(plan, size, isSecond) + wideningDots(plan, size, leg, track),
      purl: purlBands(plan, size, leg, track),
      checks: checks(document, how.id, size, track),
    };
    return svg(
      document,
      'g',
      { transform: `translate(${middles[isSecond ? 1 : 0]} 0)` },
      drawSock(document, size, paths, how),
      ...(tightAtHeel(plan) === ''
        ? []
        : [
            drawTight(document, {
              width: size.widest,
              y: size.height * heel,
              // As tall as the way over the bend looks from the side.
              tall: Math.min(plan.heelDepthMm * scale * 0.7, size.height * heel),
              clip: `${how.id}-edge`,
            }),
          ]),
    );
  };
  const right = size.widest * 2 + gap;
  return {
    size,
    every: ribsPerBand(plan, size),
    right,
    middles,
    halfWidth: leg.half,
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
