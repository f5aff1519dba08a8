// Every sentence the page says, by code. Numbers arrive as text, already in the reader's units.
export { fieldWords, formWords, leanWords, optionWords, scaleWords } from './en/fields.js';
export { problemWords } from './en/problems.js';
export { cautionWords } from './en/cautions.js';
export { pageWords } from './en/page.js';
export { drawingWords } from './en/drawing.js';
export { chartWords } from './en/chart.js';
export { howWords } from './en/how.js';
export { measureWords } from './en/measures.js';
export { planWords } from './en/plan.js';
export { needlesWords } from './en/needles.js';
export { keptWords } from './en/kept.js';
export { lostWords } from './en/lost.js';
export { lessonWords } from './en/lesson.js';
export { socksWords } from './en/socks.js';
export { alongWords } from './en/along.js';
export { sheetWords } from './en/sheet.js';
export { stripesWords } from './en/stripes.js';
export { stagesWords } from './en/stages.js';
export { helpingWords, oddWords } from './en/odd.js';
export { rosterWords } from './en/roster.js';
export { supplyWords, takeWords } from './en/supply.js';
export { driveCautions, driveWords } from './en/drive.js';
export { weeksWords } from './en/weeks.js';
export { bandWords } from './en/band.js';
export { projectorWords } from './en/projector.js';
export { classYarnWords } from './en/class_yarns.js';
export { tagWords } from './en/tags.js';
export { penWords } from './en/pen_sheet.js';
export { stretchWords } from './en/stretch.js';
export { guessWords, noteWords } from './en/note.js';
export { buyWords } from './en/buy.js';
export { swatchingWords } from './en/swatching.js';
export { footWords } from './en/foot.js';
export {
  figureWords,
  perWords,
  ruleWords,
  sourceWords,
  twoWaysWords,
  unitWords,
  workingWords,
} from './en/working.js';
export { fitLines } from './en/working_lines_fit.js';
export { makingLines } from './en/working_lines_making.js';
export { offlineWords } from './en/offline.js';
export { numberWords } from './en/working_numbers.js';
export { swatchWords } from './en/swatch.js';
export { measuredWords, yarnLeftWords } from './en/measured.js';
