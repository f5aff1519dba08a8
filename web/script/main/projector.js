// The page shown to a whole room: drawn for it, and said.
import { openProjector } from '../projector.js';
import { projectorText, say } from '../view.js';

/** @param {Document} document @param {() => void} draw @returns {() => void} goes where the tab's own history stands */
export const openForTheRoom = (document, draw) =>
  openProjector(document, (isOn) => {
    draw();
    say(document, projectorText(isOn));
  });
