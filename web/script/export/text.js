// The pattern as plain text for a mail: what the page says of the sock, in the order in which it is knit.
import { aboutYarn } from '../view/buy/buy_yarn.js';
import { shoppingList } from '../view/buy/buy_list.js';
import { viewCare, viewCautions } from '../view/count/cautions.js';
import { explainRing } from '../view/guess.js';
import { viewKnit } from '../view/knit/knit.js';
import { viewNote } from '../view/count/note.js';
import { viewStanding } from '../view/page/page_state.js';
import { viewSentence } from '../view/count/sentence.js';
import { tellStages } from '../view/knit/stages_list.js';
import { sheetMilestones } from '../view/paper/sheet_milestones.js';
import { buyWords, sheetWords } from '../../words/en.js';
import { plainly as h, writePlainly } from './plain.js';

/** @param {import('../view/showing.js').Showing} showing */
export const writeText = (showing) =>
  writePlainly([
    h('h1', {}, showing.name || sheetWords.name),
    h('p', {}, viewSentence(h, showing)),
    ...viewStanding(h, showing),
    ...viewNote(h, showing),
    ...viewCautions(h, showing),
    h('h2', {}, buyWords.title),
    ...shoppingList(h, showing),
    ...aboutYarn(h, showing),
    ...tellStages(h, showing),
    ...viewKnit(h, showing),
    ...sheetMilestones(h, showing),
    explainRing(showing, ['rounds']),
    ...viewCare(h),
  ]);
