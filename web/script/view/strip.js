// The round strip at the foot of the drawing, for each width of page.
import { drawStrip } from '../draw/strip.js';
import { drawingWords } from '../../words/en.js';
import { nameOf, partsOf, ribTitle } from './parts.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('../contract.js').Plan} Plan */

/** What stands under the strip: each part with its first and last round, and how it ends. @param {Plan} plan @param {boolean} isBrief */
function labelsOf(plan, isBrief) {
  const words = drawingWords.strip;
  const parts = partsOf(plan).map(({ section, from, rounds }) => {
    const name = section === 'spiral' ? ribTitle(plan) : nameOf(section);
    return { from, text: words.part(name, words.span(from + 1, from + rounds)) };
  });
  const last = parts[parts.length - 1];
  if (!isBrief) last.text = words.last(last.text);
  return parts;
}

/** @param {Document} document @param {Showing} showing */
export function viewStrip(document, { plan }) {
  const strip = (/** @type {number} */ width, /** @type {string} */ only) => {
    const drawn = drawStrip(document, plan, {
      width,
      name: drawingWords.strip.name(String(plan.totalRounds)),
      labels: labelsOf(plan, only === 'phone-only'),
    });
    drawn.setAttribute('class', `strip ${only}`);
    return drawn;
  };
  return [strip(1120, 'wide-only'), strip(700, 'middle-only'), strip(340, 'phone-only')];
}
