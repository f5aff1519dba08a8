// The plan as a table with a row for every round.
import { ribTrack } from '../draw/rib_track.js';
import { sayWork } from '../view/knit/knit_toe.js';
import { sayCrossing } from '../view/knit/knit_wider.js';
import { sayHalf } from '../view/knit/lines.js';
import { partsOf, titleOf, writeRib } from '../view/parts.js';
import { alongWords as words, planWords, sheetWords } from '../../words/en.js';

/** @typedef {import('../contract.js').Plan} Plan */
/** @typedef {import('./csv.js').Cell} Cell */

/** What a run of rounds above the toe begins with. @param {Plan} plan @param {import('../draw/rib_track.js').Run} run */
function sayBeginning(plan, { section, isMove, before, standing }) {
  if (!before) return isMove && section !== 'cuff' ? words.moves : '';
  const stage = plan.widening.stages.find(({ stitches }) => stitches === standing.half * 2);
  if (!stage) return '';
  return [
    sheetWords.milestones.wider(writeRib(stage)),
    stage.crossing ? sayCrossing(plan, stage.crossing) : '',
  ]
    .filter(Boolean)
    .join('. ');
}

/** @param {Plan} plan @returns {Cell[][]} the heads first; of socks that are alike one line stands for both */
export function tableOfRounds(plan) {
  const { socks, sockA, sockB, first, second } = planWords.knit.rib;
  const isUnlike = plan.rounds.some(({ secondLine }) => secondLine !== undefined);
  const names = isUnlike ? [sockA, sockB] : [socks];
  const runs = new Map(ribTrack(plan, false).map((run) => [run.from, run]));
  const parts = partsOf(plan);
  let done = 0;
  const rows = plan.rounds.flatMap(({ rounds, stitches, line, secondLine = line }) => {
    const from = done;
    done += rounds;
    const part = parts.find((one) => from < one.from + one.rounds);
    const run = runs.get(from);
    const halves = (isUnlike ? [line, secondLine] : [line]).flatMap((place) => [
      sayHalf(plan.lines[place], 0),
      sayHalf(plan.lines[place], 1),
    ]);
    return Array.from({ length: rounds }, (_, i) => [
      from + i + 1,
      part ? titleOf(plan, part) : '',
      stitches,
      run ? (i === 0 ? sayBeginning(plan, run) : '') : sayWork(plan, plan.toe.sides[from + i]),
      ...halves,
    ]);
  });
  const heads = names.flatMap((name) => [words.half(name, first), words.half(name, second)]);
  return [[...words.heads, ...heads], ...rows];
}
