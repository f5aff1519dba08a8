// What stands at the teacher's desk, to take along: as a file, or as text to be pasted into a mail.
import { copyText, handOver } from '../download.js';
import { isStale } from '../view/class/stale.js';
import { tellHelping } from '../view/class/helping.js';
import { driveTable, driveText } from './drive.js';
import { rosterTable, rosterText } from './roster.js';
import { supplyText, supplyTable } from './supply.js';
import { takeWords } from '../../words/en.js';
import { weeksCalendar, weeksText } from './weeks.js';
import { writeCsv } from './csv.js';

/** @typedef {import('../view/showing.js').Showing} Showing */
/** @typedef {(showing: Showing, separator: string) => string} Write */

/** By what is on the button: the part of the desk and the way. @type {Record<string, { type: string, write: Write }>} */
const takes = {
  'supply.csv': {
    type: 'text/csv',
    write: (showing, separator) => writeCsv(supplyTable(showing), separator),
  },
  'supply.copy': { type: 'text/plain', write: supplyText },
  'helping.copy': { type: 'text/plain', write: (showing) => tellHelping(showing).join('\n\n') },
  'drive.csv': {
    type: 'text/csv',
    write: (showing, separator) => writeCsv(driveTable(showing), separator),
  },
  'drive.copy': { type: 'text/plain', write: driveText },
  'roster.csv': {
    type: 'text/csv',
    write: (showing, separator) => writeCsv(rosterTable(showing), separator),
  },
  'roster.copy': { type: 'text/plain', write: rosterText },
  'weeks.copy': { type: 'text/plain', write: weeksText },
  'weeks.ics': { type: 'text/calendar', write: (showing) => weeksCalendar(showing, new Date()) },
};

/**
 * @param {Document} document
 * @param {() => { showing: Showing, separator: string } | undefined} take nothing while there is something to mend
 * @param {(said: string) => void} tell
 */
export function listenTakes(document, take, tell) {
  const hand = (
    /** @type {string} */ text,
    /** @type {string} */ type,
    /** @type {string} */ name,
  ) => handOver(document, new Blob([text], { type: `${type};charset=utf-8` }), `twinround-${name}`);
  const copy = (/** @type {string} */ text, /** @type {string} */ name) =>
    void copyText(document, text).then((isCopied) => {
      // Nothing is lost where the browser lets nothing be copied: then it is a file.
      if (!isCopied) hand(text, 'text/plain', name);
      tell(isCopied ? takeWords.copied : takeWords.asFile);
    });
  document.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element)) return;
    const one = target.closest('[data-copy]')?.getAttribute('data-copy');
    if (one) copy(one, 'to-send.txt');
    const what = target.closest('[data-carry]')?.getAttribute('data-carry');
    if (!what) return;
    const taken = take();
    if (!taken || isStale(taken.showing, what.split('.')[0])) {
      tell(takeWords.waits);
      return;
    }
    const { type, write } = takes[what];
    const text = write(taken.showing, taken.separator);
    if (what.endsWith('.copy')) copy(text, what.replace('.copy', '.txt'));
    else hand(text, type, what);
  });
}
