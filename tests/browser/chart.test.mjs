// The rib chart against the plan it is of: every square, every mark, in every window.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';

import { readDraft } from '../../web/script/form/request.js';
import { reduce, startState } from '../../web/script/state.js';
import { goTo, openBrowser } from './open_page.mjs';

const sockmath = fileURLToPath(new URL('../../build/native/sockmath', import.meta.url));
const cell = 16;

let open;
let end;
before(async () => ({ open, end } = await openBrowser()));
after(() => end());

/** The plan that the native core makes of the example with these fields typed over. */
function planOf(typed) {
  const state = Object.entries(typed).reduce(
    (now, [pointer, text]) =>
      reduce(now, { type: 'typed', pointer, typed: text, unit: now.draft[pointer]?.unit ?? '' }),
    startState(),
  );
  const { request } = readDraft(state.draft);
  const reply = JSON.parse(
    execFileSync(sockmath, ['plan'], { input: JSON.stringify(request), encoding: 'utf8' }),
  );
  assert.ok(reply.ok, JSON.stringify(reply.problems));
  return reply.plan;
}

async function openWith(typed, context) {
  const { page, seen } = await open(context);
  await page.locator('.finer > summary').click();
  for (const [pointer, text] of Object.entries(typed)) {
    const field = page.locator(`#f${pointer.replaceAll('/', '-')}`);
    if ((await field.evaluate((node) => node.localName)) === 'select') {
      await field.selectOption(text);
    } else await field.fill(text);
  }
  await goTo(page, 'Knit');
  return { page, seen };
}

async function ask(page, from, to) {
  for (const [id, round] of [
    ['chart-from', from],
    ['chart-to', to],
  ]) {
    await page.locator(`#${id}`).fill(String(round));
    await page.locator(`#${id}`).press('Enter');
  }
}

/** What a chart's paths say, square by square: its rounds from the lowest up, stitches from the right. */
const readCharts = (page) =>
  page.evaluate((wide) => {
    const read = (svg) => {
      const path = (kind) => svg.querySelector(`.${kind}`)?.getAttribute('d') ?? '';
      const all = (kind, shape) =>
        [...path(kind).matchAll(shape)].map(([, ...found]) =>
          found.map((one) => (Number.isNaN(Number(one)) ? one : Number(one))),
        );
      const boxes = all('knits', /M([\d.-]+) ([\d.-]+)h(-[\d.]+)v16/g);
      const dots = all('dots', /M([\d.-]+) ([\d.-]+)((?:m-16 0|h0)+)/g).flatMap(([x, y, run]) =>
        run.split('m').map((_, i) => [x - i * wide, y]),
      );
      const made = all('made', /M([\d.-]+) ([\d.-]+)(m[^M]+)/g);
      const changed = all('changed', /M([\d.-]+) ([\d.-]+)h10/g);
      const [[half]] = all('half', /M([\d.-]+) /g);
      const numbers = [...svg.querySelectorAll('.chart-number:not([text-anchor])')].map((text) => [
        Number(text.textContent),
        Number(text.getAttribute('y')) - wide + 4,
      ]);
      const rounds = numbers.map(([number, y]) => {
        const own = boxes.filter((box) => box[1] === y).sort((a, b) => b[0] - a[0]);
        const halves = own.map(([right, , width]) =>
          Array.from({ length: -width / wide }, (_, i) => {
            const x = right - (i + 0.5) * wide;
            const here = (at) => at[0] === x && at[1] === y + wide / 2;
            const sign = made.find(here)?.[2];
            return {
              sign: sign ?? (dots.some(here) ? 'p' : 'k'),
              isChanged: changed.some((at) => at[0] + 5 === x && at[1] === y + wide - 2),
            };
          }),
        );
        const [first, second] = own.map(([right, , width]) => ({ right, left: right + width }));
        return { number, halves, isParted: first.left >= half && second.right <= half };
      });
      const count = { dots: dots.length, made: made.length, changed: changed.length };
      return { rounds, count, name: svg.getAttribute('aria-label') };
    };
    return [...document.querySelectorAll('.chart-scroll svg')].map(read);
  }, cell);

const works = (line) =>
  line.halves.map((runs) => runs.flatMap(([work, times]) => Array(times).fill(work)));

/** Each round's line for a sock, from round 1. */
const linesOf = (plan, isSecond) =>
  plan.rounds.flatMap((span) =>
    Array(span.rounds).fill(plan.lines[(isSecond ? span.secondLine : undefined) ?? span.line]),
  );

