// The weeks of a class, as text for a mail and as entries for a calendar.
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
} from '../view/class/weeks_say.js';
import { weeksWords as words } from '../../words/en.js';
import { formatNumber } from '../units.js';
import { writeCalendar } from './calendar.js';

/** @typedef {import('../view/showing.js').Showing} Showing */
/** @typedef {import('../view/class/weeks_say.js').Knitter} Knitter */

/** A line of each knitter; one alone needs no name. @param {Knitter[]} knitters @param {(weeks: NonNullable<Knitter['weeks']>) => string} say */
const linesOf = (knitters, say) =>
  knitters.flatMap(({ name, weeks }) => {
    const said = weeks && say(weeks);
    return said ? [knitters.length === 1 ? said : `${name}: ${said}`] : [];
  });

/** @param {Knitter[]} knitters @param {number} at */
const linesOfMeeting = (knitters, at) =>
  linesOf(knitters, (weeks) => {
    const { from, to, isFinished, here, home } = sayMeeting(weeks, at);
    const rounds = isFinished ? words.finished : words.rounds(from, to);
    return [rounds, ...here, home].filter(Boolean).join('; ');
  });

/** @param {Showing} showing */
export function weeksText(showing) {
  const knitters = knittersOf(showing);
  const calendar = calendarOf(showing);
  const { meetings } = showing.beside?.weeks?.request ?? { meetings: 0 };
  const late = linesOf(knitters, (weeks) => sayLate(weeks).join('; '));
  const part = (/** @type {string} */ head, /** @type {string[]} */ lines) =>
    [head, ...lines.map((line) => `  ${line}`)].join('\n');
  return [
    sayTitle(showing),
    sayCourse(showing),
    ...knitters.map((one) => `${one.name}: ${sayKnitter(one).join(' ')}`),
    sayHelp(showing),
    ...Array.from({ length: meetings }, (_, at) =>
      part(
        [words.meeting(at + 1), sayWhen(calendar, at)].filter(Boolean).join(', '),
        linesOfMeeting(knitters, at),
      ),
    ),
    ...(late.length > 0 ? [part(words.after, late)] : []),
  ].join('\n\n');
}

/** FNV-1a of 32 bits. @param {string} text */
function hashOf(text) {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

/**
 * What an entry is known by. No day or hour is in it, nor how many meetings there are, so that a calendar that gets the file
 * again moves what it has in place of having it twice; and neither a person nor a host (RFC 7986, 5.3). The desk's own chance
 * number keeps two teachers apart, the title a teacher's classes, the meeting's number the meetings.
 * @param {Showing} showing
 */
const uidsOf = ({ lesson }) => {
  const desk = lesson?.desk['/weeks/calendar']?.typed ?? '';
  const title = hashOf((lesson?.title ?? '').trim());
  return (/** @type {number} */ at) => `${desk}-${title}-${at + 1}`;
};

/** @param {Showing} showing @param {Date} now */
export function weeksCalendar(showing, now) {
  const { days, time } = calendarOf(showing);
  const knitters = knittersOf(showing);
  const uid = uidsOf(showing);
  const title = showing.lesson?.title.trim() || words.untitled;
  // A calendar knows whole minutes alone.
  const minutes = Number(formatNumber(showing.beside?.weeks?.request.minutesInClass));
  return writeCalendar(
    days.map((day, at) => ({
      uid: uid(at),
      day,
      time,
      minutes,
      title: words.meetingOf(title, at + 1, days.length),
      text: linesOfMeeting(knitters, at).join('\n'),
    })),
    now,
  );
}
