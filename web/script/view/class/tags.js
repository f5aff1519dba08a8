// Name tags to cut out: a seat's number in place of a name, so that no list of people is needed to lay them out.
import { formatCount } from '../../units.js';
import { tagWords as words } from '../../../words/en.js';
import { sayMove, writeRib } from '../parts.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

// Two beside each other and six above each other, on A4 and on Letter.
const onPage = 12;

/** What is knit at a seat: written by hand, or the class's own sock. @param {Make} h @param {Showing} showing @param {boolean} isOfSock */
function lines(h, { plan }, isOfSock) {
  if (!isOfSock)
    return words.lines.map((line) => h('span', { class: 'tag-line' }, h('span', {}, line)));
  const rib = [writeRib(plan.rib), sayMove(plan)].filter(Boolean).join(', ');
  return [
    h('span', {}, words.rib(rib)),
    h('span', {}, words.castOn(formatCount(plan.castOn.wraps))),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function printTags(h, showing) {
  const { reply } = showing.beside?.tags ?? {};
  if (!reply) return [h('p', {}, words.waits)];
  const tag = (/** @type {number} */ seat) =>
    h(
      'div',
      { class: 'seat-tag' },
      h('p', { class: 'tag-seat' }, words.seat, ' ', h('strong', {}, formatCount(seat))),
      h('p', { class: 'tag-title' }, showing.classTitle ?? ''),
      h('p', { class: 'tag-lines' }, lines(h, showing, reply.isOfSock)),
    );
  /** @type {HTMLElement[]} */
  const pages = [];
  for (let seat = 1; seat <= reply.seats; seat += 1) {
    if (seat % onPage === 1) pages.push(h('div', { class: 'tags' }));
    pages[pages.length - 1].append(tag(seat));
  }
  return pages;
}