const arms = { '5 -5': 'm1r', '-5 -5': 'm1l', '-4 -5': 'm1p' };
const workOf = (sign) =>
  sign.length === 1 ? sign : arms[/l(-?\d -5)/.exec(sign)?.[1] ?? 'no arm'];

/** Holds one drawn chart against the plan's lines. */
function assertChart(chart, plan, { from, to, isSecond = false }) {
  const lines = linesOf(plan, isSecond);
  assert.deepEqual(
    chart.rounds.map(({ number }) => number),
    Array.from({ length: to - from + 1 }, (_, i) => from + i),
  );
  let [dots, made] = [0, 0];
  for (const { number, halves, isParted } of chart.rounds) {
    const expected = works(lines[number - 1]);
    const drawn = halves.map((half) => half.map(({ sign }) => workOf(sign)));
    assert.deepEqual(drawn, expected, `round ${number}`);
    assert.ok(isParted, `round ${number}: the strong line stands between the halves`);
    dots += expected.flat().filter((work) => work === 'p').length;
    made += expected.flat().filter((work) => work.startsWith('m1')).length;
  }
  // No mark that belongs to no square.
  assert.deepEqual([chart.count.dots, chart.count.made], [dots, made]);
}

const ribs = [
  ['the example', {}],
  ['1x1', { '/rib/knit': '1', '/rib/purl': '1' }],
  ['k3 p2, whose halves are odd', { '/rib/knit': '3', '/rib/purl': '2', '/stitchCount': '50' }],
  ['leaning right', { '/rib/lean': 'right' }],
  ['mirrored', { '/rib/lean': 'mirrored' }],
  ['straight', { '/rib/roundsPerShift': '0' }],
  ['moved every round', { '/rib/roundsPerShift': '1', '/rib/knit': '3', '/rib/purl': '3' }],
];

for (const [name, typed] of ribs) {
  test(`${name}: one turn of the rib, as the plan’s lines have it`, async () => {
    const plan = planOf(typed);
    const { page } = await openWith(typed);
    const charts = await readCharts(page);
    const from = plan.toe.rounds + 1;
    const turn = Math.max(plan.spiral.periodRounds, 4);
    assert.equal(charts.length, typed['/rib/lean'] === 'mirrored' ? 2 : 1);
    charts.forEach((chart, i) =>
      assertChart(chart, plan, { from, to: from + turn - 1, isSecond: i === 1 }),
    );
    await page.context().close();
  });
}

test('the squares marked are those that the move changed, by the rule of the rib itself', async () => {
  for (const lean of ['left', 'right']) {
    const { page } = await openWith({ '/rib/lean': lean });
    const [chart] = await readCharts(page);
    const isKnit = (round, i) => {
      const moved = Math.floor(round / 4) * (lean === 'left' ? -1 : 1);
      return (((i + moved) % 4) + 4) % 4 < 2;
    };
    let changed = 0;
    chart.rounds.forEach(({ halves }, round) =>
      halves.flat().forEach(({ isChanged }, i) => {
        const expected = round > 0 && isKnit(round, i) !== isKnit(round - 1, i);
        assert.equal(isChanged, expected, `${lean}: round ${round + 1}, stitch ${i + 1}`);
        changed += expected ? 1 : 0;
      }),
    );
    // Three moves in a turn of sixteen rounds, each changing every other stitch.
    assert.deepEqual([changed, chart.count.changed], [60, 60]);
    await page.context().close();
  }
});

test('any window: the toe with its made stitches, and the rib’s beginning unmarked', async () => {
  const plan = planOf({});
  const { page } = await open();
  await goTo(page, 'Knit');
  await page.getByRole('button', { name: 'the toe', exact: true }).click();
  const [toe] = await readCharts(page);
  assertChart(toe, plan, { from: 1, to: 17 });
  assert.equal(toe.count.made, 4 * plan.toe.increaseRounds);
  assert.equal(toe.count.changed, 0);
  assert.match(await page.locator('.key').getAttribute('aria-label'), /M1R.*M1L.*no stitch/);
  await ask(page, 15, 24);
  const [across] = await readCharts(page);
  assertChart(across, plan, { from: 15, to: 24 });
  const marked = across.rounds.filter(({ halves }) => halves.flat().some((one) => one.isChanged));
  // Round 18 is the first of the rib: it has not moved there, but four rounds on.
  assert.deepEqual(
    marked.map(({ number }) => number),
    [22],
  );
});

