// The needle and its cable, how firm a fabric it makes of this yarn, and how long the pair takes.
import { formatNumber, formatTime } from '../../units.js';
import { buyWords as words } from '../../../words/en.js';
import { figuresIn, writeNeedle } from '../figures.js';
import { takesIn } from '../give_or_take.js';
import { guessMark, isGuess } from '../guess.js';
import { jumpTo, sum } from '../count/sum.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** A length that needles are sold in, in both systems. @param {number} mm @param {Showing['system']} system */
export function soldLength(mm, system) {
  const figures = figuresIn(system);
  const sold = words.cableSold[mm];
  const other = system === 'metric' ? 'inch' : 'metric';
  return [sold?.[system] ?? figures.length(mm), sold?.[other] ?? figures.otherLength(mm)];
}

/** The needle to try instead, in mm, where the fabric is too loose or too firm for its yarn. @param {Showing['plan']} plan */
export function needleToTry({ cautions }) {
  const caution = cautions.find(({ code }) => code === 'loose_fabric' || code === 'firm_fabric');
  return typeof caution?.tryMm === 'number' ? writeNeedle(caution.tryMm) : '';
}

/** @param {Make} h @param {Showing} showing */
export function needleSum(h, showing) {
  const { needle } = showing.plan;
  const [length, also] = soldLength(needle.cableBuyMm ?? 0, showing.system);
  return sum(h, {
    figure: writeNeedle(needle.mm),
    working: 'needle',
    also: words.names(needle.us ?? '', needle.uk ?? ''),
    mark: guessMark(h, showing, 'needle'),
    what: needle.cableBuyMm === undefined ? words.noCable : words.cable(length, also),
  });
}

/** @param {Showing} showing */
function firmnessWords(showing) {
  const { firmness } = showing.plan;
  if (firmness === undefined) return words.firmnessUnknown;
  const mm = needleToTry(showing.plan);
  const again = isGuess(showing, 'firmness') ? words.tryFirst : words.tryAgain;
  return [words.firmness[firmness], mm && again(mm)].filter(Boolean).join(' ');
}

/** @param {Make} h @param {Showing} showing */
export function aboutTools(h, showing) {
  const { plan, system } = showing;
  const { length } = figuresIn(system);
  const pace = plan.working.find(({ figure }) => figure === 'minutes')?.numbers.stitchesPerMinute;
  const time = words.time(
    formatTime(plan.minutes),
    takesIn(showing).time,
    pace === undefined ? '' : formatNumber(pace, 1),
  );
  return [
    h(
      'p',
      {},
      words.cableLeast(length(plan.needle.cableMinMm)),
      ' ',
      guessMark(h, showing, 'cable'),
    ),
    h('p', {}, firmnessWords(showing), ' ', guessMark(h, showing, 'firmness')),
    h(
      'p',
      {},
      `${time} `,
      guessMark(h, showing, 'time'),
      ' ',
      jumpTo(h, '/pace/stitchesPerMinute', words.ownPace, 'inline-jump'),
    ),
  ];
}
