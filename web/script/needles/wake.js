// The screen kept awake, as long as that is wished for and the page is in sight.

/** @param {Window} view @param {(isRefused: boolean) => void} tell */
export function openWake({ navigator, document }, tell) {
  /** @type {WakeLockSentinel | undefined} */
  let lock;
  let isWished = false;

  async function ask() {
    if (!isWished || lock || document.visibilityState !== 'visible') return;
    try {
      const asked = await navigator.wakeLock.request('screen');
      // Switched off while the browser was thinking.
      if (!isWished) return void asked.release();
      lock = asked;
      // The browser takes it back when the page is covered.
      asked.addEventListener('release', () => {
        if (lock === asked) lock = undefined;
      });
      tell(false);
    } catch {
      tell(true);
    }
  }

  document.addEventListener('visibilitychange', () => void ask());
  return (/** @type {boolean} */ isOn) => {
    isWished = isOn;
    if (isOn) return void ask();
    const held = lock;
    lock = undefined;
    void held?.release();
    tell(false);
  };
}
