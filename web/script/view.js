// The plan put into the page: every view drawn anew, and only what differs touched.
import { viewBuy } from './view/buy.js';
import { viewOther } from './view/buy_other.js';
import { viewCare, viewCautions } from './view/cautions.js';
import { viewChart, viewWindow } from './view/chart.js';
import { viewChoices } from './view/choices.js';
import { maker } from './view/dom.js';
import { viewFoot } from './view/foot.js';
import { viewKnit } from './view/knit.js';
import { settle } from './view/morph.js';
import { viewNote } from './view/note.js';
import { viewPair } from './view/pair.js';
import { viewSentence } from './view/sentence.js';
import { viewStanding, viewTrouble } from './view/page_state.js';
import { withSave } from './view/save_drawing.js';
import { viewStrip } from './view/strip.js';
import { viewStripTable } from './view/strip_table.js';
import { viewSummary } from './view/summary.js';
import { viewScatter, viewSwatch } from './view/swatch.js';
import { viewTwoWays } from './view/two_ways.js';
import { viewWorking } from './view/working.js';

export { keepScale } from './view/stretch_scale.js';
export { listenHow } from './view/how_open.js';
export { answerText, troubleText } from './view/summary.js';
export { serveWorkings } from './view/working_open.js';

/** @typedef {import('./view/showing.js').Showing} Showing */
/** @typedef {import('./view/dom.js').Child} Child */

/** @param {Document} document @param {string} name @param {Child[]} children */
function fill(document, name, children) {
  const place = document.querySelector(`[data-view="${name}"]`);
  const nodes = children
    .filter((child) => child !== null && child !== undefined && child !== false)
    .map((child) => (typeof child === 'string' ? document.createTextNode(child) : child));
  if (place) settle(place, nodes);
}

/** @param {Document} document @param {Showing} showing */
export function showPlan(document, showing) {
  const h = maker(document);
  fill(document, 'sentence', viewSentence(h, showing));
  fill(document, 'standing', viewStanding(h, showing));
  fill(document, 'pair', withSave(h, showing.plan, 'pair', viewPair(h, document, showing)));
  fill(
    document,
    'choices',
    withSave(h, showing.plan, 'stretch', viewChoices(h, document, showing)),
  );
  fill(document, 'note', viewNote(h, showing));
  fill(document, 'cautions', viewCautions(h, showing));
  fill(document, 'swatch', viewSwatch(document, showing));
  fill(document, 'scatter', viewScatter(h, document, showing));
  fill(document, 'two-ways', viewTwoWays(h, showing));
  const strip = [...viewStrip(document, showing), viewStripTable(h, showing)];
  fill(document, 'strip', withSave(h, showing.plan, 'strip', strip));
  fill(document, 'foot', viewFoot(h, showing));
  fill(document, 'buy', viewBuy(h, showing));
  fill(document, 'substitute', viewOther(h, showing));
  fill(document, 'knit', viewKnit(h, showing));
  fill(document, 'working', viewWorking(h, showing));
  fill(document, 'summary', viewSummary(h, showing));
  document.documentElement.toggleAttribute('data-last-good', showing.problems.length > 0);
}

/**
 * The chart: not in the page as delivered, for it is no use before its fields answer.
 * @param {Document} document @param {Showing} showing @param {import('./view/chart.js').ChartWindow} window
 */
export function showChart(document, showing, window) {
  const h = maker(document);
  const nodes = viewChart(h, document, showing, window);
  fill(document, 'window', viewWindow(h, showing, window));
  fill(document, 'chart', withSave(h, showing.plan, 'chart', nodes, window));
  document.getElementById('chart')?.removeAttribute('hidden');
}

/** What is the same for every plan. @param {Document} document */
export function showCare(document) {
  fill(document, 'care', viewCare(maker(document)));
}

/** Only that the page cannot answer: what it shows already stays. @param {Document} document @param {string} text */
export function showTrouble(document, text) {
  fill(document, 'standing', viewTrouble(maker(document), text));
}

/** Into the one place that is read aloud when it changes. @param {Document} document @param {string} text */
export function say(document, text) {
  const place = document.querySelector('[data-said]');
  if (place && place.textContent !== text) place.textContent = text;
}
