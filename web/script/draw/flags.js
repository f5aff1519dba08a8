// Marks on a line with their names below it, each hung from a thread: no name runs into another, and no
// thread through a name.
import { at, svg, text } from './svg.js';

/** @typedef {{ x: number, name: string, figure: string, kind: string }} Flag */
/** @typedef {{ lane: number, isLeft: boolean, from: number, to: number, x: number }} Place */

const laneTall = 38;
const gap = 5;

const letterWidth = (/** @type {string} */ letter) =>
  /[mw½¼¾⅛⅜⅝⅞]/.test(letter) ? 11.5 : /[fijlrt.,‹› ]/.test(letter) ? 4.4 : 7.5;

/** Room that a label takes: its letters are about so wide. @param {Flag} flag */
const widthOf = ({ name, figure }) =>
  Math.max(
    ...[name, figure].map((said) => [...said].reduce((wide, one) => wide + letterWidth(one), 0)),
  ) +
  gap * 2;

/** Whether two hung labels leave each other alone. @param {Place} one @param {Place} other */
function areApart(one, other) {
  if (one.lane === other.lane) return one.to <= other.from || one.from >= other.to;
  const [high, low] = one.lane < other.lane ? [one, other] : [other, one];
  // The lower one's thread passes the higher one's label at its side.
  const [left, right] = high.isLeft ? [high.from - 3, high.x] : [high.x, high.to + 3];
  return low.x <= left || low.x >= right;
}

/**
 * Lanes and sides in as few lanes as there can be; to the right of its thread where there is a choice.
 * @param {Flag[]} flags @param {number} width @returns {Place[]}
 */
export function placeFlags(flags, width) {
  /** @param {Place[]} placed @param {number} lanes @returns {Place[] | undefined} */
  const place = (placed, lanes) => {
    const flag = flags[placed.length];
    if (!flag) return placed;
    const wide = widthOf(flag);
    for (let lane = 0; lane < lanes; lane += 1) {
      for (const isLeft of [false, true]) {
        const from = isLeft ? flag.x - wide + gap : flag.x - gap;
        const here = { lane, isLeft, from, to: from + wide, x: flag.x };
        const fits = from >= -gap && here.to <= width + gap;
        if (fits && placed.every((other) => areApart(here, other))) {
          const all = place([...placed, here], lanes);
          if (all) return all;
        }
      }
    }
    return undefined;
  };
  for (let lanes = 1; lanes <= flags.length; lanes += 1) {
    const placed = place([], lanes);
    if (placed) return placed;
  }
  // Nothing fits so narrow a drawing: one below the other, each where there is more room.
  return flags.map(({ x }, lane) => ({ lane, isLeft: x > width / 2, from: 0, to: width, x }));
}

/** How tall so many lanes are. @param {Place[]} places */
export const tallOf = (places) => laneTall * (1 + Math.max(0, ...places.map(({ lane }) => lane)));

/**
 * @param {Document} document @param {Flag[]} flags @param {Place[]} places
 * @param {{ top: number, rise: number }} how the line the flags hang from, and how far each mark rises above it
 */
export function drawFlags(document, flags, places, { top, rise }) {
  const nodes = flags.map(({ x, name, figure, kind }, i) => {
    const { lane, isLeft } = places[i];
    const base = top + lane * laneTall;
    const word = (
      /** @type {string} */ what,
      /** @type {string} */ said,
      /** @type {number} */ y,
    ) =>
      text(document, said, {
        class: what,
        x: x + (isLeft ? -gap : gap),
        y,
        'text-anchor': isLeft ? 'end' : 'start',
      });
    return svg(
      document,
      'g',
      { class: `flag ${kind}` },
      svg(document, 'path', { class: 'thread', d: `M${at(x, top - rise)}V${at(base + 36)}` }),
      word('stretch-name', name, base + 18),
      word('stretch-figure', figure, base + 34),
    );
  });
  return svg(document, 'g', { class: 'flags', 'data-key': 'flags' }, ...nodes);
}
