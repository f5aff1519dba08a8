// What the core is asked beside the plan: how what was typed and the sock at hand make a request.

import { sockInMaking } from './making.js';

/** @typedef {import('../ask.js').Good} Good */

/** @typedef {(good: Good, said: Record<string, any>) => Record<string, any>} Make */
/** By question. @type {{ [question in 'adjust' | 'found' | 'stripes']?: Make }} */
export const besideRequests = {
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

/** Where the field of a problem stands in the form, if not under its own name. @type {{ [question: string]: (pointer: string) => string }} */
export const besidePlaces = { stripes: (pointer) => `/stripes${pointer}` };
