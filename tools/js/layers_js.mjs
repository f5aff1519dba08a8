// Who may import whom in web/script, and who may touch what: the module, the inputs, the storage.
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';

import { fromWeb } from './paths.mjs';

const ts = fromWeb('typescript');

// A file is known by the first part of its path under script/: form.js and form/row.js are `form`.
// `words` is web/words. A name that is not here is refused: say here first whom it may know.
export const mayImport = {
  main: [
    'form',
    'state',
    'core',
    'view',
    'share',
    'save',
    'ask',
    'link',
    'frame',
    'export',
    'offline',
    'needles',
    'projector',
    'first_paint',
    'drawing_file',
  ],
  first_paint: ['form', 'state', 'view', 'units', 'words'],
  form: ['units', 'words', 'state', 'frame'],
  view: ['draw', 'units', 'words', 'frame'],
  // Of draw, the drawings know their helpers (draw/svg.js), not each other.
  draw: ['units'],
  state: [],
  ask: ['form', 'state'],
  link: ['form', 'state'],
  frame: [],
  share: ['download'],
  save: ['state', 'download'],
  // What is written into a file is what the views say, without their nodes.
  export: ['download', 'view', 'draw', 'words', 'units'],
  offline: ['download'],
  needles: ['frame'],
  projector: [],
  core: [],
  drawing_file: ['download'],
  download: [],
  units: [],
  words: ['units'],
};

// What is not the page's own, and who may know it.
const pinned = { 'lean-qr/nano': 'draw' };

// Names with one keeper each.
const keepers = {
  WebAssembly: 'core',
  localStorage: 'save',
  sessionStorage: 'save',
  indexedDB: 'save',
  serviceWorker: 'offline',
};

const inputTypes = new Set(['HTMLInputElement', 'HTMLSelectElement', 'HTMLTextAreaElement']);
const inputReaders = new Set([
  'value',
  'valueAsNumber',
  'checked',
  'selectedIndex',
  'selectedOptions',
]);

function listFiles(folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const full = path.join(folder, entry.name);
    if (entry.isDirectory()) return listFiles(full);
    return entry.name.endsWith('.js') ? [full] : [];
  });
}

function partOf(webFolder, file) {
  const [top, second] = path.relative(webFolder, file).split(path.sep);
  if (top === 'words') return 'words';
  return top === 'script' ? second.replace(/\.js$/, '') : top;
}

/** Every import that really runs; types named in comments do not. */
function importsOf(source) {
  const found = [];
  const visit = (node) => {
    const isStatic = ts.isImportDeclaration(node) || ts.isExportDeclaration(node);
    if (isStatic && node.moduleSpecifier) found.push(node.moduleSpecifier.text);
    const isDynamic =
      ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword;
    if (isDynamic) found.push(node.arguments[0]?.text ?? '(computed)');
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function whyNot(webFolder, file, specifier) {
  const from = partOf(webFolder, file);
  if (!specifier.startsWith('.'))
    return pinned[specifier] === from ? undefined : `${from} knows no library ${specifier}`;
  const target = path.resolve(path.dirname(file), specifier);
  const to = partOf(webFolder, target);
  if (to === 'main' && from !== 'main') return 'nothing imports main';
  if (from === to) {
    const isHelper = from !== 'draw' || path.basename(target) === 'svg.js';
    return isHelper ? undefined : 'drawings know only svg.js of each other';
  }
  return mayImport[from].includes(to) ? undefined : `${from} does not know ${to}`;
}

/** Uses of a kept name outside its keeper; reads of an input's value outside the form. */
function checkTouches(source, checker, part, no) {
  const isInput = (node) => {
    const type = checker.getTypeAtLocation(node);
    const members = type.isUnion() ? type.types : [type];
    return members.some((member) => inputTypes.has(member.symbol?.name));
  };
  const visit = (node) => {
    const keeper = ts.isIdentifier(node) && Object.hasOwn(keepers, node.text) && keepers[node.text];
    if (keeper && keeper !== part) no(`touches ${node.text}: only ${keeper} does`);
    const reads = ts.isPropertyAccessExpression(node) && inputReaders.has(node.name.text);
    if (reads && part !== 'form' && isInput(node.expression)) {
      no(`touches an input's .${node.name.text}: only form does`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
}

const options = {
  allowJs: true,
  checkJs: true,
  noEmit: true,
  strict: true,
  types: [],
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
};

// The standard library's types are long and never change: read once, however often we are asked.
const host = ts.createCompilerHost(options);
const readFile = host.getSourceFile.bind(host);
const libraries = new Map();
host.getSourceFile = (name, ...rest) => {
  if (!/lib\.[^/]*\.d\.ts$/.test(name)) return readFile(name, ...rest);
  if (!libraries.has(name)) libraries.set(name, readFile(name, ...rest));
  return libraries.get(name);
};

/** @returns {string[]} one line a fault, none if all arrows run the right way */
export function checkJs(root) {
  const webFolder = path.join(root, 'web');
  const files = ['script', 'words'].flatMap((name) => listFiles(path.join(webFolder, name))).sort();
  const program = ts.createProgram(files, options, host);
  const checker = program.getTypeChecker();
  const problems = [];
  for (const file of files) {
    const part = partOf(webFolder, file);
    const no = (why) => problems.push(`${path.relative(root, file)}: ${why}`);
    if (!Object.hasOwn(mayImport, part)) {
      no(`${part} is not in the table of tools/js/layers_js.mjs`);
      continue;
    }
    const source = program.getSourceFile(file);
    for (const specifier of importsOf(source)) {
      const why = whyNot(webFolder, file, specifier);
      if (why) no(`imports ${specifier}: ${why}`);
    }
    checkTouches(source, checker, part, no);
  }
  return problems;
}
