// What the core is asked beside the plan: how what was typed and the sock at hand make a request.

/** @typedef {import('../ask.js').Good} Good */

/** @typedef {(good: Good, said: Record<string, any>) => Record<string, any>} Make */
/** By question. @type {{ [question in 'adjust' | 'found' | 'stripes']?: Make }} */
export const besideRequests = {
  adjust: ({ request }, said) => ({ ...request, ...said }),
};
