// The count: told large, on the line that shows how far it stretches, and as five buttons. Any of them tries
// another.
import { planWords, stretchWords } from '../../../words/en.js';
import { formatCount, formatPercent } from '../../units.js';
import { figuresIn } from '../figures.js';
import { explainRing, guessMark, guessText } from '../guess.js';
import { sayFlat, viewStretch } from './stretch.js';
import { tableOfStretch } from './stretch_table.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */

const words = planWords.choices;
const mostRibs = 3;

/** What a button for a count says to the form: the advised one is no count of one's own. @param {Plan} plan @param {number} stitches */
const countFor = (plan, stitches) => (stitches === plan.advisedCount ? '' : String(stitches));

/** @param {Make} h @param {Plan['choices'][number]} choice @param {Showing} showing */
function button(h, choice, showing) {
  const { plan, request, system } = showing;
  const { length, yarn } = figuresIn(system);
  const isChosen = choice.stitches === plan.stitchCount;
  const isAdvised = choice.stitches === plan.advisedCount;
  // Advised, but far from the ease asked for: the nearest there is.
  const isFar = plan.ribsThatFit.length > 0 && request.stitchCount === undefined;
  const tag = isAdvised
    ? isFar
      ? words.nearest
      : words.advised
    : isChosen && request.stitchCount !== undefined
      ? words.own
      : '';
  const part = (/** @type {string} */ className, /** @type {string} */ text) =>
    h('span', { class: className }, text);
  return h(
    'li',
    {},
    h(
      'button',
      {
        type: 'button',
        class: 'choice',
        'data-count': countFor(plan, choice.stitches),
        'aria-pressed': String(isChosen),
      },
      part('count', formatCount(choice.stitches)),
      // One ring for all the cell's figures: a phone's cell has room for no more.
      part('tag', guessText(showing, 'ease', tag)),
      part('girth', length(choice.girthMm)),
      part('ease', words.ease(formatPercent(Math.abs(choice.ease)), choice.ease < 0)),
      part(
        'more',
        guessText(
          showing,
          'heelUse',
          words.heel(formatPercent(choice.heelUse), choice.heelUse <= plan.passUse),
        ),
      ),
      part('more', guessText(showing, 'yarn', words.yarn(yarn(choice.mPerPair)))),
      part('more', choice.halvesAlike ? words.alike : words.unlike),
    ),
  );
}

/**
 * Where the rib is the trouble. Beside a count of the knitter's own it is not, unless there is none to advise.
 * @param {Make} h @param {Showing} showing
 */
function ribsThatFit(h, { plan, request }) {
  const isOwnDoing = request.stitchCount !== undefined && plan.advisedCount !== undefined;
  if (plan.ribsThatFit.length === 0 || isOwnDoing) return null;
  const rib = (/** @type {Plan['ribsThatFit'][number]} */ { knit, purl, stitches, ease }) =>
    h(
      'li',
      {},
      h(
        'button',
        { type: 'button', class: 'quiet', 'data-rib': `${knit} ${purl}` },
        words.rib(
          `k${knit}, p${purl}`,
          stitches,
          words.ease(formatPercent(Math.abs(ease)), ease < 0),
        ),
      ),
    );
  return h(
    'div',
    { class: 'ribs', 'data-key': 'ribs' },
    h('p', {}, words.ribs),
    h('ul', {}, plan.ribsThatFit.slice(0, mostRibs).map(rib)),
  );
}

/** A step to the count before or after, where there is one. @param {Make} h @param {Showing} showing @param {-1 | 1} way */
function stepButton(h, { plan }, way) {
  const place = plan.choices.findIndex(({ stitches }) => stitches === plan.stitchCount);
  const next = plan.choices[place + way];
  const isFewer = way < 0;
  const say = isFewer ? stretchWords.fewer : stretchWords.more;
  const none = isFewer ? stretchWords.noFewer : stretchWords.noMore;
  // Where it ends it stays in place, for the hand may be on it.
  /** @type {Record<string, string>} */
  const does = next
    ? { 'data-count': countFor(plan, next.stitches), 'aria-label': say(formatCount(next.stitches)) }
    : { 'aria-disabled': 'true', 'aria-label': none };
  return h(
    'button',
    { type: 'button', class: 'step', 'data-step': '', 'data-key': isFewer ? '-' : '+', ...does },
    isFewer ? '−' : '+',
  );
}

