// The form made to stand as the state has it. A field being typed in is left alone.
import { formWords } from '../../words/en.js';
import { countReadings, lockOf, mostReadings } from '../state.js';
import { buildReading, tieWords } from './build.js';
import { fieldsOf, isAsked, isAside, waysOf } from './fields.js';
import { showOwn } from './own_words.js';
import { alsoOf, isStranger, isUsual, textOf, unitOf } from './tell.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('./fields.js').Field} Field */
/** @typedef {import('./tell.js').Told} Told */

// Girths the core guesses from the foot where they were not measured.
const guessable = new Set(['/foot/heelAnkleGirthMm', '/foot/ankleGirthMm', '/foot/calfGirthMm']);

/** As many rows of readings as the draft has. @param {Document} document @param {State} state */
function showReadings(document, state) {
  const place = document.querySelector('[data-fields="readings"]');
  if (!place) return;
  const count = countReadings(state.draft);
  while (place.children.length < count) {
    const row = place.appendChild(buildReading(document, place.children.length));
    for (const field of row.querySelectorAll('[data-field]')) tieWords(field);
  }
  while (place.children.length > count) place.lastElementChild?.remove();
  for (const remove of place.querySelectorAll('[data-remove-reading]')) {
    remove.toggleAttribute('hidden', count < 2);
  }
  const isSwatch = waysOf(state.draft).swatch === 'swatch';
  const isFull = count >= mostReadings;
  document.querySelector('[data-add-reading]')?.toggleAttribute('hidden', isFull || !isSwatch);
  document.querySelector('[data-all-readings]')?.toggleAttribute('hidden', !isFull || !isSwatch);
}

/** Sets a control and, so that a page can be made without a browser, its markup. @param {Element} control @param {string} text */
function setValue(control, text) {
  if (control.localName === 'select') {
    for (const option of control.querySelectorAll('option')) {
      option.toggleAttribute('selected', option.getAttribute('value') === text);
    }
  } else if (control.getAttribute('value') !== text) control.setAttribute('value', text);
  const input = /** @type {HTMLInputElement} */ (control);
  if (input.value !== text) input.value = text;
}

/** @param {Element | null} node @param {string} text */
function setText(node, text) {
  if (node && node.textContent !== text) node.textContent = text;
}

/** @param {Element} place @param {Field} field @param {State} state */
function showMode(place, field, state) {
  const value = textOf(state, field);
  for (const radio of place.querySelectorAll('input')) {
    const isOn = radio.getAttribute('value') === value;
    radio.toggleAttribute('checked', isOn);
    radio.checked = isOn;
  }
}

/** @param {Element} place @param {Field} field @param {State} state */
function showMany(place, field, state) {
  const chosen = (state.draft[field.pointer]?.typed ?? '').split(' ');
  for (const box of place.querySelectorAll('input'))
    box.checked = chosen.includes(box.getAttribute('value') ?? '');
}

/** @param {Document} document @param {Element} place @param {Field} field @param {State} state */
function showEntry(document, place, field, state) {
  const control = place.querySelector('[data-entry]');
  const unit = place.querySelector('[data-unit]');
  if (field.isRadios) showMode(place, field, state);
  const isMany = field.as === 'many';
  if (isMany) showMany(place, field, state);
  const text = textOf(state, field);
  // Not while it is typed in, unless it is shown in another unit than it was typed with.
  const isTyping = document.activeElement === control && state.fresh === field.pointer;
  if (control && !isTyping && !field.isRadios && !isMany) setValue(control, text);
  if (unit) setValue(unit, unitOf(state, field));
  setText(place.querySelector('.also'), alsoOf(state, field));
  const isExample =
    Boolean(state.example[field.pointer]) && text !== '' && !isAside(field, state.draft);
  const isOdd = isStranger(state, field);
  const mark = isUsual(field) ? formWords.usual : isOdd ? formWords.stranger : formWords.example;
  place.classList.toggle('stranger', isExample && isOdd);
  const isGuessed = text === '' && guessable.has(field.pointer);
  const isLocked = lockOf(state, field.pointer) !== undefined;
  for (const entry of place.querySelectorAll('[data-entry]'))
    entry.toggleAttribute('disabled', isLocked);
  setText(
    place.querySelector('.mark'),
    state.started && !field.asks
      ? formWords.begun
      : isLocked
        ? formWords.ofClass
        : isGuessed
          ? formWords.guessed
          : isExample
            ? mark
            : '',
  );
}

const isClosed = (/** @type {Document} */ { documentElement }) =>
  documentElement.hasAttribute('data-closed');

/** @param {Document} document @param {State} state @param {Told[]} told */
export function showForm(document, state, told) {
  showReadings(document, state);
  // Found all at once, not looked for one by one at every key.
  const places = new Map(
    [...document.querySelectorAll('[data-field]')].map((place) => [
      place.getAttribute('data-field'),
      place,
    ]),
  );
  for (const field of fieldsOf(state.draft)) {
    const place = places.get(field.pointer);
    if (!place) continue;
    if (field.as === 'mode') {
      showMode(place, field, state);
      continue;
    }
    showEntry(document, place, field, state);
    place.toggleAttribute('hidden', !isAsked(field, state.draft));
    const wrong = told.filter(({ pointer }) => pointer === field.pointer);
    setText(place.querySelector('.problem'), wrong.map(({ text }) => text).join(' '));
    place.classList.toggle('wrong', wrong.length > 0);
    const control = place.querySelector('[data-entry]');
    if (wrong.length > 0) control?.setAttribute('aria-invalid', 'true');
    else control?.removeAttribute('aria-invalid');
  }
  showOwn(document, state);
  const isBegun = state.started !== undefined;
  document.documentElement.toggleAttribute('data-begun', isBegun);
  document.documentElement.setAttribute('data-locks', state.locks.join(' '));
  for (const part of document.querySelectorAll('form fieldset, #buy fieldset'))
    part.toggleAttribute('disabled', isBegun || isClosed(document));
  const { swatch } = waysOf(state.draft);
  for (const part of document.querySelectorAll('[data-way]')) {
    part.toggleAttribute('hidden', part.getAttribute('data-way') !== swatch);
  }
  for (const radio of document.querySelectorAll('input[name="system"]')) {
    const isOn = radio.getAttribute('value') === state.system;
    radio.toggleAttribute('checked', isOn);
    /** @type {HTMLInputElement} */ (radio).checked = isOn;
  }
}

/** No fields that do nothing: what stands in them stays readable. @param {Document} document */
export function closeForm(document) {
  document.documentElement.setAttribute('data-closed', '');
  for (const part of document.querySelectorAll('fieldset, form button')) {
    part.toggleAttribute('disabled', true);
  }
}
