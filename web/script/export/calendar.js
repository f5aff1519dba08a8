// Meetings as a calendar file: RFC 5545. Their times float (3.3.5, form 1): seven in the evening is what every calendar
// shows, whatever time zone it stands in and whether the clocks have changed since.

/**
 * @typedef {object} Meeting
 * @property {string} uid the same whenever the same meeting is written, so that a calendar brings it up to date
 * @property {string} day "2027-01-12"
 * @property {string} time "19:00"
 * @property {number} minutes how long it takes, whole
 * @property {string} title
 * @property {string} text what is knit there
 */

// 3.3.11: these mean something in a text.
const escaped = (/** @type {string} */ text) =>
  text.replace(/[\\;,]/g, '\\$&').replace(/\r\n|\r|\n/g, '\\n');

const mostOctets = 75;

/** 3.1: a long line goes on in the next, after a space; never within a character. @param {string} line */
function folded(line) {
  const octets = new TextEncoder();
  let long = 0;
  let out = '';
  for (const sign of line) {
    const more = octets.encode(sign).length;
    if (long + more > mostOctets) {
      out += '\r\n ';
      long = 1;
    }
    out += sign;
    long += more;
  }
  return `${out}\r\n`;
}

const digitsOf = (/** @type {string} */ text) => text.replace(/[-:]/g, '');

/** @param {Meeting} meeting @param {string} stamp @returns {Array<[string, string]>} */
const linesOf = ({ uid, day, time, minutes, title, text }, stamp) => [
  ['BEGIN', 'VEVENT'],
  ['UID', escaped(uid)],
  ['DTSTAMP', stamp],
  ['DTSTART', `${digitsOf(day)}T${digitsOf(time)}00`],
  ['DURATION', `PT${minutes}M`],
  ['SUMMARY', escaped(title)],
  ['DESCRIPTION', escaped(text)],
  ['END', 'VEVENT'],
];

/**
 * @param {Meeting[]} meetings at least one: a calendar without any is none
 * @param {Date} now when it is written, which the standard asks for in UTC
 */
export function writeCalendar(meetings, now) {
  const stamp = `${digitsOf(now.toISOString().slice(0, 'YYYY-MM-DDTHH:MM:SS'.length))}Z`;
  /** @type {Array<[string, string]>} */
  const lines = [
    ['BEGIN', 'VCALENDAR'],
    ['VERSION', '2.0'],
    ['PRODID', '-//Twinround//Class//EN'],
    ...meetings.flatMap((meeting) => linesOf(meeting, stamp)),
    ['END', 'VCALENDAR'],
  ];
  return lines.map(([name, value]) => folded(`${name}:${value}`)).join('');
}
