// The plan put into the page: every view drawn anew, and only what differs touched.
import { viewAlong } from './view/page/along.js';
import { viewBand } from './view/paper/band.js';
import { viewBuy } from './view/buy/buy.js';
import { viewOther } from './view/buy/buy_other.js';
import { viewCare, viewCautions } from './view/count/cautions.js';
import { viewChart, viewWindow } from './view/knit/chart.js';
import { viewChoices } from './view/count/choices.js';
import { viewClass, viewPrints } from './view/class/class.js';
import { viewClassYarns } from './view/count/class_yarns.js';
import { maker } from './view/dom.js';
import { viewFoot } from './view/count/foot.js';
import { viewKept } from './view/page/kept.js';
import { viewKnit } from './view/knit/knit.js';
import { viewMeasured } from './view/knit/measured.js';
import { isInSight } from './view/page/moments.js';
import { settle } from './view/page/morph.js';
import { deskPages, deskViews } from './view/class/desk.js';
import { viewLesson } from './view/class/lesson.js';
import { viewLost, viewLostHow, viewMisstep } from './view/knit/lost.js';
import { viewNeedles } from './view/knit/needles.js';
import { viewNote } from './view/count/note.js';
import { viewOffline, viewUpdate } from './view/page/offline.js';
import { viewPair } from './view/count/pair.js';
import { viewProjector } from './view/class/projector.js';
import { viewPenSheet } from './view/class/pen_sheet.js';
import { viewSentence } from './view/count/sentence.js';
import { viewSheet } from './view/paper/sheet.js';
import { viewSocks } from './view/page/socks.js';
import { viewStages } from './view/knit/stages_list.js';
import { viewStanding, viewTrouble } from './view/page/page_state.js';
import { withSave } from './view/page/save_drawing.js';
import { viewStrip } from './view/count/strip.js';
import { viewStripTable } from './view/count/strip_table.js';
import { viewOwnStripes, viewRepeat } from './view/knit/stripes.js';
import { viewLeftovers } from './view/knit/stripes_leftovers.js';
import { viewSummary } from './view/page/summary.js';
import { viewScatter, viewSwatch } from './view/count/swatch.js';
import { viewTwoWays } from './view/count/two_ways.js';
import { viewWorking } from './view/working/working.js';
import { viewYarnLeft } from './view/knit/yarn_left.js';

export { copiedText } from './view/page/along.js';
export { keepScale } from './view/count/stretch_scale.js';
export { listenHow } from './view/page/how_open.js';
export { pointToLink } from './view/page/kept.js';
export { listenMoments, showMoment } from './view/page/moments.js';
export { listenPrinting } from './view/paper/printing.js';
export { projectorText } from './view/class/projector.js';
export { listenShelf } from './view/page/shelf.js';
export { keepReadingOrder } from './view/page/reading_order.js';
export { answerText, troubleText } from './view/page/summary.js';
export { keepPassInSight, showNeedles } from './view/knit/needles_sight.js';
export { sayPass } from './view/knit/needles_spoken.js';
export { listenStages } from './view/knit/stages_list.js';
export { serveWorkings } from './view/working/working_open.js';

/** @typedef {import('./view/showing.js').Showing} Showing */
/** @typedef {import('./view/dom.js').Child} Child */

/**
 * Draws what is in sight, and leaves the other moments until they are come to.
 * @param {Document} document @param {string} name @param {() => Child[]} draw
 */
function fill(document, name, draw) {
  const place = document.querySelector(`[data-view="${name}"]`);
  if (!place || !isInSight(place)) return;
  settle(place, asNodes(document, draw()));
}

/** @param {Document} document @param {Child[]} children */
const asNodes = (document, children) =>
  children
    .filter((child) => child !== null && child !== undefined && child !== false)
    .map((child) => (typeof child === 'string' ? document.createTextNode(child) : child));

