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
  let isAwake = false;
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
  }

  /** @param {boolean} isOn */
  function keepAwake(isOn) {
    if (isOn === isAwake) return;
    isAwake = isOn;
    wake(isOn);
  }

  /** Once, when it is come to. @param {string} text */
  function read(text) {
    if (text === said) return;
    said = text;
    const isSaid = text === '' || voice.say(text);
    if (text === '') voice.hush();
    if (isMute === !isSaid) return;
    isMute = !isSaid;
    show();
  }

  listenHands(document, act, isKnitting);
  voice.whenKnown(() => {
    if (!isMute) return;
    said = '';
    show();
  });
  document.addEventListener('click', ({ target }) => {
    const button = target instanceof Element && target.closest('[data-wish]');
    if (!button) return;
    const isOn = button.getAttribute('aria-pressed') !== 'true';
    const name = button.getAttribute('data-wish');
    if (name === 'timed' || name === 'paused') return act({ type: name, isOn, now: Date.now() });
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

    /** At every drawing. @param {string} pass what is in hand, to be read aloud; '' where no begun sock is in sight */
    follow(pass) {
      keepAwake(wishes.wake && pass !== '');
      read(wishes.aloud ? pass : '');
    },
  };
}
