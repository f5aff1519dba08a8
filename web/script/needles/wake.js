// The screen kept awake, as long as that is wished for and the page is in sight.

/** @param {Window} view @param {(isRefused: boolean) => void} tell */
export function openWake({ navigator, document }, tell) {
  /** @type {WakeLockSentinel | undefined} */
  let lock;
  let isWished = false;
  let isAsking = false;
  const isSeen = () => document.visibilityState === 'visible';

  function letGo() {
    const held = lock;
    lock = undefined;
    void held?.release();
  }

  /** @param {WakeLockSentinel} given */
  function hold(given) {
    lock = given;
    given.addEventListener('release', () => {
      if (lock !== given) return;
      lock = undefined;
      // From a covered page the browser takes it back, and gives it again; in sight it has its reasons.
      if (isSeen()) tell(true);
    });
  }

  async function ask() {
    // One at a time: of two that were given one would be held for ever.
    if (!isWished || lock || isAsking || !isSeen()) return;
    isAsking = true;
    try {
      hold(await navigator.wakeLock.request('screen'));
      tell(false);
    } catch {
      if (isWished && isSeen()) tell(true);
    }
    isAsking = false;
    // Switched off while the browser was thinking.
    if (!isWished) letGo();
  }

  document.addEventListener('visibilitychange', () => void ask());
  return (/** @type {boolean} */ isOn) => {
    isWished = isOn;
    if (isOn) return void ask();
    letGo();
    tell(false);
  };
}
