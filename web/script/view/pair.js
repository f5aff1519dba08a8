// The pair, standing for a wide page and lying, toe left, for a narrow one: the same socks, to the same
// plan, with what was measured and what it comes to drawn beside them.
import { brackets, girth, levelLength, uprightLength } from '../draw/measures.js';
import { drawNeedle } from '../draw/needle.js';
import { drawSock, sizeSock } from '../draw/sock.js';
import { svg, text } from '../draw/svg.js';
import { drawingWords, pageWords } from '../../words/en.js';
import { table } from './dom.js';
import { figuresIn } from './figures.js';
import { nameOf, partsOf, ribTitle, sayMove, sayRib } from './parts.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./dom.js').Make} Make */

// Where the ball of the foot lies, from the toe, as a share of the foot: only for the drawing.
const ballShare = 0.28;

// The heights of the fields beside the standing pair; style/stage.css puts the fields there.
const slots = { leg: 134, heel: 268, foot: 402, ball: 536 };

/** @param {Plan} plan @param {Showing['system']} system */
function nameOfPair(plan, system) {
  const { length } = figuresIn(system);
  return drawingWords.pairName(
    String(plan.stitchCount),
    length(plan.lengthMm),
    length(plan.finishedGirthMm),
  );
}

/** Both socks and their needle in one frame: tops on y = 0, x from the left edge of A. @param {Document} document @param {Plan} plan @param {{ scale: number, gap: number, rise: number, id: string }} how */
function drawBoth(document, plan, { scale, gap, rise, id }) {
  const size = sizeSock(plan, scale);
  const giveOrTake = plan.gauge.from === 'label' ? plan.gauge.relativeError : 0;
  const place = (/** @type {boolean} */ isSecond) =>
    svg(
      document,
      'g',
      { transform: `translate(${isSecond ? size.width * 1.5 + gap : size.width / 2} 0)` },
      drawSock(document, plan, size, { id: `${id}-${isSecond ? 'b' : 'a'}`, isSecond, giveOrTake }),
    );
  const right = size.width * 2 + gap;
  return {
    size,
    right,
    node: svg(
      document,
      'g',
      {},
      drawNeedle(document, { left: 0, right, middle: size.width + gap / 2, rise }),
      place(false),
      place(true),
    ),
  };
}

/** @param {Document} document @param {Showing} showing */
function standing(document, { plan, request, system, values }) {
  const wide = 470;
  const tall = 604;
  const [left, top, bottom, gap, most] = [66, 62, 34, 40, 112];
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

/** Both girths, foot and leg stand in words under the pair, where their dimension lines are. @param {Document} document @param {Showing} showing */
function lying(document, { plan, request, system }) {
  const wide = 340;
  const [left, top, end, gap, rise] = [14, 6, 40, 12, 24];
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
  const { foot, leg } = drawingWords.measures;
  const total = drawingWords.whole(drawingWords.rounds(plan.totalRounds), length(plan.lengthMm));
  const letter = (/** @type {string} */ name, /** @type {number} */ y) =>
    text(document, name, { class: 'letter', x: 4, y: y + 5, 'text-anchor': 'middle' });
  return svg(
    document,
    'svg',
    {
      class: 'pair narrow-only',
      viewBox: `0 0 ${wide} ${Math.ceil(tall + 54)}`,
      role: 'img',
      'aria-label': nameOfPair(plan, system),
    },
    svg(document, 'g', { transform: `matrix(0 1 -1 0 ${cuff} ${top})` }, node),
    levelLength(document, {
      y: tall + 14,
      from: left,
      to: heel,
      label: foot(length(plan.foot.lengthMm)),
    }),
    levelLength(document, {
      y: tall + 14,
      from: heel,
      to: cuff,
      label: leg(length(request.legHeightMm)),
    }),
    text(document, total, {
      class: 'part-figure',
      x: (left + cuff) / 2,
      y: tall + 50,
      'text-anchor': 'middle',
    }),
    letter(drawingWords.sock.a, top + size.width / 2),
    letter(drawingWords.sock.b, top + size.width * 1.5 + gap),
  );
}

/** The same figures as a table. @param {Make} h @param {Showing} showing */
function tableOfPair(h, { plan, system }) {
  const { length } = figuresIn(system);
  const words = drawingWords.table;
  const row = (
    /** @type {string} */ name,
    /** @type {number} */ rounds,
    /** @type {number} */ stitches,
  ) => ({
    name,
    cells: [String(rounds), length(rounds / plan.gauge.roundsPerMm), String(stitches)],
  });
  const rows = partsOf(plan).map(({ section, rounds, stitches }) =>
    row(nameOf(section), rounds, stitches),
  );
  return table(h, {
    caption: words.caption,
    heads: [words.part, words.rounds, words.length, words.stitches],
    rows: [...rows, row(words.all, plan.totalRounds, plan.stitchCount)],
    className: 'figures',
  });
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewPair(h, document, showing) {
  const { plan, system, lastGood, problems } = showing;
  const { length } = figuresIn(system);
  const scale = drawingWords.toScale(length(plan.finishedGirthMm), length(plan.restGirthMm));
  const guess = plan.gauge.from === 'label' ? ` ${drawingWords.giveOrTake}` : '';
  return [
    standing(document, showing),
    lying(document, showing),
    h(
      'figcaption',
      {},
      problems.length > 0 && h('strong', { class: 'last-good' }, pageWords.lastGood(lastGood)),
      h('span', {}, `${scale}${guess}`),
      h(
        'details',
        { 'data-key': 'table' },
        h('summary', {}, drawingWords.table.open),
        tableOfPair(h, showing),
      ),
    ),
  ];
}
