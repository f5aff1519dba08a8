// The stretch line: from the sock's girth at rest to the most its yarn allows, and what it must pass.
import { at, svg, text } from './svg.js';

/** @typedef {{ mm: number, name: string, figure: string, kind: 'end' | 'pass' | 'own' }} Mark */

/**
 * @param {Document} document
 * @param {{ width: number, marks: Mark[], name: string }} how marks in rising order, an `end` first and last
 */
export function drawStretch(document, { width, marks, name }) {
  const [from, to] = [0, width].map((x, i) => x + (i === 0 ? 34 : -34));
  const least = marks[0].mm;
  const most = marks[marks.length - 1].mm;
  const x = (/** @type {number} */ mm) => from + ((mm - least) / (most - least || 1)) * (to - from);
  const y = 44;
  // Neighbours that would run into each other take turns above and below the line.
  let lastBelow = -Infinity;
  const nodes = marks.map((mark) => {
    const middle = x(mark.mm);
    const isAbove = mark.kind === 'own' || middle - lastBelow < 62;
    if (!isAbove) lastBelow = middle;
    const high = mark.kind === 'end' ? 8 : 6;
    return svg(
      document,
      'g',
      { class: `mark ${mark.kind}` },
      svg(document, 'path', { d: `M${at(middle, y - high)}v${high * 2}` }),
      ...(mark.kind === 'own' ? [svg(document, 'circle', { cx: middle, cy: y, r: 6 })] : []),
      text(document, mark.name, {
        class: 'stretch-name',
        x: middle,
        y: isAbove ? y - 28 : y + 22,
        'text-anchor': 'middle',
      }),
      text(document, mark.figure, {
        class: 'stretch-figure',
        x: middle,
        y: isAbove ? y - 13 : y + 38,
        'text-anchor': 'middle',
      }),
    );
  });
  return svg(
    document,
    'svg',
    { class: 'stretch', viewBox: `0 0 ${width} 88`, role: 'img', 'aria-label': name },
    svg(document, 'path', { class: 'range', d: `M${at(from, y)}H${at(to)}` }),
    ...nodes,
  );
}
