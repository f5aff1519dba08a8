// Small helpers that every drawing uses. A drawing is data in, nodes out, and knows no browser beyond
// making nodes: the page's first drawing is made where there is none.

const namespace = 'http://www.w3.org/2000/svg';

/** @typedef {Record<string, string | number>} Attributes */

/**
 * @param {Document} document @param {string} name @param {Attributes} [attributes]
 * @param {...(Node | string)} children
 */
export function svg(document, name, attributes = {}, ...children) {
  const node = document.createElementNS(namespace, name);
  for (const [key, value] of Object.entries(attributes)) {
    node.setAttribute(key, typeof value === 'number' ? write(value) : value);
  }
  node.append(...children);
  return node;
}

/** A coordinate to a hundredth: short, and finer than any screen. @param {number} value */
export const write = (value) => String(Math.round(value * 100) / 100);

/** Numbers of a path, separated. @param {...number} values */
export const at = (...values) => values.map(write).join(' ');

/** @param {Document} document @param {string} words @param {Attributes} attributes */
export const text = (document, words, attributes) => svg(document, 'text', attributes, words);

/**
 * Slanting lines over a stretch of x, from bottom left to top right, each cut where the stretch ends.
 * @param {{ from: number, to: number, top: number, bottom: number, apart: number }} area
 */
export function hatching({ from, to, top, bottom, apart }) {
  const tall = bottom - top;
  let path = '';
  for (let x = from - tall; x < to; x += apart) {
    const left = Math.max(x, from);
    const right = Math.min(x + tall, to);
    if (right > left)
      path += `M${at(left, bottom - (left - x))}L${at(right, bottom - (right - x))}`;
  }
  return path;
}
