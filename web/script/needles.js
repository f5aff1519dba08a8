// The page while one knits: hands, screen, voice, light.
import { listenHands } from './needles/hands.js';
import { setNight } from './needles/night.js';
import { openVoice } from './needles/voice.js';
import { openWake } from './needles/wake.js';

/** @typedef {{ wake: boolean, large: boolean, night: boolean, aloud: boolean }} Wishes of this device, whatever the sock */

/**
 * @param {Document} document
 * @param {object} page
 * @param {Wishes} page.wishes as they were kept
 * @param {(wishes: Wishes) => void} page.keep
 * @param {(action: import('./state.js').Action) => void} page.act
 * @param {() => void} page.show that there is something else to see
 * @param {() => boolean} page.isKnitting whether a begun sock is in sight
 */
export function openNeedles(document, { wishes: kept, keep, act, show, isKnitting }) {
  const view = /** @type {Window} */ (document.defaultView);
  const voice = openVoice(view);
  let wishes = kept;
  let isWakeRefused = false;
  let isMute = false;
  let said = '';
  const wake = openWake(view, (isRefused) => {
    if (isRefused === isWakeRefused) return;
    isWakeRefused = isRefused;
    show();
  });

  /** @param {Wishes} before */
  function fulfil(before) {
    document.documentElement.toggleAttribute('data-large', wishes.large);
    if (wishes.night !== before.night) setNight(document, wishes.night);
    if (wishes.wake !== before.wake) wake(wishes.wake && isKnitting());
    if (!wishes.aloud) {
      voice.hush();
      isMute = false;
      said = '';
    }
  }

  listenHands(document, act, isKnitting);
  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element && target.closest('[data-wish]');
    if (!button) return;
    const isOn = button.getAttribute('aria-pressed') !== 'true';
    const name = button.getAttribute('data-wish');
    if (name === 'timing') return act({ type: 'timed', isOn, now: Date.now() });
    const before = wishes;
    wishes = { ...wishes, [String(name)]: isOn };
    keep(wishes);
    fulfil(before);
    show();
  });
  fulfil({ wake: false, large: false, night: false, aloud: false });

  return {
    wishes: () => wishes,
    device: () => ({ isWakeRefused, isMute }),

    /** The pass in hand: said once, when it is come to. @param {string} text */
    sayPass(text) {
      if (!wishes.aloud || !isKnitting() || text === said) return;
      said = text;
      isMute = !voice.say(text);
    },
  };
}
