// What somebody of ill will could put into a link, a name, a note or a file.

export const texts = [
  '<img src=x onerror="globalThis.pwned=1">',
  '<script>globalThis.pwned=1</script>',
  '"><svg onload=globalThis.pwned=1>',
  "'-globalThis.pwned=1-'",
  'javascript:globalThis.pwned=1',
  '${globalThis.pwned=1}',
  '{{constructor.constructor("globalThis.pwned=1")()}}',
  '</textarea><iframe srcdoc="<script>parent.pwned=1</script>">',
  '</title><base href="https://example.invalid/">',
  '=HYPERLINK("https://example.invalid","x")',
  '__proto__',
  'constructor',
  '\u202Egnol\u202C \u2066x\u2069',
  '\u0000\u0007\u001b[31m',
  'Z\u0351\u036B\u0343\u036A\u0302\u036B\u033D\u034F\u0334\u0319\u0324\u031E\u0349\u035A\u032F\u031E\u0320\u034D'.repeat(
    2,
  ),
  '👨‍👩‍👧‍👦🧦'.repeat(5),
  '\ud800',
];

export const fragments = [
  ...texts.map((text) => encodeURIComponent(text.toWellFormed())),
  '',
  '1',
  '0'.repeat(40),
  'z'.repeat(150),
  'a'.repeat(100000),
  '%',
  '%00%ff%fe',
  '../../etc/passwd',
  '//example.invalid',
  '?x=1&y=<b>',
  'count',
  'f-foot-lengthMm',
  '__proto__',
];

const sheet = (more) => ({
  kind: 'sheet',
  version: 2,
  name: 'file',
  note: '',
  view: 'count',
  system: 'metric',
  draft: { '/foot/lengthMm': { typed: '25', unit: 'cm' } },
  example: [],
  shown: {},
  locks: [],
  course: { title: '', note: '' },
  ...more,
});
const entry = (typed, unit = 'cm') => ({ typed, unit });

/** Each a file's text. */
export const files = [
  ...texts,
  ...texts.map((text) => JSON.stringify(sheet({ name: text.slice(0, 60), note: text }))),
  ...texts.map((text) =>
    JSON.stringify(
      sheet({
        draft: { '/foot/lengthMm': entry(text, text.slice(0, 8)), '/rib/lean': entry(text) },
      }),
    ),
  ),
  ...texts.map((text) =>
    JSON.stringify(sheet({ locks: [text], course: { title: text.slice(0, 60), note: text } })),
  ),
  '{"kind":"sheet","version":2,"__proto__":{"pwned":1},"draft":{}}',
  `{"kind":"sheet","version":1,"draft":{"__proto__":{"typed":"1","unit":""}},"example":[],"shown":{}}`,
  JSON.stringify(
    sheet({
      draft: { '/__proto__/pwned': entry('1'), '/constructor/prototype/pwned': entry('1') },
    }),
  ),
  '{"version":1,"foot":{"__proto__":{"pwned":1}},"legHeightMm":200}',
  `{"version":1,"foot":{"lengthMm":1e999,"ballGirthMm":-1},"legHeightMm":200,"yarn":{"category":4}}`,
  `${'['.repeat(60000)}${']'.repeat(60000)}`,
  `{"kind":"socks","version":1,"socks":[${'{},'.repeat(5000)}{}]}`,
  JSON.stringify(
    sheet({
      draft: Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`/x${i}`, entry('1')])),
    }),
  ),
  JSON.stringify(
    sheet({ example: ['__proto__', 'constructor'], shown: { '/foot/lengthMm': 'x' } }),
  ),
  JSON.stringify(sheet({ view: '__proto__', system: {} })),
  JSON.stringify(sheet({ started: { request: {}, reply: { plan: {} }, round: 0, pass: 0 } })),
  JSON.stringify(
    sheet({
      started: {
        request: { version: 1 },
        reply: { rules: 0, plan: { lines: 'x' } },
        round: 1e9,
        pass: -1,
      },
    }),
  ),
];
