// Yarn left on the scale: the rounds it still makes, the leg that gives, and where to stop or to join.
import { yarnLeftWords as words } from '../../../words/en.js';
import { formatCount, formatMass } from '../../units.js';
import { figuresIn } from '../figures.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../contract.js').Adjust['yarnLeft'][number]} Left */

/** @param {Left} left @param {Showing} showing */
function sayLeft(left, { system }) {
  const { length, yarn } = figuresIn(system);
  const last = formatCount(left.lastRound);
  const high = left.reachesLeg ? words.high(length(left.legHeightMm)) : words.inFoot;
  // With no round of the plan to go there is none to join a ball for.
  const noJoin = left.roundsToGo > 0 && words.noJoin;
  const join = left.roundToJoin > 0 ? words.join(formatCount(left.roundToJoin)) : noJoin;
  if (left.roundsToUnpick > 0) return [words.rescue(left.roundsToUnpick, last), high, join];
  // A kitchen scale shows grams: of ounces a bind-off is none at all.
  const stop = words.stop(formatMass(left.keptBackG, 'g'), yarn(left.keptBackM));
  return left.roundsShort > 0
    ? [words.short(left.rounds, last, formatCount(left.roundsShort)), high, stop, join]
    : [words.lasts(left.roundsToGo), words.over(yarn(left.leftOverM), left.roundsOver)];
}

/** @param {Make} h @param {Showing} showing */
export function viewYarnLeft(h, showing) {
  const { reply, problems = [] } = showing.beside?.adjust ?? {};
  const isRoundless = problems.some(
    ({ field, code }) => field === '/needles/roundsDone' && code === 'required',
  );
  if (isRoundless) return [h('p', { class: 'doubt' }, words.askRounds)];
  if (!reply) return [];
  const { yarn } = figuresIn(showing.system);
  /** @type {Left[]} */
  const socks = reply.yarnLeft;
  const isOver = (/** @type {Left} */ { roundsShort }) => roundsShort === 0;
  const [least] = [...socks].sort((one, other) => one.lastRound - other.lastRound);
  const isAlike = socks.every(({ lastRound }) => lastRound === least.lastRound);
  return [
    ...socks.flatMap((left) => [
      h('h3', {}, `${words.title[left.sock]}: ${words.left(yarn(left.m))}`),
      h(
        'p',
        { class: isOver(left) ? '' : 'doubt' },
        sayLeft(left, showing).filter(Boolean).join(' '),
      ),
    ]),
    socks.length > 1 &&
      !isOver(least) &&
      h('p', {}, (isAlike ? words.even : words.both)(formatCount(least.lastRound))),
    reply.yarnGuessed && socks.length > 0 && h('p', { class: 'aside' }, words.guessed),
  ];
}
