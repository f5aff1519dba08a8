// What to do at each stage: of every round of many plans, held against the reply's own rounds and lines.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at } from '../../tools/js/paths.mjs';
import { stageAt, stageOfRound, stagesOf } from '../../web/script/view/knit/stages.js';
import { sayStage } from '../../web/script/view/knit/stages_say.js';

const core = await loadCore();
const requestOf = (name) =>
  JSON.parse(readFileSync(at('tests', 'golden', name, 'request.json'), 'utf8'));

/** A golden request, changed, and answered. */
function planOf(name, change = () => {}) {
  const request = requestOf(name);
  change(request);
  const reply = JSON.parse(core.answer('plan', JSON.stringify(request)));
  assert.ok(reply.ok, JSON.stringify(reply.problems));
  return reply.plan;
}

const ribOf = (knit, purl, roundsPerShift, lean) => (request) =>
  (request.rib = { knit, purl, roundsPerShift, lean });

const plans = {
  usual: planOf('contract-example'),
  small: planOf('child-in-eu-27'),
  widened: planOf('wide-calf'),
  'widened and mirrored, uneven halves': planOf('wide-calf', (request) => {
    request.swatch.readings[0].stitches = 22;
    ribOf(4, 2, 4, 'mirrored')(request);
  }),
  mirrored: planOf('mirrored-own-count'),
  right: planOf('contract-example', ribOf(3, 1, 2, 'right')),
  'without a cuff': planOf('contract-example', (request) => (request.cuffMm = 0)),
  'a left and a right toe': planOf('left-right-and-substitute'),
  straight: planOf('contract-example', ribOf(2, 2, 0, 'left')),
  moss: planOf('k1p1-every-round'),
  'cast on as wide as it goes': planOf('contract-example', (request) => (request.toe.tipShare = 1)),
  'as low as it may be': planOf('contract-example', (request) => (request.legHeightMm = 115)),
};

const showingOf = (plan) => ({ plan, request: {}, system: 'metric' });

/** The run of every round, from the reply alone. */
const runsOf = ({ rounds }) => rounds.flatMap((run) => Array(run.rounds).fill(run));

/** Which stage the reply's own section of a round is told in. */
function stageOfSection(plan, { section, stitches }, round) {
  if (section === 'toe') return round === 0 ? 'setUp' : 'toe';
  if (section === 'spiral') return round < plan.tryOnRound ? 'rib' : 'leg';
  if (section === 'cuff') return 'cuff';
  return `wider${plan.widening.stages.findIndex((stage) => stage.stitches === stitches)}`;
}

/** A line stitch by stitch, as it found the needle: what it made is left out; and as it left it. */
function stitchesOf(line) {
  const kinds = { k: 'k', p: 'p', m1p: 'p', m1l: 'k', m1r: 'k' };
  const all = line.halves.flat();
  const unfold = (runs) => runs.flatMap(([work, times]) => Array(times).fill(kinds[work])).join('');
  return { found: unfold(all.filter(([work]) => !work.startsWith('m'))), left: unfold(all) };
}

/** How a round stands to the one before, looked at on its outside: knitting goes from right to left. */
function moveBetween(then, now) {
  if (then === now) return '';
  const moved = (by) => [...now].every((stitch, i) => stitch === then.at((i + by) % then.length));
  const ways = [moved(-1) && 'left', moved(1) && 'right'].filter(Boolean);
  assert.ok(ways.length > 0, `${then} to ${now}`);
  return ways.length === 2 ? 'change' : ways[0];
}

