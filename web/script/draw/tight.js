// Where the heel has to pass and cannot: hatching over the tube at the bend of the ankle, and a label sewn on.
import { at, hatching, svg, text } from './svg.js';

/**
 * Over one sock, its top on y = 0 and its middle on x = 0.
 * @param {Document} document
 * @param {{ width: number, y: number, tall: number, clip: string }} place `clip` names the sock's outline
 */
export function drawTight(document, { width, y, tall, clip }) {
  const [top, bottom] = [y - tall / 2, y + tall / 2];
  const lines = hatching({ from: -width / 2, to: width / 2, top, bottom, apart: 8 });
  const ends = `M${at(-width / 2, top)}h${at(width)}M${at(-width / 2, bottom)}h${at(width)}`;
  return svg(
    document,
    'g',
    { class: 'tight', 'clip-path': `url(#${clip})` },
    svg(document, 'path', { class: 'tight-halo', d: lines + ends }),
    svg(document, 'path', { class: 'tight-lines', d: lines + ends }),
  );
}

/** @param {Document} document @param {{ x: number, y: number, words: string }} place its middle */
export function tightLabel(document, { x, y, words }) {
  const wide = words.length * 6.6 + 16;
  return svg(
    document,
    'g',
    { class: 'tight-label' },
    svg(document, 'rect', { x: x - wide / 2, y: y - 11, width: wide, height: 22, rx: 2 }),
    text(document, words, { x, y: y + 4.5, 'text-anchor': 'middle' }),
  );
}
