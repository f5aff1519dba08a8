// A student's sock on the teacher's desk: opened from her link or her file, looked at, kept nowhere.
import {
  examplesLeft,
  gatherProblems,
  listenHelping,
  readDraft,
  sheetOfRequest,
  tellProblems,
  valuesOf,
} from '../form.js';
import { openLink } from '../link.js';
import { socksIn } from '../save.js';
import { startState } from '../state.js';

/** @typedef {import('../state.js').State} State */
/** @typedef {import('../state.js').Helping} Helping */

/** What stands behind the # of an address, or all of what was pasted. @param {string} text */
const fragmentIn = (text) => text.trim().replace(/^.*#/, '');

/**
 * @param {Document} document
 * @param {() => import('../ask.js').Answer | undefined} answer
 * @param {(action: import('../state.js').Action) => void} act
 */
export function openHelping(document, answer, act) {
  const tell = (/** @type {Helping | undefined} */ helping) => act({ type: 'helped', helping });
  listenHelping(document, {
    link(text) {
      const core = answer();
      const fragment = fragmentIn(text);
      if (!core || fragment === '') {
        tell(undefined);
        return;
      }
      const { problem = '', sheet } = openLink(core, fragment, startState());
      tell({ problem, isFile: false, sheet });
    },
    async file(file) {
      const { sheets, problem } = await socksIn(file, sheetOfRequest);
      tell({ problem: sheets.length > 0 ? '' : problem, isFile: true, sheet: sheets[0] });
    },
  });
}

/**
 * What the view is told of her sock: the core's answer, and her sheet in words.
 * @param {State} state @param {import('../ask.js').Beside | undefined} beside
 * @param {ReturnType<typeof import('../ask.js').openAsking>} asking
 */
export function helpingFor({ helping, system }, beside, asking) {
  if (!helping?.sheet) return helping && { ...helping, hers: undefined };
  const hers = { ...startState(), ...helping.sheet, system };
  const { request, problems, locate } = readDraft(hers.draft);
  const wrong = gatherProblems(problems, beside?.refused ?? [], locate);
  const hersInWords = {
    plan: asking.planOf(helping.sheet),
    request: hers.started?.request ?? request,
    values: valuesOf(hers),
    examples: hers.started ? [] : examplesLeft(hers),
    name: hers.name,
    round: hers.started?.round,
    told: hers.started ? [] : tellProblems(wrong, hers),
    /** @type {import('../contract.js').Oddity[] | undefined} */
    oddities: beside?.reply?.oddities,
  };
  return { ...helping, hers: hersInWords };
}
