// The long circular needle that both socks hang from, hinted: one tip through the socks, the cable that loops behind, the other tip free.
import { at, svg } from './svg.js';

/**
 * In the socks' own frame: they hang from y = 0, from x = `left` to x = `right`.
 * @param {Document} document @param {{ left: number, right: number, rise: number }} place `rise` is how
 *   far the cable loops up behind
 */
export function drawNeedle(document, { left, right, rise }) {
  const middle = (left + right) / 2;
  const out = rise * 0.9;
  const loop = [
    `M${at(right + 5, 0)}`,
    `C${at(right + out, 0, right + out, -rise, right - out, -rise)}`,
    `L${at(middle, -rise)}H${at(left + out)}`,
    `C${at(left - out, -rise, left - out * 0.9, -rise * 0.3, left - out * 0.35, -rise * 0.3)}`,
  ].join('');
  const tip = (/** @type {number} */ x, /** @type {number} */ y, /** @type {number} */ length) =>
    `M${at(x, y)}L${at(x + 12, y - 2.4)}H${at(x + length)}Q${at(x + length + 4, y, x + length, y + 2.4)}H${at(x + 12)}Z`;
  const freeTip = (
    /** @type {number} */ x,
    /** @type {number} */ y,
    /** @type {number} */ length,
  ) =>
    `M${at(x, y - 2)}H${at(x + length - 10)}L${at(x + length, y)}L${at(x + length - 10, y + 2)}H${at(x)}Z`;
  return svg(
    document,
    'g',
    { class: 'needle' },
    svg(document, 'path', { class: 'cable', d: loop }),
    svg(document, 'path', { class: 'tip', d: tip(left - 17, 0, right - left + 22) }),
    // The other tip, free: it knits.
    svg(document, 'path', {
      class: 'tip',
      d: freeTip(left - out * 0.35, -rise * 0.3, Math.min(46, (right - left) / 3)),
    }),
  );
}
