// The round strip at the foot of the drawing, wide and narrow.
import { drawStrip } from '../draw/strip.js';
import { drawingWords } from '../../words/en.js';
import { nameOf } from './parts.js';

/** @typedef {import('./showing.js').Showing} Showing */

/** @param {Document} document @param {Showing} showing */
export function viewStrip(document, { plan }) {
  const words = drawingWords.strip;
  const strip = (/** @type {number} */ width, /** @type {string} */ only) => {
    const labels = {
      toe: nameOf('toe'),
      spiral: words.spiral,
      cuff: width > 600 ? nameOf('cuff') : '',
    };
    const drawn = drawStrip(document, plan, {
      width,
      name: words.name(String(plan.totalRounds)),
      labels,
      end: words.bindOff,
    });
    drawn.setAttribute('class', `strip ${only}`);
    return drawn;
  };
  return [strip(1120, 'wide-only'), strip(340, 'narrow-only')];
}
