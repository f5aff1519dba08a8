// A begun sock as its knitter sees it, and what the reply says of it.
import { loadCore } from '../../tools/js/load_core.mjs';
import { readKept } from './knitting.mjs';
import { again, changeKept } from './open_page.mjs';

const core = await loadCore();
const ask = (question, request) => JSON.parse(core.answer(question, JSON.stringify(request)));

/** Puts the place behind the page's back: rounds done, and passes of the next. */
export async function standAt(page, round, pass = 0) {
  await changeKept(page, `Object.assign(sheet.started, { round: ${round}, pass: ${pass} });`);
  await again(page);
}

/** The kept place, as [round, pass]. */
export async function placeIn(page) {
  const { round, pass } = await readKept(page);
  return [round, pass];
}

/** The plan that the core makes of the request it was begun with. */
export const planOf = async (page) => ask('plan', (await readKept(page)).request).plan;

const metres = ({ yarn }, part) => yarn.sections.find(({ section }) => section === part).m;

/** What the core says of a place in a plan. */
export const placeOf = (plan, [rounds, passes], more = {}) =>
  ask('place', {
    version: 1,
    sock: {
      rounds: plan.rounds,
      mmPerStitch: plan.yarn.mmPerStitch,
      castOnM: metres(plan, 'castOn'),
      bindOffM: metres(plan, 'bindOff'),
      tailsM: metres(plan, 'tails'),
    },
    done: { rounds, passes },
    ...more,
  }).place;

/** The lines of every round, from 0: of sock A and of sock B. */
export const linesOf = (plan) =>
  plan.rounds.flatMap(({ rounds, line, secondLine = line }) =>
    Array.from({ length: rounds }, () => [plan.lines[line], plan.lines[secondLine]]),
  );

/** What each of the four passes of a round works, as one text a stitch. */
export const workOf = ([a, b]) =>
  [a.halves[0], b.halves[0], b.halves[1], a.halves[1]].map((runs) =>
    runs.flatMap(([work, times]) => Array(times).fill(work)),
  );

/** The same, read from its words; of a half without a number as many as it has stitches. */
export function workTold(text, stitches) {
  if (text === 'knit' || text === 'purl') return Array(stitches).fill(text[0]);
  const whole = text.replaceAll(/\*([^*]*)\* (\d+) times/g, (_, runs, times) =>
    Array(Number(times)).fill(runs).join(', '),
  );
  return whole.split(', ').flatMap((run) => {
    const [, made, work, times] = /^(?:(M1[LRP])|([kp])(\d+))$/.exec(run) ?? [];
    return made ? [made.toLowerCase()] : Array(Number(times)).fill(work);
  });
}

/** The view, as texts. */
export const readView = (page) =>
  page.evaluate(() => {
    const texts = (css) => [...document.querySelectorAll(css)].map((node) => node.textContent);
    return {
      round: document.querySelector('.work-round b').textContent,
      stage: texts('.work-stage').join(''),
      passes: [...document.querySelectorAll('.work-pass')].map((pass) => ({
        which: pass.querySelector('.which').textContent,
        work: pass.querySelector('.work').textContent,
        state: pass.querySelector('.state').textContent,
        isPressed: pass.getAttribute('aria-pressed') === 'true',
        isNow: pass.getAttribute('aria-current') === 'step',
      })),
      order: [...document.querySelectorAll('.work-passes > li')].map((item) =>
        item.className === 'turn' ? item.textContent : item.querySelector('.which b').textContent,
      ),
      facts: Object.fromEntries(
        [...document.querySelectorAll('.work-facts div')].map((fact) => [
          fact.querySelector('dt').textContent,
          fact.querySelector('dd').textContent.replace(/[\u00a0\u202f\u2009]/g, ' '),
        ]),
      ),
      ahead: texts('.work-ahead li'),
      next: texts('.work-bar .next').join(''),
    };
  });

/** A wish of the device, as it is pressed. */
export const wish = (page, name) => page.getByRole('button', { name, exact: true });

export const next = (page) => page.locator('.work-bar .next').click();