test('a widened leg: made stitches in their places, only what moved marked', async () => {
  const typed = { '/foot/calfGirthMm': '45,2', '/legHeightMm': '35' };
  const plan = planOf(typed);
  assert.equal(plan.widening.stages.length, 2);
  const { page } = await openWith(typed);
  await page.getByRole('button', { name: /^the wid(ening|er leg)$/ }).click();
  const [chart] = await readCharts(page);
  const first = plan.toe.rounds + plan.spiral.rounds;
  const to = plan.totalRounds - plan.cuff.rounds;
  assertChart(chart, plan, { from: first, to });
  assert.equal(chart.count.made, 20);
  const isMade = (halves) => halves.flat().some(({ sign }) => sign.length > 1);
  const widened = chart.rounds.filter(({ halves }) => isMade(halves));
  assert.equal(widened.length, 2);
  // Marked in a round, then every other square but the made ones: a rib of two has two edges.
  for (const { halves } of chart.rounds) {
    const marks = halves.flat().filter((one) => one.isChanged).length;
    const repeats = halves.flat().length / (halves.flat().length === 60 ? 6 : 5);
    assert.ok([0, 2 * repeats].includes(marks) || isMade(halves), `${marks}`);
  }
  // Made stitches are told in the words beside it.
  await page.getByText('The chart in words').click();
  const told = await page.locator('#chart tbody').textContent();
  assert.match(told, /M1P/i);
  assert.match(told, /M1L/);
});

test('the two fields and the steps show any rounds there are, and no others', async () => {
  const { page } = await open();
  await goTo(page, 'Knit');
  const shown = async () => [
    Number(await page.inputValue('#chart-from')),
    Number(await page.inputValue('#chart-to')),
  ];
  assert.deepEqual(await shown(), [18, 33]);
  await page.getByRole('button', { name: 'higher rounds' }).click();
  assert.deepEqual(await shown(), [34, 49]);
  await page.getByRole('button', { name: 'lower rounds' }).click();
  await page.getByRole('button', { name: 'lower rounds' }).click();
  assert.deepEqual(await shown(), [2, 17]);
  await page.getByRole('button', { name: 'lower rounds' }).click();
  assert.deepEqual(await shown(), [1, 16]);
  assert.equal(await page.getByRole('button', { name: 'lower rounds' }).isDisabled(), true);
  await ask(page, 100, 500);
  assert.deepEqual(await shown(), [100, 120]);
  await ask(page, 1, 100);
  assert.deepEqual(await shown(), [53, 100]);
  await page.locator('#chart-from').fill('');
  await page.locator('#chart-from').press('Tab');
  assert.deepEqual(await shown(), [53, 100]);
  const [chart] = await readCharts(page);
  assert.match(chart.name, /rounds 53–100 of 120/);
  // A sock that becomes shorter keeps the window inside itself.
  await goTo(page, 'Count');
  await page.locator('#f-legHeightMm').fill('15');
  await goTo(page, 'Knit');
  const [from, to] = await shown();
  assert.equal(to - from, 47);
  assert.ok(to <= Number(/of (\d+)/.exec(await page.locator('.chart-of').textContent())[1]));
  await page.getByRole('button', { name: 'one whole turn of the rib' }).click();
  assert.deepEqual(await shown(), [18, 33]);
});

test('a long turn on a wide sock: a window of it, in few nodes, and the page stays put', async () => {
  const { page } = await openWith(
    {
      '/swatch/readings/0/stitches': '96',
      '/swatch/readings/0/rounds': '120',
      '/rib/knit': '12',
      '/rib/purl': '12',
      '/rib/roundsPerShift': '40',
    },
    { viewport: { width: 320, height: 700 } },
  );
  const state = await page.evaluate(() => {
    const scroll = document.querySelector('.chart-scroll');
    const { right } = scroll.querySelector('.half').ownerSVGElement.getBoundingClientRect();
    return {
      nodes: document.querySelectorAll('#chart svg *').length,
      paths: document.querySelectorAll('.chart-scroll path').length,
      aside: document.documentElement.scrollWidth,
      over: scroll.scrollWidth - scroll.clientWidth,
      // The end it is read from is in sight.
      isRight: Math.abs(right - scroll.getBoundingClientRect().right) < 2,
    };
  });
  assert.ok(state.nodes < 160 && state.paths < 12, JSON.stringify(state));
  assert.equal(state.aside, 320);
  assert.ok(state.over > 1000 && state.isRight, JSON.stringify(state));
  assert.match(await page.locator('.chart-title').first().textContent(), /rounds \d+–\d+ of \d{3}/);
  // By keyboard alone.
  await page.locator('.chart-scroll').focus();
  await page.keyboard.press('ArrowLeft');
  await page.waitForFunction(() => document.querySelector('.chart-scroll').scrollLeft < 0);
});
