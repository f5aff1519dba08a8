// Writes web/script/contract.d.ts, the page's types, from core/wire/schema.json, so that the page and
// the core cannot disagree about a name. `tools/make_types --check` only says whether it is up to date.
//
// It reads the part of JSON Schema that the core writes. A keyword it does not know ends it: a type
// that silently says less than the schema would be worse than none.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

import { at, isProgram } from './paths.mjs';

// Limits that a TypeScript type has no words for; the core checks them.
const beyondTypes = new Set(
  [
    'minimum maximum multipleOf minItems maxItems minLength maxLength pattern uniqueItems contains',
    'anyOf if then else dependentRequired default',
  ].flatMap((words) => words.split(' ')),
);
const known = new Set(
  'description type enum const properties required additionalProperties items prefixItems oneOf $ref'.split(
    ' ',
  ),
);

const typeName = (name) => name[0].toUpperCase() + name.slice(1);
const literals = (values) => values.map((value) => JSON.stringify(value)).join(' | ');

function comment(schema, indent) {
  const { description, default: standard } = schema;
  if (!description) return '';
  const unsaid = standard === undefined ? '' : ` Default ${JSON.stringify(standard)}.`;
  return `${indent}/** ${description.replaceAll('*/', '* /')}.${unsaid} */\n`;
}

function objectType(schema, indent) {
  const required = new Set(schema.required ?? []);
  const inner = `${indent}  `;
  const members = Object.entries(schema.properties ?? {}).map(([name, member]) => {
    const optional = required.has(name) ? '' : '?';
    return `${comment(member, inner)}${inner}${name}${optional}: ${typeOf(member, inner)};\n`;
  });
  const more = schema.additionalProperties;
  if (more === undefined || more === true) throw new Error('an object must say what else it holds');
  const rest = more
    ? `${comment(more, inner)}${inner}[name: string]: ${typeOf(more, inner)};\n`
    : '';
  return `{\n${members.join('')}${rest}${indent}}`;
}

function arrayType(schema, indent) {
  if (schema.prefixItems) {
    if (schema.items !== false) throw new Error('a tuple must be closed: items: false');
    return `[${schema.prefixItems.map((item) => typeOf(item, indent)).join(', ')}]`;
  }
  return `Array<${schema.items ? typeOf(schema.items, indent) : 'unknown'}>`;
}

const plainTypes = { string: 'string', boolean: 'boolean', number: 'number', integer: 'number' };

function typeOf(schema, indent) {
  for (const keyword of Object.keys(schema)) {
    if (!known.has(keyword) && !beyondTypes.has(keyword)) {
      throw new Error(`make_types does not know the keyword ${keyword}`);
    }
  }
  if (schema.$ref) return typeName(schema.$ref.replace('#/$defs/', ''));
  if (schema.oneOf) return schema.oneOf.map((choice) => typeOf(choice, indent)).join(' | ');
  if (schema.enum) return literals(schema.enum);
  if ('const' in schema) return literals([schema.const]);
  if (Array.isArray(schema.type)) {
    return schema.type.map((type) => typeOf({ type }, indent)).join(' | ');
  }
  if (schema.type === 'object') return objectType(schema, indent);
  if (schema.type === 'array') return arrayType(schema, indent);
  if (!plainTypes[schema.type]) throw new Error(`make_types does not know the type ${schema.type}`);
  return plainTypes[schema.type];
}

/** @param {{ $defs: Record<string, object> }} schema */
export function makeTypes(schema) {
  const types = Object.entries(schema.$defs).map(
    ([name, definition]) =>
      `${comment(definition, '')}export type ${typeName(name)} = ${typeOf(definition, '')};\n`,
  );
  const head =
    '// Written by tools/make_types from core/wire/schema.json: change the table of fields in core/wire,\n' +
    '// then run `tools/make_types`.\n';
  return [head, ...types].join('\n');
}

function main(args) {
  const file = at('web', 'script', 'contract.d.ts');
  const made = makeTypes(JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8')));
  if (args.length === 0) {
    writeFileSync(file, made);
    return 0;
  }
  if (args.length > 1 || args[0] !== '--check') {
    console.error('usage: tools/make_types [--check]');
    return 2;
  }
  if (existsSync(file) && readFileSync(file, 'utf8') === made) return 0;
  console.error('web/script/contract.d.ts is not what the schema says: run tools/make_types');
  return 1;
}

if (isProgram(import.meta.url)) process.exitCode = main(process.argv.slice(2));