/** @param {Document} document @param {Showing} showing */
export function showPlan(document, showing) {
  const h = maker(document);
  const { plan } = showing;
  /** @type {Record<string, () => Child[]>} by place */
  const views = {
    sentence: () => viewSentence(h, showing),
    standing: () => viewStanding(h, showing),
    pair: () => withSave(h, plan, 'pair', viewPair(h, document, showing)),
    choices: () => withSave(h, plan, 'stretch', viewChoices(h, document, showing)),
    note: () => viewNote(h, showing),
    cautions: () => viewCautions(h, showing),
    swatch: () => viewSwatch(document, showing),
    'class-yarns': () => viewClassYarns(h, showing),
    scatter: () => viewScatter(h, document, showing),
    'two-ways': () => viewTwoWays(h, showing),
    strip: () =>
      withSave(h, plan, 'strip', [...viewStrip(document, showing), viewStripTable(h, showing)]),
    foot: () => viewFoot(h, showing),
    buy: () => viewBuy(h, showing),
    substitute: () => viewOther(h, showing),
    needles: () => (showing.atHand ? viewNeedles(h, showing, showing.atHand) : []),
    stages: () => viewStages(h, showing),
    knit: () => viewKnit(h, showing),
    'lost-how': () => viewLostHow(h, document, showing),
    lost: () => viewLost(h, showing),
    misstep: () => viewMisstep(h, showing),
    measured: () => viewMeasured(h, showing),
    'yarn-left': () => viewYarnLeft(h, showing),
    'stripes-repeat': () => viewRepeat(h, document, showing),
    'stripes-own': () => viewOwnStripes(h, document, showing),
    'stripes-leftovers': () => viewLeftovers(h, document, showing),
    along: () => viewAlong(h, showing),
    working: () => viewWorking(h, showing),
    summary: () => viewSummary(h, showing),
    ...deskViews(h, document, showing),
    projector: () => viewProjector(h, document, showing),
  };
  for (const [name, draw] of Object.entries(views)) fill(document, name, draw);
  document.documentElement.toggleAttribute('data-last-good', showing.problems.length > 0);
}

/**
 * The chart: not in the page as delivered, for it is no use before its fields answer.
 * @param {Document} document @param {Showing} showing @param {import('./view/knit/chart.js').ChartWindow} window
 */
export function showChart(document, showing, window) {
  const h = maker(document);
  fill(document, 'window', () => viewWindow(h, showing, window));
  fill(document, 'chart', () =>
    withSave(h, showing.plan, 'chart', viewChart(h, document, showing, window), window),
  );
  document.getElementById('chart')?.removeAttribute('hidden');
}

/**
 * @param {Document} document @param {import('./view/page/kept.js').Kept} kept
 * @param {{ socks: () => import('./view/page/socks.js').Sock[], classLink: () => string }} more what is only asked for where it is in sight
 */
export function showKept(document, kept, { socks, classLink }) {
  const h = maker(document);
  fill(document, 'kept', () => viewKept(h, document, kept));
  fill(document, 'lesson', () => viewLesson(h, document, classLink(), kept.isClassCopied));
  if (document.getElementById('socks')?.hasAttribute('open'))
    fill(document, 'socks', () => viewSocks(h, document, socks()));
}

/** @param {Document} document @param {import('./view/page/offline.js').Offline} offline */
export function showOffline(document, offline) {
  fill(document, 'offline', () => viewOffline(maker(document), offline));
  fill(document, 'update', () => viewUpdate(maker(document), offline));
}

/**
 * The pages for paper; nothing is on them while a field is wrong.
 * @param {Document} document @param {() => Showing | undefined} drawn
 * @param {{ url: () => string, counts: () => Showing['plan'][] }} more the sock's link, and the sock at every count on offer
 */
export function pagesFor(document, drawn, { url, counts }) {
  const h = maker(document);
  const page = (/** @type {(showing: Showing) => Child[]} */ view) => () => {
    const showing = drawn();
    return showing && showing.problems.length === 0 ? asNodes(document, view(showing)) : [];
  };
  return {
    sheet: page((showing) => viewSheet(h, document, showing, url())),
    band: page((showing) => viewBand(h, showing)),
    pen: page((showing) => viewPenSheet(h, showing, counts())),
    ...Object.fromEntries(
      Object.entries(deskPages(h, document)).map(([name, view]) => [name, page(view)]),
    ),
  };
}

/** What is the same for every plan, in whatever moment. @param {Document} document */
export function showFixed(document) {
  const h = maker(document);
  document.querySelector('[data-view="care"]')?.append(...viewCare(h));
  document.querySelector('[data-view="class"]')?.append(...viewClass(h));
  document.querySelector('[data-view="prints"]')?.append(...viewPrints(h));
}

/** Only that the page cannot answer: what it shows already stays. @param {Document} document @param {string} text */
export function showTrouble(document, text) {
  fill(document, 'standing', () => viewTrouble(maker(document), text));
}

/** Into the one place that is read aloud when it changes. @param {Document} document @param {string} text */
export function say(document, text) {
  const place = document.querySelector('[data-said]');
  if (place && place.textContent !== text) place.textContent = text;
}
