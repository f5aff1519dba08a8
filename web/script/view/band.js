// The band round a pair that is given away, twice on one side of paper: what the plan knows, and lines to fill in.
import { formatNumber } from '../units.js';
import { bandWords as words, optionWords } from '../../words/en.js';
import { hasGreatToe } from './both_socks.js';
import { figuresIn } from './figures.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */

/** A length of foot in both systems, the reader's own first. @param {number} mm @param {Showing['system']} system */
function bothLengths(mm, system) {
  const { length, otherLength } = figuresIn(system);
  return [length(mm), otherLength(mm)];
}

/** @param {Showing} showing */
function feet({ plan, system }) {
  const { serves, foot } = plan;
  if (!serves) return [words.one(bothLengths(foot.lengthMm, system).join(' · '))];
  const from = bothLengths(serves.footFromMm, system);
  const to = bothLengths(serves.footToMm, system);
  return from.map((length, i) => words.range(length, to[i]));
}

const writeSize = (/** @type {number} */ size) => formatNumber(size, 1);

/** @param {Showing['plan']} plan */
const shoes = ({ serves }) =>
  (serves?.sizes ?? []).map(({ scale, from, to }) => {
    const sizes = from === to ? writeSize(from) : `${writeSize(from)}–${writeSize(to)}`;
    return `${words.scales[scale]}\u00a0${sizes}`;
  });

/** @param {Make} h @param {Showing} showing */
function band(h, showing) {
  const { plan, name } = showing;
  const row = (/** @type {string} */ term, /** @type {string[]} */ told) =>
    told.length > 0 &&
    h(
      'div',
      {},
      h('dt', {}, term),
      told.map((text) => h('dd', {}, text)),
    );
  return h(
    'article',
    { class: 'band' },
    h(
      'div',
      {},
      h('h2', {}, name || words.title),
      h('p', {}, hasGreatToe(plan) ? words.sided : words.noHeel),
      h(
        'dl',
        {},
        row(words.foot, feet(showing)),
        row(words.shoes, shoes(plan)),
        row(words.yarn, [optionWords['/yarn/category'][plan.category]]),
      ),
    ),
    h('p', { class: 'band-fold' }, words.fold),
    h(
      'div',
      {},
      words.lines.map((line) => h('p', { class: 'band-line' }, line)),
      h('p', { class: 'band-care' }, words.care),
    ),
  );
}

/** @param {Make} h @param {Showing} showing */
export const viewBand = (h, showing) => [band(h, showing), band(h, showing)];
