// Compares two replies as the contract promises them: counts exactly, reals to 1e-9 relative (libm may
// differ in the last bit), texts, names and the order of lists to the letter.

// A number that is nought but for rounding has no relative difference; this near to it is nought.
const nought = 1e-12;
const relative = 1e-9;

const numberOrText = /"(?:[^"\\]|\\.)*"|-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/g;

class NumberAsWritten {
  /** @param {string} token */
  constructor(token) {
    this.token = token;
  }
}

/** JSON with its numbers kept as they are written: two whole ones must be the same to the digit. */
function parseKeepingNumbers(text) {
  const kept = text.replace(numberOrText, (token) =>
    token[0] === '"' ? token : `["#","${token}"]`,
  );
  return JSON.parse(kept, (_key, value) =>
    Array.isArray(value) && value.length === 2 && value[0] === '#'
      ? new NumberAsWritten(value[1])
      : value,
  );
}

const isNumber = (value) => value instanceof NumberAsWritten;
const isReal = (token) => /[.eE]/.test(token);

function numbersDiffer(expected, actual) {
  if (!isReal(expected) && !isReal(actual)) return expected !== actual;
  const [a, b] = [Number(expected), Number(actual)];
  return Math.abs(a - b) > Math.max(nought, relative * Math.max(Math.abs(a), Math.abs(b)));
}

const show = (value) => (isNumber(value) ? value.token : JSON.stringify(value));

function* differences(expected, actual, pointer) {
  if (isNumber(expected) && isNumber(actual)) {
    if (numbersDiffer(expected.token, actual.token)) {
      yield `${pointer}: expected ${expected.token}, got ${actual.token}`;
    }
    return;
  }
  const bothObjects = [expected, actual].every((value) => value && typeof value === 'object');
  const alike = bothObjects && Array.isArray(expected) === Array.isArray(actual);
  if (!alike || isNumber(expected) || isNumber(actual)) {
    if (expected !== actual) yield `${pointer}: expected ${show(expected)}, got ${show(actual)}`;
    return;
  }
  for (const key of new Set([...Object.keys(expected), ...Object.keys(actual)])) {
    const at = `${pointer}/${key}`;
    if (!Object.hasOwn(actual, key)) yield `${at}: missing`;
    else if (!Object.hasOwn(expected, key)) yield `${at}: not expected`;
    else yield* differences(expected[key], actual[key], at);
  }
}

/** @returns {string[]} one line a difference, as RFC 6901 pointer and what was and should be there */
export const compareReplies = (expected, actual) => [
  ...differences(parseKeepingNumbers(expected), parseKeepingNumbers(actual), ''),
];
