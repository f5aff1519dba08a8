// The moments of the page: one attribute on the root says which is in sight, and the style hides the rest. A
// link to something that lies in another moment goes there first, so that whoever follows it arrives.
import { pageWords } from '../../../words/en.js';

/** @typedef {'buy' | 'count' | 'knit' | 'class'} Moment */

const moments = /** @type {Moment[]} */ (['buy', 'count', 'knit', 'class']);

// The workings are drawn when they are first looked at; until then their section stands for them.
const workings = /^working-.*/;

/** @param {Document} document @param {Moment} moment */
export function showMoment(document, moment) {
  document.documentElement.setAttribute('data-moment', moment);
  for (const link of document.querySelectorAll('nav a')) {
    if (link.getAttribute('href') === `#${moment}`) link.setAttribute('aria-current', 'page');
    else link.removeAttribute('aria-current');
  }
}

/** Whether it is for the moment there is now. @param {Element} element */
export function isInSight(element) {
  const now = element.ownerDocument.documentElement.getAttribute('data-moment');
  const all = element.closest('[data-in]')?.getAttribute('data-in')?.split(' ');
  return all === undefined || all.some((moment) => moment === now);
}

/**
 * The address stays as it is: what stands behind its # is not ours to change.
 * @param {Document} document @param {(moment: Moment) => void} go @param {(text: string) => void} tell
 */
export function listenMoments(document, go, tell) {
  // Before any other listener takes the click: a field has to be in sight to be given the focus.
  const isBefore = true;
  document.addEventListener(
    'click',
    (event) => {
      const link = event.target instanceof Element && event.target.closest('a[href^="#"]');
      if (!link) return;
      const id = (link.getAttribute('href') ?? '').slice(1);
      const named = moments.find((moment) => moment === id);
      if (named) {
        event.preventDefault();
        go(named);
        document.defaultView?.scrollTo(0, 0);
        tell(pageWords.moments[named]);
        return;
      }
      const target = document.getElementById(id.replace(workings, 'workings'));
      const place = target && !isInSight(target) && target.closest('[data-in]');
      const [first] = place ? (place.getAttribute('data-in') ?? '').split(' ') : [];
      if (first) go(/** @type {Moment} */ (first));
    },
    isBefore,
  );
}
