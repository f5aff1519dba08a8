// How each figure came about, one folded part a figure.
import {
  figureWords,
  numberWords,
  perWords,
  planWords,
  ruleWords,
  sourceWords,
} from '../../words/en.js';
import { writeNamed } from './figures.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */

/** @param {string} name @param {unknown} value @param {import('../units.js').System} system */
function writeNumber(name, value, system) {
  const text = writeNamed(name, value, system);
  return name.endsWith('PerMm') ? `${text} ${perWords[system]}` : text;
}

/** @param {Make} h @param {Showing} showing */
export function viewWorking(h, { plan, system }) {
  const parts = plan.working.map(({ figure, rule, numbers, source }) =>
    h(
      'details',
      { 'data-key': figure },
      h('summary', {}, figureWords[figure] ?? figure),
      h('p', {}, ruleWords[rule] ?? rule),
      h(
        'dl',
        { class: 'numbers' },
        Object.entries(numbers).map(([name, value]) =>
          h(
            'div',
            {},
            h('dt', {}, numberWords[name] ?? name),
            h('dd', {}, writeNumber(name, value, system)),
          ),
        ),
      ),
      h('p', { class: 'source' }, `${planWords.workingSource}: ${sourceWords[source] ?? source}.`),
    ),
  );
  return [
    h('h2', {}, planWords.workingTitle),
    h('p', { class: 'lead' }, planWords.workingLead),
    h('div', { class: 'workings' }, parts),
  ];
}
