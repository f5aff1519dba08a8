// A knitting chart: a square a stitch, read from the bottom right, in a handful of paths. Each half of a
// round is centred in its own room, so that the line between them stays where it is.
import { at, svg, text } from './svg.js';

/** @typedef {{ number: number, section: string, halves: string[][], changed: boolean[][] }} ChartRound */
/** @typedef {{ x: number, y: number, stitches: number }} Place of one half of a round: `x` its right edge */

const cell = 16;
const left = 10;
const top = 30;
const right = 96;
const bottom = 44;
const least = 150;
const tens = 10;

/** Symbols of the trade, each drawn about the middle of its square. */
const symbols = /** @type {Record<string, string>} */ ({
  m1r: 'm-2 5v-9m0 5l5 -5',
  m1l: 'm2 5v-9m0 5l-5 -5',
  m1p: 'm0 5v-4l-4 -5m4 5l4 -5',
});

/** @param {Place} place @param {number} i a stitch, from the right @returns {[number, number]} middle of its square */
const middle = ({ x, y }, i) => [x - (i + 0.5) * cell, y + cell / 2];

/** Stitches in a row of one kind, as one box. @param {Place} place @param {number} from @param {number} to */
const box = ({ x, y }, from, to) =>
  `M${at(x - from * cell, y)}h${at((from - to) * cell)}v${cell}h${at((to - from) * cell)}z`;

/** @param {boolean[]} marks @param {(from: number, to: number) => string} draw a run of the marked */
function runsOf(marks, draw) {
  let path = '';
  for (let from = 0; from < marks.length; from += 1) {
    if (!marks[from]) continue;
    let to = from;
    while (marks[to]) to += 1;
    path += draw(from, to);
    from = to;
  }
  return path;
}

/** Lines between squares; one below the other they run on through rounds of one width. @param {Place[]} places of one half, from the lowest up */
function gridOf(places) {
  let path = '';
  for (let i = 0; i < places.length;) {
    const { x, stitches } = places[i];
    let end = i;
    while (places[end]?.x === x && places[end].stitches === stitches) end += 1;
    const [high, low] = [places[end - 1].y, places[i].y + cell];
    for (let j = 0; j <= stitches; j += 1) path += `M${at(x - j * cell, high)}V${low}`;
    for (let y = high; y <= low; y += cell) path += `M${at(x, y)}h${-stitches * cell}`;
    i = end;
  }
  return path;
}

/** Where each section begins in this window, and a line over the one before. @param {ChartRound[]} rounds */
const beginnings = (rounds) =>
  rounds.flatMap(({ section }, i) => (i === 0 || rounds[i - 1].section !== section ? [i] : []));

/**
 * @param {Document} document @param {ChartRound[]} rounds from the lowest up
 * @param {{ name: string, title: string, begin: string, sectionName: (section: string) => string }} how
 */
