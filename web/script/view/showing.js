// What the views are given: the plan and how to write it. Types only.

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('../contract.js').PairLine} PairLine */
/** @typedef {{ stitches: number, isAdvised: boolean }} Offer a count in place of one that is none */

/**
 * @typedef {object} Showing
 * @property {Plan} plan the last good one
 * @property {Record<string, any>} request what it was made from
 * @property {Record<string, string>} values every asked field's value in words, by pointer
 * @property {import('../units.js').System} system
 * @property {Array<{ pointer: string, id: string, name: string, text: string, offers: Offer[] }>} problems
 * @property {string} lastGood what the plan was made from, at the fields now wrong
 * @property {string[]} examples the parts of the sheet that are still the example's
 * @property {import('./count/stretch_scale.js').Scale} [scale] of the stretch line; left out, it takes in all
 * @property {string} [name] the sock's own
 * @property {boolean} [isBegun] whether it is on the needles
 * @property {import('./knit/needles.js').AtHand} [atHand] how far, if so
 * @property {Record<string, import('../ask.js').Beside>} [beside] what was asked beside the plan, by question
 * @property {{ round: number, pass: number }} [place] of a begun sock: rounds done, and passes done of the next
 * @property {{ text: string, isCopied: boolean }} [copied] the pattern as text, once that is asked for
 * @property {boolean} [isRemade] whether a begun sock cannot be shown as it was begun
 * @property {(request: Record<string, any>, clear: string[], change: Record<string, any>) => string} [linkTo] the address of a plan like this
 *   request's, less some of its members and with other values by pointer; '' where the form could not ask for it
 * @property {(request: Record<string, any>, part: import('../contract.js').SeatPart, made: PairLine) => string} [linkToPart] the same of a part
 *   laid over a request
 * @property {(request: Record<string, any>, part: import('../contract.js').SeatPart, seat: string) => { showing: Showing, url: string } | undefined} [seatSheet]
 *   what is printed for a seat, and its link; nothing where the form could not ask for it
 * @property {(problem: import('../ask.js').Problem, about: any, part?: import('../contract.js').SeatPart) => { column: string, text: string }} [tellSeat]
 *   a problem of a seat in words, and the head of its column
 * @property {import('../state.js').Lesson} [lesson] what the teacher has said of her class
 * @property {ReturnType<typeof import('../main/helping.js').helpingFor>} [helping] a student's sock that the teacher looks at
 * @property {boolean} [isProjected] whether it is shown to a whole room
 * @property {string} [classTitle] what the class is called, or ''
 * @property {number[]} [classYarns] the yarns that a student's class may use, where not any
 * @property {string} trouble what keeps the page from answering, in words, or ''
 */
export {};
