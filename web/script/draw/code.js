// A text as a QR code (ISO/IEC 18004): one path, a square a module, dark on light whatever the page's colours are,
// for a camera reads nothing else.
import { correction, generate } from 'lean-qr/nano';
import { svg } from './svg.js';

// The standard's quiet zone, in modules.
const quiet = 4;

// More than that is a code too fine to be read off paper or a phone.
const mostModules = 97;

/**
 * @param {Document} document @param {string} text @param {string} name
 * @returns {SVGElement | undefined} nothing where the text is too long
 */
export function drawCode(document, text, name) {
  let code;
  try {
    code = generate(text, { minCorrectionLevel: correction.M });
  } catch {
    return undefined;
  }
  const { size } = code;
  if (size > mostModules) return undefined;
  let path = '';
  for (let y = 0; y < size; y += 1) {
    for (let x = 0; x < size; x += 1) {
      const from = x;
      while (x < size && code.get(x, y)) x += 1;
      if (x > from) path += `M${from} ${y}h${x - from}v1h${from - x}z`;
    }
  }
  const all = size + 2 * quiet;
  return svg(
    document,
    'svg',
    {
      class: 'qr',
      viewBox: `${-quiet} ${-quiet} ${all} ${all}`,
      role: 'img',
      'aria-label': name,
      'shape-rendering': 'crispEdges',
    },
    svg(document, 'rect', { x: -quiet, y: -quiet, width: all, height: all, fill: '#fff' }),
    svg(document, 'path', { d: path, fill: '#000' }),
  );
}
