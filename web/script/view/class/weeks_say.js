// The weeks in words: of a knitter, of a meeting, and when that is.
import { supplyWords, weeksWords as words } from '../../../words/en.js';
import { formatCount, formatNumber, formatTime, formatWholeTime } from '../../units.js';
import { dayAfter, isDay, writeDay } from '../../units/days.js';
import { sayYarn } from './supply.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../../contract.js').KnitterWeeks} KnitterWeeks */
/** @typedef {KnitterWeeks['milestones'][number]} Reached */
/** @typedef {{ name: string, weeks?: KnitterWeeks, problems?: Array<{ code: string }> }} Knitter */

const usualDays = 7;
const ofCalendar = new Set(['/weeks/day', '/weeks/time', '/weeks/daysBetween']);

/** @param {Showing} showing @returns {Knitter[]} in the order asked */
export function knittersOf({ beside }) {
  const { reply, request } = beside?.weeks ?? {};
  return (reply?.knitters ?? []).map((/** @type {any} */ one, /** @type {number} */ at) => {
    const part = request.knitters[at];
    return { ...one, name: part.yarn ? sayYarn(part) : words.own };
  });
}

/**
 * The days of the meetings, none where they are not known, and the time of day or ''.
 * @param {Showing} showing @returns {{ days: string[], time: string }}
 */
export function calendarOf({ beside }) {
  const { request, said = {}, problems = [] } = beside?.weeks ?? {};
  const { day = '', time = '', daysBetween = usualDays } = said;
  if (problems.some(({ field }) => ofCalendar.has(field))) return { days: [], time: '' };
  const days = Array.from({ length: request?.meetings ?? 0 }, (_, i) =>
    dayAfter(day, i * daysBetween),
  );
  return { days: days.every(isDay) ? days : [], time };
}

/** "Tuesday, 12 January 2027, 19:00", or ''. @param {ReturnType<typeof calendarOf>} calendar @param {number} at */
export const sayWhen = ({ days, time }, at) =>
  days.length > 0 ? [writeDay(days[at]), time].filter(Boolean).join(', ') : '';

/** @param {Reached} reached */
const sayReached = ({ milestone, rounds }) =>
  rounds === 0
    ? words.milestone[milestone]
    : words.afterRound(words.milestone[milestone], formatCount(rounds));

/** @param {KnitterWeeks} weeks @param {Reached['when']} when @param {number} [meeting] from 1 */
const reachedIn = ({ milestones }, when, meeting) =>
  milestones.filter((one) => one.when === when && one.meeting === meeting).map(sayReached);

/** What is still to come when the course is over. @param {KnitterWeeks} weeks */
export const sayLate = (weeks) => reachedIn(weeks, 'late');

/**
 * A meeting of a knitter: her rounds before and after it, what falls into it, and into the homework after it.
 * @param {KnitterWeeks} weeks @param {number} at from 0
 */
export function sayMeeting(weeks, at) {
  const { roundsAtStart, roundsAtEnd } = weeks.meetings[at];
  const home = reachedIn(weeks, 'home', at + 1).join(', ');
  return {
    from: formatCount(roundsAtStart),
    to: formatCount(roundsAtEnd),
    isFinished: roundsAtStart === weeks.totalRounds,
    here: reachedIn(weeks, 'class', at + 1),
    home: home && words.home(home),
  };
}

// Figures of time are told to five minutes, so that less than that would read as five.
const sayTime = (/** @type {number} */ minutes) =>
  minutes < 5 ? words.hardly : formatTime(minutes);

/** @param {KnitterWeeks} weeks */
function sayEnd({ stitchesPerMinute, milestones, finishes, slackMinutes, meetings, totalRounds }) {
  const pace = formatNumber(stitchesPerMinute, 1);
  if (!finishes) {
    const { roundsAtEnd } = meetings[meetings.length - 1];
    return words.late(
      pace,
      sayTime(-slackMinutes),
      formatCount(roundsAtEnd),
      formatCount(totalRounds),
    );
  }
  const { when, meeting = 0 } = milestones[milestones.length - 1];
  const where = when === 'home' ? words.atHomeAfter(meeting) : words.inMeeting(meeting);
  return words.done(pace, where, sayTime(slackMinutes));
}

/** How a knitter comes out, sentence by sentence. @param {Knitter} knitter @returns {string[]} */
export function sayKnitter({ weeks, problems }) {
  if (!weeks) return [`${supplyWords.none(String(problems?.[0].code))}.`];
  const { stitchCount, totalRounds, finishes, leastPace } = weeks;
  return [
    words.pair(formatCount(stitchCount), formatCount(totalRounds)),
    sayEnd(weeks),
    leastPace === undefined
      ? words.never
      : (finishes ? words.least : words.takes)(formatCount(leastPace)),
  ];
}

/** What helps; no homework where there is but one meeting. @param {Showing} showing */
export const sayHelp = ({ beside }) => words.help(beside?.weeks?.request?.meetings > 1);

/** How long the course is, or nothing where it is not told. @param {Showing} showing */
export function sayCourse({ beside }) {
  const { reply, request } = beside?.weeks ?? {};
  if (!reply) return '';
  const { meetings, minutesInClass, minutesAtHome = 0 } = request;
  return words.course(
    formatCount(meetings),
    formatNumber(minutesInClass, 1),
    formatNumber(meetings === 1 ? 0 : minutesAtHome, 1),
    formatWholeTime(reply.minutes),
  );
}

/** @param {Showing} showing */
export const sayTitle = ({ lesson }) => {
  const title = lesson?.title.trim();
  return title ? words.of(title) : words.title;
};
