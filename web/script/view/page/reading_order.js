// On a wide page the fields stand before the figures, to their left; on a narrow one the figures come first. The
// document follows, so that the Tab key and a reader's voice go the way the eye does.

// As in style/stage.css.
const wide = '(width >= 78em)';

/** @param {Document} document */
export function keepReadingOrder(document) {
  const media = document.defaultView?.matchMedia(wide);
  const [pair, fields] = ['.pair-place', '.foot'].map((place) => document.querySelector(place));
  const figures = ['.note-place', '.choices-place'].map((place) => document.querySelector(place));
  if (!media || !pair || !fields) return;
  const place = () => {
    // What holds the focus would lose it on the way.
    const held = document.activeElement;
    if (media.matches) fields.after(...asNodes(figures));
    else pair.after(...asNodes([...figures].reverse()));
    if (held instanceof HTMLElement && held !== document.activeElement) {
      held.focus({ preventScroll: true });
    }
  };
  place();
  media.addEventListener('change', place);
}

/** @param {(Element | null)[]} places */
const asNodes = (places) => places.filter((place) => place !== null);
