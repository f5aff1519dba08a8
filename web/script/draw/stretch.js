// The stretch line: from the sock's girth at rest to the most its yarn allows, and what it must pass.
import { at, svg, text } from './svg.js';

/** @typedef {{ mm: number, name: string, figure: string, kind: 'end' | 'pass' | 'own' }} Mark */

const line = 44;

// Where a label may stand: heights of its name and its figure. A short line leads to the third row.
const lanes = [
  { name: line + 22, figure: line + 38, lead: 0 },
  { name: line - 28, figure: line - 13, lead: 0 },
  { name: line + 64, figure: line + 80, lead: 10 },
];

/** Room that a label takes, in the drawing's units: its letters are about so wide. @param {Mark} mark */
const widthOf = ({ name, figure }) => Math.max(name.length * 6, figure.length * 7) + 8;

/**
 * A lane for each mark, so that no label runs into another: the sock's own above the line, the ends below
 * it, and what lies between where there is still room.
 * @param {Mark[]} marks @param {(mm: number) => number} x
 */
function placeLabels(marks, x) {
  /** @type {Array<Array<{ from: number, to: number }>>} */
  const taken = lanes.map(() => []);
  const order = ['own', 'end', 'pass'];
  const wanted = { own: [1, 0, 2], end: [0, 2, 1], pass: [0, 1, 2] };
  const lane = new Map();
  for (const mark of [...marks].sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind))) {
    const half = widthOf(mark) / 2;
    const [from, to] = [x(mark.mm) - half, x(mark.mm) + half];
    const isFree = (/** @type {number} */ i) =>
      taken[i].every((other) => to <= other.from || from >= other.to);
    const found = wanted[mark.kind].find(isFree) ?? 2;
    taken[found].push({ from, to });
    lane.set(mark, found);
  }
  return lane;
}

/**
 * @param {Document} document
 * @param {{ width: number, marks: Mark[], name: string }} how marks in rising order, an `end` first and last
 */
export function drawStretch(document, { width, marks, name }) {
  const [from, to] = [34, width - 34];
  const least = marks[0].mm;
  const most = marks[marks.length - 1].mm;
  const x = (/** @type {number} */ mm) => from + ((mm - least) / (most - least || 1)) * (to - from);
  const placed = placeLabels(marks, x);
  const nodes = marks.map((mark) => {
    const middle = x(mark.mm);
    const place = lanes[placed.get(mark)];
    const high = mark.kind === 'end' ? 8 : 6;
    return svg(
      document,
      'g',
      { class: `mark ${mark.kind}` },
      svg(document, 'path', { d: `M${at(middle, line - high)}v${high * 2}` }),
      ...(place.lead === 0
        ? []
        : [svg(document, 'path', { class: 'lead', d: `M${at(middle, line + 42)}v${place.lead}` })]),
      ...(mark.kind === 'own' ? [svg(document, 'circle', { cx: middle, cy: line, r: 6 })] : []),
      text(document, mark.name, {
        class: 'stretch-name',
        x: middle,
        y: place.name,
        'text-anchor': 'middle',
      }),
      text(document, mark.figure, {
        class: 'stretch-figure',
        x: middle,
        y: place.figure,
        'text-anchor': 'middle',
      }),
    );
  });
  const tall = [...placed.values()].includes(2) ? 130 : 88;
  return svg(
    document,
    'svg',
    { class: 'stretch', viewBox: `0 0 ${width} ${tall}`, role: 'img', 'aria-label': name },
    svg(document, 'path', { class: 'range', d: `M${at(from, line)}H${at(to)}` }),
    ...nodes,
  );
}
