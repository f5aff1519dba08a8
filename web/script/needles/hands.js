// What a hand that holds needles can do: tap, press a key, press the key of a headset.
import { bringIntoView } from '../frame.js';

/** @typedef {import('../state.js').Action} Action */

const keys = /** @type {Record<string, 'tapped' | 'untapped'>} */ ({
  ' ': 'tapped',
  ArrowRight: 'tapped',
  ArrowLeft: 'untapped',
  MediaTrackNext: 'tapped',
  MediaTrackPrevious: 'untapped',
});

// There these keys have a meaning of their own.
const withKeys = 'input, select, textarea, summary, button, a, [role="slider"], [contenteditable]';

/** Whoever was elsewhere on the page is brought to where she goes on. @param {Element} needles */
function showAt(needles) {
  bringIntoView(needles);
  const next = needles.querySelector('.next') ?? needles.querySelector('.back');
  if (next instanceof HTMLElement) next.focus({ preventScroll: true });
}

/** @param {Document} document @param {(action: Action) => void} act @param {() => boolean} isKnitting */
export function listenHands(document, act, isKnitting) {
  const now = () => Date.now();
  /** @param {string | null} does */
  function go(does) {
    if (does === 'tapped') act({ type: 'tapped', now: now() });
    else if (does === 'untapped' || does === 'tap undone') act({ type: does });
  }

  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element && target.closest('[data-hand], [data-place]');
    if (!button || button.getAttribute('aria-disabled') === 'true') return;
    // Drawn anew the button may say something else.
    const place = button.getAttribute('data-place');
    if (place === null) return go(button.getAttribute('data-hand'));
    const [round, pass = 0] = place.split(' ').map(Number);
    const needles = document.getElementById('needles');
    const isElsewhere = !needles?.contains(button);
    act({ type: 'placed', round, pass, now: now() });
    if (needles && isElsewhere) showAt(needles);
  });

  document.addEventListener('keydown', (event) => {
    const { key, target, ctrlKey, altKey, metaKey, shiftKey } = event;
    if (ctrlKey || altKey || metaKey || shiftKey || !keys[key] || !isKnitting()) return;
    const own = target instanceof Element && target.closest(withKeys);
    // An arrow means nothing to a button; space presses it.
    if (own && (key === ' ' || !own.matches('button'))) return;
    event.preventDefault();
    // Held down it is one tap still.
    if (!event.repeat) go(keys[key]);
  });

  // Most browsers pass these on only while the page plays a sound; reading aloud is none to some of them.
  try {
    const session = document.defaultView?.navigator.mediaSession;
    for (const [key, does] of /** @type {Array<[MediaSessionAction, string]>} */ ([
      ['nexttrack', 'tapped'],
      ['previoustrack', 'untapped'],
    ]))
      session?.setActionHandler(key, () => isKnitting() && go(does));
  } catch {
    // A browser that knows no such key.
  }
}
