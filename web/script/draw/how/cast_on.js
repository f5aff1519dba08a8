// The cast-on for both socks on the two tips: B wrapped first, A nearer the points. What goes up behind is
// drawn first, then the needles, then what comes down in front.
import { at, stick } from './svg.js';

/** @typedef {import('./svg.js').Mark} Mark */

const step = 20;
const [upper, lower] = [42, 84];
// Round the outer edges of both needles, and where the slip knot is drawn tight.
const [high, low, knot] = [upper - 9, lower + 9, lower + 18];

/** One sock's wraps, four to be seen, beginning at its slip knot. @param {number} x @param {'b' | 'c'} yarn @returns {{ behind: Mark[], front: Mark[] }} */
function sock(x, yarn) {
  const numbers = [0, 1, 2, 3];
  // Each wrap goes up behind to a place nearer the points, and comes down in front nearer still.
  const up = numbers.map((i) => `M${at(x + i * step, low)}L${at(x + (i + 0.5) * step, high)}`);
  const down = numbers.map(
    (i) => `M${at(x + (i + 0.5) * step, high)}L${at(x + (i + 1) * step, low)}`,
  );
  const k = x - 14;
  const over = `M${at(k - 1, lower - 9)}`;
  const end = x + 4 * step;
  return {
    behind: [[yarn, `${over}L${at(k + 4, knot)}L${at(x, low)}${up.join('')}`]],
    front: [
      [yarn, `${over}L${at(k - 5, knot)}M${at(k, knot)}C${at(k, 116, k - 7, 122, k - 8, 170)}`],
      [yarn, `${down.join('')}L${at(end + 3, low + 12)}Q${at(end + 8, low + 34, end + 5, 170)}`],
      [yarn, `M${at(k - 5, knot - 1)}L${at(k + 5, knot + 2)}`],
    ],
  };
}

const b = sock(40, 'b');
const a = sock(170, 'c');

/** @type {import('./svg.js').Picture} */
export const castOn = {
  box: [300, 140],
  marks: [
    ...b.behind,
    ...a.behind,
    ['stick', stick([-12, upper], [290, upper])],
    ['stick', stick([-12, lower], [290, lower])],
    ...b.front,
    ...a.front,
    ['name', 80, 18, 'B'],
    ['name', 210, 18, 'A'],
  ],
};
