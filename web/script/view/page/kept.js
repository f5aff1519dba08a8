// Under the sentence: a step back or forth, and whatever is to be said about what is kept.
import { keptWords as words } from '../../../words/en.js';
import { viewCode } from './code.js';
import { keptButton } from './kept_button.js';

/** @typedef {import('../showing.js').Showing} Showing */
/** @typedef {import('../dom.js').Make} Make */

/**
 * @typedef {object} Kept
 * @property {boolean} canUndo
 * @property {boolean} canRedo
 * @property {boolean} isKept whether the browser keeps anything for the page
 * @property {boolean} isElsewhere whether another tab has kept another sheet
 * @property {string} aside a text that could not be read
 * @property {string} badLink why a link could not be opened, as the core's code, or ''
 * @property {boolean} hasSocks
 * @property {{ count: number, known: number }} [opened] socks of the last file: made, and here already
 * @property {string} badFile why a file could not, or ''
 * @property {boolean} isVisit whether what is shown came by a link and is not her own yet
 * @property {boolean} isOpaque whether a frame denies the page nearly everything
 * @property {string} [removed] the name of the sock removed last
 * @property {Sheet} state the sock on the page
 * @property {{ stitchCount?: number, totalRounds?: number }} [made] what the link said that it comes to
 * @property {import('../showing.js').Plan} [plan]
 * @property {{ url: string, isCopied: boolean }} [shared]
 * @property {boolean} [isClassCopied] whether the class's link has just been copied
 */

/** @typedef {{ name: string, note: string, locks: string[], course: { title: string, note: string, yarns: number[] }, started?: unknown, moment: string }} Sheet */

/** The hand taken to the link, wherever on the page it was asked for. @param {Document} document @param {string} what */
export function pointToLink(document, what) {
  const id = what === 'class' ? 'lesson-link' : 'shared-link';
  const place = /** @type {HTMLInputElement | null} */ (document.getElementById(id));
  place?.focus();
  place?.select();
}

/** Where the rules have changed since, or the link's page knew others. @param {Kept} kept */
function sayMadeAs({ made, plan }) {
  const { stitchCount = plan?.stitchCount, totalRounds } = made ?? {};
  if (!plan || stitchCount === undefined || totalRounds === undefined) return '';
  if (stitchCount === plan.stitchCount && totalRounds === plan.totalRounds) return '';
  return words.madeAs(
    words.counts(stitchCount, totalRounds),
    words.counts(plan.stitchCount, plan.totalRounds),
  );
}

/** What the class has settled, and what it says. @param {Make} h @param {Sheet} state */
function viewCourse(h, { course, locks }) {
  const { title, note, yarns } = course;
  const settled = [...locks, ...(yarns.length > 0 ? [words.whichYarns] : [])];
  if (!title && !note && settled.length === 0) return null;
  return h(
    'section',
    { class: 'asked course', 'data-key': 'course' },
    h('strong', {}, title || words.course),
    note && h('span', {}, note),
    settled.length > 0 && h('span', {}, words.settled(settled)),
    keptButton(h, 'leaveClass', words.leaveClass),
  );
}

/** @param {Make} h @param {Document} document @param {NonNullable<Kept['shared']>} shared */
const viewShared = (h, document, { url, isCopied }) =>
  h(
    'div',
    { class: 'asked shared', 'data-key': 'shared' },
    viewCode(h, document, url),
    h(
      'div',
      {},
      h('label', { for: 'shared-link' }, words.shareLabel),
      h('input', { id: 'shared-link', readonly: '', value: url }),
      h('span', {}, url.startsWith('#') ? words.noAddress : isCopied ? words.copied : words.byHand),
    ),
  );

/** @param {Make} h @param {Document} document @param {Kept} kept */
export function viewKept(h, document, kept) {
  const { canUndo, canRedo, isKept, isElsewhere, aside, badLink, badFile, isVisit, isOpaque } =
    kept;
  const { removed, shared, state, hasSocks, opened } = kept;
  const madeAs = sayMadeAs(kept);
  const asked = (/** @type {string} */ key, /** @type {import('../dom.js').Child[]} */ ...said) =>
    h('p', { class: 'asked', 'data-key': key }, said);
  const alarm = (/** @type {string} */ key, /** @type {import('../dom.js').Child[]} */ ...said) =>
    h('p', { class: 'asked', role: 'alert', 'data-key': key }, said);
  const share = h('button', { type: 'button', class: 'quiet', 'data-share': '' }, words.share);
  return [
    (canUndo || canRedo || hasSocks) &&
      h(
        'p',
        { class: 'steps-back', 'data-key': 'steps' },
        state.name.trim() && h('strong', {}, state.name),
        (canUndo || canRedo) && [
          keptButton(h, 'undo', words.undo, { isOn: canUndo }),
          keptButton(h, 'redo', words.redo, { isOn: canRedo }),
          keptButton(h, 'anew', words.anew),
        ],
        h('a', { href: '#socks' }, words.yourSocks),
      ),
    badLink !== '' && alarm('bad-link', words.badLink[badLink] ?? words.badLink.link_not_ours),
    badFile !== '' && alarm('bad-file', words.badFile[badFile]),
    opened && asked('opened', words.opened(opened.count, opened.known)),
    isVisit &&
      asked(
        'visit',
        words.visit,
        keptButton(h, 'makeMine', words.makeMine),
        keptButton(h, 'backToMine', words.backToMine),
      ),
    madeAs !== '' && asked('made-as', madeAs),
    viewCourse(h, state),
    Boolean(state.started) &&
      asked(
        'begun',
        words.begun,
        keptButton(h, 'another', words.another),
        // In Knit it stands where it was begun.
        state.moment !== 'knit' && keptButton(h, 'notBegun', words.notBegun),
      ),
    shared && viewShared(h, document, shared),
    isElsewhere &&
      alarm(
        'elsewhere',
        h('strong', {}, words.elsewhere),
        keptButton(h, 'theirs', words.theirs),
        keptButton(h, 'mine', words.mine),
      ),
    removed !== undefined &&
      asked('removed', words.removed(removed), keptButton(h, 'putBack', words.putBack)),
    aside !== '' && asked('aside', words.aside, keptButton(h, 'aside', words.download)),
    isOpaque
      ? asked('opaque', words.opaque, share)
      : !isKept && h('p', { class: 'not-kept', 'data-key': 'not-kept' }, words.notKept, ' ', share),
  ];
}
