// How long a round takes: from one end of a round to the next by the clock, pauses apart, and which of them count.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';

import { lapsThatCount } from '../../web/script/state/laps.js';
import { beginning } from '../../web/script/state/place.js';
import { reduce, startState } from '../../web/script/state.js';

// A sock of five rounds: two of 8 stitches, three of 12; the pair has twice as many.
const plan = {
  totalRounds: 5,
  rounds: [
    { rounds: 2, stitches: 8 },
    { rounds: 3, stitches: 12 },
  ],
};
const begun = (more = {}) => ({
  ...beginning,
  request: { version: 1 },
  reply: { plan },
  since: '2026-01-01T00:00:00.000Z',
  ...more,
});
const sock = (more) => ({ ...startState(), started: begun(more) });
const all = (state, ...actions) => actions.reduce(reduce, state);
const tap = (now = 0) => ({ type: 'tapped', now });
const taps = (count, from = 0, apart = 0) =>
  Array.from({ length: count }, (_, i) => tap(from + i * apart));

describe('a lap', () => {
  const on = (now) => ({ type: 'timed', isOn: true, now });
  const lapsOf = (...actions) => all(sock(), ...actions).started.laps;
  // Seconds are milliseconds by a thousand: a round of four passes, 15 s each.
  const round = (from) => taps(4, from + 15000, 15000);

  it('is a whole round of the pair, if the clock was put on before it', () =>
    assert.deepEqual(lapsOf(on(1), ...round(1)), [[16, 60]]));
  it('goes on to the next round, which may have more stitches', () =>
    assert.deepEqual(lapsOf(on(1), ...round(1), ...round(60001), ...round(120001)), [
      [16, 60],
      [16, 60],
      [24, 60],
    ]));
  it('is none where the clock was put on in mid-round', () =>
    assert.deepEqual(lapsOf(tap(), on(1), ...taps(3, 15000, 15000)), []));
  it('is none where the round was gone back in', () =>
    assert.deepEqual(lapsOf(on(1), tap(2), { type: 'untapped' }, ...round(3)), []));
  it('leaves out a pause', () =>
    assert.deepEqual(
      lapsOf(
        on(1),
        tap(15001),
        { type: 'paused', isOn: true, now: 20001 },
        { type: 'paused', isOn: false, now: 920001 },
        ...taps(3, 930001, 15000),
      ),
      [[16, 60]],
    ));
  it('is none where it was knit in a pause, and the next one is again', () =>
    assert.deepEqual(
      lapsOf(on(1), { type: 'paused', isOn: true, now: 2 }, ...round(3), ...round(60003)),
      [[16, 60]],
    ));

  it('is one as well where the pass itself was tapped', () => {
    const placed = taps(4, 15001, 15000).map(({ now }, i) => ({
      type: 'placed',
      round: 0,
      pass: i + 1,
      now,
    }));
    assert.deepEqual(lapsOf(on(1), ...placed), [[16, 60]]);
    // A leap is none, be it by one tap.
    assert.deepEqual(lapsOf(on(1), { ...placed[3], now: 60001 }), []);
  });

  const lap = (seconds, stitches = 20) => [stitches, seconds];
  const counting = [
    ['none of none', [], []],
    ['one by itself', [lap(60)], [lap(60)]],
    [
      'three times the median, and no more',
      [lap(60), lap(60), lap(180)],
      [lap(60), lap(60), lap(180)],
    ],
    ['not one a breath longer', [lap(60), lap(60), lap(180.1)], [lap(60), lap(60)]],
    [
      'by the stitch, for a wide round takes longer',
      [lap(60), lap(60), lap(300, 100)],
      [lap(60), lap(60), lap(300, 100)],
    ],
  ];
  for (const [name, laps, those] of counting)
    it(`counts: ${name}`, () => assert.deepEqual(lapsThatCount(laps), those));
});
