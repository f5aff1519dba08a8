// The fields of the teacher's desk: asked of her, of no part of a sock's request, and the same whichever sock is on the
// page. Their pointers begin with the name of the question they ask (state/desk.js).
import { choice, list, quantity } from './field.js';

/** @typedef {import('./field.js').Field} Field */

const supply = /** @type {const} */ ({ asks: 'supply' });
const weeks = /** @type {const} */ ({ asks: 'weeks' });
const drive = /** @type {const} */ ({ asks: 'drive' });
const odd = /** @type {const} */ ({ asks: 'odd' });
const tags = /** @type {const} */ ({ asks: 'tags' });

/** @type {readonly Field[]} */
export const deskFields = [
  {
    pointer: '/supply/yarns',
    as: 'many',
    kind: 'number',
    group: 'supply-yarns',
    options: ['0', '1', '2', '3', '4', '5', '6', '7'],
    ...supply,
  },
  choice('supply', '/supply/scale', ['eu', 'us-women', 'us-men', 'uk', 'mondopoint'], supply),
  choice('supply', '/supply/body', ['woman', 'man', 'child'], supply),
  list('supply', '/supply/sizes', 'number', supply),
  list('supply', '/supply/feet', 'length', supply),
  quantity('weeks', '/weeks/meetings', 'number', weeks),
  quantity('weeks', '/weeks/minutesInClass', 'minutes', weeks),
  quantity('weeks', '/weeks/minutesAtHome', 'minutes', weeks),
  quantity('weeks', '/weeks/castOnMinutes', 'minutes', weeks),
  { pointer: '/weeks/day', as: 'day', kind: 'number', group: 'weeks-days', ...weeks },
  { pointer: '/weeks/time', as: 'time', kind: 'number', group: 'weeks-days', ...weeks },
  quantity('weeks-days', '/weeks/daysBetween', 'number', { ...weeks, limits: [1, 366] }),
  quantity('in-hand', '/inHand/balls', 'number', odd),
  quantity('in-hand', '/inHand/g', 'mass', odd),
  quantity('drive', '/drive/pairs', 'number', drive),
  quantity('drive', '/drive/women', 'number', drive),
  quantity('drive', '/drive/men', 'number', drive),
  list('drive', '/drive/children', 'number', drive),
  quantity('drive', '/drive/sizes', 'number', drive),
  quantity('drive', '/drive/wantedShare', 'percent', drive),
  quantity('drive', '/drive/legOfFoot', 'percent', drive),
  list('drive', '/drive/lots', 'mass', drive),
  { pointer: '/drive/fibre', as: 'text', kind: 'number', group: 'drive-bands', ...drive },
  { pointer: '/drive/washing', as: 'text', kind: 'number', group: 'drive-bands', ...drive },
  quantity('tags', '/tags/seats', 'number', tags),
  choice('tags', '/tags/lines', ['pen', 'sock'], tags),
];
