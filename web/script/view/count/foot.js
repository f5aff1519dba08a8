// A foot told by its shoe: its length and girth as the plan takes them, marked estimated.
import { footWords as words } from '../../../words/en.js';
import { formatLength } from '../../units.js';
import { figuresIn } from '../figures.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** @param {import('../../contract.js').Plan['foot']} foot @param {any} request @param {Showing['system']} system */
function aboutSize({ lengthMm, lengthSpreadMm = 0 }, { shoe }, system) {
  const { length } = figuresIn(system);
  if (shoe?.scale === 'uk') {
    return words.ukBand(length(lengthMm - lengthSpreadMm), length(lengthMm + lengthSpreadMm));
  }
  if (shoe?.scale === 'mondopoint') return words.mondopoint(formatLength(lengthMm, 'mm'));
  return '';
}

/** Nothing beside a size that is still to be mended: it would be of another foot. @param {Make} h @param {Showing} showing */
export function viewFoot(h, { plan, request, system, problems }) {
  const { foot } = plan;
  if (problems.length > 0 || !(foot.lengthEstimated || foot.ballGirthEstimated)) return [];
  const { length } = figuresIn(system);
  const measures = [
    foot.lengthEstimated &&
      words.measure(length(foot.lengthMm), words.long, length(foot.lengthSpreadMm ?? 0)),
    foot.ballGirthEstimated &&
      words.measure(length(foot.ballGirthMm), words.round, length(foot.ballGirthSpreadMm ?? 0)),
  ].filter(Boolean);
  const about = foot.lengthEstimated ? aboutSize(foot, request.foot, system) : '';
  const isChild = foot.ballGirthEstimated && request.foot.body === 'child';
  return [
    h('p', { class: 'estimate' }, h('em', {}, words.estimated), ` ${measures.join('; ')}.`),
    about !== '' && h('p', { class: 'estimate' }, about),
    isChild && h('p', { class: 'estimate' }, words.child),
  ];
}
