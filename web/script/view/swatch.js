// The first reading of the swatch, drawn beside its fields.
import { drawSwatch } from '../draw/swatch.js';
import { drawingWords } from '../../words/en.js';
import { formatNumber } from '../units.js';

/** @typedef {import('./showing.js').Showing} Showing */

// The longer side, in the drawing's units.
const side = 104;

/** @param {Document} document @param {Showing} showing */
export function viewSwatch(document, { request }) {
  const reading = request.swatch?.readings?.[0];
  if (!reading?.rounds || !reading.heightMm) return [];
  const { stitches, widthMm, rounds, heightMm } = reading;
  const scale = side / Math.max(widthMm, heightMm);
  const across = drawingWords.swatchAcross(formatNumber(stitches, 2));
  const up = drawingWords.swatchUp(formatNumber(rounds, 2));
  const name = drawingWords.swatchName(formatNumber(stitches, 2), formatNumber(rounds, 2));
  return [
    drawSwatch(document, {
      stitches,
      rounds,
      wide: widthMm * scale,
      tall: heightMm * scale,
      across,
      up,
      name,
    }),
  ];
}
