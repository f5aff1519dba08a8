// The page's types say what the schema says, or the tool refuses to write them.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';

import { makeTypes } from '../../tools/js/make_types.mjs';

/** The type of one definition, without the head of the file. */
const typeOf = (definition) =>
  makeTypes({ $defs: { it: definition } }).split('export type It = ')[1];

describe('make_types', () => {
  const rows = [
    ['a number', { type: 'integer', minimum: 1 }, 'number;\n'],
    ['words', { type: 'string', enum: ['left', 'right'] }, '"left" | "right";\n'],
    ['a constant', { type: 'integer', const: 1 }, '1;\n'],
    ['a list', { type: 'array', items: { $ref: '#/$defs/run' } }, 'Array<Run>;\n'],
    ['a choice', { oneOf: [{ $ref: '#/$defs/a' }, { $ref: '#/$defs/b' }] }, 'A | B;\n'],
    ['either kind', { type: ['number', 'string'] }, 'number | string;\n'],
    [
      'a pair',
      { type: 'array', prefixItems: [{ type: 'string' }, { type: 'integer' }], items: false },
      '[string, number];\n',
    ],
    [
      'an object with a field that may be left out, and its default',
      {
        type: 'object',
        properties: {
          a: { type: 'number' },
          b: { type: 'boolean', default: true, description: 'Washed' },
        },
        required: ['a'],
        additionalProperties: false,
      },
      '{\n  a: number;\n  /** Washed. Default true. */\n  b?: boolean;\n};\n',
    ],
    [
      'an open object',
      { type: 'object', additionalProperties: { type: 'number' } },
      '{\n  [name: string]: number;\n};\n',
    ],
  ];
  for (const [what, definition, type] of rows) {
    it(`writes ${what}`, () => assert.equal(typeOf(definition), type));
  }

  const refusals = [
    ['a keyword it does not know', { type: 'string', format: 'date' }, /keyword format/],
    ['a type it does not know', { type: 'null' }, /type null/],
    ['an object that does not say what else it holds', { type: 'object' }, /what else/],
    ['an open tuple', { type: 'array', prefixItems: [{ type: 'string' }] }, /closed/],
  ];
  for (const [what, definition, why] of refusals) {
    it(`refuses ${what}`, () => assert.throws(() => typeOf(definition), why));
  }
});
