// Run from the top of the repository: web/node_modules/.bin/eslint -c web/eslint.config.js .
// It sees web/, tools/ and tests/ with one set of rules; only the globals differ.
import js from '@eslint/js';
import globals from 'globals';

// The page's own promises, kept by a rule where a rule can see them.
const pagePromises = {
  'no-restricted-properties': [
    'error',
    { property: 'innerHTML', message: 'Text goes in as textContent, never as markup.' },
    { property: 'outerHTML', message: 'Text goes in as textContent, never as markup.' },
    { property: 'insertAdjacentHTML', message: 'Text goes in as textContent, never as markup.' },
  ],
  'no-restricted-syntax': [
    'error',
    {
      selector: "MemberExpression[object.name='Math'][property.name=/^(round|floor|ceil|trunc)$/]",
      message:
        'The page never rounds a count: that is core/base/rounding. Figures are formatted by units.js.',
    },
  ],
  'no-restricted-globals': [
    'error',
    { name: 'fetch', message: 'The page asks nobody for anything after it has loaded.' },
    { name: 'XMLHttpRequest', message: 'The page asks nobody for anything after it has loaded.' },
    { name: 'WebSocket', message: 'The page asks nobody for anything after it has loaded.' },
    { name: 'EventSource', message: 'The page asks nobody for anything after it has loaded.' },
    { name: 'event', message: 'Take the event as an argument.' },
  ],
};

const everywhere = {
  eqeqeq: 'error',
  'no-var': 'error',
  'prefer-const': 'error',
  'no-shadow': 'error',
  'no-eval': 'error',
  'no-implied-eval': 'error',
  'no-new-func': 'error',
  'no-implicit-globals': 'error',
  'no-param-reassign': 'off',
  'no-throw-literal': 'error',
  'no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
};

export default [
  { ignores: ['**/node_modules/**', 'build/**', 'web/script/contract.d.ts'] },
  js.configs.recommended,
  { linterOptions: { reportUnusedDisableDirectives: 'error' }, rules: everywhere },
  {
    files: ['web/script/**/*.js', 'web/words/**/*.js'],
    languageOptions: { globals: globals.browser },
    rules: {
      ...pagePromises,
      'no-console': 'error',
      // An export is read by name wherever it is used, so that a search finds it.
      'no-restricted-exports': ['error', { restrictDefaultExports: { direct: true } }],
    },
  },
  // Written figures and drawn lines are rounded; counts arrive whole.
  {
    files: ['web/script/{units,drawing_file}.js', 'web/script/{units,draw}/**/*.js'],
    rules: { 'no-restricted-syntax': 'off' },
  },
  { files: ['web/sw.js'], languageOptions: { globals: globals.serviceworker } },
  { files: ['web/*.config.js'], languageOptions: { globals: globals.node } },
  {
    files: ['tools/**/*.mjs', 'tests/**/*.mjs'],
    languageOptions: { globals: globals.node },
  },
  // The tests of the page hand functions to the browser, which sees a window.
  {
    files: ['tests/browser/**/*.mjs', 'tests/bench/**/*.mjs'],
    languageOptions: { globals: { ...globals.node, ...globals.browser } },
  },
];
