// The leg grows wider: each widening round, the rib it leaves, and the other way out.
import { formatCount } from '../../units.js';
import { buyWords, drawingWords, perWords, planWords } from '../../../words/en.js';
import { figuresIn, writeNamed, writeNeedle } from '../figures.js';
import { linesTable, rowsOf } from './knit_rib.js';
import { saySocks } from './lines.js';
import { lengthAt, writeRib } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {Plan['rounds'][number] & { from: number }} Span `from` in the whole sock, from 0 */

const words = planWords.knit.wider;

/** The rounds that widen, each with those of its rib up to the next. @param {Plan} plan */
export function wideningsOf(plan) {
  let from = 0;
  /** @type {Span[]} */
  const spans = plan.rounds.map((span) => {
    const start = from;
    from += span.rounds;
    return { ...span, from: start };
  });
  const wider = spans.filter(({ section }) => section === 'widening');
  return plan.widening.stages.map((stage) => {
    const own = wider.filter(({ stitches }) => stitches === stage.stitches);
    return { stage, widening: own[0], spans: own.slice(1) };
  });
}

/** A stitch that changes halves, where the round leaves them uneven. @param {Plan} plan @param {number} crossing */
export function sayCrossing(plan, crossing) {
  const n = formatCount(Math.abs(crossing));
  // The mirror's halves are read backwards, so that what ends a half of A begins one of B.
  const isMirrored = plan.rib.lean === 'mirrored';
  return isMirrored ? words.crossesMirrored(n, crossing > 0) : words.crosses(n, crossing > 0);
}

/** The rib of a stage: the lines of its rounds, until they come round again. @param {Make} h @param {Plan} plan @param {ReturnType<typeof wideningsOf>[number]} stage @param {boolean} isBrief */
function ribTable(h, plan, { stage, spans }, isBrief) {
  if (spans.length === 0) return [];
  const rib = plan.toe.rounds;
  // A first run may be cut short by the widening; after it the rib stands in as many places as a repeat is wide.
  const shown = spans.slice(0, stage.knit + stage.purl + 1);
  const last = spans[spans.length - 1];
  const isMirrored = spans.some(({ secondLine }) => secondLine !== undefined);
  const ends = formatCount(last.from + last.rounds - rib);
  return [
    linesTable(h, words.caption(writeRib(stage)), {
      rows: shown.flatMap((span) =>
        rowsOf(plan, { ...span, from: span.from - rib }, { most: plan.totalRounds, isMirrored }),
      ),
      isMirrored,
      isBrief,
    }),
    shown.length < spans.length ? h('p', {}, words.again(ends)) : null,
  ];
}

/** @param {Make} h @param {Showing} showing @param {ReturnType<typeof wideningsOf>[number]} one @param {boolean} [isBrief] */
export function stagePart(h, { plan, system }, one, isBrief = false) {
  const { stage, widening } = one;
  const { length } = figuresIn(system);
  const half = formatCount(stage.stitches / 2);
  const isUneven = stage.crossing !== undefined && stage.crossing !== 0;
  return [
    h('h4', {}, words.stage(writeRib(stage), formatCount(stage.stitches))),
    h(
      'p',
      {},
      words.at(
        formatCount(stage.ribRound + 1),
        formatCount(widening.from + 1),
        length(lengthAt(plan, widening.from)),
        length(stage.neededFromMm),
      ),
    ),
    h(
      'p',
      {},
      saySocks(plan, widening).map((line) => h('span', { class: 'line' }, line)),
    ),
    isUneven ? h('p', {}, sayCrossing(plan, stage.crossing ?? 0)) : null,
    h('p', {}, words.makes(writeRib(stage), formatCount(stage.stitches), half)),
    ...ribTable(h, plan, one, isBrief),
  ];
}

/** @param {Make} h @param {Showing} showing */
function largerNeedle(h, { plan, system }) {
  const needle = plan.largerNeedle;
  if (!needle) return null;
  const names = buyWords.names(needle.us ?? '', needle.uk ?? '');
  const size = [writeNeedle(needle.mm), names].filter(Boolean).join(', ');
  const gauge = writeNamed('stitchesPerMm', needle.stitchesPerMmAtMost, system);
  return h(
    'div',
    { class: 'otherwise' },
    h('h4', {}, words.otherwise),
    h(
      'p',
      {},
      words.needle(
        formatCount(plan.stitchCount),
        figuresIn(system).length(needle.fromMm),
        size,
        gauge,
        perWords[system],
      ),
    ),
    h('p', {}, words.swatchFirst),
  );
}

/** What the rounds that widen make, or one of them. @param {Plan} plan @param {Span[]} [rounds] */
export function makesOf(plan, rounds = wideningsOf(plan).map(({ widening }) => widening)) {
  const made = new Set(
    rounds
      .flatMap(({ line, secondLine = line }) => [line, secondLine])
      .flatMap((line) => plan.lines[line].halves.flat())
      .map(([work]) => work),
  );
  return /** @type {const} */ (['m1p', 'm1l', 'm1r']).filter((work) => made.has(work));
}

/** What has to be made, and how. @param {ReturnType<typeof makesOf>} makes */
export const sayMakes = (makes) => makes.map((work) => words.made[work]);

/** Each part by itself, to stand beside the others. @param {Make} h @param {Showing} showing */
export function knitWider(h, showing) {
  const { plan, system } = showing;
  const [first] = plan.widening.stages;
  const { length } = figuresIn(system);
  return [
    h(
      'div',
      {},
      h('h3', { id: 'knit-wider' }, words.title),
      h(
        'p',
        {},
        words.lead(
          length(first.neededFromMm),
          formatCount(plan.stitchCount),
          formatCount(plan.edgeStitches),
          plan.widening.stages.length,
        ),
      ),
      sayMakes(makesOf(plan)).map((text) => h('p', {}, text)),
      h('p', {}, words.then(drawingWords.rounds(plan.widening.rounds))),
    ),
    ...wideningsOf(plan).map((stage) => h('div', {}, stagePart(h, showing, stage))),
    largerNeedle(h, showing),
  ];
}