/** @param {Make} h @param {Showing} showing */
const countTold = (h, showing) =>
  h(
    'div',
    { class: 'count-told' },
    stepButton(h, showing, -1),
    h('strong', {}, formatCount(showing.plan.stitchCount)),
    stepButton(h, showing, 1),
    h(
      'span',
      { class: 'count-unit' },
      `${stretchWords.stitches} `,
      guessMark(h, showing, 'stitches'),
    ),
  );

/** What that count makes, and how the line is used. @param {Make} h @param {Showing} showing */
const countSaid = (h, showing) =>
  h(
    'p',
    { class: 'count-said', 'data-key': 'said' },
    h('span', {}, `${sayFlat(showing)}. `, guessMark(h, showing, 'girth')),
    ` ${showing.plan.halvesAlike ? stretchWords.alike : stretchWords.unlike} ${stretchWords.lead}`,
  );

/**
 * A count of the knitter's own that a new rib has made none: said here, with what would do. It stays hers until
 * she takes another.
 * @param {Make} h @param {Showing} showing
 */
function offers(h, { problems }) {
  return problems
    .filter((problem) => problem.offers.length > 0)
    .map(({ text, offers: all }) =>
      h(
        'div',
        { class: 'offers', 'data-key': 'offers' },
        h('p', { class: 'problem' }, text),
        h(
          'ul',
          {},
          all.map(({ stitches, isAdvised }) => {
            const say = isAdvised ? stretchWords.offer.advised : stretchWords.offer.take;
            const count = isAdvised ? '' : String(stitches);
            return h(
              'li',
              {},
              h(
                'button',
                { type: 'button', class: 'quiet', 'data-count': count },
                say(formatCount(stitches)),
              ),
            );
          }),
        ),
        h('p', { class: 'aside' }, stretchWords.offer.kept),
      ),
    );
}

/** @param {Make} h @param {Showing} showing */
function wayBack(h, { plan, request, problems }) {
  const { advisedCount, stitchCount } = plan;
  // While it is offered beside what is wrong, once is enough.
  if (problems.some(({ offers: all }) => all.length > 0)) return null;
  if (request.stitchCount === undefined || advisedCount === undefined) return null;
  if (advisedCount === stitchCount) return null;
  return h(
    'button',
    { type: 'button', class: 'quiet', 'data-count': '' },
    words.back(advisedCount),
  );
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewChoices(h, document, showing) {
  const { plan } = showing;
  return [
    h('h2', {}, stretchWords.title),
    countTold(h, showing),
    viewStretch(document, showing, { width: 1120, grain: 1.7, only: 'wide-only' }),
    viewStretch(document, showing, { width: 700, grain: 1.3, only: 'middle-only' }),
    viewStretch(document, showing, { width: 340, grain: 1, only: 'phone-only' }),
    countSaid(h, showing),
    // Always there, so that what stands below it is never made into it.
    h('div', { class: 'way-back', 'data-key': 'back' }, wayBack(h, showing)),
    ...offers(h, showing),
    h(
      'ol',
      { class: 'choices', 'data-key': 'choices' },
      plan.choices.map((choice) => button(h, choice, showing)),
    ),
    h(
      'p',
      { class: 'aside', 'data-key': 'of-choices' },
      words.lead + explainRing(showing, ['girth', 'ease', 'heelUse', 'yarn', 'edgeGirth']),
    ),
    plan.advisedCount === undefined ? h('p', {}, words.noneAdvised) : null,
    ribsThatFit(h, showing),
    tableOfStretch(h, showing),
  ].filter((node) => node !== null);
}
