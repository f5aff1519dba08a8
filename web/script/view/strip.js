// The round strip at the foot of the drawing, for each width of page.
import { ribTrack } from '../draw/rib_track.js';
import { drawStrip } from '../draw/strip.js';
import { drawingWords } from '../../words/en.js';
import { isWidened, partsOf, titleOf } from './parts.js';
import { hasGreatToe } from './both_socks.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('../contract.js').Plan} Plan */

/** What stands under the strip: each part with its first and last round, and how it ends. @param {Plan} plan @param {boolean} isBrief */
function labelsOf(plan, isBrief) {
  const words = drawingWords.strip;
  const parts = partsOf(plan).map((part) => {
    const { from, rounds } = part;
    return { from, text: words.part(titleOf(plan, part), words.span(from + 1, from + rounds)) };
  });
  const last = parts[parts.length - 1];
  if (!isBrief) last.text = words.last(last.text);
  return parts;
}

/** @param {Document} document @param {Showing} showing */
export function viewStrip(document, { plan }) {
  const track = ribTrack(plan, false);
  const strip = (/** @type {number} */ width, /** @type {string} */ only) => {
    const drawn = drawStrip(document, plan, {
      width,
      track,
      name: [
        drawingWords.strip.name(String(plan.totalRounds)),
        hasGreatToe(plan) ? drawingWords.strip.oneSided : '',
        isWidened(plan) ? drawingWords.strip.widens : '',
      ]
        .filter(Boolean)
        .join(' '),
      labels: labelsOf(plan, only === 'phone-only'),
    });
    drawn.setAttribute('class', `strip ${only}`);
    return drawn;
  };
  return [strip(1120, 'wide-only'), strip(700, 'middle-only'), strip(340, 'phone-only')];
}
