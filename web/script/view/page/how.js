// How to measure, at the field, and how to work, in cards. The same for every plan: made once, when the
// page is made, and no part of its script. So only first_paint knows this file.
import { bindOff } from '../../draw/how/bind_off.js';
import { castOn } from '../../draw/how/cast_on.js';
import { foot, tryOn } from '../../draw/how/foot.js';
import { makeOne } from '../../draw/how/make_one.js';
import { ribMoves } from '../../draw/how/rib.js';
import { round } from '../../draw/how/round.js';
import { drawPicture } from '../../draw/how/svg.js';
import { swatch } from '../../draw/how/swatch.js';
import { turn } from '../../draw/how/turn.js';
import { howWords } from '../../../words/en.js';
import { maker } from '../dom.js';

/** @typedef {import('../dom.js').Make} Make */
/** @typedef {import('../../draw/how/svg.js').Picture} Picture */

const { measures, works } = howWords;

/** Each measure by the name of its words. @type {Record<string, Picture>} */
const pictures = { ...foot, ...swatch, rib: ribMoves };

/** Which measures are drawn at which field. @type {Record<string, string[]>} */
const drawnAt = {
  '/foot/ballGirthMm': ['ball'],
  '/foot/lengthMm': ['length'],
  '/foot/heelAnkleGirthMm': ['heel'],
  '/foot/ankleGirthMm': ['ankle'],
  '/foot/calfGirthMm': ['calf'],
  '/legHeightMm': ['leg'],
  '/cuffMm': ['cuff'],
  '/foot/shoe/size': ['shoe'],
  '/yarn/category': ['band', 'scale'],
  '/swatch/needleMm': ['needle'],
  '/swatch/stretchedWidthMm': ['stretched'],
  '/swatch/massG': ['weighed'],
  '/rib/roundsPerShift': ['rib'],
};

/** @type {Record<string, Picture>} */
const workPictures = {
  castOn,
  round,
  turn,
  m1r: makeOne('m1r'),
  m1l: makeOne('m1l'),
  m1p: makeOne('m1p'),
  rib: ribMoves,
  tryOn,
  bindOff,
};

/**
 * The sentence that opens what is drawn.
 * @param {Document} document @param {Make} h @param {Node | string} sentence @param {string[]} names
 */
function howTo(document, h, sentence, names) {
  return h(
    'details',
    { class: 'how-to' },
    h('summary', {}, sentence, ' ', h('span', { class: 'see' }, howWords.see)),
    h(
      'div',
      { class: 'how-panel' },
      names.flatMap((name) => [
        drawPicture(document, pictures[name], measures[name].name),
        h('p', {}, measures[name].text),
      ]),
    ),
  );
}

/** At every field that is measured: its one line, already there, now opens a drawing. @param {Document} document */
export function showHow(document) {
  const h = maker(document);
  for (const [pointer, names] of Object.entries(drawnAt)) {
    const line = document.querySelector(`[data-field="${pointer}"] .how`);
    if (!line) throw new Error(`${pointer}: no line on how to measure`);
    const mark = document.createComment('');
    line.replaceWith(mark);
    mark.replaceWith(howTo(document, h, line, names));
  }
  const gauge = h('span', { class: 'how' }, howWords.gauge);
  document
    .querySelector('[data-how="gauge"]')
    ?.append(howTo(document, h, gauge, ['stitches', 'rounds']));
}

/** @param {Document} document */
export function showWorks(document) {
  const h = maker(document);
  const cards = Object.entries(works.cards).map(([key, { title, name, text }]) =>
    h(
      'article',
      { class: 'card', id: `how-${key}` },
      drawPicture(document, workPictures[key], name),
      h('h4', {}, title),
      h('p', {}, text),
    ),
  );
  document
    .querySelector('.works')
    ?.append(
      h('h3', {}, works.title),
      h('p', { class: 'lead' }, works.lead),
      h('div', { class: 'cards' }, cards),
    );
}
