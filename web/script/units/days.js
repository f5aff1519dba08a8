// Days of the calendar, as texts ("2027-01-12"), without a clock or a time zone in them: reckoned in UTC, where no
// day is shorter or longer than another.

const dayPattern = /^(\d{4})-(\d\d)-(\d\d)$/;
const msOfDay = 24 * 60 * 60 * 1000;

/** @param {string} day @returns {number | undefined} days since 1970, or nothing where there is no such day */
function numberOf(day) {
  const [, year, month, date] = dayPattern.exec(day) ?? [];
  if (!year) return undefined;
  const ms = Date.UTC(Number(year), Number(month) - 1, Number(date));
  // The 31st of February is taken for a day in March: that was not meant.
  return new Date(ms).toISOString().startsWith(day) ? ms / msOfDay : undefined;
}

/** @param {string} day */
export const isDay = (day) => numberOf(day) !== undefined;

/** "19:00", of a day. @param {string} time */
export const isTime = (time) => /^([01]\d|2[0-3]):[0-5]\d$/.test(time);

/** The day so many days later, or '' where `day` is none. @param {string} day @param {number} days */
export function dayAfter(day, days) {
  const number = numberOf(day);
  return number === undefined
    ? ''
    : new Date((number + days) * msOfDay).toISOString().slice(0, 'YYYY-MM-DD'.length);
}

/** "Tuesday, 12 January 2027", as readers of the page write it. @param {string} day */
export function writeDay(day) {
  const number = numberOf(day);
  if (number === undefined) return day;
  return new Intl.DateTimeFormat('en-GB', {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(number * msOfDay);
}
