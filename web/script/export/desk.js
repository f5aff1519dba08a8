// What stands at the teacher's desk, to take along: as a file, or as text to be pasted into a mail.
import { copyText, handOver } from '../download.js';
import { supplyText, supplyTable } from './supply.js';
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
  'weeks.copy': { type: 'text/plain', write: weeksText },
  'weeks.ics': { type: 'text/calendar', write: (showing) => weeksCalendar(showing, new Date()) },
};

/**
 * @param {Document} document
 * @param {() => { showing: Showing, separator: string } | undefined} take nothing while there is something to mend
 * @param {(isCopied: boolean) => void} tell
 */
export function listenTakes(document, take, tell) {
  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element && target.closest('[data-take]');
    const taken = button && take();
    if (!taken) return;
    const what = button.getAttribute('data-take') ?? '';
    const { type, write } = takes[what];
    const text = write(taken.showing, taken.separator);
    const hand = (/** @type {string} */ name) =>
      handOver(document, new Blob([text], { type: `${type};charset=utf-8` }), `twinround-${name}`);
    if (!what.endsWith('.copy')) {
      hand(what);
      return;
    }
    void copyText(document, text).then((isCopied) => {
      // Nothing lost where the browser lets nothing be copied: then it is a file.
      if (!isCopied) hand(what.replace('.copy', '.txt'));
      tell(isCopied);
    });
  });
}
