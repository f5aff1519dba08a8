// Numbers of a working as they are put into its lines: in the reader's units, each fine enough that the
// sum done on paper comes out as the figure.
import { unitWords } from '../../../words/en.js';
import { formatFigures, fromBase, toBase, unitIn } from '../../units.js';
import { shares } from '../figures.js';

/** @typedef {import('../../contract.js').Plan} Plan */
/** @typedef {import('../../contract.js').Working} Working */
/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../units.js').System} System */
/** @typedef {import('../../../words/en/working_text.js').Units} Units */
/** @typedef {import('../../../words/en/working_text.js').Circumstances} Circumstances */

const isYarn = (/** @type {string} */ name) =>
  name === 'm' || name === 'mPerSock' || name === 'mPerPair' || /[a-z]M$/.test(name);

// Shares that come out of a sum, some as a small difference of two large measures: so many figures of
// them are right where five are put in.
const sureFigures = /** @type {Record<string, number>} */ ({
  backStrain: 2,
  frontStrain: 2,
  ease: 3,
  heelUse: 3,
  relativeError: 3,
  use: 3,
});

/** @param {string} name @param {number} value @param {System} system */
function writeExact(name, value, system) {
  const length = unitIn('length', system);
  const measure = (/** @type {string} */ unit, figures = 5) =>
    `${formatFigures(fromBase(value, unit), figures)}\u00a0${unit}`;
  if (shares.has(name)) return measure('%', sureFigures[name] ?? 5);
  if (name.endsWith('PerMm')) return formatFigures(value * toBase(1, length), 5);
  // A needle is called by its millimetres everywhere.
  if (name === 'mm') return measure('mm');
  if (name.endsWith('Mm') || name === 'mmPerStitch') return measure(length);
  if (isYarn(name)) return measure(unitIn('yarn', system));
  if (name === 'g' || /[a-z]G$/.test(name)) return measure(unitIn('mass', system));
  return formatFigures(value, 5);
}

/** @param {System} system @returns {Units} */
export function unitsOf(system) {
  const [length, yarn] = [unitIn('length', system), unitIn('yarn', system)];
  const { perYarn, ...words } = unitWords[system];
  const inLengths = (/** @type {number} */ mm) => formatFigures(fromBase(mm, length), 4);
  return {
    ...words,
    // Yarn is in metres inside, a length in millimetres.
    perYarn: perYarn(inLengths(toBase(1, yarn) * 1000)),
    fourInches: `${inLengths(toBase(4, 'in'))}\u00a0${length}`,
  };
}

/** @param {Showing} showing @returns {Circumstances} */
export const circumstancesOf = ({ plan }) => ({
  isLeftAndRight: plan.toe.sides.some((which) => which === 'great' || which === 'little'),
});

/**
 * What a rule needs besides its own numbers and the reply or the request has elsewhere.
 * @param {Working} working @param {Showing} showing @returns {Record<string, number | undefined>}
 */
function alsoOf({ rule }, { plan }) {
  const moved = plan.cautions.find(({ code }) => code === 'heel_moved_count');
  switch (rule) {
    case 'firmness':
      // This rule counts in centimetres, whatever the reader does.
      return { tex: plan.yarn.tex, loopCm: fromBase(plan.yarn.mmPerStitch, 'cm') };
    case 'stitch_count':
      return { byEase: moved && Number(moved.from) };
    default:
      return {};
  }
}

/** A working's numbers in words, by name. @param {Working} working @param {Showing} showing */
export function numbersOf(working, showing) {
  const all = Object.entries({ ...alsoOf(working, showing), ...working.numbers });
  return /** @type {Record<string, string>} */ (
    Object.fromEntries(
      all
        .filter(([, value]) => typeof value === 'number')
        .map(([name, value]) => [
          name,
          writeExact(name, /** @type {number} */ (value), showing.system),
        ]),
    )
  );
}
