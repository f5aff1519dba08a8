// The sock to take along: the rounds as CSV, the plan as JSON, the pattern as text, as a file or to be pasted.
import { copyText, handOver } from './download.js';
import { writeCsv } from './export/csv.js';
import { tableOfRounds } from './export/rounds.js';
import { writeText } from './export/text.js';
import { fileName } from './view/page/save_drawing.js';

export { listenTakes } from './export/desk.js';

/** @typedef {import('./view/showing.js').Showing} Showing */
/** @typedef {{ showing: Showing, reply: unknown, separator: string }} Taken what the core was asked and what it replied */
/** @typedef {{ text: string, isCopied: boolean }} Copied */

/** @type {Record<string, { what: 'rounds' | 'plan' | 'pattern', type: string, write: (taken: Taken) => string }>} */
const files = {
  csv: {
    what: 'rounds',
    type: 'text/csv',
    write: ({ showing, separator }) => writeCsv(tableOfRounds(showing.plan), separator),
  },
  json: {
    what: 'plan',
    type: 'application/json',
    write: ({ showing: { request }, reply }) => `${JSON.stringify({ request, reply }, null, 2)}\n`,
  },
  txt: { what: 'pattern', type: 'text/plain', write: ({ showing }) => writeText(showing) },
};

/**
 * @param {Document} document
 * @param {() => Taken | undefined} take nothing while there is something to mend
 * @param {(copied: Copied) => void} tell shows the text where it could not be copied
 */
export function listenExports(document, take, tell) {
  document.addEventListener('click', ({ target }) => {
    const kind = target instanceof Element && target.closest('[data-export]');
    const taken = kind && take();
    if (!taken) return;
    const suffix = kind.getAttribute('data-export') ?? '';
    const file = files[suffix];
    if (file) {
      const blob = new Blob([file.write(taken)], { type: `${file.type};charset=utf-8` });
      handOver(document, blob, `${fileName(file.what, taken.showing.plan)}.${suffix}`);
      return;
    }
    const text = writeText(taken.showing);
    void copyText(document, text).then((isCopied) => {
      tell({ text, isCopied });
      /** @type {HTMLTextAreaElement | null} */ (document.getElementById('copied-text'))?.select();
    });
  });
}
