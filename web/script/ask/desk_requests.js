// How what is typed at the teacher's desk, and her sock, make the requests about many of them.

/** @typedef {import('../ask.js').Good} Good */

/**
 * @typedef {(good: Good, said: Record<string, any>, state: import('../state.js').State, isEmpty: boolean) => Record<string, any> | undefined} Make
 *   nothing where there is nothing to ask
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

/** @typedef {'supply' | 'weeks'} Question */

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
  weeks: ({ request }, { weeks = {} }, { draft }) => {
    const { meetings, minutesInClass, minutesAtHome, castOnMinutes } = weeks;
    if (meetings === undefined || minutesInClass === undefined) return undefined;
    if (isUnread(draft, weeks, 'minutesAtHome') || isUnread(draft, weeks, 'castOnMinutes'))
      return undefined;
    const course = { meetings, minutesInClass, minutesAtHome, castOnMinutes };
    return { version: 1, class: request, knitters: knittersOf(draft), ...course };
  },
};

/** Where the field of a problem stands at the desk. @type {Record<Question, (pointer: string) => string>} */
export const deskPlaces = {
  supply: (pointer) =>
    pointer.startsWith('/rows')
      ? '/supply/yarns'
      : pointer.includes('/shoe')
        ? '/supply/sizes'
        : pointer.startsWith('/columns')
          ? '/supply/feet'
          : pointer.replace('/class', ''),
  weeks: (pointer) =>
    pointer.startsWith('/knitters')
      ? '/supply/yarns'
      : pointer.startsWith('/class')
        ? pointer.replace('/class', '')
        : `/weeks${pointer}`,
};
