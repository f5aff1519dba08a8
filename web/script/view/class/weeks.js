// The weeks of a class: for every yarn and every meeting the rounds it begins and ends with, and what falls between.
import { weeksWords as words } from '../../../words/en.js';
import { table } from '../dom.js';
import { fileButtons } from './take.js';
import {
  calendarOf,
  knittersOf,
  sayCourse,
  sayHelp,
  sayKnitter,
  sayLate,
  sayMeeting,
  sayTitle,
  sayWhen,
} from './weeks_say.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */
/** @typedef {Required<Pick<import('./weeks_say.js').Knitter, 'name' | 'weeks'>>} Told */

/** @param {Make} h @param {import('./weeks_say.js').Knitter[]} knitters */
const ends = (h, knitters) =>
  h(
    'ul',
    { class: 'weeks-ends' },
    knitters.map((knitter) =>
      h(
        'li',
        { class: knitter.weeks?.finishes ? '' : 'late' },
        h('strong', {}, knitter.name),
        h('span', {}, sayKnitter(knitter).join(' ')),
      ),
    ),
  );

/** Beside others a cell says whose it is, for where the columns stand one below the other. @param {Make} h @param {boolean} isOne */
const cellOf =
  (h, isOne) =>
  (/** @type {Told} */ { name }, /** @type {string} */ rounds, /** @type {string[]} */ lines) =>
    (rounds !== '' || lines.length > 0) &&
    h(
      'div',
      { class: 'week-cell' },
      !isOne && h('span', { class: 'whose' }, name),
      rounds && h('strong', {}, rounds),
      lines.map((line) => h('span', {}, line)),
    );

/** @param {Make} h @param {Showing} showing @param {Told[]} told */
function weeksTable(h, showing, told) {
  const calendar = calendarOf(showing);
  const cell = cellOf(h, told.length === 1);
  const rows = told[0].weeks.meetings.map((_, at) => {
    const when = sayWhen(calendar, at);
    return {
      name: [words.meeting(at + 1), when && h('span', {}, when)],
      cells: told.map((one) => {
        const { from, to, isFinished, here, home } = sayMeeting(one.weeks, at);
        const rounds = isFinished ? words.finished : words.span(from, to);
        return cell(one, rounds, [...here, home].filter(Boolean));
      }),
    };
  });
  const isLate = told.some(({ weeks }) => sayLate(weeks).length > 0);
  const after = { name: words.after, cells: told.map((one) => cell(one, '', sayLate(one.weeks))) };
  return table(h, {
    caption: words.caption,
    heads: [words.head, ...told.map(({ name }) => name)],
    rows: isLate ? [...rows, after] : rows,
    className: told.length === 1 ? 'weeks' : 'weeks by-yarn',
  });
}

/** How each comes out, and the meetings of those of whom there is something to tell. @param {Make} h @param {Showing} showing */
function weeksIn(h, showing) {
  const knitters = knittersOf(showing);
  const told = /** @type {Told[]} */ (knitters.filter(({ weeks }) => weeks));
  return {
    shown: [
      h('p', {}, sayCourse(showing)),
      ends(h, knitters),
      h('p', {}, sayHelp(showing)),
      told.length > 0 && weeksTable(h, showing, told),
    ],
    isTold: told.length > 0,
  };
}

/** What is missing for a calendar, in words, or ''. @param {Showing} showing */
function missingIn(showing) {
  const { days, time } = calendarOf(showing);
  if (days.length > 0) return time ? '' : words.missing.time;
  return time ? words.missing.day : words.missing.both;
}

/** @param {Make} h @param {Showing} showing */
export function viewWeeks(h, showing) {
  const { reply, problems = [] } = showing.beside?.weeks ?? {};
  const aside = (/** @type {string} */ text) => h('p', { class: 'aside' }, text);
  if (!reply) return [aside(problems.length > 0 ? words.mend : words.empty)];
  const { shown, isTold } = weeksIn(h, showing);
  if (!isTold) return shown;
  const missing = missingIn(showing);
  return [
    ...shown,
    aside(words.hint),
    fileButtons(h, 'weeks', missing ? ['copy', 'print'] : ['ics', 'copy', 'print']),
    aside(missing ? words.noCalendar(missing) : words.calendar),
  ];
}

/** The timetable on paper. @param {Make} h @param {Showing} showing */
export function printWeeks(h, showing) {
  if (!showing.beside?.weeks?.reply) return [];
  return [
    h('div', { class: 'weeks-page' }, h('h1', {}, sayTitle(showing)), weeksIn(h, showing).shown),
  ];
}
