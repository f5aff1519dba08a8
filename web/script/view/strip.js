// The round strip at the foot of the drawing, for each width of page.
import { ribTrack } from '../draw/rib_track.js';
import { drawStrip } from '../draw/strip.js';
import { drawingWords } from '../../words/en.js';
import { guessText } from './guess.js';
import { isWidened, partsOf, titleOf } from './parts.js';
import { hasGreatToe } from './both_socks.js';

/** @typedef {import('./showing.js').Showing} Showing */

/** What stands under the strip: each part with its first and last round, and how it ends. @param {Showing} showing @param {boolean} isBrief */
function labelsOf(showing, isBrief) {
  const { plan } = showing;
  const words = drawingWords.strip;
  const parts = partsOf(plan).map((part) => {
    const { from, rounds } = part;
    const span = words.span(from + 1, from + rounds);
    return { from, text: words.part(titleOf(plan, part), guessText(showing, 'rounds', span)) };
  });
  const last = parts[parts.length - 1];
  if (!isBrief) last.text = words.last(last.text);
  return parts;
}

/** @param {Document} document @param {Showing} showing */
export function viewStrip(document, showing) {
  const { plan } = showing;
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
      labels: labelsOf(showing, only === 'phone-only'),
    });
    drawn.setAttribute('class', `strip ${only}`);
    return drawn;
  };
  return [strip(1120, 'wide-only'), strip(700, 'middle-only'), strip(340, 'phone-only')];
}
