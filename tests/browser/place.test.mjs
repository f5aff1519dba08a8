// The place in the knitting: pure steps, each way.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { isBegun } from '../../web/script/state/begun.js';
import { beginning, isPlace, roomFor } from '../../web/script/state/place.js';
import { fromSheet, reduce, startState, toSheet, writeSheet } from '../../web/script/state.js';

const { plan } = JSON.parse(
  readFileSync(new URL('../golden/contract-example/reply.json', import.meta.url), 'utf8'),
);
const all = plan.totalRounds;
const since = '2027-01-12T19:00:00.000Z';
const begun = (place = {}) => ({
  ...startState(),
  started: { ...beginning, request: {}, reply: { plan }, since, ...place },
});
const at = ({ started: { round, pass, taps } }) => [round, pass, taps];
const tap = (state, now = 0) => reduce(state, { type: 'tapped', now });
const through = (state, ...actions) => actions.reduce(reduce, state);

describe('a tap', () => {
  it('goes through four passes, and on to the next round', () => {
    const seen = [];
    let state = begun();
    for (let i = 0; i < 5; i += 1) {
      state = tap(state);
      seen.push(at(state).slice(0, 2));
    }
    assert.deepEqual(seen, [
      [0, 1],
      [0, 2],
      [0, 3],
      [1, 0],
      [1, 1],
    ]);
  });

  it('ends where the plan ends', () => {
    const last = begun({ round: all - 1, pass: 3, taps: 7 });
    assert.deepEqual(at(tap(last)), [all, 0, 8]);
    assert.deepEqual(at(tap(tap(last))), [all, 0, 8]);
  });

  it('is nothing before the sock is begun, and not undone by the history of what was typed', () => {
    const { started } = tap(startState());
    assert.equal(started, undefined);
    assert.deepEqual(tap(begun()).past, []);
  });
});

describe('back', () => {
  it('is one pass, over the end of a round too, and nowhere before the first', () => {
    const back = { type: 'untapped' };
    assert.deepEqual(at(through(begun({ round: 3, pass: 0, taps: 12 }), back)), [2, 3, 13]);
    assert.deepEqual(at(through(begun(), back)), [0, 0, 0]);
  });
});

describe('a place that is named', () => {
  for (const [round, pass, there] of [
    [57, 2, [57, 2]],
    [0, 0, [0, 0]],
    [all, 0, [all, 0]],
    [all, 1, [all, 0]],
    [all + 9, 3, [all, 0]],
    [4, 4, [5, 0]],
  ]) {
    it(`${round} ${pass} is ${there}`, () => {
      const state = through(begun({ round: 9, pass: 1 }), { type: 'placed', round, pass });
      assert.deepEqual(at(state).slice(0, 2), there);
    });
  }
});

describe('undo', () => {
  const undo = { type: 'tap undone' };
  it('takes back whatever changed the place, one change at a time', () => {
    const placed = { type: 'placed', round: 57, pass: 2 };
    const state = through(tap(tap(begun())), placed, { type: 'untapped' });
    const back = [undo, undo, undo, undo].map((_, i, undos) => {
      const [round, pass] = at(through(state, ...undos.slice(0, i + 1)));
      return [round, pass];
    });
    assert.deepEqual(back, [
      [57, 2],
      [0, 2],
      [0, 1],
      [0, 0],
    ]);
    assert.deepEqual(at(through(state, undo, undo, undo, undo, undo)), [0, 0, 8]);
  });

  it('knows twelve changes', () => {
    let state = begun();
    for (let i = 0; i < 40; i += 1) state = tap(state);
    assert.equal(state.started.trail.length, 12);
    for (let i = 0; i < 13; i += 1) state = reduce(state, undo);
    assert.deepEqual(at(state).slice(0, 2), [7, 0]);
  });
});

describe('another tab’s place', () => {
  it('is followed with its number', () => {
    const place = { ...beginning, since, round: 8, pass: 1, taps: 40 };
    const state = through(begun({ taps: 39 }), { type: 'followed', place });
    assert.deepEqual(at(state), [8, 1, 40]);
    assert.equal(state.isLate, false);
    const late = reduce(state, { type: 'followed', place, isLate: true });
    assert.equal(late.isLate, true);
    assert.equal(tap(late).isLate, false);
  });
});

