// Cautions of this plan, and the care that every pair asks for.
import { cautionWords, pageWords, planWords } from '../../../words/en.js';
import { formatPercentAway } from '../../units.js';
import { writeNamed } from '../figures.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** A caution in words; one that has none here yet speaks for itself. @param {any} caution @param {import('../../units.js').System} system */
export function cautionText(caution, system) {
  const say = cautionWords[caution.code];
  const figures = Object.entries(caution).map(([name, value]) => [
    name,
    // Told because it is outside of −20 to −2 %: so it must not be rounded into that.
    caution.code === 'ease_outside' && name === 'ease'
      ? formatPercentAway(value, value < -0.2 || value > 0)
      : // Rounds are counted from 0 by the core, from 1 by people.
        writeNamed(name, name === 'round' ? value + 1 : value, system),
  ]);
  return say ? say(Object.fromEntries(figures)) : String(caution.message);
}

// What is merely unsure: no mark of alarm stands before it.
const mild = new Set([
  'flat_swatch',
  'unwashed_swatch',
  'guessed_gauge',
  'rib_swatch',
  'girths_estimated',
  'foot_estimated',
  'yarn_guessed',
  'no_lean',
  'leg_widened',
  'stitch_crosses',
  'moss_stitch',
  'shift_every_round',
]);

/** @param {Make} h @param {Showing} showing */
export function viewCautions(h, { plan, system }) {
  if (plan.cautions.length === 0) return [];
  return [
    h('h2', {}, planWords.cautions.title),
    h(
      'ul',
      { class: 'cautions' },
      plan.cautions.map((caution) =>
        h('li', { class: mild.has(caution.code) ? 'mild' : 'grave' }, cautionText(caution, system)),
      ),
    ),
  ];
}

/** @param {Make} h */
export function viewCare(h) {
  return [
    h('h2', {}, pageWords.care.title),
    h(
      'ul',
      { class: 'care' },
      pageWords.care.notes.map((note) => h('li', {}, note)),
    ),
  ];
}
