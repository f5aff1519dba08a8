// The page's module reads numbers with the browser's own Number() (wasm/libc_spared.cpp), the native
// program with the C library: both must land on the same double, and say what is too large alike.
import assert from 'node:assert/strict';
import { it } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';

const core = await loadCore();
const requests = 40;
const seed = Number(process.env.TWINROUND_SEED ?? 19180101);

/** Draws the same everywhere (a linear congruence of 32 bits). */
function makeDice(start) {
  let state = start >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A number written with many digits, few, or an exponent: not as JavaScript would write it. */
function written(dice, low, high) {
  const value = low + dice() * (high - low);
  const digits = Array.from({ length: 30 }, () => Math.floor(dice() * 10)).join('');
  const ways = [
    () => `${Math.floor(value)}.${digits}`,
    () => value.toFixed(2),
    () => value.toExponential(17).replace('e+', 'E+0'),
    () => `${(value * 1e3).toPrecision(17)}e-3`,
    () => `${(value / 1e3).toFixed(5)}${digits}e3`,
  ];
  return ways[Math.floor(dice() * ways.length)]();
}

function requestOf(dice) {
  const readings = Array.from({ length: 12 }, () => {
    const [stitches, rounds] = [written(dice, 18, 24), written(dice, 26, 34)];
    const [width, height] = [written(dice, 90, 110), written(dice, 90, 110)];
    return `{"stitches":${stitches},"widthMm":${width},"rounds":${rounds},"heightMm":${height}}`;
  });
  const foot = `{"lengthMm":${written(dice, 220, 260)},"ballGirthMm":${written(dice, 210, 240)}}`;
  return `{"version":1,"swatch":{"readings":[${readings}]},"foot":${foot},"legHeightMm":${written(dice, 180, 220)}}`;
}

const native = async (request) => {
  const { out } = await runCommand(at('build', 'native', 'sockmath'), ['plan'], { input: request });
  return out.trim();
};

it('reads every number as the native program does', async (t) => {
  t.diagnostic(`TWINROUND_SEED=${seed}`);
  const dice = makeDice(seed);
  let planned = 0;
  for (let i = 0; i < requests; i += 1) {
    const request = requestOf(dice);
    const reply = await native(request);
    const [ours, theirs] = [JSON.parse(core.answer('plan', request)), JSON.parse(reply)];
    assert.equal(ours.ok, theirs.ok, request);
    if (!theirs.ok) continue;
    planned += 1;
    // Quotients and roots, which are exact everywhere; an arc tangent may differ in its last bit.
    assert.deepEqual(ours.plan.gauge, theirs.plan.gauge, request);
    assert.deepEqual(ours.plan.foot, theirs.plan.foot, request);
  }
  assert.ok(planned > requests / 2, `${planned} of ${requests} were plans`);
});

it('says alike what is too large, too small or no number', async () => {
  for (const number of [
    '1e999',
    '-1e999',
    '1e-999',
    '1.7976931348623159e308',
    '4.9e-324',
    '1e',
    '1.',
    '--1',
    '0x10',
  ]) {
    const request = `{"version":1,"foot":{"lengthMm":${number}}}`;
    assert.equal(core.answer('plan', request), await native(request), number);
  }
});