describe('a lap', () => {
  const second = 1000;
  const timed = (state, now) => reduce(state, { type: 'timed', isOn: true, now });
  const round = (state, from, seconds) => {
    let next = state;
    for (let i = 1; i <= 4; i += 1) next = tap(next, from + (i * seconds * second) / 4);
    return next;
  };
  const start = 1e12;

  it('is a whole round, of the pair’s stitches', () => {
    const state = round(timed(begun(), start), start, 120);
    assert.deepEqual(state.started.laps, [[2 * plan.rounds[0].stitches, 120]]);
    const next = round(state, start + 120 * second, 240);
    assert.deepEqual(
      next.started.laps.map(([, seconds]) => seconds),
      [120, 240],
    );
  });

  it('does not begin within a round, nor live through a step back', () => {
    const within = round(timed(begun({ pass: 1 }), start), start, 120);
    assert.deepEqual(within.started.laps, []);
    const stepped = through(
      timed(begun(), start),
      { type: 'tapped', now: start },
      { type: 'untapped' },
    );
    assert.deepEqual(round(stepped, start, 120).started.laps, []);
  });

  for (const [seconds, isLap] of [
    [20, false],
    [20.1, true],
    [86399, true],
    [86400, false],
  ]) {
    it(`of ${seconds} seconds is ${isLap ? 'one' : 'none'}`, () => {
      assert.equal(round(timed(begun(), start), start, seconds).started.laps.length, isLap ? 1 : 0);
    });
  }

  it('is no catching up with taps: 80 stitches are not knit in 26 seconds', () => {
    const state = timed(begun({ round: plan.toe.rounds }), start);
    assert.equal(round(state, start, 26).started.laps.length, 0);
    assert.equal(round(state, start, 27).started.laps.length, 1);
  });

  it('is one of nine at most, the last ones, and none when it is not asked for', () => {
    let state = timed(begun(), start);
    for (let i = 0; i < 12; i += 1) state = round(state, start + i * 60 * second, 60);
    assert.equal(state.started.laps.length, 9);
    const off = reduce(state, { type: 'timed', isOn: false, now: 0 });
    assert.equal(off.lapFrom, undefined);
    assert.deepEqual(round(off, start, 60).started.laps, state.started.laps);
  });
});

describe('what is kept', () => {
  it('is as long wherever the knitting stands', () => {
    let state = begun();
    const { length } = writeSheet(state);
    state = reduce(state, { type: 'timed', isOn: true, now: 1 });
    for (let i = 1; i <= all * 4; i += 1) {
      state = tap(state, i * 34567.891);
      if (i % 37 === 0) state = reduce(state, { type: 'untapped' });
      assert.equal(writeSheet(state).length, length, `after ${i} taps`);
    }
    const most = { round: 2000, pass: 3, taps: 999999, since };
    const trail = Array.from({ length: 12 }, () => 8003);
    const laps = Array.from({ length: 9 }, () => [1600, 86399.999]);
    assert.ok(roomFor({ ...most, trail, laps }).length > 0);
  });

  it('is read again as it was', () => {
    const state = tap(tap(begun({ laps: [[80, 400.5]] })));
    const { started } = fromSheet(JSON.parse(JSON.stringify(toSheet(state))));
    assert.deepEqual(started, state.started);
  });

  it('of a shorter plan stands at its end', () => {
    const state = begun({ round: all + 5, pass: 1 });
    const { started } = fromSheet(JSON.parse(JSON.stringify(toSheet(state))));
    assert.deepEqual([started.round, started.pass], [all, 0]);
  });

  for (const [name, bad] of Object.entries({
    'a round below nothing': { round: -1 },
    'half a round': { round: 1.5 },
    'a fifth pass': { pass: 4 },
    'no number of taps': { taps: undefined },
    'a trail of words': { trail: ['1'] },
    'too long a trail': { trail: Array.from({ length: 13 }, () => 1) },
    'a lap without its time': { laps: [[80]] },
    'a lap of no time': { laps: [[80, 0]] },
    'a beginning that is no text': { since: 7 },
  })) {
    it(`is none with ${name}`, () => {
      const { started } = begun();
      assert.ok(isPlace(started));
      assert.equal(isBegun({ ...started, ...bad }), false);
    });
  }
});
