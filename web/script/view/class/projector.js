// For a whole room: the pair, its five figures and what the class is called, to be read from the back; and the way there
// and back, one button.
import { svg, text } from '../../draw/svg.js';
import { formatCount } from '../../units.js';
import { drawingWords, noteWords, projectorWords as words } from '../../../words/en.js';
import { drawBoth, hasGreatToe, knitLength, nameOfPair, widestFlat } from '../knit/both_socks.js';
import { figuresIn } from '../figures.js';
import { guessMark } from '../guess.js';
import { markLastGood } from '../page/page_state.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

// In units of the drawing.
const [tall, widest, rise, side, letters] = [600, 170, 36, 40, 52];

/** The socks without their measures: those are for whoever sits in front of it. @param {Document} document @param {Showing} showing */
function largePair(document, { plan, request, system }) {
  const { node, size, right, middles } = drawBoth(document, plan, {
    scale: Math.min(tall / knitLength(plan), widest / widestFlat(plan)),
    gap: 40,
    rise,
    id: 'projector',
    heel: request.legHeightMm / plan.lengthMm,
  });
  const letter = (/** @type {'a' | 'b'} */ sock, /** @type {number} */ x) =>
    text(document, hasGreatToe(plan) ? drawingWords.footOf[sock] : drawingWords.sock[sock], {
      class: 'letter',
      x,
      y: size.height + letters - 8,
      'text-anchor': 'middle',
    });
  const across = right + 2 * side;
  return svg(
    document,
    'svg',
    {
      viewBox: `${-side} ${-rise - 4} ${across} ${size.height + rise + 4 + letters}`,
      role: 'img',
      'aria-label': nameOfPair(plan, system),
    },
    node,
    letter('a', middles[0]),
    letter('b', middles[1]),
  );
}

/** @param {Make} h @param {Showing} showing */
function largeFigures(h, showing) {
  const { plan, system } = showing;
  /** @type {Array<[Parameters<typeof guessMark>[2], string, string]>} */
  const all = [
    ['wraps', noteWords.wraps, formatCount(plan.castOn.wraps)],
    ['stitches', noteWords.stitches, formatCount(plan.stitchCount)],
    ['toe', noteWords.toe, formatCount(plan.toe.rounds)],
    ['rounds', noteWords.rounds, formatCount(plan.totalRounds)],
    ['yarn', noteWords.yarn, figuresIn(system).yarn(plan.yarn.mWithMargin)],
  ];
  return h(
    'dl',
    {},
    all.map(([name, label, figure]) =>
      h('div', {}, h('dt', {}, label, ' ', guessMark(h, showing, name)), h('dd', {}, figure)),
    ),
  );
}

/** What is said when it is come to, and when it is left. @param {boolean} isOn */
export const projectorText = (isOn) => (isOn ? words.shown : words.left);

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewProjector(h, document, showing) {
  const { isProjected, classTitle } = showing;
  const button = (/** @type {string} */ label) =>
    h('button', { type: 'button', class: 'quiet', 'data-project': '' }, label);
  // The same button, so that who has pressed it with a key still stands on it.
  if (!isProjected) return [h('p', { class: 'print-it', 'data-in': 'class' }, button(words.show))];
  return [
    h('p', { class: 'print-it' }, button(words.leave)),
    // The page's own is out of sight.
    h('h1', { class: classTitle ? '' : 'unseen' }, classTitle || words.title),
    h('div', { class: 'large-figures' }, markLastGood(h, showing), largeFigures(h, showing)),
    largePair(document, showing),
  ];
}
