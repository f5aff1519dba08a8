// Under the sentence: a step back or forth, and whatever is to be said about what is kept.
import { keptWords as words } from '../../words/en.js';

/** @typedef {import('./showing.js').Showing} Showing */
/** @typedef {import('./dom.js').Make} Make */

/**
 * @typedef {object} Kept
 * @property {boolean} canUndo
 * @property {boolean} canRedo
 * @property {boolean} isKept whether the browser keeps anything for the page
 * @property {boolean} isElsewhere whether another tab has kept another sheet
 * @property {string} aside a text that could not be read
 * @property {string} badLink why a link could not be opened, as the core's code, or ''
 * @property {boolean} isVisit whether what is shown came by a link and is not her own yet
 * @property {{ stitchCount?: number, totalRounds?: number }} [made] what the link said that it comes to
 * @property {import('./showing.js').Plan} [plan]
 * @property {{ url: string, isCopied: boolean }} [shared]
 */

/** The hand taken to the link, wherever on the page it was asked for. @param {Document} document */
export function pointToShared(document) {
  const place = /** @type {HTMLInputElement | null} */ (document.getElementById('shared-link'));
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

/** @param {Make} h @param {Kept} kept */
export function viewKept(h, kept) {
  const { canUndo, canRedo, isKept, isElsewhere, aside, badLink, isVisit, shared } = kept;
  const madeAs = sayMadeAs(kept);
  const button = (/** @type {string} */ does, /** @type {string} */ label, isOn = true) =>
    h(
      'button',
      {
        type: 'button',
        class: 'quiet',
        'data-kept': does,
        'data-key': does,
        ...(isOn ? {} : { 'aria-disabled': 'true' }),
      },
      label,
    );
  return [
    (canUndo || canRedo) &&
      h(
        'p',
        { class: 'steps-back', 'data-key': 'steps' },
        button('undo', words.undo, canUndo),
        button('redo', words.redo, canRedo),
        button('anew', words.anew),
      ),
    badLink !== '' &&
      h(
        'p',
        { class: 'asked', role: 'alert', 'data-key': 'bad-link' },
        words.badLink[badLink] ?? words.badLink.link_not_ours,
      ),
    isVisit &&
      h(
        'p',
        { class: 'asked', 'data-key': 'visit' },
        words.visit,
        ' ',
        button('makeMine', words.makeMine),
        button('backToMine', words.backToMine),
      ),
    madeAs !== '' && h('p', { class: 'asked', 'data-key': 'made-as' }, madeAs),
    shared &&
      h(
        'p',
        { class: 'asked shared', 'data-key': 'shared' },
        h('label', { for: 'shared-link' }, words.shareLabel),
        h('input', { id: 'shared-link', readonly: '', value: shared.url }),
        h('span', {}, shared.isCopied ? words.copied : words.byHand),
      ),
    isElsewhere &&
      h(
        'p',
        { class: 'asked', role: 'alert', 'data-key': 'elsewhere' },
        h('strong', {}, words.elsewhere),
        button('theirs', words.theirs),
        button('mine', words.mine),
      ),
    aside !== '' &&
      h(
        'p',
        { class: 'asked', 'data-key': 'aside' },
        words.aside,
        ' ',
        button('aside', words.download),
      ),
    !isKept && h('p', { class: 'not-kept', 'data-key': 'not-kept' }, words.notKept),
  ];
}
