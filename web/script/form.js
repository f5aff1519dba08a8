// The only reader of inputs: events of the form become actions of the state.
import { bringIntoView } from './frame.js';
import { parseQuantity, unitIn, unitsOfKind, withoutUnit } from './units.js';
import { readWindowButton, readWindowField } from './form/chart_window.js';
import { tieWords } from './form/build.js';
import { fieldsOf, idOf, isOfGauge } from './form/fields.js';
import { readOwn } from './form/own_words.js';
import { unitOf } from './form/tell.js';

export { saidOf, settingsOf, sheetOfLink } from './form/link.js';
export { buildForm } from './form/build.js';
export { gatherProblems, readBeside, readDraft } from './form/request.js';
export { sheetOfRequest } from './form/requested.js';

/** @typedef {import('./form/request.js').Problem} Problem */

export { separatorIn } from './form/cells.js';
export { showWindow } from './form/chart_window.js';
export { listenHelping } from './form/helping.js';
export { listenFile } from './form/own_words.js';
export { closeForm, showForm } from './form/show.js';
export { listenStretch } from './form/stretch_line.js';
export { readRoster } from './form/roster.js';
export { tellSeat } from './form/roster_tell.js';
export { examplesLeft, tellGood, tellProblems, valuesOf } from './form/tell.js';

/** @typedef {import('./state.js').State} State */
/** @typedef {import('./state.js').Action} Action */

const placeOf = (/** @type {Element} */ element) => element.closest('[data-field]');

/** @param {Element} element @param {State} state */
function fieldOf(element, state) {
  const pointer = placeOf(element)?.getAttribute('data-field');
  return fieldsOf(state.draft).find((field) => field.pointer === pointer);
}

/** Of many options those that are ticked. @param {Element | null} place */
const chosenIn = (place) =>
  [...(place?.querySelectorAll('input') ?? [])]
    .filter(({ checked }) => checked)
    .map(({ value }) => value)
    .join(' ');

/**
 * Typed or chosen. A unit written behind the number wins over the unit control, and the control
 * follows it where it has that unit.
 * @param {HTMLInputElement | HTMLSelectElement} control @param {State} state @returns {Action | undefined}
 */
function typedAction(control, state) {
  const field = fieldOf(control, state);
  if (!field) return undefined;
  const typed = field.as === 'many' ? chosenIn(placeOf(control)) : control.value;
  const parsed = parseQuantity(typed, unitsOfKind[field.kind]);
  const written = parsed.ok && unitsOfKind[field.kind].slice(0, 2).includes(parsed.unit);
  const unit = written && parsed.ok ? parsed.unit : unitOf(state, field);
  return { type: 'typed', pointer: field.pointer, typed, unit };
}

/** @param {HTMLSelectElement} control @param {State} state @returns {Action | undefined} */
function unitAction(control, state) {
  const field = fieldOf(control, state);
  if (!field) return undefined;
  const typed = state.draft[field.pointer]?.typed ?? '';
  const parsed = parseQuantity(typed, unitsOfKind[field.kind]);
  // A unit written behind the number is what was meant, whatever is chosen to read it in.
  const isWritten = parsed.ok && parsed.unit !== '';
  return {
    type: 'unit',
    pointer: field.pointer,
    unit: control.value,
    typed: withoutUnit(typed),
    isWritten,
  };
}

/**
 * The page's own units: every measure of the foot, the yarn and the sock is shown in them, a gauge's are not.
 * @param {'metric' | 'inch'} system @param {State} state @returns {Action} */
function systemAction(system, state) {
  const shown = fieldsOf(state.draft)
    .filter((field) => !isOfGauge(field))
    .map((field) => [field.pointer, unitIn(field.kind, system)])
    .filter(([, unit]) => unit !== '');
  return { type: 'system', system, shown: Object.fromEntries(shown) };
}

/** @param {Event} event @param {State} state @returns {Action | undefined} */
function readChange(event, state) {
  const control = /** @type {HTMLInputElement & HTMLSelectElement} */ (event.target);
  if (control.name === 'system') {
    return systemAction(control.value === 'inch' ? 'inch' : 'metric', state);
  }
  const own = readOwn(control);
  if (own) return own;
  if (control.hasAttribute('data-unit')) return unitAction(control, state);
  if (control.hasAttribute('data-entry')) return typedAction(control, state);
  return readWindowField(control);
}

