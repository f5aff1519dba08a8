// What the address brings. What is her own stays kept beside it until she says otherwise.
import { openLink } from '../link.js';
import { fragmentOf, leaveLink } from '../share.js';
import { isUntouched, startState } from '../state.js';

/**
 * @param {Document} document
 * @param {object} page
 * @param {() => import('../ask.js').Answer | undefined} page.answer
 * @param {() => import('../state.js').State} page.own
 * @param {{ visit: (text: string, state: import('../state.js').State) => void, endVisit: () => void }} page.keeping
 * @param {(action: import('../state.js').Action) => void} page.act
 * @param {(said: Pick<import('../view/page/kept.js').Kept, 'badLink' | 'made'>) => void} page.tell what there is to say of the link
 * @param {() => void} page.show
 */
export const linkFollower =
  (document, { answer, own, keeping, act, tell, show }) =>
  () => {
    const text = fragmentOf(document);
    const core = answer();
    if (!core) return;
    // Back from a link that was followed while the page was open.
    if (text === '') {
      keeping.endVisit();
      return;
    }
    const { problem = '', made, sheet, isKnown } = openLink(core, text, own());
    tell({ badLink: problem, made });
    if (!sheet) {
      show();
      return;
    }
    const { moment, system } = sheet;
    if (isKnown) {
      leaveLink(document);
      keeping.endVisit();
      act({ type: 'opened', sheet: { moment, system }, isLink: true });
    } else if (isUntouched(own())) {
      leaveLink(document);
      act({ type: 'opened', sheet, isLink: true });
    } else keeping.visit(text, { ...startState(), ...sheet });
  };
