// Five counts, and the line that shows how far the chosen one stretches. Tapping a count tries it.
import { drawStretch } from '../draw/stretch.js';
import { drawingWords, planWords } from '../../words/en.js';
import { formatCount, formatPercent } from '../units.js';
import { figuresIn } from './figures.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./dom.js').Make} Make */

const words = planWords.choices;

// Past this share of the stretch the core itself says that a count will not go over the heel.
const stuckUse = 0.95;
const mostRibs = 3;

/** What lies on the line, in rising order. @param {Plan} plan @param {(mm: number) => string} length */
function marksOf(plan, length) {
  const names = drawingWords.stretch;
  const mark = (
    /** @type {number} */ mm,
    /** @type {string} */ name,
    /** @type {'end' | 'pass' | 'own'} */ kind,
  ) => ({
    mm,
    name,
    kind,
    figure: length(mm),
  });
  const passed = [
    mark(plan.finishedGirthMm, names.flat, 'own'),
    mark(plan.foot.ballGirthMm, names.foot, 'pass'),
    mark(plan.foot.heelAnkleGirthMm, names.heel, 'pass'),
  ].filter(({ mm }) => mm >= plan.restGirthMm && mm <= plan.widestGirthMm);
  passed.sort((one, other) => one.mm - other.mm);
  return [
    mark(plan.restGirthMm, names.rest, 'end'),
    ...passed,
    mark(plan.widestGirthMm, names.widest, 'end'),
  ];
}

/** @param {Make} h @param {Plan['choices'][number]} choice @param {Showing} showing */
function button(h, choice, { plan, request, system }) {
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
        'data-count': isAdvised ? '' : String(choice.stitches),
        'aria-pressed': String(isChosen),
      },
      part('count', formatCount(choice.stitches)),
      part('tag', tag),
      part('girth', length(choice.girthMm)),
      part('ease', words.ease(formatPercent(Math.abs(choice.ease)), choice.ease < 0)),
      part('more', words.heel(formatPercent(choice.heelUse), choice.heelUse <= stuckUse)),
      part('more', words.yarn(yarn(choice.mPerPair))),
      part('more', choice.halvesAlike ? words.alike : words.unlike),
    ),
  );
}

/** Where the rib is the trouble; beside a count of the knitter's own it is not. @param {Make} h @param {Showing} showing */
function ribsThatFit(h, { plan, request }) {
  if (plan.ribsThatFit.length === 0 || request.stitchCount !== undefined) return null;
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
    { class: 'ribs' },
    h('p', {}, words.ribs),
    h('ul', {}, plan.ribsThatFit.slice(0, mostRibs).map(rib)),
  );
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewChoices(h, document, showing) {
  const { plan, request, system } = showing;
  const { length } = figuresIn(system);
  const marks = marksOf(plan, length);
  const name = drawingWords.stretch.name(String(plan.stitchCount));
  const line = (/** @type {number} */ width, /** @type {string} */ only) => {
    const drawn = drawStretch(document, { width, marks, name });
    drawn.setAttribute('class', `stretch ${only}`);
    return drawn;
  };
  const isOwn = request.stitchCount !== undefined && plan.advisedCount !== undefined;
  return [
    h('h2', {}, drawingWords.stretch.title),
    line(1120, 'wide-only'),
    line(700, 'middle-only'),
    line(340, 'phone-only'),
    h('p', { class: 'aside' }, words.lead),
    h(
      'ol',
      { class: 'choices' },
      plan.choices.map((choice) => button(h, choice, showing)),
    ),
    plan.advisedCount === undefined ? h('p', {}, words.noneAdvised) : null,
    isOwn && plan.advisedCount !== plan.stitchCount
      ? h(
          'p',
          {},
          h(
            'button',
            { type: 'button', class: 'quiet', 'data-count': '' },
            words.back(plan.advisedCount ?? 0),
          ),
        )
      : null,
    ribsThatFit(h, showing),
  ].filter((node) => node !== null);
}