/** A button of the page that fills in a field or adds a row. @param {Element} button @returns {Action | undefined} */
function readButton(button) {
  const count = button.getAttribute('data-count');
  if (count !== null) return { type: 'typed', pointer: '/stitchCount', typed: count, unit: '' };
  const rib = button.getAttribute('data-rib')?.split(' ');
  if (rib) return { type: 'rib', knit: rib[0], purl: rib[1] };
  const toe = button.getAttribute('data-toe-to-swatch');
  if (toe !== null) return { type: 'toe swatched', isAlone: toe === 'alone' };
  if (button.hasAttribute('data-add-reading')) return { type: 'reading added' };
  const index = button.getAttribute('data-remove-reading');
  if (index !== null) return { type: 'reading removed', index: Number(index) };
  return readWindowButton(button);
}

/**
 * Takes the reader to a field, opening what it is folded into. On a phone it comes to her instead: until she leaves
 * it, it stands over the page (style/form.css), so that the drawing it was opened from stays in sight.
 * @param {Document} document @param {string} id
 */
function goTo(document, id) {
  const control = document.getElementById(id);
  control?.closest('details')?.setAttribute('open', '');
  // Not hers to change: she is shown where it stands.
  if (control?.matches(':disabled')) return bringIntoView(control);
  control?.closest('.field')?.classList.add('at-hand');
  control?.focus();
  if (control instanceof HTMLInputElement) control.select();
  return undefined;
}

/**
 * Where the hand goes on after a button that the answer has changed, moved or taken away.
 * @param {Document} document @param {Element} button
 */
function keepFocus(document, button) {
  // A step is taken again and again: the hand stays on it.
  if (button.hasAttribute('data-count') && !button.hasAttribute('data-step')) {
    /** @type {HTMLElement | null} */ (
      document.querySelector('[data-count][aria-pressed="true"]')
    )?.focus();
  }
  if (button.hasAttribute('data-rib')) {
    document.getElementById(idOf('/rib/knit'))?.closest('details')?.setAttribute('open', '');
    document.getElementById(idOf('/rib/knit'))?.focus();
  }
  if (button.hasAttribute('data-remove-reading')) {
    /** @type {HTMLElement | null} */ (document.querySelector('[data-add-reading]'))?.focus();
  }
  if (button.hasAttribute('data-add-reading')) {
    const rows = document.querySelectorAll('[data-reading]');
    /** @type {HTMLElement | null} */ (
      rows[rows.length - 1]?.querySelector('[data-entry]')
    )?.focus();
  }
}

/**
 * @param {Document} document
 * @param {() => State} now the state as it stands
 * @param {(action: Action) => void} act
 */
export function listen(document, now, act) {
  for (const place of document.querySelectorAll('.field[data-field]')) tieWords(place);
  const form = document.querySelector('form');
  // Nothing is sent anywhere: Enter in a field must not reload the page.
  form?.addEventListener('submit', (event) => event.preventDefault());
  for (const type of ['input', 'change']) {
    document.addEventListener(type, (event) => {
      const isText =
        event.target instanceof HTMLTextAreaElement ||
        (event.target instanceof HTMLInputElement && event.target.type === 'text');
      // Text answers each key, everything else answers once.
      if ((type === 'input') !== isText) return;
      const action = readChange(event, now());
      if (action) act(action);
    });
  }
  // A browser that goes back to the page puts old values into its controls; the state says what stands there.
  document.defaultView?.addEventListener('pageshow', () => act({ type: 'left' }));
  document.addEventListener('focusout', (event) => {
    const from = event.target instanceof Element ? placeOf(event.target) : null;
    const to = event.relatedTarget instanceof Element ? placeOf(event.relatedTarget) : null;
    if (!from || from === to) return;
    from.classList.remove('at-hand');
    act({ type: 'left' });
  });
  // Done with a field that came to her, she is back where she was.
  /** @type {Element | undefined} */
  let cameFrom;
  document.addEventListener('keydown', ({ key, target }) => {
    if (key !== 'Enter' && key !== 'Escape') return;
    if (!(target instanceof HTMLElement) || !target.closest('.at-hand')) return;
    target.blur();
    if (cameFrom instanceof HTMLElement) cameFrom.focus();
  });
  document.addEventListener('click', (event) => {
    if (!(event.target instanceof Element)) return;
    const link = event.target.closest('[data-goto]');
    if (link) {
      event.preventDefault();
      cameFrom = link;
      goTo(document, idOf(link.getAttribute('data-goto') ?? ''));
      return;
    }
    const button = event.target.closest('button');
    const action = button && readButton(button);
    if (!button || !action) return;
    act(action);
    keepFocus(document, button);
  });
}
