// The toe on paper: rounds worked alike in one row, with a box to tick for each.
import { sheetWords as words, planWords } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { table } from '../dom.js';
import { sayRounds } from '../knit/knit_rib.js';
import { sayIncreases, sayWork } from '../knit/knit_toe.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */

const toeWords = planWords.knit.toe;

/** Runs of toe rounds that widen the same sides, with the stitches of each. @param {Plan['toe']} toe */
function runsOf({ sides, counts }) {
  /** @type {Array<{ sides: string, from: number, counts: number[] }>} */
  const runs = [];
  sides.forEach((side, j) => {
    const last = runs[runs.length - 1];
    if (last && last.sides === side) last.counts.push(counts[j]);
    else runs.push({ sides: side, from: j, counts: [counts[j]] });
  });
  return runs;
}

/** @param {Make} h @param {Plan} plan */
export function sheetToe(h, plan) {
  const box = () => h('span', { class: 'tick-box' });
  // Plain rounds leave the count as it is: once is enough.
  const say = (/** @type {number[]} */ counts) => [...new Set(counts)].map(formatCount).join(', ');
  return [
    h('h3', {}, words.toeTitle),
    h('p', {}, [...sayIncreases(plan), toeWords.plain].join(' ')),
    table(h, {
      caption: '',
      heads: words.toeHeads,
      rows: runsOf(plan.toe).map(({ sides, from, counts }) => ({
        name: sayRounds(from + 1, from + counts.length),
        mark: sides === 'none' ? '' : 'increase',
        cells: [
          sayWork(plan, sides),
          say(counts.map((count) => count / 2)),
          say(counts),
          h('span', { class: 'tick-boxes' }, counts.map(box)),
        ],
      })),
      className: 'toe-boxes',
    }),
  ];
}
