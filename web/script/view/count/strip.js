// The round strip at the foot of the drawing, for each width of page.
import { ribTrack } from '../../draw/rib_track.js';
import { drawStrip } from '../../draw/strip.js';
import { drawingWords } from '../../../words/en.js';
import { guessText } from '../guess.js';
import { isWidened, nameOf, partsOf, titleOf } from '../parts.js';
import { hasGreatToe } from '../knit/both_socks.js';

/** @typedef {import('../showing.js').Showing} Showing */

/**
 * The leg's widenings as one part: each by itself stands in the table, and has a wedge of its own in the strip.
 * @param {Showing['plan']} plan
 */
function labelled(plan) {
  const parts = partsOf(plan);
  const first = parts.findIndex(({ section }) => section === 'widening');
  const rest = parts.filter(({ section }, i) => section !== 'widening' || i === first);
  const rounds = parts
    .filter(({ section }) => section === 'widening')
    .reduce((sum, part) => sum + part.rounds, 0);
  return rest.map((part) => (part.section === 'widening' ? { ...part, rounds } : part));
}

/** What stands under the strip: each part with its first and last round, and how it ends. @param {Showing} showing @param {boolean} isBrief */
function labelsOf(showing, isBrief) {
  const { plan } = showing;
  const words = drawingWords.strip;
  const parts = labelled(plan).map((part) => {
    const { section, from, rounds } = part;
    const span = words.span(from + 1, from + rounds);
    const isMany = section === 'widening' && plan.widening.stages.length > 1;
    const name = isMany ? nameOf(section) : titleOf(plan, part);
    return { from, text: words.part(name, guessText(showing, 'rounds', span)) };
  });
  const last = parts[parts.length - 1];
  if (!isBrief) last.text = words.last(last.text);
  return parts;
}

/** @param {Document} document @param {Showing} showing */
export function viewStrip(document, showing) {
  const { plan } = showing;
  const track = ribTrack(plan, false);
  const done = showing.atHand?.place.round;
  const strip = (/** @type {number} */ width, /** @type {string} */ only) => {
    const drawn = drawStrip(document, plan, {
      width,
      track,
      done,
      name: [
        drawingWords.strip.name(String(plan.totalRounds)),
        done === undefined ? '' : drawingWords.strip.knit(String(done)),
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
