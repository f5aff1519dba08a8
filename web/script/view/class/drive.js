// Many feet that nobody has measured: how many sizes serve them, what each is, and what the wool makes of it.
import { driveWords as words } from '../../../words/en.js';
import { drawShareBar } from '../../draw/share_bar.js';
import { formatCount } from '../../units.js';
import { table } from '../dom.js';
import { figuresIn } from '../figures.js';
import { printButton } from '../paper/print_button.js';
import {
  sayAnswer,
  sayCaption,
  sayCautions,
  sayLot,
  sayShare,
  saySize,
  sayWanted,
  sayWool,
} from './drive_says.js';
import { sayBands } from './drive_bands.js';
import { fileButtons } from './take.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Drive} Drive */
/** @typedef {import('../../contract.js').DriveRequest} Request */
/** @typedef {{ reply: Drive, request: Request }} Answered */

const nameOf = (/** @type {number} */ at) => words.size(formatCount(at + 1));

/** Lines of a cell, the first one large. @param {Make} h @param {string[]} lines @param {string} [href] */
const cell = (h, [first, ...rest], href = '') =>
  h(
    'div',
    { class: 'pair-cell' },
    h('strong', {}, href ? h('a', { href }, first) : first),
    rest.map((text) => h('span', {}, text)),
  );

/** What fewer and more sizes would serve. @param {Make} h @param {Document} document @param {Answered} answered */
function viewNumbers(h, document, { reply }) {
  const { shareByNumber, sizes, share: reached } = reply;
  const wanted = reply.wantedShare;
  return table(h, {
    caption: words.byNumber.caption(sayWanted(reply)),
    heads: words.byNumber.heads,
    rows: shareByNumber.map((most, i) => {
      const isChosen = i + 1 === sizes.length;
      const share = isChosen ? reached : most;
      return {
        name: formatCount(i + 1),
        cells: [
          h(
            'div',
            { class: 'share' },
            h('span', {}, sayShare(share)),
            /** @type {any} */ (drawShareBar(document, share, wanted)),
          ),
        ],
        mark: isChosen ? 'chosen' : '',
      };
    }),
    className: 'by-number',
  });
}

/** A size's sock, on the foot it is planned for, as a plan of its own. @param {Drive['sizes'][number]} size @param {Answered} answered @param {Showing} showing */
const planOf = ({ footMm, ballGirthMm, legHeightMm, stitchCount }, { request }, { linkTo }) =>
  linkTo?.(request, ['/drive'], {
    '/foot/lengthMm': footMm,
    '/foot/ballGirthMm': ballGirthMm,
    '/legHeightMm': legHeightMm,
    '/stitchCount': stitchCount,
  });

/** @param {Make} h @param {Answered} answered @param {Showing} showing */
function viewSizes(h, answered, showing) {
  const { reply, request } = answered;
  return table(h, {
    caption: h('span', {}, sayCaption(reply, request, showing)),
    heads: words.sizeHeads,
    rows: reply.sizes.map((size, i) => {
      const { pairs, sock, feet, serves, yarn } = saySize(size, showing.system);
      return {
        name: formatCount(i + 1),
        cells: [
          cell(h, pairs),
          cell(h, sock, planOf(size, answered, showing)),
          ...[feet, serves, yarn].map((lines) => cell(h, lines)),
        ],
      };
    }),
    className: 'supply drive-sizes',
  });
}

/** @param {Make} h @param {Answered} answered @param {Showing} showing */
function viewLots(h, { reply, request }, { system }) {
  const { atHand, sizes } = reply;
  if (!atHand) return [];
  const { lots } = words;
  const count = (/** @type {number} */ pairs) => formatCount(pairs);
  const row = (/** @type {string} */ name, /** @type {number[]} */ pairs, left = '') => ({
    name,
    cells: [...pairs.map(count), left],
    mark: 'sum',
  });
  const each = atHand.lots.map(({ isSameYarn, pairsOfSize, alone, leftM = 0 }, at) => ({
    name: sayLot(reply, at, system),
    cells: isSameYarn
      ? [
          ...pairsOfSize.map((pairs, i) =>
            h('span', {}, count(pairs), h('span', { class: 'alone' }, lots.alone(count(alone[i])))),
          ),
          figuresIn(system).yarn(leftM),
        ]
      : [...sizes.map(() => '–'), lots.other],
  }));
  const missing = sizes.map(({ pairs }, i) => pairs - atHand.pairsOfSize[i]);
  const isEnough = missing.every((pairs) => pairs === 0);
  const cautions = sayCautions(reply, system, true);
  return [
    h('h3', {}, lots.title),
    isEnough && h('p', {}, lots.enough(count(request.drive.pairs))),
    cautions.map((text) => h('p', {}, text)),
    table(h, {
      caption: h('span', {}, lots.hint),
      heads: lots.heads(sizes.map((_, i) => nameOf(i))),
      rows: [
        ...each,
        row(lots.made, atHand.pairsOfSize),
        ...(isEnough ? [] : [row(lots.missing, missing)]),
      ],
      className: 'lots',
      region: lots.title,
    }),
  ].flat();
}

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function viewDrive(h, document, showing) {
  const { reply, request, isLate, problems = [] } = showing.beside?.drive ?? {};
  const late = isLate && h('p', { class: 'aside' }, words.late);
  if (!reply) return [late || (problems.length === 0 && h('p', { class: 'aside' }, words.empty))];
  const answered = { reply, request };
  const [serves, ...enough] = sayAnswer(reply, request);
  return [
    late,
    h('p', { class: 'drive-answer' }, serves),
    ...enough.map((text) => h('p', {}, text)),
    h(
      'ul',
      { class: 'cautions' },
      sayCautions(reply, showing.system, false).map((text) => h('li', {}, text)),
    ),
    h(
      'div',
      { class: 'drive-tables' },
      viewSizes(h, answered, showing),
      viewNumbers(h, document, answered),
    ),
    h('h3', {}, words.wool.title),
    h('p', {}, sayWool(reply, request, showing.system).join(' ')),
    ...viewLots(h, answered, showing),
    fileButtons(h, 'drive', ['csv', 'copy']),
    printButton(h, 'bands', words.bands.print, sayBands(request)),
  ];
}
