// The long circular needle that both socks hang from, hinted: two tips and a cable that loops behind.
import { at, svg } from './svg.js';

/**
 * In the socks' own frame: they hang from y = 0, from x = `left` to x = `right`.
 * @param {Document} document @param {{ left: number, right: number, middle: number, rise: number }} place
 *   `middle` lies between the socks, `rise` is how far the cable loops up
 */
export function drawNeedle(document, { left, right, middle, rise }) {
  const y = 1;
  const loop = [
    `M${at(right + 6, y)}`,
    `C${at(right + 34, y, right + 30, -rise * 0.95, right - 20, -rise)}`,
    `C${at(middle + 20, -rise * 1.05, middle + 10, -rise * 0.3, middle, -rise * 0.3)}`,
    `C${at(middle - 10, -rise * 0.3, middle - 20, -rise * 1.05, left + 20, -rise)}`,
    `C${at(left - 24, -rise * 0.95, left - 30, -rise * 0.5, left - 22, -rise * 0.32)}`,
  ].join('');
  const tip = `M${at(left - 26, y)}L${at(left - 14, y - 2.4)}H${at(right + 4)}Q${at(
    right + 8,
    y,
    right + 4,
    y + 2.4,
  )}H${at(left - 14)}Z`;
  return svg(
    document,
    'g',
    { class: 'needle' },
    svg(document, 'path', { class: 'cable', d: loop }),
    svg(document, 'path', { class: 'tip', d: tip }),
  );
}
