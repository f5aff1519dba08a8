// All socks that are kept: each with a small picture, and what it comes to.
import { outline } from '../../draw/outline.js';
import { profileOf, sizeSock } from '../../draw/profile.js';
import { ribTrack } from '../../draw/rib_track.js';
import { purlBands } from '../../draw/ribs.js';
import { svg, write } from '../../draw/svg.js';
import { formatCount } from '../../units.js';
import { socksWords as words } from '../../../words/en.js';
import { knitLength } from '../knit/both_socks.js';
import { keptButton } from './kept_button.js';

/** @typedef {import('../showing.js').Plan} Plan */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {{ id: string, isOpen: boolean, sheet: { name: string, started?: { round: number } }, plan?: Plan }} Sock `plan`: none while something in it is to be mended */

const [wide, tall] = [96, 40];

/** One sock lying, toe left: its outline and its ribs. @param {Document} document @param {Plan} plan @param {string} id */
function picture(document, plan, id) {
  const longest = (wide - 4) / knitLength(plan);
  const broadest = (tall - 4) / sizeSock(plan, 1).widest;
  const size = sizeSock(plan, Math.min(longest, broadest));
  const leg = profileOf(plan, size);
  const edge = outline(plan, size, leg, false);
  return svg(
    document,
    'svg',
    { class: 'small-sock', viewBox: `0 0 ${wide} ${tall}`, 'aria-hidden': 'true' },
    svg(
      document,
      'g',
      { transform: `matrix(0 1 -1 0 ${write(size.height + 2)} ${tall / 2})` },
      svg(document, 'clipPath', { id: `small-${id}` }, svg(document, 'path', { d: edge })),
      svg(document, 'path', { class: 'ground', d: edge }),
      svg(document, 'path', {
        class: 'bands',
        'clip-path': `url(#small-${id})`,
        d: purlBands(plan, size, leg, ribTrack(plan, false)),
      }),
    ),
  );
}

/** None of what was kept of a begun sock and turns out to be no plan. @param {Document} document @param {Plan} plan @param {string} id */
function pictureOf(document, plan, id) {
  try {
    return picture(document, plan, id);
  } catch {
    return undefined;
  }
}

/** @param {Make} h @param {Document} document @param {Sock[]} socks */
export function viewSocks(h, document, socks) {
  return socks.map(({ id, isOpen, sheet, plan }) => {
    const name = sheet.name.trim() || words.unnamed;
    const comesTo = plan
      ? words.comesTo(String(plan.stitchCount), String(plan.totalRounds))
      : words.unfinished;
    return h(
      'li',
      { 'data-key': id, ...(isOpen ? { 'aria-current': 'true' } : {}) },
      (plan && pictureOf(document, plan, id)) ?? h('span', { class: 'small-sock' }),
      h(
        'span',
        { class: 'said' },
        h('strong', {}, name),
        h(
          'span',
          { class: 'aside' },
          comesTo + (sheet.started ? words.begun(formatCount(sheet.started.round + 1)) : ''),
        ),
      ),
      isOpen
        ? h('span', { class: 'aside' }, words.here)
        : keptButton(h, 'turn', words.open, { id, name: words.openNamed(name) }),
      keptButton(h, 'remove', words.remove, { id, name: words.removeNamed(name) }),
    );
  });
}
