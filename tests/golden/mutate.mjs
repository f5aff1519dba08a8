// Requests a little wrong, made from the schema: every field at, inside and outside its limits, of a
// wrong kind, left out, and a field that nobody knows.

const copy = (value) => JSON.parse(JSON.stringify(value));

/** The value that a path leads to; undefined where the way ends. */
const look = (root, path) => path.reduce((value, key) => value?.[key], root);

/** A copy with another value at the path; `undefined` leaves the field out. */
export function withValue(root, path, value) {
  const changed = copy(root);
  const holder = look(changed, path.slice(0, -1));
  const key = path.at(-1);
  if (value === undefined) delete holder[key];
  else holder[key] = value;
  return changed;
}

/** Every field of the schema that the request has: its path and what the schema says of it. */
export function* fieldsOf(schema, request, path = []) {
  const value = look(request, path);
  if (value === undefined) return;
  if (path.length > 0) yield { path, schema };
  for (const [name, member] of Object.entries(schema.properties ?? {})) {
    yield* fieldsOf(member, request, [...path, name]);
  }
  if (schema.items && Array.isArray(value)) {
    for (const index of value.keys()) yield* fieldsOf(schema.items, request, [...path, index]);
  }
}

function* numbersFor(schema) {
  const step = schema.type === 'integer' ? 1 : 0.001;
  for (const [limit, outward] of [
    [schema.minimum, -step],
    [schema.maximum, step],
  ]) {
    if (limit === undefined) continue;
    yield limit;
    yield limit + outward;
    yield limit - outward;
  }
  if (schema.type === 'integer') yield (schema.minimum ?? schema.const ?? 0) + 0.5;
  yield* ['20', true, null, []];
}

function* valuesFor(schema, value) {
  if (schema.type === 'number' || schema.type === 'integer') yield* numbersFor(schema);
  else if (schema.type === 'string') yield* [...(schema.enum ?? []), 'sideways', '', 1, null];
  else if (schema.type === 'boolean') yield* [true, false, 'yes', 0, null];
  else if (schema.type === 'object') yield* [{}, [], 'none', null, { ...value, nobody: 1 }];
  else if (schema.type === 'array') {
    yield* [[], {}, 'none', null];
    for (const n of [1, schema.maxItems, schema.maxItems + 1]) yield Array(n).fill(value[0]);
  } else throw new Error(`no values for the type ${schema.type}`);
  yield undefined;
}

/** Each change as its path, what the schema says of that field, and the request with it made. */
export function* mutations(schema, request) {
  yield { path: [], changed: { ...copy(request), nobody: 1 } };
  for (const field of fieldsOf(schema, request)) {
    for (const value of valuesFor(field.schema, look(request, field.path))) {
      yield { ...field, value, changed: withValue(request, field.path, value) };
    }
  }
}
