// At the needles: the round in hand in large letters, and one big button to go on with.
import { formatCount, formatNumber, formatTime } from '../../units.js';
import { drawingWords, needlesWords as words } from '../../../words/en.js';
import { figuresIn } from '../figures.js';
import { sayHalf } from './lines.js';
import { passesOf, runAt } from './needles_round.js';
import { partsOf, titleOf } from '../parts.js';
import { sayStage } from './stages_say.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/**
 * @typedef {object} AtHand
 * @property {import('../../state/place.js').Place} place
 * @property {import('../../state/laps.js').Clock} [clock] while rounds are timed
 * @property {boolean} isLate whether the last tap was on a page that was behind another tab's
 * @property {boolean} isKept whether the browser keeps anything
 * @property {any} [told] what the core says of the place
 * @property {number} [laps] of how many timed rounds its pace is
 * @property {import('../../needles.js').Wishes} wishes
 * @property {{ isWakeRefused?: boolean, isMute?: boolean }} device
 */

const stateOf = (/** @type {number} */ pass, /** @type {number} */ now) =>
  pass < now ? 'done' : pass === now ? 'now' : 'later';

/** @param {Make} h @param {Showing} showing @param {NonNullable<ReturnType<typeof runAt>>} run @param {AtHand} atHand */
function viewPasses(h, { plan }, run, { place }) {
  const turn = () => h('li', { class: 'turn' }, words.turn);
  const items = passesOf(plan, run).map(({ line, half }, pass) => {
    const { sock, half: name } = words.pass[pass];
    const state = stateOf(pass, place.pass);
    // A tap on the last one done takes it back; on any other it is done, and all before it.
    const to = pass === place.pass - 1 ? pass : pass + 1;
    return h(
      'li',
      {},
      h(
        'button',
        {
          type: 'button',
          class: `work-pass ${state} of-${sock.toLowerCase()}`,
          'data-place': `${place.round} ${to}`,
          'aria-pressed': String(pass < place.pass),
          ...(state === 'now' ? { 'aria-current': 'step' } : {}),
        },
        h('span', { class: 'which' }, h('b', {}, sock), ` ${name}`),
        h('span', { class: 'work' }, sayHalf(line, half)),
        h('span', { class: 'state' }, words.state[state]),
      ),
    );
  });
  return h(
    'ol',
    { class: 'work-passes', 'aria-label': words.passes },
    items.slice(0, 2),
    turn(),
    items.slice(2),
    turn(),
  );
}

/** @param {Make} h @param {Showing} showing @param {AtHand} atHand */
function viewAhead(h, { system }, { told, laps = 0, place }) {
  if (!told) return [];
  const figures = figuresIn(system);
  const { usedM, toGoM, pace } = told;
  const leftOut = place.laps.length - laps;
  /** @type {Array<[string, string]>} */
  const facts = [
    [words.stitches, told.allDone ? '' : formatCount(told.stitches)],
    [words.used, words.both(figures.yarn(usedM.a), figures.yarn(usedM.b))],
    [words.toGo, figures.yarn(toGoM.pair)],
    [
      words.hours,
      told.allDone
        ? ''
        : `${formatTime(pace.minutesToGo)} ${words.hoursBy(formatNumber(pace.stitchesPerMinute))}${
            laps > 0 ? words.timed(drawingWords.rounds(laps)) : ''
          }${leftOut > 0 ? words.leftOut(leftOut) : ''}`,
    ],
  ];
  /** @type {Array<{ kind: string, round: number, inRounds: number }>} */
  const next = told.next;
  return [
    h(
      'dl',
      { class: 'work-facts' },
      facts
        .filter(([, figure]) => figure !== '')
        .map(([name, figure]) => h('div', {}, h('dt', {}, name), h('dd', {}, figure))),
    ),
    next.length > 0 && h('h3', {}, words.ahead),
    h(
      'ul',
      { class: 'work-ahead' },
      next.map(({ kind, round, inRounds }) =>
        h(
          'li',
          {},
          h('b', {}, words.kinds[kind]),
          ' ',
          kind === 'bindOff' ? words.atEnd(inRounds) : words.inRounds(inRounds, formatCount(round)),
        ),
      ),
    ),
  ];
}

/** @param {Make} h @param {AtHand} atHand */
function viewWishes(h, { wishes, device, clock }) {
  const isPaused = clock?.pausedAt !== undefined;
  const wish = (
    /** @type {string} */ name,
    /** @type {string} */ label,
    /** @type {boolean} */ isOn,
  ) =>
    h(
      'button',
      { type: 'button', class: 'quiet', 'data-wish': name, 'aria-pressed': String(isOn) },
      label,
    );
  return [
    h('h3', {}, words.wishes),
    h(
      'p',
      { class: 'print-it' },
      wish('wake', words.wake, wishes.wake),
      wish('large', words.large, wishes.large),
      wish('night', words.night, wishes.night),
      wish('aloud', words.aloud, wishes.aloud),
      wish('timed', words.timing, clock !== undefined),
      clock && wish('paused', words.pause, isPaused),
    ),
    device.isWakeRefused && h('p', { class: 'aside', role: 'status' }, words.wakeRefused),
    device.isMute && h('p', { class: 'aside', role: 'status' }, words.noVoice),
    clock &&
      h(
        'p',
        { class: 'aside', role: 'status' },
        isPaused ? words.paused : words.timingNote(clock.from > 0),
      ),
    h('p', { class: 'aside' }, words.keys),
  ];
}

/** @param {Make} h @param {Showing} showing @param {AtHand} atHand */
export function viewNeedles(h, showing, atHand) {
  const { plan } = showing;
  const { place, isLate, isKept } = atHand;
  const stage = sayStage(showing, place.round);
  const run = runAt(plan, place.round);
  const part = partsOf(plan).find((one) => place.round < one.from + one.rounds);
  const { sock, half } = words.pass[place.pass];
  const before = place.trail[place.trail.length - 1];
  return [
    h('h2', { class: 'unseen' }, words.title),
    h(
      'p',
      { class: 'work-round' },
      run
        ? [
            h('b', {}, words.round(formatCount(place.round + 1), formatCount(plan.totalRounds))),
            part ? ` ${titleOf(plan, part)}` : '',
          ]
        : h('b', {}, words.done),
      h('span', { class: 'unkept' }, words.unkept),
    ),
    isLate && h('p', { class: 'work-note', role: 'status' }, words.elsewhere),
    !isKept && h('p', { class: 'work-note' }, words.notKept),
    stage !== '' && h('p', { class: 'work-stage' }, stage),
    run && viewPasses(h, showing, run, atHand),
    h(
      'p',
      { class: 'work-bar' },
      h(
        'button',
        {
          type: 'button',
          class: 'back',
          'data-hand': 'untapped',
          ...(place.round + place.pass === 0 ? { 'aria-disabled': 'true' } : {}),
        },
        words.back,
      ),
      run &&
        h(
          'button',
          {
            type: 'button',
            class: 'next',
            'data-hand': 'tapped',
          },
          h('span', {}, `${sock} ${half}`),
          ' ',
          words.next,
        ),
    ),
    before !== undefined &&
      h(
        'p',
        { class: 'print-it' },
        h('button', { type: 'button', class: 'quiet', 'data-hand': 'tap undone' }, words.undo),
      ),
    h('div', { class: 'work-more' }, viewAhead(h, showing, atHand), viewWishes(h, atHand)),
  ];
}
