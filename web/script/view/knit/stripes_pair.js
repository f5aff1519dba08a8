// Socks in their stripes, side by side, so that a mismatch is seen.
import { outline } from '../../draw/outline.js';
import { profileOf, sizeSock } from '../../draw/profile.js';
import { ribTrack } from '../../draw/rib_track.js';
import { purlBands } from '../../draw/ribs.js';
import { bandMarks, drawStriped } from '../../draw/stripes.js';
import { at, svg, text } from '../../draw/svg.js';
import { stripesWords as words } from '../../../words/en.js';
import { knitLength, widestFlat } from './both_socks.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').Band} Band */
/** @typedef {import('../../units/list.js').Colour} Colour */
/** @typedef {{ name: string, bands: Band[], isSecond?: boolean }} Striped */

const tall = 330;
const [top, bottom] = [4, 24];
const [widest, gap] = [76, 34];

/** The dye of each colour: that of its name, or the next one that no name has taken. @param {Colour[]} colours */
function dyesOf(colours) {
  const named = colours.map(({ name }) => {
    const said = name.toLowerCase().split(' ');
    return words.dyes.findIndex((names) => names.some((one) => said.includes(one)));
  });
  let next = 0;
  return named.map((dye) => {
    if (dye >= 0) return dye;
    while (named.includes(next)) next += 1;
    next += 1;
    return next - 1;
  });
}

/**
 * @param {Document} document @param {Showing} showing @param {string} id @param {string} what it shows
 * @param {Colour[]} colours @param {Striped[]} socks
 */
export function stripedSocks(document, { plan }, id, what, colours, socks) {
  const scale = Math.min((tall - top - bottom) / knitLength(plan), widest / widestFlat(plan));
  const size = sizeSock(plan, scale);
  const leg = profileOf(plan, size);
  const dyes = dyesOf(colours);
  const dyed = colours.map(({ sign }, i) => ({ sign, dye: dyes[i] }));
  const step = size.widest + gap;
  const height = top + size.height + bottom;
  const shapes = [false, true].map((isSecond) => ({
    edge: outline(plan, size, leg, isSecond),
    purl: purlBands(plan, size, leg, ribTrack(plan, isSecond)),
    half: leg.half,
  }));
  const width = Math.max(step * socks.length, 90);
  return svg(
    document,
    'svg',
    {
      class: 'striped-pair',
      viewBox: `0 0 ${at(width, height)}`,
      width,
      role: 'img',
      'aria-label': words.pair(what),
    },
    bandMarks(document, id, dyes),
    ...socks.map(({ name, bands, isSecond }, i) =>
      svg(
        document,
        'g',
        { transform: `translate(${at(step * i + size.widest / 2 + 2, top)})` },
        drawStriped(document, size, shapes[isSecond ? 1 : 0], bands, dyed, { id, sock: String(i) }),
        text(document, name, { class: 'letter', y: size.height + 18, 'text-anchor': 'middle' }),
      ),
    ),
  );
}
