// The yarn in a stitch by a weighed piece beside that by the gauge: how far to trust either.
import { fieldWords, twoWaysWords as words } from '../../../words/en.js';
import { formatPercent } from '../../units.js';
import { writeNamed } from '../figures.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** The field to look at again. @param {Make} h @param {string} pointer */
function linkTo(h, pointer) {
  const { short, label } = fieldWords[pointer.replace(/\/readings\/\d+\//, '/readings/')];
  const href = `#f${pointer.replaceAll('/', '-')}`;
  return h('a', { href, 'data-goto': pointer }, short ?? label);
}

/** @param {Make} h @param {Showing} showing */
export function viewTwoWays(h, { plan, system }) {
  const { mmPerStitch, geometryMmPerStitch } = plan.yarn;
  if (geometryMmPerStitch === undefined) return [];
  const caution = plan.cautions.find(({ code }) => code === 'yarn_sources_disagree');
  const way = (/** @type {string} */ name, /** @type {number} */ mm) =>
    h('div', {}, h('dt', {}, name), h('dd', {}, writeNamed('mmPerStitch', mm, system)));
  // How far it lies above or below the other says the pair itself.
  const apart = caution && formatPercent(Number(caution.apart)).replace('\u2212', '');
  return [
    h('p', { class: 'two-ways-name' }, words.caption),
    h(
      'dl',
      { class: 'two-ways' },
      way(words.weighed, mmPerStitch),
      way(words.geometry, geometryMmPerStitch),
    ),
    apart && caution
      ? h(
          'p',
          { class: 'doubt' },
          `${words.apart(apart)} ${words.doubt}`,
          linkTo(h, String(caution.doubt)),
          '.',
        )
      : h('p', { class: 'aside' }, words.near),
  ];
}
