// The page for a whole room: nothing in sight but the pair and its figures, until whoever shows it leaves again. It stands
// in the tab's own history, so that Back leaves it and a reload comes back to it, and is kept nowhere else.

const mark = 'data-projector';

/** @param {Document} document */
export const isProjected = ({ documentElement }) => documentElement.hasAttribute(mark);

/**
 * @param {Document} document @param {(isOn: boolean) => void} show draws what there is to see now
 * @returns {() => void} goes where the tab's own history stands
 */
export function openProjector(document, show) {
  const view = /** @type {Window} */ (document.defaultView);
  const root = document.documentElement;
  const isOn = () => isProjected(document);
  let height = 0;
  let isFull = false;
  // Whether Back leads out of it.
  let isEntered = false;

  function leaveFullScreen() {
    isFull = false;
    if (document.fullscreenElement) void document.exitFullscreen().catch(() => {});
  }

  /** @param {boolean} isWanted */
  function turn(isWanted) {
    if (isWanted === isOn()) return;
    if (isWanted) height = view.scrollY;
    root.toggleAttribute(mark, isWanted);
    show(isWanted);
    // What was hidden has no height to come back to before it is in sight.
    view.scrollTo(0, isWanted ? 0 : height);
    if (!isWanted) leaveFullScreen();
  }

  async function askForFullScreen() {
    try {
      await root.requestFullscreen();
      isFull = true;
      // Left while the browser was thinking.
      if (!isOn()) leaveFullScreen();
    } catch {
      // It is as large as the window, then.
    }
  }

  function enter() {
    try {
      view.history.pushState({ ...view.history.state, isProjected: true }, '');
      isEntered = true;
    } catch {
      // A frame without a history: the button and Escape lead out.
    }
    turn(true);
    void askForFullScreen();
  }

  function leave() {
    turn(false);
    if (isEntered) view.history.back();
    isEntered = false;
  }

  function follow() {
    isEntered = view.history.state?.isProjected === true;
    turn(isEntered);
  }

  document.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element) || !target.closest('[data-project]')) return;
    if (isOn()) leave();
    else enter();
  });
  document.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape' && isOn()) leave();
  });
  // The browser's own way out of a full screen, which it tells no page as a key.
  document.addEventListener('fullscreenchange', () => {
    if (isFull && isOn() && !document.fullscreenElement) leave();
  });
  view.addEventListener('popstate', follow);

  return follow;
}
