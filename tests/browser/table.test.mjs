// Pasted tables, read beside Papa Parse (RFC 4180, a reader that is not ours).
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';

import Papa from 'papaparse';

import { readTable, separatorOf } from '../../web/script/form/table.js';

const tables = [
  [
    'from a spreadsheet',
    'seat\tsize\n1\t38\n2\t41,5\n',
    [
      ['seat', 'size'],
      ['1', '38'],
      ['2', '41,5'],
    ],
  ],
  [
    'semicolons and decimal commas',
    'seat;girth\n1;22,5\n',
    [
      ['seat', 'girth'],
      ['1', '22,5'],
    ],
  ],
  [
    'commas',
    'seat,girth\n1,22.5',
    [
      ['seat', 'girth'],
      ['1', '22.5'],
    ],
  ],
  [
    'lines of an old machine',
    'a,b\r1,2\r\n3,4\r',
    [
      ['a', 'b'],
      ['1', '2'],
      ['3', '4'],
    ],
  ],
  [
    'the mark ahead of UTF-8',
    '\ufeffa,b\n1,2',
    [
      ['a', 'b'],
      ['1', '2'],
    ],
  ],
  [
    'quotes',
    '"a, b","say ""k"""\n"one\ntwo",2',
    [
      ['a, b', 'say "k"'],
      ['one\ntwo', '2'],
    ],
  ],
  ['a quote inside a cell', 'sock 9" long,2', [['sock 9" long', '2']]],
  [
    'spaces around',
    ' a , b \n 1 ,2',
    [
      ['a', 'b'],
      ['1', '2'],
    ],
  ],
  ['an empty row inside', 'a,b\n\n1,2\n\n', [['a', 'b'], [''], ['1', '2']]],
  ['empty cells', 'a,,c\n,,', [['a', '', 'c']]],
  ['one cell', 'seat', [['seat']]],
  ['nothing', '', []],
  // It would take every row below it for one cell's text.
  ['a quote left open', '"a,b\n1', [['"a', 'b'], ['1']]],
];

describe('a pasted table', () => {
  for (const [name, text, rows] of tables) {
    it(`is read: ${name}`, () => assert.deepEqual(readTable(text), rows));
  }

  it('reads like another reader does, whatever is in it', () => {
    const seed = Number(process.env.TWINROUND_SEED ?? Date.now() % 1e9);
    console.log(`TWINROUND_SEED=${seed}`);
    let x = seed;
    const next = (n) => {
      x = (x * 1103515245 + 12345) % 2147483648;
      return Math.floor((x / 2147483648) * n);
    };
    const signs = ['a', '7', ',', ';', '"', 'ü', '\n', ' '];
    for (let i = 0; i < 500; i += 1) {
      const cell = () => Array.from({ length: next(5) }, () => signs[next(signs.length)]).join('');
      const row = () => [`x${cell()}x`, `y${cell()}y`, `z${cell()}z`];
      const meant = Array.from({ length: 1 + next(4) }, row);
      for (const delimiter of ['\t', ';', ',']) {
        const text = Papa.unparse(meant, { delimiter });
        if (separatorOf(text) !== delimiter) continue;
        assert.deepEqual(readTable(text), meant, JSON.stringify(text));
      }
    }
  });
});
