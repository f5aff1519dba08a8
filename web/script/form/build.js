// A field as nodes: a label, an input, its unit, what it is in the other unit, how to measure it, and
// room for what is wrong with it. Used when the page is made, and for each further reading.
import { unitsOfKind } from '../units.js';
import { fieldWords, formWords, optionWords } from '../../words/en.js';
import { buildClassYarns } from './class_yarns.js';
import { besideFields, fixedFields, idOf, readingFields, wordsKey } from './fields.js';

/** @typedef {import('./fields.js').Field} Field */

/**
 * @param {Document} document @param {string} name @param {Record<string, string>} attributes
 * @param {...(Node | string)} children
 */
function make(document, name, attributes, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children);
  return element;
}

/**
 * What is said beside a control, tied to it: the same for every field, so it is no part of the page as delivered.
 * @param {Element} place
 */
export function tieWords(place) {
  const parts = ['mark', 'how', 'also', 'problem'];
  const id = idOf(place.getAttribute('data-field') ?? '');
  for (const part of parts) place.querySelector(`.${part}`)?.setAttribute('id', `${id}-${part}`);
  for (const control of place.querySelectorAll('[data-entry]'))
    control.setAttribute('aria-describedby', parts.map((part) => `${id}-${part}`).join(' '));
  // No measure is longer, and what is kept has an end.
  place.querySelector('input[type="text"]')?.setAttribute('maxlength', '200');
}

/** @param {Document} document @param {Field} field @param {string} label */
function unitControl(document, field, label) {
  const units = unitsOfKind[field.kind];
  if (units.length < 2) {
    const only = field.kind === 'percent' || field.kind === 'needle' ? units[0] : '';
    return make(document, 'span', { class: 'unit' }, only);
  }
  const options = units
    .slice(0, 2)
    .map((unit) => make(document, 'option', { value: unit }, formWords.unit[unit]));
  const name = formWords.unitOf(label);
  return make(
    document,
    'select',
    { class: 'unit', 'data-unit': '', 'aria-label': name },
    ...options,
  );
}

/** Any number of them. @param {Document} document @param {Field} field @param {string} id */
function boxesOf(document, field, id) {
  const words = optionWords[field.pointer];
  return (field.options ?? []).map((option, i) => {
    const box = make(document, 'input', {
      type: 'checkbox',
      id: i === 0 ? id : `${id}-${option}`,
      value: option,
      'data-entry': '',
    });
    return make(document, 'label', { class: 'way' }, box, ' ', words[option]);
  });
}

/** A choice of two or three, all in sight. @param {Document} document @param {Field} field @param {string} id */
function radiosOf(document, field, id) {
  const words = optionWords[field.pointer];
  return (field.options ?? []).map((option, i) => {
    const radio = make(document, 'input', {
      type: 'radio',
      // The first stands for the field where one is led to it.
      id: i === 0 ? id : `${id}-${option}`,
      name: id,
      value: option,
      'data-entry': '',
    });
    return make(document, 'label', { class: 'way' }, radio, ' ', words[option]);
  });
}

/** @param {Document} document @param {Field} field @param {string} id @param {string} label */
function entryOf(document, field, id, label) {
  if (field.isRadios) return radiosOf(document, field, id);
  if (field.as === 'many') return boxesOf(document, field, id);
  if (field.as === 'day' || field.as === 'time') {
    const type = field.as === 'day' ? 'date' : 'time';
    return [make(document, 'input', { id, 'data-entry': '', type })];
  }
  if (field.as === 'choice') {
    const words = optionWords[field.pointer];
    const options = (field.options ?? []).map((option) =>
      make(document, 'option', { value: option }, words[option]),
    );
    return [make(document, 'select', { id, 'data-entry': '' }, ...options)];
  }
  const isInWords = field.as === 'list' || field.as === 'text';
  const input = make(document, 'input', {
    id,
    'data-entry': '',
    type: 'text',
    // A minus sign is not on the decimal keypad of every phone, nor is a comma.
    inputmode: field.kind === 'percent' || isInWords ? 'text' : 'decimal',
    autocomplete: 'off',
  });
  if (isInWords) return [input];
  return [input, unitControl(document, field, label)];
}

