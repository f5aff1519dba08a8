// A share as a bar, and a line across it at the share that is wanted. The number stands beside it.
import { svg, write } from './svg.js';

const percent = (/** @type {number} */ share) => `${write(share * 100)}%`;

/** As wide as its place. @param {Document} document @param {number} share @param {number} wanted */
export const drawShareBar = (document, share, wanted) =>
  svg(
    document,
    'svg',
    { class: 'share-bar', 'aria-hidden': 'true' },
    svg(document, 'rect', { y: '25%', width: percent(share), height: '50%' }),
    svg(document, 'line', { x1: percent(wanted), x2: percent(wanted), y2: '100%' }),
  );