export function drawChart(document, rounds, { name, title, begin, sectionName }) {
  // Room for the widest of each half.
  const room = [0, 1].map((half) => Math.max(...rounds.map(({ halves }) => halves[half].length)));
  const wide = Math.max((room[0] + room[1]) * cell, least);
  const tall = rounds.length * cell;
  const edge = left + wide;
  const turn = edge - room[0] * cell;
  const yOf = (/** @type {number} */ i) => top + tall - (i + 1) * cell;
  const places = [0, 1].map((half) =>
    rounds.map(({ halves }, i) => ({
      x: (half === 0 ? edge : turn) - ((room[half] - halves[half].length) / 2) * cell,
      y: yOf(i),
      stitches: halves[half].length,
    })),
  );
  /** One path over all squares. @param {(place: Place, works: string[], changed: boolean[]) => string} draw */
  const over = (draw) =>
    places
      .map((half, h) =>
        half.map((place, i) => draw(place, rounds[i].halves[h], rounds[i].changed[h])).join(''),
      )
      .join('');
  /** @param {(work: string) => boolean} isOne @param {string} mark */
  const each = (isOne, mark) =>
    over((place, works) =>
      works.map((work, i) => (isOne(work) ? `M${at(...middle(place, i))}${mark}` : '')).join(''),
    );
  const path = (/** @type {string} */ kind, /** @type {string} */ d) =>
    svg(document, 'path', { class: kind, d });
  const isEven = places.every((half) =>
    half.every(({ stitches }) => stitches === half[0].stitches),
  );
  const count = isEven ? room[0] + room[1] : 0;
  const tenth = Array.from({ length: Math.ceil(count / tens) - 1 }, (_, i) => (i + 1) * tens);
  const number = (/** @type {string} */ words, /** @type {number} */ x, /** @type {number} */ y) =>
    text(document, words, { class: 'chart-number', x, y });
  const size = { width: edge + right, height: top + tall + bottom };
  const low = top + tall;
  return svg(
    document,
    'svg',
    {
      class: 'chart',
      ...size,
      viewBox: `0 0 ${size.width} ${size.height}`,
      role: 'img',
      'aria-label': name,
    },
    path(
      'knits',
      over((place, works) => box(place, 0, works.length)),
    ),
    path(
      'purls',
      over((place, works) =>
        runsOf(
          works.map((work) => work === 'p' || work === 'm1p'),
          (from, to) => box(place, from, to),
        ),
      ),
    ),
    path('grid', places.map(gridOf).join('')),
    path('tens', tenth.map((i) => `M${at(edge - i * cell, top)}v${tall}`).join('')),
    // From dot to dot: few words for thousands of them.
    path(
      'dots',
      over((place, works) =>
        runsOf(
          works.map((work) => work === 'p'),
          (from, to) =>
            `M${at(...middle(place, from))}${Array(to - from)
              .fill('h0')
              .join(`m${-cell} 0`)}`,
        ),
      ),
    ),
    path(
      'made',
      Object.entries(symbols)
        .map(([kind, mark]) => each((work) => work === kind, mark))
        .join(''),
    ),
    path(
      'changed',
      over((place, _works, changed) =>
        changed
          .map((is, i) => (is ? `M${at(middle(place, i)[0] - 5, place.y + cell - 2)}h10` : ''))
          .join(''),
      ),
    ),
    path(
      'sections',
      beginnings(rounds)
        .slice(1)
        .map((i) => `M${at(edge - wide, yOf(i) + cell)}H${at(edge + right)}`)
        .join(''),
    ),
    path('half', `M${at(turn, top - 5)}V${at(low + 5)}`),
    text(document, title, { class: 'chart-title', x: edge, y: 16, 'text-anchor': 'end' }),
    ...rounds.map((round, i) => number(String(round.number), edge + 7, yOf(i) + cell - 4)),
    ...beginnings(rounds).map((i) =>
      text(document, sectionName(rounds[i].section), {
        class: 'chart-section',
        x: edge + 38,
        y: yOf(i) + cell - 4,
      }),
    ),
    ...tenth.map((i) =>
      text(document, String(i), {
        class: 'chart-number',
        x: edge - (i - 0.5) * cell,
        y: low + 14,
        'text-anchor': 'middle',
      }),
    ),
    text(document, begin, { class: 'chart-begin', x: edge, y: low + 34, 'text-anchor': 'end' }),
  );
}

/**
 * The symbols in these rounds and what they mean, one below the other.
 * @param {Document} document @param {Array<{ kind: string, words: string[] }>} signs @param {string} name
 */
export function drawKey(document, signs, name) {
  const line = 17;
  let y = 4;
  /** @type {Node[]} */
  const nodes = [];
  for (const { kind, words } of signs) {
    const place = { x: 4 + cell, y, stitches: 1 };
    const path = (/** @type {string} */ look, /** @type {string} */ d) =>
      nodes.push(svg(document, 'path', { class: look, d }));
    const centre = at(...middle(place, 0));
    const isSquare = kind !== 'half' && kind !== 'gap';
    if (isSquare) path(kind === 'p' || kind === 'm1p' ? 'purls' : 'knits', box(place, 0, 1));
    if (isSquare) path('grid', box(place, 0, 1));
    if (kind === 'p') path('dots', `M${centre}h0`);
    if (symbols[kind]) path('made', `M${centre}${symbols[kind]}`);
    if (kind === 'changed') path('changed', `M${at(7, y + cell - 2)}h10`);
    if (kind === 'half') path('half', `M${at(12, y - 2)}v${cell + 4}`);
    if (kind === 'gap') path('gap', box(place, 0, 1));
    words.forEach((words_, i) =>
      nodes.push(text(document, words_, { class: 'chart-key', x: 32, y: y + cell - 4 + i * line })),
    );
    y += Math.max(1, words.length) * line + 9;
  }
  const wide = 264;
  return svg(
    document,
    'svg',
    {
      class: 'chart key',
      width: wide,
      height: y,
      viewBox: `0 0 ${wide} ${y}`,
      role: 'img',
      'aria-label': name,
    },
    ...nodes,
  );
}
