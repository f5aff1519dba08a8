// The hand on the stretch line: dragging its marker, its keys, a click on the band. Each becomes the same
// action as a count that is typed.

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Action} Action */
/** @typedef {{ counts: number[], girths: number[], advised: string }} Choices */

const pointer = '/stitchCount';

const numbers = (/** @type {Element} */ element, /** @type {string} */ name) =>
  (element.getAttribute(name) ?? '').split(' ').map(Number);

/** What the line now offers. @param {Element} handle @returns {Choices} */
const choicesOf = (handle) => ({
  counts: numbers(handle, 'data-counts'),
  girths: numbers(handle, 'data-girths'),
  advised: handle.getAttribute('data-advised') ?? '',
});

/** As it is typed: the advised count is nobody's own. @param {Choices} choices @param {number} place */
function typedAt({ counts, advised }, place) {
  const count = String(counts[place]);
  return count === advised ? '' : count;
}

/** The girth at a place of the screen, within what is in sight. @param {Element} line @param {number} clientX */
function girthAt(line, clientX) {
  const [from, to, left, right, width] = numbers(line, 'data-stretch');
  const box = line.getBoundingClientRect();
  const x = ((clientX - box.left) / box.width) * width;
  return Math.min(Math.max(from + ((x - left) / (right - left)) * (to - from), from), to);
}

/** Of the counts offered, the one whose girth is nearest. @param {Choices} choices @param {number} mm */
function nearestPlace({ girths }, mm) {
  const apart = girths.map((girth) => Math.abs(girth - mm));
  return apart.indexOf(Math.min(...apart));
}

const steps = /** @type {Record<string, number>} */ ({
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
});

/** The place in the choices that a key leads to. @param {string} key @param {Element} handle */
function placeByKey(key, handle) {
  const { counts } = choicesOf(handle);
  const last = counts.length - 1;
  if (key === 'Home') return 0;
  if (key === 'End') return last;
  if (!(key in steps)) return undefined;
  const here = counts.indexOf(Number(handle.getAttribute('aria-valuenow')));
  return Math.min(Math.max(here + steps[key], 0), last);
}

/**
 * @param {Document} document
 * @param {() => State} now
 * @param {(action: Action) => void} act
 */
export function listenStretch(document, now, act) {
  const view = /** @type {Window} */ (document.defaultView);
  /** @type {{ handle: Element, id: number, grip: number, x: number, before: string, frame: number, isMoved: boolean } | undefined} */
  let drag;

  const typedNow = () => now().draft[pointer]?.typed ?? '';
  const type = (/** @type {string} */ typed) => act({ type: 'typed', pointer, typed, unit: '' });

  const lineOf = (/** @type {Element} */ part) =>
    /** @type {Element} */ (part.closest('[data-stretch]'));

  /** The pair above grows and shrinks: the line stays under the finger. @param {Element} handle @param {string} typed */
  function typeInPlace(handle, typed) {
    const { top } = handle.getBoundingClientRect();
    type(typed);
    const moved = handle.getBoundingClientRect().top - top;
    if (Math.abs(moved) > 0.5) view.scrollBy(0, moved);
  }

  /**
   * A step a frame towards the finger. Past the outermost count that one is taken; the plan answers with
   * five new ones, and so it goes on, until the nearest is the one that was asked for last.
   */
  function follow() {
    if (!drag) return;
    drag.frame = 0;
    const { handle } = drag;
    const choices = choicesOf(handle);
    const place = nearestPlace(choices, girthAt(lineOf(handle), drag.x - drag.grip));
    const typed = typedAt(choices, place);
    if (typed === typedNow()) return;
    typeInPlace(handle, typed);
    drag.frame = view.requestAnimationFrame(follow);
  }

  function letGo() {
    if (!drag) return;
    view.cancelAnimationFrame(drag.frame);
    // A quick hand is up before the next frame: what it pointed at counts.
    for (let left = drag.isMoved ? 100 : 0; left > 0; left -= 1) {
      const before = typedNow();
      drag.frame = 0;
      follow();
      view.cancelAnimationFrame(drag.frame);
      if (typedNow() === before) break;
    }
    drag = undefined;
    document.documentElement.removeAttribute('data-dragging');
    act({ type: 'held', isHeld: false });
  }

  document.addEventListener('pointerdown', (event) => {
    const target = event.target instanceof Element ? event.target : null;
    const handle = target?.closest('[data-handle]');
    if (!handle || event.button !== 0 || drag) return;
    event.preventDefault();
    /** @type {SVGElement} */ (handle).focus({ preventScroll: true });
    handle.setPointerCapture(event.pointerId);
    const box = handle.querySelector('.bead')?.getBoundingClientRect();
    const middle = box ? box.left + box.width / 2 : event.clientX;
    drag = {
      handle,
      id: event.pointerId,
      grip: event.clientX - middle,
      x: event.clientX,
      before: typedNow(),
      frame: 0,
      isMoved: false,
    };
    document.documentElement.setAttribute('data-dragging', '');
    act({ type: 'held', isHeld: true });
  });

  document.addEventListener('pointermove', (event) => {
    if (!drag || event.pointerId !== drag.id || event.clientX === drag.x) return;
    drag.x = event.clientX;
    drag.isMoved = true;
    if (drag.frame === 0) drag.frame = view.requestAnimationFrame(follow);
  });

  for (const type_ of /** @type {const} */ (['pointerup', 'pointercancel', 'lostpointercapture'])) {
    document.addEventListener(type_, (event) => {
      if (drag && event.pointerId === drag.id) letGo();
    });
  }

  // Where touch-action is not known on a part of a drawing, this keeps the page still; on the marker only.
  for (const place of document.querySelectorAll('[data-view="choices"]')) {
    place.addEventListener(
      'touchstart',
      (event) => {
        if (event.target instanceof Element && event.target.closest('[data-handle]')) {
          event.preventDefault();
        }
      },
      { passive: false },
    );
  }

  document.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    if (drag && event.key === 'Escape') {
      const { before, handle } = drag;
      view.cancelAnimationFrame(drag.frame);
      drag = undefined;
      document.documentElement.removeAttribute('data-dragging');
      typeInPlace(handle, before);
      act({ type: 'held', isHeld: false });
      return;
    }
    const handle = event.target instanceof Element && event.target.closest('[data-handle]');
    const place = handle ? placeByKey(event.key, handle) : undefined;
    if (!handle || place === undefined) return;
    event.preventDefault();
    const typed = typedAt(choicesOf(handle), place);
    if (typed !== typedNow()) typeInPlace(handle, typed);
  });

  document.addEventListener('click', (event) => {
    const band = event.target instanceof Element && event.target.closest('[data-band]');
    const line = band && lineOf(band);
    const handle = line && line.querySelector('[data-handle]');
    if (!line || !handle) return;
    const choices = choicesOf(handle);
    const typed = typedAt(choices, nearestPlace(choices, girthAt(line, event.clientX)));
    if (typed !== typedNow()) typeInPlace(handle, typed);
  });
}
