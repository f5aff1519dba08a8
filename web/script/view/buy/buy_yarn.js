// The yarn to buy: how much, in how many balls, and how it is shared between the socks.
import { buyWords as words } from '../../../words/en.js';
import { figuresIn } from '../figures.js';
import { sayMargin, takesIn } from '../give_or_take.js';
import { guessMark } from '../guess.js';
import { sum } from '../count/sum.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/** How the yarn is shared between the socks, the spare included. @param {any} yarn @param {ReturnType<typeof figuresIn>} figures */
export function splitWords({ balls, gWithMargin }, figures) {
  const each = figures.mass(gWithMargin / 2);
  if (balls === undefined) return words.splitMass(each);
  if (balls === 1) return words.oneBall(each);
  if (balls % 2 === 0) return words.evenBalls(balls / 2);
  return words.oddBalls((balls - 1) / 2, each);
}

/** Balls of a known label. @param {Make} h @param {Showing} showing */
function ballSum(h, showing) {
  const { plan, request, system } = showing;
  const { yarn, mass } = figuresIn(system);
  const { balls = 0, ballsJust, spareM } = plan.yarn;
  const label = words.ballsOf(balls, mass(request.yarn.ballG), yarn(request.yarn.ballM));
  return sum(h, {
    figure: words.balls(balls),
    working: 'balls',
    also: ballsJust ? h('em', { class: 'just' }, words.just) : '',
    mark: guessMark(h, showing, 'yarn'),
    what: label + (spareM === undefined ? '' : words.leftOver(yarn(spareM))),
  });
}

/** Grams alone: the label is asked for where it is missed. @param {Make} h @param {Showing} showing */
function massSum(h, showing) {
  const { mass, otherMass } = figuresIn(showing.system);
  const { gWithMargin = 0, massGuessed } = showing.plan.yarn;
  return sum(h, {
    figure: words.about(mass(gWithMargin)),
    working: 'gPerPair',
    also: otherMass(gWithMargin),
    mark: guessMark(h, showing, 'mass'),
    what: massGuessed ? words.massOfWeight : '',
    jump: { to: '/yarn/ballG', text: words.askBall },
  });
}

/** @param {Make} h @param {Showing} showing */
export function yarnSums(h, showing) {
  const { plan, system } = showing;
  const { yarn, otherYarn } = figuresIn(system);
  const { mWithMargin, balls } = plan.yarn;
  return [
    sum(h, {
      figure: yarn(mWithMargin),
      working: 'mWithMargin',
      also: otherYarn(mWithMargin),
      mark: guessMark(h, showing, 'yarn'),
      what: words.need(takesIn(showing).yarn),
    }),
    balls === undefined ? massSum(h, showing) : ballSum(h, showing),
  ];
}

/** @param {Make} h @param {Showing} showing */
export function aboutYarn(h, showing) {
  const { plan, system } = showing;
  const { yarn } = plan;
  const figures = figuresIn(system);
  const margin = sayMargin(showing);
  return [
    h(
      'p',
      {},
      words.margin(margin, figures.yarn(yarn.mPerPair)),
      ' ',
      guessMark(h, showing, 'yarn'),
    ),
    yarn.gWithMargin === undefined || yarn.balls === undefined
      ? null
      : h(
          'p',
          {},
          words.mass(figures.mass(yarn.gWithMargin), figures.otherMass(yarn.gWithMargin)),
          ' ',
          guessMark(h, showing, 'mass'),
        ),
    h('p', {}, splitWords(yarn, figures), ' ', guessMark(h, showing, 'mass')),
  ];
}
