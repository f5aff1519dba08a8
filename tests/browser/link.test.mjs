// Sheets as people type them, through the page's own parser, into a link and out again: the form then
// asks for the same sock, to the last bit.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';

import { loadCore } from '../../tools/js/load_core.mjs';
import { at, fromBrowserTests } from '../../tools/js/paths.mjs';
import { fieldsOf } from '../../web/script/form/fields.js';
import { readDraft } from '../../web/script/form/request.js';
import { exampleDraft } from '../../web/script/state/example.js';
import { fromBase, parseQuantity, unitsOfKind } from '../../web/script/units.js';
import { readLink } from '../golden/link_reference.mjs';

const { Ajv2020 } = fromBrowserTests('ajv/dist/2020.js');

const sheets = 10_000;
const seed = Number(process.env.TWINROUND_SEED ?? 19180101);
const core = await loadCore();
const schema = JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8'));
const ajv = new Ajv2020({ strictTypes: false, strictTuples: false });
ajv.addSchema(schema, 'contract');
const isReply = ajv.getSchema('contract#/$defs/linkReply');
const isRequest = ajv.getSchema('contract#/$defs/linkRequest');

/** Draws the same everywhere (a linear congruence of 32 bits). */
function makeDice(start) {
  let state = start >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
const oneOf = (dice, all) => all[Math.floor(dice() * all.length)];
const between = (dice, low, high) => low + Math.floor(dice() * (high - low + 1));

/** The range of a field in the core's units. @param {string} pointer */
function rangeOf(pointer) {
  const steps = pointer.slice(1).split('/');
  const field = steps.reduce(
    (node, step) => node.items ?? node.properties[step],
    schema.$defs.request,
  );
  return [field.minimum, field.maximum];
}

const fractions = ['', ' 1/2', ' 3/4', ' 5/8', ' 3/16', '½', '⅜', '-1/4'];
const tails = { cm: ['', '.5', ',6', '.65', ' cm'], in: [...fractions, '.6', ',25', '"', ' in'] };
const counted = ['', '', '.5', ' 1/4', '½', ',75'];
const tailsOf = { stitches: counted, rounds: counted, percent: ['', '.5', ' %'], yarn: ['', '.5'] };

/** A number near one's own, with a tail as people write it. */
function typedIn(dice, field, unit) {
  const likely = exampleDraft[field.pointer.replace(/\/\d+\//, '/0/')];
  const [low, high] = rangeOf(field.pointer).map((base) => fromBase(base, unit));
  const inUnit = (text) => {
    const { value } = parseQuantity(text, unitsOfKind[field.kind]);
    const factor = { in: 25.4, yd: 0.9144, oz: 28.35, cm: 10 };
    return (value * (factor[likely.unit] ?? 1)) / (factor[unit] ?? 1);
  };
  const isNear = likely && dice() < 0.9;
  const middle = isNear ? inUnit(likely.typed) : low + dice() * (high - low);
  const whole = between(dice, Math.floor(middle * 0.95), Math.ceil(middle * 1.05));
  // Whole stitches of a rib, whole categories; nobody tells her pace by the quarter.
  const isWhole = /^\/(rib|stitchCount|pace|yarn\/category)|massStitches/.test(field.pointer);
  const tail = isWhole || whole < 0 ? '' : oneOf(dice, tails[unit] ?? tailsOf[field.kind] ?? ['']);
  return `${Math.min(Math.max(whole, Math.ceil(low)), Math.floor(high) - 1)}${tail}`;
}

function randomDraft(dice) {
  const draft = {};
  const rows = dice() < 0.1 ? 12 : between(dice, 1, 3);
  for (let row = 0; row < rows; row += 1) draft[`/swatch/readings/${row}/stitches`] = {};
  const missing = dice() < 0.5 ? 0 : 0.1;
  // What is asked beside the plan is in no link.
  for (const field of fieldsOf(draft).filter(({ asks }) => !asks)) {
    const { pointer, kind } = field;
    const isRare = /stretched|mass|stitchCount|substitute/.test(pointer);
    delete draft[pointer];
    if (dice() < (isRare ? 0.95 : missing)) continue;
    if (field.as !== 'quantity') {
      draft[pointer] = { typed: oneOf(dice, field.options), unit: '' };
      continue;
    }
    const unit = oneOf(dice, unitsOfKind[kind].slice(0, 2)) ?? '';
    draft[pointer] = {
      typed: typedIn(dice, field, unit),
      unit: kind === 'stitches' || kind === 'rounds' ? '' : unit,
    };
  }
  return draft;
}

/** What the page hands over: its own parser's number, or the choice. */
const entriesOf = (draft) =>
  fieldsOf(draft)
    .filter(({ pointer }) => pointer in draft)
    .map(({ pointer, as, kind, whole }) => {
      const { typed, unit } = draft[pointer];
      if (as !== 'quantity' && !whole) return { field: pointer, typed };
      const parsed = parseQuantity(typed, unitsOfKind[kind]);
      if (!parsed.ok) return { field: pointer, unit };
      return {
        field: pointer,
        value: parsed.value,
        unit: parsed.unit === 'st' ? '' : parsed.unit || unit,
      };
    });

const ask = (question) => {
  const request = { version: 1, ...question };
  assert.ok(isRequest(request), JSON.stringify(isRequest.errors));
  const reply = JSON.parse(core.answer('link', JSON.stringify(request)));
  assert.ok(isReply(reply), JSON.stringify(isReply.errors));
  return reply;
};
const draftOf = (fields) =>
  Object.fromEntries(fields.map(({ field, typed, unit }) => [field, { typed, unit }]));

test('ten thousand sheets as typed come back as the same request and the same plan', (t) => {
  t.diagnostic(`TWINROUND_SEED=${seed}`);
  const dice = makeDice(seed);
  let planned = 0;
  let longest = '';
  for (let i = 0; i < sheets; i += 1) {
    const draft = randomDraft(dice);
    const made = ask({ fields: entriesOf(draft) });
    assert.ok(made.ok, JSON.stringify([draft, made.problems]));
    assert.deepEqual(made.link.changed, [], JSON.stringify(draft));
    const { text } = made.link;
    if (text.length > longest.length) longest = text;
    const opened = ask({ text }).link;
    assert.deepEqual(opened, made.link);
    const [before, after] = [readDraft(draft), readDraft(draftOf(opened.fields))];
    assert.deepEqual(after.problems, before.problems);
    assert.deepEqual(after.request, before.request, JSON.stringify(draft));
    const plan = core.answer('plan', JSON.stringify(before.request));
    assert.equal(core.answer('plan', JSON.stringify(after.request)), plan);
    if (plan.startsWith('{"ok":true')) planned += 1;
    if (i % 10 === 0) {
      const second = Object.keys(readLink(text).fields).sort();
      assert.deepEqual(second, opened.fields.map(({ field }) => field).sort());
    }
  }
  t.diagnostic(`${planned} were plans; the longest link has ${longest.length} letters`);
  assert.ok(planned > sheets / 8, `${planned} of ${sheets} were plans`);
  assert.ok(longest.length <= 150, longest);
});

test('the worked example is about sixty letters', () => {
  const { text } = ask({
    fields: entriesOf(exampleDraft),
    view: 'buy',
    system: 'metric',
    echo: { stitchCount: 40, totalRounds: 120 },
  }).link;
  assert.ok(text.length >= 40 && text.length <= 70, text);
});

test('a half of a letter, and a whole of one that is two in JavaScript', () => {
  const whole = ask({ title: '🧦'.repeat(60) });
  assert.equal(whole.link.title, '🧦'.repeat(60));
  assert.equal(ask({ title: '🧦'.repeat(61) }).problems[0].code, 'too_many_items');
  // JSON.stringify writes it as an escape that is no letter.
  assert.equal(ask({ title: '\ud83e' }).ok, false);
});
