// How what is typed at the teacher's desk, and her sock, make the requests about many of them.
import { readDraft, readRoster } from '../form.js';
import { drivePlace, driveRequest } from './drive_request.js';

/** @typedef {import('../ask.js').Good} Good */
/** @typedef {import('../state.js').State} State */

/**
 * @typedef {(good: Good, said: Record<string, any>, state: State, isEmpty: boolean) => Record<string, any> | undefined} Make
 *   nothing where there is nothing to ask
 * @typedef {(pointer: string, request: Record<string, any>) => string} Place
 */

/** A yarn known by its label's number alone. @param {number} category */
const ofYarn = (category) => ({ yarn: { category } });

/** Sizes of shoes, then feet by tape, each in the order typed. @param {Record<string, any>} supply @param {Good} good */
export function sizesOf({ scale = 'eu', body = 'woman', sizes = [], feet = [] }, { request }) {
  const { legHeightMm } = request;
  const shod = sizes.map((/** @type {number[]} */ [size]) => ({
    foot: { shoe: { scale, size }, body },
    legHeightMm,
  }));
  const taped = feet.map((/** @type {number[]} */ [lengthMm, ballGirthMm]) => ({
    foot: { lengthMm, ballGirthMm },
    legHeightMm,
  }));
  return [...shod, ...taped];
}

/** The yarns ticked at the desk, or else the class's own. @param {Record<string, any>} said */
const yarnsOf = ({ yarns }) => (yarns ?? []).map(ofYarn);

const readSeats = (/** @type {State} */ { lesson }) => readRoster(lesson.roster);

/** @typedef {'supply' | 'weeks' | 'odd' | 'drive' | 'roster'} Question */

/** Whether something stands in a field that could not be read: it would be taken for left out. @param {import('../state.js').Draft} draft @param {Record<string, any>} said @param {string} name */
const isUnread = (draft, said, name) =>
  said[name] === undefined && (draft[`/weeks/${name}`]?.typed ?? '').trim() !== '';

/** The yarns ticked under the wool, or else the class's own sock. @param {import('../state.js').Draft} draft */
function knittersOf(draft) {
  const ticked = (draft['/supply/yarns']?.typed ?? '').split(' ').filter(Boolean);
  return ticked.length > 0 ? ticked.map((category) => ofYarn(Number(category))) : [{}];
}

/** @type {Record<Question, Make>} */
export const deskRequests = {
  supply: (good, { supply }) => {
    if (!supply) return undefined;
    const rows = yarnsOf(supply);
    const columns = sizesOf(supply, good);
    if (rows.length === 0 || columns.length === 0) return undefined;
    return { version: 1, class: good.request, rows, columns };
  },
  // Of a student's own sock, not of the one on the page.
  odd: (_good, { inHand }, { helping }) => {
    if (!helping?.sheet) return undefined;
    const { started, draft = {} } = helping.sheet;
    return { ...(started?.request ?? readDraft(draft).request), ...(inHand ? { inHand } : {}) };
  },
  drive: driveRequest,
  // Typed in no field of the form: a table, read as a whole.
  roster: ({ request }, _said, state) => {
    const { seats } = readSeats(state);
    if (seats.length === 0) return undefined;
    return { version: 1, class: request, seats: seats.map(({ part }) => part) };
  },
  weeks: ({ request }, { weeks = {} }, { draft }) => {
    const { meetings, minutesInClass, minutesAtHome, castOnMinutes } = weeks;
    if (meetings === undefined || minutesInClass === undefined) return undefined;
    if (isUnread(draft, weeks, 'minutesAtHome') || isUnread(draft, weeks, 'castOnMinutes'))
      return undefined;
    const course = { meetings, minutesInClass, minutesAtHome, castOnMinutes };
    return { version: 1, class: request, knitters: knittersOf(draft), ...course };
  },
};

/** Where the field of a problem stands at the desk; '' where it does not, for it is a student's. @type {Record<Question, Place>} */
export const deskPlaces = {
  supply: (pointer) =>
    pointer.startsWith('/rows')
      ? '/supply/yarns'
      : pointer.includes('/shoe')
        ? '/supply/sizes'
        : pointer.startsWith('/columns')
          ? '/supply/feet'
          : pointer.replace('/class', ''),
  odd: (pointer) => (pointer.startsWith('/inHand') ? pointer : ''),
  drive: drivePlace,
  roster: () => '',
  weeks: (pointer) =>
    pointer.startsWith('/knitters')
      ? '/supply/yarns'
      : pointer.startsWith('/class')
        ? pointer.replace('/class', '')
        : `/weeks${pointer}`,
};

/** What goes with an answer and is none of the core's: of seats their rows and labels. @type {Partial<Record<Question, (state: State) => any>>} */
export const deskAbout = { roster: readSeats };
