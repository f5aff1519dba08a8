// What the core is asked beside the plan: how what was typed and the sock at hand make a request.

import { firstStitches } from '../state.js';
import { sockInMaking } from './making.js';

/** @typedef {import('../ask.js').Good} Good */

/** @typedef {(good: Good, said: Record<string, any>) => Record<string, any>} Make */
/** What is seen of one sock: the toe where nothing is said of its rib. @param {Record<string, number> | undefined} seen */
function asSeen(seen) {
  if (!seen) return undefined;
  const isInToe =
    seen.rounds !== undefined && seen.columns === undefined && seen.place === undefined;
  return { in: isInToe ? 'toe' : 'rib', ...seen };
}

/**
 * The example's swatch is nobody's own: of a sock on the needles it says nothing. A yarn's label does.
 * @param {Good['state']} state @param {Record<string, any>} needles
 */
const alone = ({ example, draft }, { stitches, rounds }) =>
  (stitches ?? rounds) !== undefined &&
  draft['/swatch']?.typed !== 'label' &&
  example[firstStitches]
    ? { toeAlone: true }
    : {};

/** By question. @type {{ [question in 'adjust' | 'found' | 'stripes']?: Make }} */
export const besideRequests = {
  // While she knits by the page it knows where she stands: a number typed once would stay behind.
  adjust: ({ request, state: { started, ...state } }, { needles }) => ({
    ...request,
    needles: {
      ...alone(state, needles),
      ...needles,
      ...(started ? { roundsDone: started.round } : {}),
    },
  }),
  found: ({ plan }, { found: { a, b, misstep } }) => ({
    version: 1,
    rib: plan.rib,
    toeRounds: plan.toe.rounds,
    spiralRounds: plan.spiral.rounds + plan.widening.rounds,
    plainRounds: plan.spiral.rounds,
    cuffRounds: plan.cuff.rounds,
    stitches: plan.stitchCount,
    a: asSeen(a),
    b: asSeen(b),
    misstep,
  }),
  stripes: ({ plan, request }, { stripes: { repeat, own, leftovers } }) => ({
    version: 1,
    sock: sockInMaking(plan),
    tex: plan.yarn.tex,
    margin: request.yarnMargin,
    own,
    repeat: repeat && { ballM: request.yarn?.ballM, ...repeat },
    leftovers: leftovers && {
      legHeightMm: request.legHeightMm,
      roundsPerMm: plan.gauge.roundsPerMm,
      ...leftovers,
    },
  }),
};

/**
 * What was said, in pieces that are asked one by one, so that none waits for another to be mended.
 * @param {string} question @param {Record<string, any>} said @returns {Array<Record<string, any>>}
 */
export const besidePieces = (question, said) =>
  question === 'stripes'
    ? Object.entries(said.stripes).map((part) => ({ stripes: Object.fromEntries([part]) }))
    : [said];

/** Where the field of a problem stands in the form, if not under its own name. @type {{ [question: string]: (pointer: string) => string }} */
export const besidePlaces = {
  found: (pointer) => `/found${pointer}`,
  stripes: (pointer) => `/stripes${pointer}`,
};
