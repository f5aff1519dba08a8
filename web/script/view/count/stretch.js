// The stretch line: what the chosen count can go round, on one scale of girth, with the count as a handle on it.
import { drawFlags, placeFlags, tallOf } from '../../draw/flags.js';
import { drawCounts, drawHandle, drawSure } from '../../draw/handle.js';
import { drawBand, drawTape, linesOf } from '../../draw/stretch.js';
import { svg, write } from '../../draw/svg.js';
import { stretchWords } from '../../../words/en.js';
import { formatCount, formatPercent, toBase } from '../../units.js';
import { figuresIn } from '../figures.js';
import { takesIn } from '../give_or_take.js';
import { guessText } from '../guess.js';
import { freshScale } from './stretch_scale.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('./stretch_scale.js').Scale} Scale */
/** @typedef {{ mm: number, name: string, figure: string, kind: string }} Mark */

const words = stretchWords;

/** No line ends between a figure and its unit. @param {string} figure */
const together = (figure) => figure.replaceAll(' ', '\u00a0');

/** The count's girth laid flat, and how sure it is. @param {Showing} showing */
export function sayFlat({ plan, system }) {
  const { length } = figuresIn(system);
  return words.flat(
    together(length(plan.finishedGirthMm)),
    together(takesIn({ plan, system }).girth),
  );
}

/** Whether the core found this count too tight for the heel, and how badly. @param {Plan} plan */
export function tightAtHeel({ cautions }) {
  const codes = cautions.map(({ code }) => code);
  if (codes.includes('heel_will_not_pass')) return words.atHeel.stuck;
  return codes.includes('heel_tight') ? words.atHeel.tight : '';
}

/** The edge's girth, and with what it is passed where the tube there is another. @param {Plan} plan @param {string} girth */
function sayEdge(plan, girth) {
  if (plan.edgeStitches === plan.stitchCount) return girth;
  return words.mark.widened(girth, formatCount(plan.edgeStitches));
}

/** Everything on the line but the handle. @param {Showing} showing @returns {Mark[]} */
function marksOf(showing) {
  const { plan, system } = showing;
  const { length } = figuresIn(system);
  const names = words.mark;
  const heel = plan.foot.heelAnkleGirthEstimated ? names.largeHeel : names.heel;
  const isTight = tightAtHeel(plan) !== '';
  const hasOwnTube = plan.edgeStitches !== plan.stitchCount;
  const edge = plan.legFit.edgeGirthMm;
  const isEdgeTight = !hasOwnTube && edge > plan.passGirthMm;
  const mark = (
    /** @type {number} */ mm,
    /** @type {string} */ name,
    /** @type {string} */ kind,
    /** @type {Parameters<typeof guessText>[1]} */ hangsOn,
    figure = length(mm),
  ) => ({ mm, name, kind, figure: guessText(showing, hangsOn, figure) });
  return [
    mark(plan.restGirthMm, names.rest, 'own', 'girth'),
    mark(plan.foot.ballGirthMm, names.foot, 'pass', 'footGirth'),
    mark(
      edge,
      names.edge,
      isEdgeTight ? 'tight' : hasOwnTube ? 'elsewhere' : 'pass',
      'edgeGirth',
      isEdgeTight ? names.tooTight(length(edge)) : sayEdge(plan, length(edge)),
    ),
    mark(
      plan.foot.heelToPassMm,
      heel,
      isTight ? 'tight' : 'pass',
      'heelGirth',
      isTight ? names.tooTight(length(plan.foot.heelToPassMm)) : undefined,
    ),
    mark(plan.passGirthMm, names.limit, 'own', 'girth'),
    mark(plan.widestGirthMm, names.widest, 'own', 'girth'),
  ];
}

/** For those who hear the handle, and for the hand that drags it. @param {Showing} showing @returns {Record<string, string>} */
function sliderOf(showing) {
  const { plan } = showing;
  const use = formatPercent(plan.heelUse);
  const heel = tightAtHeel(plan) === '' ? words.heelPasses(use) : words.heelStuck(use);
  const counts = plan.choices.map(({ stitches }) => stitches);
  return {
    role: 'slider',
    tabindex: '0',
    'aria-label': words.handle,
    'aria-valuemin': String(counts[0]),
    'aria-valuemax': String(counts[counts.length - 1]),
    'aria-valuenow': String(plan.stitchCount),
    'aria-valuetext': words.handleValue(
      formatCount(plan.stitchCount),
      sayFlat(showing),
      plan.halvesAlike ? words.alike : words.unlike,
      heel,
    ),
    'data-handle': '',
    'data-counts': counts.join(' '),
    'data-girths': plan.choices.map(({ girthMm }) => girthMm).join(' '),
    'data-advised': String(plan.advisedCount ?? ''),
  };
}

/**
 * @param {Document} document @param {Showing} showing
 * @param {{ width: number, grain: number, only: string }} how
 */
export function viewStretch(document, showing, { width, grain, only }) {
  const { plan, system } = showing;
  const scale = showing.scale ?? freshScale(plan);
  const [left, right] = [4, width - 4];
  const share = (/** @type {number} */ mm) => (mm - scale.from) / (scale.to - scale.from);
  const x = (/** @type {number} */ mm) => left + share(mm) * (right - left);
  const inSight = (/** @type {number} */ mm) => Math.min(Math.max(x(mm), left), right);
  const flags = marksOf(showing).map(({ mm, name, figure, kind }) => ({
    x: inSight(mm),
    // Off the scale it is shown all the same, at the end that it lies beyond.
    name: mm > scale.to ? words.mark.after(name) : mm < scale.from ? words.mark.before(name) : name,
    figure,
    kind,
  }));
  const places = placeFlags(flags, width);
  const counts = plan.choices
    .filter(({ girthMm }) => girthMm >= scale.from && girthMm <= scale.to)
    .map(({ stitches, girthMm }) => ({
      x: x(girthMm),
      stitches: formatCount(stitches),
      isChosen: stitches === plan.stitchCount,
      isAdvised: stitches === plan.advisedCount,
    }));
  const flat = plan.finishedGirthMm;
  const { top, bottom, tape } = linesOf(grain);
  return svg(
    document,
    'svg',
    {
      class: `stretch ${only}`,
      viewBox: `0 0 ${width} ${write(tape + tallOf(places) + 2)}`,
      role: 'group',
      'aria-label': words.name(formatCount(plan.stitchCount)),
      'data-stretch': [scale.from, scale.to, left, right, width].join(' '),
    },
    drawTape(document, {
      x,
      scale,
      unit: toBase(1, system === 'metric' ? 'cm' : 'in'),
      line: tape,
    }),
    drawBand(document, {
      rib: plan.rib,
      x,
      rest: plan.restGirthMm,
      widest: plan.widestGirthMm,
      limit: plan.passGirthMm,
      scale,
      grain,
    }),
    drawSure(document, {
      from: inSight(flat * (1 - plan.girthError)),
      to: inSight(flat * (1 + plan.girthError)),
      top: top - 2,
      bottom: bottom + 2,
    }),
    drawCounts(document, counts, top),
    drawFlags(document, flags, places, { top: tape, rise: 9 }),
    drawHandle(
      document,
      { x: inSight(flat), bottom: tape, count: formatCount(plan.stitchCount) },
      sliderOf(showing),
    ),
  );
}
