// One sock in bands of colour, laid flat: its outline as the clip, a mark on each dye besides its colour, the rib
// as a shade over all, and the signs at its side.
import { svg, text } from './svg.js';

/** @typedef {import('./profile.js').Size} Size */
/** @typedef {import('../contract.js').Band} Band */
/** @typedef {{ sign: string, dye: number }} Dyed a colour by its sign, and the dye it is drawn in, from 0 */

// Over the dye, so that no band is told by its colour alone.
const marks = [
  '',
  'M0 3h6',
  'M-1 1l2-2M0 6l6-6M5 7l2-2',
  'M3 3h.01',
  'M3 0v6',
  'M-1 5l2 2M0 0l6 6M5-1l2 2',
  'M3 0v6M0 3h6',
  'M0 3h3',
];
const dyes = marks.length;
/** Past the last dye they come again, each with another mark. @param {number} dye */
const markOf = (dye) => ((dye % dyes) + Math.floor(dye / dyes)) % marks.length;

// Signs nearer to each other than this are not to be told apart.
const leastApart = 11;

/** The patterns that a drawing's bands are marked with. @param {Document} document @param {string} id @param {number[]} used */
export const bandMarks = (document, id, used) =>
  svg(
    document,
    'defs',
    {},
    ...[...new Set(used.map(markOf))].map((mark) =>
      svg(
        document,
        'pattern',
        { id: `${id}-mark-${mark}`, patternUnits: 'userSpaceOnUse', width: 6, height: 6 },
        svg(document, 'path', { class: 'band-mark', d: marks[mark] }),
      ),
    ),
  );

/** Where a band ends and begins, from the sock's top edge. @param {Size} size @param {Band} band */
const spanOf = ({ height, round }, { fromRound, fromShare, toRound, toShare }) => ({
  top: height - (toRound - 1 + toShare) * round,
  bottom: height - (fromRound - 1 + fromShare) * round,
});

/**
 * Its top edge lies on y = 0 and its middle on x = 0; the toe points down.
 * @param {Document} document @param {Size} size
 * @param {{ edge: string, purl: string, half: (y: number) => number }} shape
 * @param {Band[]} bands @param {Dyed[]} colours @param {{ id: string, sock: string }} how `id` is the whole drawing's
 */
export function drawStriped(document, size, { edge, purl, half }, bands, colours, { id, sock }) {
  const { widest } = size;
  const clip = `${id}-${sock}`;
  const left = -widest / 2;
  // One colour alone is told from no other, and a mark would look like stripes.
  const isPlain = bands.every(({ colour }) => colour === bands[0].colour);
  let above = Infinity;
  /** @type {Node[]} */
  const signs = [];
  const rects = bands.flatMap((band) => {
    const { sign, dye } = colours[band.colour - 1];
    const { top, bottom } = spanOf(size, band);
    const height = bottom - top;
    if (height <= 0) return [];
    const middle = (top + bottom) / 2;
    if (height > 4 && above - middle >= leastApart) {
      above = middle;
      signs.push(text(document, sign, { x: half(middle) + 4, y: middle + 4 }));
    }
    const box = { x: left, y: top, width: widest, height };
    const mark = markOf(dye);
    return [
      svg(document, 'rect', { class: `dye-${dye % dyes}`, ...box }),
      ...(mark === 0 || isPlain
        ? []
        : [svg(document, 'rect', { fill: `url(#${id}-mark-${mark})`, ...box })]),
    ];
  });
  return svg(
    document,
    'g',
    { class: 'striped' },
    svg(document, 'clipPath', { id: clip }, svg(document, 'path', { d: edge })),
    svg(
      document,
      'g',
      { 'clip-path': `url(#${clip})` },
      ...rects,
      svg(document, 'path', { class: 'rib-shade', d: purl }),
    ),
    svg(document, 'path', { class: 'edge', d: edge }),
    ...signs,
  );
}
