// A round of the pair, seen from above: each sock a ring of two halves, worked round one way.
import { point } from './svg.js';

/** Half a ring. @param {number} x @param {number} y where it ends @param {number} far how far it bulges, up or down */
const half = (x, y, far) => `M${x} ${y}C${x} ${y + far} ${x + 88} ${y + far} ${x + 88} ${y}`;

/** @type {import('./svg.js').Picture} */
export const round = {
  box: [270, 160],
  marks: [
    ['b', half(40, 72, -50) + half(40, 88, 50)],
    ['c', half(142, 72, -50) + half(142, 88, 50)],
    ['go', `M232 132C206 148 64 148 38 132${point(38, 132, 212)}`],
    ['go', `M16 104C4 90 4 70 16 56${point(16, 56, 306)}`],
    ['go', `M38 28C64 12 206 12 232 28${point(232, 28, 32)}`],
    ['go', `M254 56C266 70 266 90 254 104${point(254, 104, 126)}`],
    ['name', 186, 116, '1'],
    ['name', 84, 116, '2'],
    ['name', 84, 58, '3'],
    ['name', 186, 58, '4'],
    ['sock', 84, 87, 'B'],
    ['sock', 186, 87, 'A'],
  ],
};
