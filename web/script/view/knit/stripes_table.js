// Where the colours change, as a table: each sock's bands from the toe up.
import { stripesWords as words } from '../../../words/en.js';
import { formatCount } from '../../units.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';

/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('./stripes_pair.js').Striped} Striped */
/** @typedef {import('../../units/list.js').Colour} Colour */
/** @typedef {import('../../contract.js').Band} Band */

/** @param {Colour} colour */
export const sayColour = ({ sign, name }) => words.colour(sign, name);

/** @param {Band} band @param {number} last round of the sock */
function sayWhere({ fromRound, fromShare, fromHalf }, last) {
  const round = formatCount(fromRound);
  if (fromShare === 0) return fromRound === 1 ? words.fromCastOn : words.fromStart(round);
  if (fromRound === last && fromShare === 1) return words.inBindOff;
  return words.within(round, words.half[fromHalf === 1 ? 1 : 2]);
}

/**
 * @param {Make} h @param {Showing} showing @param {Colour[]} colours @param {Striped[]} socks
 */
export function bandTable(h, { plan, system }, colours, socks) {
  const { yarn } = figuresIn(system);
  const cell = (/** @type {Band | undefined} */ band) =>
    band &&
    words.band(
      sayColour(colours[band.colour - 1]),
      `${sayWhere(band, plan.totalRounds)} (${yarn(band.m)})`,
    );
  const most = Math.max(...socks.map(({ bands }) => bands.length));
  const rows = Array.from({ length: most }, (_, i) => ({
    name: formatCount(i + 1),
    cells: socks.map(({ bands }) => cell(bands[i])),
  }));
  return h(
    'details',
    { 'data-key': 'bands' },
    h('summary', {}, words.bands.open),
    table(h, {
      caption: words.bands.caption,
      heads: [words.bands.head, ...socks.map(({ name }) => name)],
      rows,
    }),
  );
}
