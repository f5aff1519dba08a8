// How each figure came about: an appendix, one folded entry a figure, with its rule, the rule with the
// numbers put in, and where the rule is from.
import {
  figureWords,
  fitLines,
  makingLines,
  numberWords,
  ruleWords,
  sourceWords,
  workingWords as words,
} from '../../../words/en.js';
import { explainRing } from '../guess.js';
import { viewTwoWays } from '../count/two_ways.js';
import { viewInputs } from './working_inputs.js';
import { circumstancesOf, numbersOf, unitsOf } from './working_numbers.js';
import { groups, tellResult } from './working_result.js';

/** @typedef {import('../../contract.js').Working} Working */
/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

const linesOf = /** @type {Record<string, import('../../../words/en/working_text.js').Line[]>} */ ({
  ...fitLines,
  ...makingLines,
});

/** The lines of a working that can be said, and the numbers that none of them holds. @param {Working} working @param {Showing} showing */
export function tellLines(working, showing) {
  const numbers = numbersOf(working, showing);
  const is = circumstancesOf(showing);
  const units = unitsOf(showing.system);
  /** @type {string[]} */
  const said = [];
  const held = new Set();
  let isBeforeSaid = false;
  for (const { of, say, unless, isElse } of linesOf[working.rule] ?? []) {
    /** @type {boolean} */
    const isSaid =
      of.every((name) => name in numbers) && !unless?.(is) && !(isElse && isBeforeSaid);
    // Of several ways to say one thing the first that can be said is.
    isBeforeSaid = isSaid || (Boolean(isElse) && isBeforeSaid);
    if (!isSaid) continue;
    said.push(say(numbers, units));
    for (const name of of) held.add(name);
  }
  const rest = Object.keys(working.numbers).filter((name) => !held.has(name));
  return { said, rest: rest.map((name) => [numberWords[name] ?? name, numbers[name]]) };
}

/** The result stands out at the end of its line. @param {Make} h @param {string} line */
function viewLine(h, line) {
  const end = line.lastIndexOf(' = ');
  if (end < 0) return h('p', { class: 'line' }, line);
  const [before, result] = [line.slice(0, end + 3), line.slice(end + 3)];
  return h('p', { class: 'line' }, before, h('b', {}, result));
}

/** @param {Make} h @param {Showing} showing @param {Working} working @param {string} id */
function viewEntry(h, showing, working, id) {
  const { figure, rule, source } = working;
  const { said, rest } = tellLines(working, showing);
  const isAssumed = source === 'assumption';
  return h(
    'details',
    { class: 'working', 'data-key': id },
    h(
      'summary',
      {},
      h('span', { class: 'figure-name' }, figureWords[figure] ?? figure),
      ' ',
      h('span', { class: 'came-to' }, tellResult(working, showing)),
    ),
    // The target lies inside, so that a browser opens the entry that it is sent to.
    h(
      'div',
      { class: 'how-come', id: `working-${id}` },
      h('p', { class: 'rule' }, ruleWords[rule] ?? rule),
      said.map((line) => viewLine(h, line)),
      rest.length > 0 &&
        h(
          'dl',
          { class: 'numbers' },
          rest.map(([name, value]) => h('div', {}, h('dt', {}, name), h('dd', {}, value))),
        ),
      figure === 'mmPerStitch' && viewTwoWays(h, showing),
      h(
        'p',
        { class: 'source' },
        isAssumed && h('strong', {}, words.isAssumed),
        isAssumed ? words.assumed : words.source(sourceWords[source] ?? source),
      ),
    ),
  );
}

/** Ids of a list of figures: a second one of a name is numbered. @param {Working[]} workings */
function idsOf(workings) {
  /** @type {Record<string, number>} */
  const seen = {};
  return workings.map(({ figure }) => {
    seen[figure] = (seen[figure] ?? 0) + 1;
    return seen[figure] === 1 ? figure : `${figure}-${seen[figure]}`;
  });
}

/** @param {Make} h @param {Showing} showing */
export function viewWorking(h, showing) {
  const workings = showing.plan.working;
  const ids = idsOf(workings);
  const entries = workings.map((working, i) => ({ working, id: ids[i] }));
  const parts = Object.entries(groups).map(([name, figures]) => {
    const here = figures.flatMap((figure) =>
      entries.filter(({ working }) => working.figure === figure),
    );
    return (
      here.length > 0 &&
      h(
        'section',
        { class: 'workings', 'data-key': name },
        h('h3', {}, words.groups[name]),
        here.map(({ working, id }) => viewEntry(h, showing, working, id)),
      )
    );
  });
  return [
    h('h2', {}, words.title),
    h(
      'p',
      { class: 'lead' },
      words.lead +
        explainRing(showing, ['gauge', 'footGirth', 'length', 'heelUse', 'legUse', 'mass']),
    ),
    h(
      'p',
      { class: 'print-row form-only' },
      h('button', { type: 'button', class: 'quiet', 'data-print': 'workings' }, words.print),
    ),
    viewInputs(h, showing),
    h('div', { class: 'appendix' }, parts),
  ];
}