/** @param {Document} document @param {Field} field @param {boolean} [isCompact] in a row of several, under a line of heads */
export function buildField(document, field, isCompact = false) {
  const id = idOf(field.pointer);
  const { label, of = '', how = '' } = fieldWords[wordsKey(field.pointer)];
  const name = of === '' ? label : `${label} ${of}`;
  const isGroup = field.isRadios || field.as === 'many';
  const labelNode = isGroup
    ? make(document, 'span', { class: 'label', id: `${id}-label` }, label)
    : make(document, 'label', { for: id }, label);
  if (isCompact) labelNode.setAttribute('class', 'unseen');
  if (of !== '') labelNode.append(make(document, 'span', { class: 'unseen' }, ` ${of}`));
  const part = (/** @type {string} */ what, text = '') =>
    make(document, 'span', { class: what }, text);
  return make(
    document,
    'div',
    { class: `field by-${field.as}`, 'data-field': field.pointer },
    labelNode,
    make(
      document,
      'div',
      isGroup
        ? {
            class: 'ways',
            role: field.isRadios ? 'radiogroup' : 'group',
            'aria-labelledby': `${id}-label`,
          }
        : { class: 'entry' },
      ...entryOf(document, field, id, name),
    ),
    make(document, 'div', { class: 'under' }, part('also'), ' ', part('mark')),
    part('how', how),
    part('problem'),
  );
}

/** A choice between two ways, as radio buttons. @param {Document} document @param {Field} field */
function buildMode(document, field) {
  const words = optionWords[field.pointer];
  const options = (field.options ?? []).map((option) => {
    const id = `${idOf(field.pointer)}-${option}`;
    const radio = make(document, 'input', {
      type: 'radio',
      id,
      name: idOf(field.pointer),
      value: option,
      'data-entry': '',
    });
    return make(document, 'label', { for: id, class: 'way' }, radio, ' ', words[option]);
  });
  return make(document, 'div', { class: 'ways', 'data-field': field.pointer }, ...options);
}

/** One row of the swatch. @param {Document} document @param {number} index */
export function buildReading(document, index) {
  const name = formWords.reading(index + 1);
  const removeName = formWords.removeReading(index + 1);
  const remove = make(
    document,
    'button',
    {
      type: 'button',
      class: 'quiet',
      'data-remove-reading': String(index),
      'aria-label': removeName,
      title: removeName,
    },
    '×',
  );
  const fields = readingFields(index).map((field) => buildField(document, field, true));
  const [stitches, width, rounds, height] = fields;
  return make(
    document,
    'div',
    {
      class: 'reading',
      role: 'group',
      'aria-label': name,
      'data-reading': String(index),
    },
    make(document, 'div', { class: 'counted' }, stitches, width),
    make(document, 'div', { class: 'counted' }, rounds, height),
    remove,
  );
}

/** Fills every `data-fields="group"` of the page. @param {Document} document */
export function buildForm(document) {
  // Heads above the rows, each over its field; every field has its own label besides.
  const [stitches, width, rounds, height] = readingFields(0).map(({ pointer }) =>
    make(document, 'span', {}, fieldWords[wordsKey(pointer)].label),
  );
  document
    .querySelector('[data-heads]')
    ?.append(
      make(document, 'span', { class: 'counted' }, stitches, width),
      make(document, 'span', { class: 'counted' }, rounds, height),
    );
  document.querySelector('[data-all-readings]')?.append(formWords.allReadings);
  buildClassYarns(document);
  for (const place of document.querySelectorAll('[data-fields]')) {
    const group = place.getAttribute('data-fields');
    if (group === 'readings') place.append(buildReading(document, 0));
    for (const field of [...fixedFields, ...besideFields].filter((each) => each.group === group)) {
      place.append(field.as === 'mode' ? buildMode(document, field) : buildField(document, field));
    }
  }
}
