// The stretch line's band: the knitter's own rib, drawn in at its left end and pulled straight at its right,
// over the edge of a tape. Knit columns and purl bumps are a path each, however many there are.
import { at as exactly, hatching, svg } from './svg.js';

/** @typedef {{ knit: number, purl: number }} Rib */
/** @typedef {{ x: number, wide: number, half: number }} Column */

const rows = 4;

// Hundreds of stitches: a tenth is fine enough for each, and they stand in the page as it is delivered.
const at = (/** @type {number[]} */ ...values) =>
  exactly(...values.map((value) => Math.round(value * 10) / 10));

const topOfBand = 62;

/**
 * Heights in the drawing: the band's top, middle and bottom, and the tape's edge below it.
 * @param {number} grain how coarse the stitches are drawn: 1 on a phone
 */
export function linesOf(grain) {
  const half = 18 * grain;
  const bottom = topOfBand + half * 2;
  return { top: topOfBand, middle: topOfBand + half, bottom, tape: bottom + 8 };
}

/** Half of the band's height: cloth pulled wide is drawn in lengthwise. @param {number} grain @param {number} pull 0 at rest, 1 no further */
const halfAt = (grain, pull) => (18 - 8 * pull) * grain;

/**
 * Column by column from rest to no further.
 * @param {Rib} rib
 * @param {{ pullAt: (x: number) => number, grain: number, from: number, to: number }} how
 */
function columns({ knit, purl }, { pullAt, grain, from, to }) {
  const knits = /** @type {Column[]} */ ([]);
  const purls = /** @type {Column[]} */ ([]);
  let x = from;
  for (let column = 0; x < to - 1; column += 1) {
    const pull = pullAt(x);
    const isKnit = column % (knit + purl) < knit;
    // At rest the purl columns lie folded behind the knit ones.
    const wide = (6 + 7 * pull) * grain * (isKnit ? 1 : 0.16 + 0.84 * pull);
    const end = Math.min(x + wide, to);
    (isKnit ? knits : purls).push({ x, wide: end - x, half: halfAt(grain, pull) });
    x = end;
  }
  return { knits, purls };
}

/**
 * Two legs a stitch, steep at rest, all but level when the yarn is pulled straight.
 * @param {Column[]} knits @param {number} line
 */
const knitPath = (knits, line) =>
  knits
    .map(({ x, wide, half }) => {
      const tall = (half * 2) / rows;
      const leg = at(wide * 0.09, tall * 0.7, wide * 0.44, tall * 0.92);
      const back = at(wide * 0.35, -tall * 0.22, wide * 0.44, -tall * 0.92);
      const stitch = `q${leg}q${back}`;
      return `M${at(x + wide * 0.06, line - half)}${Array(rows)
        .fill(stitch)
        .join(`m${at(-wide * 0.88, tall)}`)}`;
    })
    .join('');

/** A bump a stitch, once the columns have come out of their fold. @param {Column[]} purls @param {number} line */
const purlPath = (purls, line) =>
  purls
    .filter(({ wide }) => wide > 3)
    .map(({ x, wide, half }) => {
      const tall = (half * 2) / rows;
      const bump = `q${at(wide * 0.38, -tall * 0.45, wide * 0.76, 0)}`;
      return `M${at(x + wide * 0.12, line - half + tall * 0.6)}${Array(rows)
        .fill(bump)
        .join(`m${at(-wide * 0.76, tall)}`)}`;
    })
    .join('');

/** The band's edges, drawn in as it is pulled. @param {(x: number) => number} halfOf @param {number} line @param {number} from @param {number} to */
function outlineOf(halfOf, line, from, to) {
  const points = Array.from({ length: 9 }, (_, i) => from + ((to - from) * i) / 8);
  const over = points.map((x) => at(x, line - halfOf(x)));
  const under = [...points].reverse().map((x) => at(x, line + halfOf(x)));
  return `M${[...over, ...under].join('L')}Z`;
}

/**
 * @param {Document} document
 * @param {object} how
 * @param {Rib} how.rib
 * @param {(mm: number) => number} how.x
 * @param {number} how.rest @param {number} how.widest @param {number} how.limit past it the sock does not pass
 * @param {{ from: number, to: number }} how.scale what of it all is in sight
 * @param {number} how.grain how coarse the stitches are drawn
 */
export function drawBand(document, { rib, x, rest, widest, limit, scale, grain }) {
  const inSight = (/** @type {number} */ mm) => x(Math.min(Math.max(mm, scale.from), scale.to));
  const [from, to, tight] = [rest, widest, limit].map(inSight);
  const pullAt = (/** @type {number} */ at_) => (at_ - x(rest)) / (x(widest) - x(rest));
  const { knits, purls } = columns(rib, { pullAt, grain, from, to });
  const line = linesOf(grain).middle;
  const halfOf = (/** @type {number} */ at_) => halfAt(grain, pullAt(at_));
  const half = halfOf(tight) + 3;
  const [top, bottom] = [line - half, line + half];
  const zone =
    to > tight
      ? hatching({ from: tight, to, top, bottom, apart: 7 }) + `M${at(tight, top)}V${at(bottom)}`
      : '';
  return svg(
    document,
    'g',
    { class: 'band', 'data-key': 'band', 'data-band': '' },
    svg(document, 'path', { class: 'ground', d: outlineOf(halfOf, line, from, to) }),
    svg(document, 'path', { class: 'purls', d: purlPath(purls, line) }),
    svg(document, 'path', {
      class: 'knits',
      d: knitPath(knits, line),
      'stroke-width': 2.2 * grain,
    }),
    svg(document, 'path', { class: 'zone', d: zone }),
  );
}

/**
 * The tape: a tick for each unit, a long one for every fifth, over the whole of the drawing.
 * @param {Document} document
 * @param {{ x: (mm: number) => number, scale: { from: number, to: number }, unit: number, line: number }} how
 */
export function drawTape(document, { x, scale, unit, line }) {
  let path = `M${at(x(scale.from), line)}H${at(x(scale.to))}`;
  for (let n = Math.ceil(scale.from / unit); n * unit <= scale.to; n += 1) {
    path += `M${at(x(n * unit), line)}v${n % 5 === 0 ? -7 : -4}`;
  }
  return svg(document, 'path', { class: 'tape', 'data-key': 'tape', d: path });
}
