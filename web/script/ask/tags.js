// The name tags that are wanted: a number of seats, which no core has to reckon with.
import { readBeside } from '../form.js';

export const usualSeats = 12;
export const mostSeats = 60;

/** @param {number} seats */
function refuse(seats) {
  if (seats < 1 || seats > mostSeats) return { code: 'out_of_range', min: 1, max: mostSeats };
  return Number.isInteger(seats) ? undefined : { code: 'not_whole' };
}

/** @param {import('../state.js').State} state with the desk @returns {import('../ask.js').Beside} */
export function askTags({ draft }) {
  const { said, problems } = readBeside(draft, 'tags');
  const seats = said.tags?.seats ?? usualSeats;
  const refused = refuse(seats);
  if (refused) problems.push({ field: '/tags/seats', ...refused });
  const isOfSock = draft['/tags/lines']?.typed === 'sock';
  return problems.length > 0 ? { problems } : { reply: { seats, isOfSock }, problems };
}
