// A sheet for every seat of the class, one after the other on paper.
import { rosterWords as words } from '../../../words/en.js';
import { viewSheet } from '../paper/sheet.js';
import { rosterRows } from './roster_rows.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

// A class in a room. More take a printer, and the browser, longer than anybody waits.
export const mostSheets = 60;

/** @param {Make} h @param {Document} document @param {Showing} showing */
export function printSheets(h, document, showing) {
  const { seatSheet, beside } = showing;
  const { request, reply } = beside?.roster ?? {};
  if (!reply) return [];
  return rosterRows(showing)
    .filter(({ line }) => line)
    .slice(0, mostSheets)
    .flatMap(({ part, seat }, at) => {
      const sheet = part && seatSheet?.(request.class, part, words.seat(seat));
      return sheet
        ? [
            h(
              'div',
              { class: 'seat-sheet' },
              viewSheet(h, document, sheet.showing, sheet.url, `sheet-${at}`),
            ),
          ]
        : [];
    });
}
