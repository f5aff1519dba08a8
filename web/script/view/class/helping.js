// A student's sock at a glance: what is odd about it, the worst first, each with the sentence to send back.
import { helpingWords as words, keptWords, oddWords } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { glanceAt, sendBack } from './odd.js';
import { viewSentence } from '../count/sentence.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Oddity} Oddity */

const harms = /** @type {const} */ (['body', 'supply', 'sock', 'doubt']);

/** All that is to be sent back, each sentence once. @param {Showing} showing */
export function tellHelping({ helping, system }) {
  const { oddities = [], told = [] } = helping?.hers ?? {};
  const wrong = told.map(({ name, text }) => `${name}: ${text}`);
  return [...new Set([...wrong, ...oddities.map((oddity) => sendBack(oddity, system))])];
}

/** What to send back, and a button that copies it. @param {Make} h @param {string} text */
const sentence = (h, text) => [
  h('span', {}, text),
  ' ',
  h(
    'button',
    { type: 'button', class: 'quiet', 'data-copy': text, 'aria-label': words.copyThis(text) },
    words.copyOne,
  ),
];

/** @param {Make} h @param {Oddity[]} oddities @param {Showing['system']} system */
const byHarm = (h, oddities, system) =>
  harms.map((harm) => {
    const of = oddities.filter((oddity) => oddity.harm === harm);
    return (
      of.length > 0 &&
      h(
        'section',
        { class: 'odd' },
        h('h3', {}, oddWords.harm[harm]),
        h(
          'dl',
          {},
          of.flatMap((oddity) => {
            const text = sendBack(oddity, system);
            return [h('dt', {}, glanceAt(oddity)), h('dd', {}, sentence(h, text))];
          }),
        ),
      )
    );
  });

/** @param {Make} h @param {Showing} showing */
export function viewHelping(h, showing) {
  const { helping, system } = showing;
  if (!helping) return [h('p', { class: 'aside' }, words.empty)];
  const { problem, isFile, hers } = helping;
  if (problem)
    return [
      h('p', { class: 'yarn-caution' }, (isFile ? keptWords.badFile : keptWords.badLink)[problem]),
    ];
  if (!hers) return [];
  const { plan, request, values, examples, told, oddities, round } = hers;
  // It leads to no field: those on the page are of another sock.
  const plain = /** @type {Make} */ (
    (name, attributes, ...children) =>
      name === 'a' ? h('span', {}, ...children) : h(name, attributes, ...children)
  );
  return [
    plan &&
      h('p', { class: 'sentence' }, viewSentence(plain, { ...showing, plan, request, values })),
    round !== undefined && h('p', {}, words.begun(formatCount(round))),
    examples.length > 0 && h('p', { class: 'yarn-caution' }, words.examples(examples.join(', '))),
    told.length > 0 && h('p', { class: 'yarn-caution' }, words.noPlan),
    told.length > 0 &&
      h(
        'ul',
        { class: 'send-back' },
        told.map(({ name, text }) => h('li', {}, sentence(h, `${name}: ${text}`))),
      ),
    oddities && oddities.length === 0 && h('p', {}, words.nothing),
    ...(oddities ? byHarm(h, oddities, system) : []),
    tellHelping(showing).length > 1 &&
      h(
        'p',
        { class: 'print-it' },
        h(
          'button',
          { type: 'button', class: 'quiet', 'data-carry': 'helping.copy' },
          words.copyAll,
        ),
      ),
  ];
}