describe('of every plan', () => {
  for (const [name, plan] of Object.entries(plans)) {
    const stages = stagesOf(showingOf(plan));

    it(`${name}: each round has the one stage that its section tells`, () => {
      const runs = runsOf(plan);
      assert.equal(runs.length, plan.totalRounds);
      runs.forEach((run, round) => {
        const own = stages.filter(({ from, to }) => from <= round && round < to);
        assert.deepEqual(
          own.map(({ key }) => key),
          [stageOfSection(plan, run, round)],
          `round ${round + 1}`,
        );
        assert.equal(stageOfRound(stages, round), own[0]);
        assert.equal(stageAt(stages, { round, pass: 1 }), own[0]);
      });
      assert.equal(stageOfRound(stages, plan.totalRounds), undefined);
    });

    it(`${name}: told in the order in which it is knit, up to the cuff, and off`, () => {
      const begins = stages.map(({ from }) => from);
      assert.deepEqual(
        begins,
        [...begins].sort((a, b) => a - b),
      );
      const last = stageOfRound(stages, plan.totalRounds - 1);
      if (plan.cuff.rounds > 0) assert.equal(last.key, 'cuff');
      else assert.match(last.key, /^(rib|leg|wider\d)$/);
      assert.match(last.steps.at(-1), /Begin no further round with less than/);
      assert.deepEqual(
        stages.slice(-4).map(({ key }) => key),
        ['bindOff', 'finish', 'again', 'give'],
      );
    });

    it(`${name}: before a round is begun, what comes before it`, () => {
      const next = (round) => stageAt(stages, { round, pass: 0 }).key;
      assert.equal(next(0), 'castOn');
      assert.equal(next(plan.toe.rounds), 'measure');
      assert.equal(next(plan.toe.rounds + 1), stageOfRound(stages, plan.toe.rounds + 1).key);
      if (plan.tryOnRound < plan.totalRounds) assert.equal(next(plan.tryOnRound), 'tryOn');
      assert.equal(next(plan.totalRounds), 'bindOff');
    });

    it(`${name}: a round that moves the rib says which way, for each sock, and no other does`, () => {
      const runs = runsOf(plan);
      const crossings = new Map(
        plan.widening.stages.map(({ ribRound, crossing }) => [
          plan.toe.rounds + ribRound,
          crossing,
        ]),
      );
      const lineOf = (round, isSecond) => {
        const { line, secondLine } = runs[round];
        const { found, left } = stitchesOf(plan.lines[isSecond ? (secondLine ?? line) : line]);
        // Stitches that change halves where B's round begins: the next one begins that much later.
        const crossing = isSecond && secondLine !== undefined ? (crossings.get(round) ?? 0) : 0;
        return { found, left: left.slice(crossing) + left.slice(0, crossing) };
      };
      const isOneByOne = plan.rib.knit === 1 && plan.rib.purl === 1;
      for (let round = plan.toe.rounds + 1; round < plan.totalRounds; round += 1) {
        const [a, b] = [false, true].map((isSecond) =>
          moveBetween(lineOf(round - 1, isSecond).left, lineOf(round, isSecond).found),
        );
        const said = sayStage(showingOf(plan), round);
        const told = isOneByOne
          ? ['change', 'change'].map((way) => (/change places/.test(said) ? way : ''))
          : (/A, to the left: (.*?) B, to the right: (.*)/.exec(said) ?? [said, said, said])
              .slice(1, 3)
              .map(
                (text) => /knit the purl (left|right) of each rib, purl its/.exec(text)?.[1] ?? '',
              );
        assert.deepEqual(told, [a, b], `round ${round + 1}: ${said}`);
      }
    });

    it(`${name}: says the rest where it belongs, and nothing in a round like the one before`, () => {
      const runs = runsOf(plan);
      const widens = new Set(
        plan.widening.stages.map(({ ribRound }) => plan.toe.rounds + ribRound),
      );
      for (let round = 0; round <= plan.totalRounds; round += 1) {
        const said = sayStage(showingOf(plan), round);
        const says = (pattern) => pattern.test(said);
        const isToe = round < plan.toe.rounds;
        assert.equal(says(/^Cast on first/), round === 0, said);
        assert.equal(says(/M1R: lift/) && isToe, isToe && plan.toe.sides[round] !== 'none', said);
        assert.equal(says(/measure the toe/), round === plan.toe.rounds, said);
        assert.equal(says(/This is the first round of the rib/), round === plan.toe.rounds, said);
        assert.equal(
          says(/lifeline and try both on/),
          round === plan.tryOnRound && round < plan.totalRounds,
          said,
        );
        assert.equal(says(/The leg widens in this round/), widens.has(round), said);
        const isCuff = plan.cuff.rounds > 0 && round === plan.totalRounds - plan.cuff.rounds;
        assert.equal(says(/The cuff begins/), isCuff, said);
        assert.equal(
          says(/^The last round|(?<=\. )The last round/),
          round === plan.totalRounds - 1,
        );
        assert.equal(says(/bind off \(cast off\) with give/), round === plan.totalRounds);
        const isMarked =
          round === plan.tryOnRound || round >= plan.totalRounds - 1 || isCuff || widens.has(round);
        if (round > 0 && runs[round] === runs[round - 1] && !isMarked && plan.toe.rounds !== round)
          assert.equal(said, '');
      }
    });
  }

  it('the example: its yarn, wraps, rounds and lengths, in her units', () => {
    const told = (system) =>
      stagesOf({ plan: plans.usual, request: {}, system })
        .flatMap(({ steps }) => steps)
        .join(' ');
    const metric = told('metric');
    for (const text of [
      'A and B take 95 m (48 g) of yarn each',
      'yarn B 8 times round both',
      'Increase in rounds 2–3, 5–6, 8, 11; knit all others. That makes 40 stitches a sock.',
      'Round 18 is the first of the rib: each half: *k2, p2* 5 times.',
      'Every 4 rounds it moves one stitch to the left, first in round 22',
      'At 28.7 cm each sock',
      'for the last time in round 110',
      'less than 2.2 m left of either yarn',
      'It takes 1.2 m of yarn a sock',
      '43.6 cm long, 14.2 cm at rest, 20.3 cm eased open',
    ])
      assert.ok(metric.includes(text), text);
    const inch = told('inch');
    assert.match(inch, /104 yd \(1\.7 oz\)/);
    assert.match(inch, /At 11[^ ]* in each sock/);
    assert.doesNotMatch(inch, /\d (cm|m|g)\b/);
  });
});
