// The two fields and the buttons that say which rounds the chart shows.
import { settleWindow } from '../state/chart_window.js';

/** @typedef {import('../state/chart_window.js').Window} Window */
/** @typedef {import('../state.js').Action} Action */

const ends = /** @type {const} */ (['from', 'to']);

const endField = (/** @type {Document} */ document, /** @type {string} */ end) =>
  /** @type {HTMLInputElement | null} */ (document.querySelector(`[data-window-end="${end}"]`));

/** What one of the two fields asks for; nothing, where no round is named. @param {Element} control @returns {Action | undefined} */
export function readWindowField(control) {
  const end = control.getAttribute('data-window-end');
  if (end === null) return undefined;
  const [from, to] = ends.map((one) => {
    const field = endField(control.ownerDocument, one);
    return Math.min(Number(field?.value), Number(field?.max));
  });
  const areRounds = [from, to].every((round) => Number.isInteger(round) && round >= 1);
  if (!areRounds) return { type: 'left' };
  return { type: 'window', window: settleWindow({ from, to }, end === 'from') };
}

/** @param {Element} button @returns {Action | undefined} */
export function readWindowButton(button) {
  const asked = button.getAttribute('data-window');
  if (asked === null) return undefined;
  const [from, to] = asked.split(' ').map(Number);
  return { type: 'window', window: asked === '' ? undefined : { from, to } };
}

/** @param {Document} document @param {Window} window @param {number} total rounds of the sock */
export function showWindow(document, window, total) {
  for (const end of ends) {
    const field = endField(document, end);
    if (!field) continue;
    const text = String(window[end]);
    field.setAttribute('max', String(total));
    field.setAttribute('value', text);
    if (field.value !== text) field.value = text;
  }
}
