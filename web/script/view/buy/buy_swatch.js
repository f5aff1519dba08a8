// What to swatch and how: in full view where there is no swatch yet, folded where there is one.
import { swatchingWords as words } from '../../../words/en.js';
import { writeNeedle } from '../figures.js';
import { jumpTo } from '../count/sum.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** @param {Make} h @param {Showing} showing */
const steps = (h, { plan, system }) =>
  h(
    'ol',
    { class: 'steps' },
    words
      .steps(writeNeedle(plan.needle.mm), system)
      .map(({ lead, text }) => h('li', {}, h('b', {}, lead), ` ${text}`)),
  );

/** @param {Make} h @param {Showing} showing */
export const howToSwatch = (h, showing) => [
  h('h3', {}, words.title),
  h('p', {}, words.lead),
  steps(h, showing),
  h('p', {}, jumpTo(h, '/swatch/swatch', words.done)),
];

/** @param {Make} h @param {Showing} showing */
export const howToSwatchFolded = (h, showing) =>
  h(
    'details',
    { class: 'fold', 'data-key': 'how-to-swatch' },
    h('summary', {}, words.fold),
    steps(h, showing),
  );
