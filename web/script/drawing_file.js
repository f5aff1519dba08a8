// A drawing as a file of its own. What the page's style says of each node is written into it, so that it
// looks the same in any program: in the light colours, on paper, whatever the page is shown in.
import { handOver } from './download.js';

const namespace = 'http://www.w3.org/2000/svg';
const space = 16;
// Twice the drawing's own size, but no more than the smallest browsers can paint.
const finest = 2;
const mostPixels = 16e6;

// What a drawing is styled with. The first are each node's own, with what holds where nothing is said; the
// others go from a node to what is in it.
const alone = { opacity: '1', 'stop-color': 'rgb(0, 0, 0)', 'stop-opacity': '1' };
const handedDown = [
  ...['fill', 'visibility', 'paint-order', 'text-anchor', 'dominant-baseline'],
  ...['', '-width', '-dasharray', '-linecap', '-linejoin'].map((part) => `stroke${part}`),
  ...['family', 'size', 'style', 'weight'].map((part) => `font-${part}`),
];

const ofPage = /^(class|role|tabindex|aria-.*|data-.*)$/;

/**
 * Whatever is done meanwhile sees the light colours; nothing is painted before it ends.
 * @template T @param {Document} document @param {() => T} work @returns {T}
 */
function inLightColours(document, work) {
  const root = document.documentElement;
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
  const tokens = rules.filter(
    (rule) => rule instanceof CSSStyleRule && rule.selectorText === ':root',
  );
  const light = /** @type {CSSStyleRule | undefined} */ (tokens[0])?.style;
  const names = [...(light ?? [])].filter((name) => name.startsWith('--'));
  for (const name of names) root.style.setProperty(name, light?.getPropertyValue(name) ?? '');
  try {
    return work();
  } finally {
    for (const name of names) root.style.removeProperty(name);
    if (root.getAttribute('style') === '') root.removeAttribute('style');
  }
}

/**
 * Writes into the copy what the shown node's style is, where that is not what its parent has.
 * @param {Element} shown @param {Element} copy @param {Record<string, string>} [above]
 */
function writeStyle(shown, copy, above = {}) {
  const computed = getComputedStyle(shown);
  const here = Object.fromEntries(
    [...Object.keys(alone), ...handedDown].map((name) => [
      name,
      computed
        .getPropertyValue(name)
        .replace(/url\("(#[^"]*)"\)/, 'url($1)')
        .replace(/(\d)px/g, '$1'),
    ]),
  );
  for (const [name, value] of Object.entries(here)) {
    if (value === above[name]) copy.removeAttribute(name);
    else copy.setAttribute(name, value);
  }
  // What is only for the page, or only for its hearers, says nothing in another program.
  for (const name of copy.getAttributeNames()) if (ofPage.test(name)) copy.removeAttribute(name);
  const copies = [...copy.children];
  [...shown.children].forEach((child, i) => {
    if (child.getAttribute('data-on') === 'page') copies[i].remove();
    else writeStyle(child, copies[i], { ...here, ...alone });
  });
}

/**
 * The drawing's room, with what of its words runs over it, in whole pixels: half of one at the edge would be
 * half paper.
 * @param {SVGSVGElement} drawing
 */
function roomOf(drawing) {
  const { width, height } = drawing.viewBox.baseVal;
  const frame = drawing.getBoundingClientRect();
  const words = [...drawing.querySelectorAll('text')]
    .map((one) => one.getBoundingClientRect())
    .filter((box) => box.width > 0);
  const over = (/** @type {(box: DOMRect) => number} */ far) =>
    Math.ceil((Math.max(0, ...words.map(far)) * width) / frame.width);
  const before = over((box) => frame.left - box.left);
  return {
    before,
    width: Math.ceil(width),
    height: Math.ceil(height) + over((box) => box.bottom - frame.bottom),
    whole: before + Math.ceil(width) + over((box) => box.right - frame.right),
  };
}

/**
 * The drawings of one place, one below the other, as one picture.
 * @param {SVGSVGElement[]} drawings @returns {{ text: string, width: number, height: number }}
 */
function writePicture(drawings) {
  const { ownerDocument: document } = drawings[0];
  const rooms = drawings.map(roomOf);
  const width = Math.max(...rooms.map(({ whole }) => whole)) + 2 * space;
  const picture = document.createElementNS(namespace, 'svg');
  const make = (/** @type {string} */ name, /** @type {Record<string, unknown>} */ attributes) => {
    const node = document.createElementNS(namespace, name);
    for (const [key, value] of Object.entries(attributes)) node.setAttribute(key, String(value));
    picture.append(node);
    return node;
  };
  make('title', {}).textContent = drawings
    .map((one) => one.getAttribute('aria-label') ?? '')
    .join(' ');
  const paper = make('rect', { width: '100%', height: '100%' });
  let y = space;
  inLightColours(document, () => {
    paper.setAttribute('fill', getComputedStyle(document.body).backgroundColor);
    drawings.forEach((drawing, i) => {
      const copy = /** @type {SVGSVGElement} */ (drawing.cloneNode(true));
      writeStyle(drawing, copy);
      const { before, width: wide, height } = rooms[i];
      const place = { x: space + before, y, width: wide, height, overflow: 'visible' };
      for (const [key, value] of Object.entries(place)) copy.setAttribute(key, String(value));
      copy.setAttribute('preserveAspectRatio', 'xMinYMin');
      picture.append(copy);
      y += height + space;
    });
  });
  for (const [key, value] of Object.entries({ width, height: y, viewBox: `0 0 ${width} ${y}` })) {
    picture.setAttribute(key, String(value));
  }
  return { text: new XMLSerializer().serializeToString(picture), width, height: y };
}

/** Painted from a data address: from a file, too, the browser then lets the picture be read back. @param {ReturnType<typeof writePicture>} picture @returns {Promise<Blob>} */
async function paint({ text, width, height }) {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
  await image.decode();
  const scale = Math.min(finest, Math.sqrt(mostPixels / (width * height)));
  const canvas = document.createElement('canvas');
  canvas.width = Math.floor(width * scale);
  canvas.height = Math.floor(height * scale);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('not painted'))), 'image/png');
  });
}

/** @param {Element} button */
async function save(button) {
  const place = button.closest('[data-drawing]');
  const drawings = /** @type {SVGSVGElement[]} */ ([
    ...(place?.querySelectorAll('svg[aria-label]') ?? []),
  ]).filter((one) => one.getClientRects().length > 0);
  if (drawings.length === 0) return;
  const picture = writePicture(drawings);
  const kind = button.getAttribute('data-save')?.toLowerCase();
  const blob =
    kind === 'png'
      ? await paint(picture)
      : new Blob([`<?xml version="1.0" encoding="UTF-8"?>\n${picture.text}\n`], {
          type: 'image/svg+xml',
        });
  handOver(button.ownerDocument, blob, `${button.getAttribute('data-file')}.${kind}`);
}

/** @param {Document} document @param {() => void} fail where a picture cannot be made */
export function listenForSaving(document, fail) {
  document.addEventListener('click', (event) => {
    const button = event.target instanceof Element && event.target.closest('[data-save]');
    if (!button) return;
    save(button).catch(fail);
  });
}
