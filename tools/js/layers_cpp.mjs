// Who may include whom in core/ and wasm/. CMake's include roots already keep most wrong includes
// from compiling; this says the rest, and says it in words.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

// From the ground up: each may include those before it, never those after.
const layers = ['base', 'facts', 'sock', 'knitting', 'teaching', 'wire', 'wasm'];

// Built on the sock, each for its own question.
const besideEachOther = new Set(['knitting', 'teaching']);

// What the files of sock share: words, not workings.
const vocabulary = new Set(['rib.h', 'line.h', 'tube.h']);

// The core asks nobody: no input or output, no clock, no chance.
const worldly =
  /^(iostream|istream|ostream|fstream|sstream|cstdio|stdio\.h|chrono|ctime|time\.h|random|thread|filesystem)$/;

// A header of ours by such a name would be found in place of the system's own.
const systemNames =
  'assert complex ctype errno fenv float inttypes limits link locale malloc math memory mutex pwd regex sched ' +
  'search semaphore setjmp signal stdio stdlib string strings thread threads time uchar utime wchar wctype';
const shadowed = new Set(systemNames.split(' ').map((name) => `${name}.h`));

const rounders = /\bstd::(round|lround|llround|rint|lrint|llrint|nearbyint|trunc)\b/;

const stemOf = (file) => path.basename(file).replace(/\.(h|cpp)$/, '');

function filesOf(root, folder) {
  try {
    const names = readdirSync(path.join(root, folder)).sort();
    return names.filter((name) => /\.(h|cpp)$/.test(name)).map((name) => `${folder}/${name}`);
  } catch {
    return [];
  }
}

/** Which layer each header is of; and what is wrong with the names themselves. */
function indexHeaders(files, problems) {
  const layerOfHeader = new Map();
  for (const { file, layer } of files) {
    const name = path.basename(file);
    if (!name.endsWith('.h')) continue;
    if (layerOfHeader.has(name)) problems.push(`${file}: a second header of that name`);
    if (shadowed.has(name)) problems.push(`${file}: hides a system header of that name`);
    if (!layerOfHeader.has(name)) layerOfHeader.set(name, layer);
  }
  return layerOfHeader;
}

/** Why this file may not include this header of ours; undefined if it may. */
function whyNot({ file, layer }, header, headerLayer) {
  if (layers.indexOf(headerLayer) > layers.indexOf(layer))
    return `${layer} never looks up to ${headerLayer}`;
  if (besideEachOther.has(layer) && besideEachOther.has(headerLayer) && layer !== headerLayer)
    return `${layer} and ${headerLayer} do not know each other`;
  if (headerLayer !== layer || stemOf(file) === stemOf(header)) return undefined;
  if (layer === 'facts') return 'files of facts do not know each other';
  const composes = stemOf(file).startsWith('plan');
  if (layer === 'sock' && !composes && !vocabulary.has(header))
    return 'in sock only plan composes the others';
  return undefined;
}

function checkIncludes(entry, text, layerOfHeader, problems) {
  const { file, layer } = entry;
  for (const [, quote, name] of text.matchAll(/^\s*#\s*include\s*(["<])([^">]+)[">]/gm)) {
    const no = (why) => problems.push(`${file}: includes ${name}: ${why}`);
    if (quote === '"') {
      const headerLayer = layerOfHeader.get(name);
      const why = headerLayer
        ? whyNot(entry, name, headerLayer)
        : 'not the plain name of a header in core or wasm';
      if (why) no(why);
      continue;
    }
    if (layerOfHeader.has(name)) no('our own headers stand in quotes');
    if (name.startsWith('nlohmann/') && layer !== 'wire') no('only wire knows that library');
    if (name.startsWith('emscripten') && layer !== 'wasm') no('only wasm knows the browser');
    if (layer !== 'wasm' && worldly.test(name))
      no('the core has no input, output, clock or chance');
  }
}

function checkRounding({ file }, text, problems) {
  if (/^core\/base\/rounding\./.test(file)) return;
  const [found] = rounders.exec(text.replace(/\/\/.*$/gm, '')) ?? [];
  if (found) problems.push(`${file}: ${found}: a real becomes a count in core/base/rounding only`);
}

/** @returns {string[]} one line a fault, none if all arrows run the right way */
export function checkCpp(root) {
  const problems = [];
  const files = layers.flatMap((layer) => {
    const folder = layer === 'wasm' ? 'wasm' : `core/${layer}`;
    return filesOf(root, folder).map((file) => ({ file, layer }));
  });
  const layerOfHeader = indexHeaders(files, problems);
  for (const entry of files) {
    const text = readFileSync(path.join(root, entry.file), 'utf8');
    checkIncludes(entry, text, layerOfHeader, problems);
    checkRounding(entry, text, problems);
  }
  return problems;
}
