// The band round a pair that is given away, twice on one side of paper: what the plan knows, and lines to fill in. Bands for
// the feet of others are made of the same.
import { formatNumber } from '../../units.js';
import { bandWords as words, optionWords } from '../../../words/en.js';
import { hasGreatToe } from '../knit/both_socks.js';
import { figuresIn } from '../figures.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** A length of foot in both systems, the reader's own first. @param {number} mm @param {Showing['system']} system */
function bothLengths(mm, system) {
  const { length, otherLength } = figuresIn(system);
  return [length(mm), otherLength(mm)];
}

/** Feet from one length to another, in both systems. @param {number} fromMm @param {number} toMm @param {Showing['system']} system */
export function sayFeet(fromMm, toMm, system) {
  const to = bothLengths(toMm, system);
  return bothLengths(fromMm, system).map((length, i) => words.range(length, to[i]));
}

/** @param {Showing} showing */
function feet({ plan, system }) {
  const { serves, foot } = plan;
  return serves
    ? sayFeet(serves.footFromMm, serves.footToMm, system)
    : [words.one(bothLengths(foot.lengthMm, system).join(' · '))];
}

const writeSize = (/** @type {number} */ size) => formatNumber(size, 1);

/** @param {ReadonlyArray<{ scale: string, from: number, to: number }>} sizes */
export const sayShoes = (sizes) =>
  sizes.map(({ scale, from, to }) => {
    const told = from === to ? writeSize(from) : `${writeSize(from)}–${writeSize(to)}`;
    return `${words.scales[scale]}\u00a0${told}`;
  });

/**
 * @param {Make} h @param {import('../../contract.js').Plan} plan what it shares with the pair
 * @param {{ title?: string, rows: Array<[string, string[]]>, filled?: string[] }} told what stands on it, each under its term, and on
 *   its lines as far as they are filled in
 */
export function band(h, plan, { title = words.title, rows, filled = [] }) {
  /** @type {[string, string[]]} */
  const yarn = [words.yarn, [optionWords['/yarn/category'][plan.category]]];
  const row = (/** @type {[string, string[]]} */ [term, told]) =>
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
      h('h2', {}, title),
      h('p', {}, hasGreatToe(plan) ? words.sided : words.noHeel),
      h('dl', {}, [...rows, yarn].map(row)),
    ),
    h('p', { class: 'band-fold' }, words.fold),
    h(
      'div',
      {},
      words.lines.map((line, i) =>
        h('p', { class: 'band-line' }, line, filled[i] && h('span', {}, filled[i])),
      ),
      h('p', { class: 'band-care' }, words.care),
    ),
  );
}

/** @param {Make} h @param {Showing} showing */
export const viewBand = (h, showing) => {
  const { plan, name } = showing;
  /** @type {Array<[string, string[]]>} */
  const rows = [
    [words.foot, feet(showing)],
    [words.shoes, sayShoes(plan.serves?.sizes ?? [])],
  ];
  return [0, 1].map(() => band(h, plan, { title: name || undefined, rows }));
};
