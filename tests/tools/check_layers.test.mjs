// The checker is checked: a small house in order passes, and each rule refuses the house that breaks it.
import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, it } from 'node:test';

import { checkLayers } from '../../tools/js/check_layers.mjs';

const houseInOrder = {
  'core/base/units.h': '#include <compare>\n',
  'core/facts/needle.h': '#include "units.h"\n',
  'core/facts/needle.cpp': '#include "needle.h"\n',
  'core/facts/shoe.h': '#include "units.h"\n',
  'core/sock/rib.h': '',
  'core/sock/toe.h': '#include "rib.h"\n#include "units.h"\n',
  'core/sock/spiral.h': '#include "needle.h"\n',
  'core/sock/plan.h': '#include "spiral.h"\n#include "toe.h"\n',
  'core/knitting/yarn_left.h': '#include "plan.h"\n',
  'core/teaching/weeks.h': '#include "plan.h"\n',
  'core/wire/answer.h': '#include <string>\n',
  'core/wire/answer.cpp':
    '#include <nlohmann/json.hpp>\n\n#include "answer.h"\n#include "plan.h"\n',
  'wasm/bindings.cpp': '#include <emscripten.h>\n\n#include "answer.h"\n',
  'web/words/en.js': "export const words = { hello: 'Hello' };\n",
  'web/script/units.js': 'export const inMm = 25.4;\n',
  'web/script/state.js':
    '/** @type {import("./form.js").Form} named in a comment only */\nexport const state = {};\n',
  'web/script/core.js': 'export const start = () => WebAssembly.compile(new Uint8Array());\n',
  'web/script/save.js': "export const read = () => localStorage.getItem('sheet');\n",
  'web/script/form.js':
    "import { inMm } from './units.js';\n" +
    '/** @param {HTMLInputElement} input */\n' +
    'export const read = (input) => Number(input.value) * inMm;\n',
  'web/script/draw/svg.js': 'export const node = () => {};\n',
  'web/script/draw/pair.js':
    "import { node } from './svg.js';\nimport { inMm } from '../units.js';\nexport const pair = () => node(inMm);\n",
  'web/script/draw/strip.js': 'export const strip = () => {};\n',
  'web/script/view/buy.js':
    "import { pair } from '../draw/pair.js';\nimport { words } from '../../words/en.js';\n" +
    '/** @param {{ value: number }} figure */\n' +
    'export const buy = (figure) => [pair(), words.hello, figure.value];\n',
  'web/script/main.js':
    "import { buy } from './view/buy.js';\nimport { read } from './form.js';\nbuy(read());\n",
};

function faultsOf(changes) {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'twinround-layers-'));
  try {
    for (const [name, text] of Object.entries({ ...houseInOrder, ...changes })) {
      mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
      writeFileSync(path.join(folder, name), text);
    }
    return checkLayers(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

// Each row breaks one rule, in one file: the file, its text, and what must be said of it.
const breaches = [
  ['core/base/units.h', '#include "needle.h"\n', 'base never looks up to facts'],
  ['core/facts/needle.cpp', '#include "toe.h"\n', 'facts never looks up to sock'],
  ['core/sock/plan.cpp', '#include "answer.h"\n', 'sock never looks up to wire'],
  ['core/knitting/yarn_left.cpp', '#include "weeks.h"\n', 'knitting never looks up to teaching'],
  ['core/teaching/weeks.cpp', '#include "yarn_left.h"\n', 'teaching and knitting do not know'],
  ['core/facts/needle.cpp', '#include "shoe.h"\n', 'files of facts do not know each other'],
  ['core/sock/toe.cpp', '#include "spiral.h"\n', 'only plan composes the others'],
  ['core/sock/toe.cpp', '#include "sock/rib.h"\n', 'not the plain name of a header'],
  ['core/sock/toe.cpp', '#include "../base/units.h"\n', 'not the plain name of a header'],
  ['core/sock/toe.cpp', '#include <units.h>\n', 'our own headers stand in quotes'],
  ['core/sock/toe.cpp', '#include <nlohmann/json.hpp>\n', 'only wire knows that library'],
  ['core/wire/answer.cpp', '#include <emscripten.h>\n', 'only wasm knows the browser'],
  ['core/sock/toe.cpp', '#include <iostream>\n', 'no input, output, clock or chance'],
  ['core/sock/toe.cpp', '#include <chrono>\n', 'no input, output, clock or chance'],
  [
    'core/sock/toe.cpp',
    'const double x = std::round(2.5);\n',
    'a real becomes a count in core/base/rounding',
  ],
  ['core/sock/units.h', '', 'a second header of that name'],
  ['core/base/time.h', '', 'hides a system header'],
  ['web/script/view/knit.js', "import '../main.js';\n", 'nothing imports main'],
  ['web/script/view/knit.js', "import '../form.js';\n", 'view does not know form'],
  ['web/script/view/knit.js', "export * from '../state.js';\n", 'view does not know state'],
  ['web/script/view/knit.js', "void import('../core.js');\n", 'view does not know core'],
  ['web/script/main.js', "import './draw/pair.js';\n", 'main does not know draw'],
  ['web/script/draw/pair.js', "import '../../words/en.js';\n", 'draw does not know words'],
  ['web/script/draw/pair.js', "import './strip.js';\n", 'drawings know only svg.js'],
  ['web/script/units.js', "import './state.js';\n", 'units does not know state'],
  ['web/script/main.js', "import 'left-pad';\n", 'main knows no library left-pad'],
  ['web/script/view/code.js', "import 'lean-qr/nano';\n", 'view knows no library lean-qr/nano'],
  ['web/script/helpers.js', '', 'helpers is not in the table'],
  ['web/script/main.js', 'void WebAssembly.compile;\n', 'touches WebAssembly: only core does'],
  ['web/script/state.js', 'localStorage.clear();\n', 'touches localStorage: only save does'],
  [
    'web/script/state.js',
    "navigator.serviceWorker.register('x.js');\n",
    'touches serviceWorker: only offline does',
  ],
  [
    'web/script/view/knit.js',
    "const box = document.createElement('input');\nvoid box.value;\n",
    "touches an input's .value: only form does",
  ],
  [
    'web/script/main.js',
    "for (const box of document.querySelectorAll('select')) void box.selectedIndex;\n",
    "touches an input's .selectedIndex: only form does",
  ],
];

describe('check_layers', () => {
  it('passes a house in order', () => assert.deepEqual(faultsOf({}), []));
  for (const [file, text, fault] of breaches) {
    it(`refuses ${file} with ${JSON.stringify(text)}`, () => {
      const faults = faultsOf({ [file]: text });
      assert.equal(faults.length, 1, faults.join('\n'));
      assert.ok(faults[0].startsWith(`${file}: `), faults[0]);
      assert.ok(faults[0].includes(fault), faults[0]);
    });
  }
});
