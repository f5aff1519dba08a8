// What tools/test runs, suite by suite. A suite says how many checks passed and failed, and what to
// show when one failed. One that crashes, or runs nothing, has failed.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';

import { checkLayers } from './check_layers.mjs';
import { tidy } from './clang_tidy.mjs';
import { listed, unlisted } from './file_lists.mjs';
import { at, root } from './paths.mjs';
import { runCommand } from './run_command.mjs';

const reports = at('build', 'reports');

const oneCheck = (ok, log) => ({ passed: ok ? 1 : 0, failed: ok ? 0 : 1, log });

/** A suite that is one program: it passes when that ends well. */
const command = (name, program, args, options = {}) => ({
  name,
  ...options,
  run: async () => {
    const { ok, out } = await runCommand(program, args, options);
    return oneCheck(ok, out);
  },
});

const web = (program) => at('web', 'node_modules', '.bin', program);

/** Adds up a report; trusts the exit code over it, and refuses one that counted nothing. */
export function settle({ ok, code, out }, passed, failed) {
  let log = out;
  let allFailed = failed;
  if (!ok && failed === 0) {
    allFailed = 1;
    log += `\nended with ${code} though no test failed\n`;
  }
  if (passed + failed === 0) {
    allFailed = Math.max(1, allFailed);
    log += '\nno test was run\n';
  }
  return { passed, failed: allFailed, log };
}

function freshReport(name) {
  mkdirSync(reports, { recursive: true });
  const file = path.join(reports, `${name.replace(/\W+/g, '_')}.json`);
  rmSync(file, { force: true });
  return file;
}

const readReport = (file) =>
  existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;

/** One googletest program, counted by its own report. */
const googleTest = (name, program, args, options = {}) => ({
  name,
  ...options,
  run: async () => {
    const file = freshReport(name);
    const result = await runCommand(program, [...args, `--gtest_output=json:${file}`], options);
    const tests = (readReport(file)?.testsuites ?? []).flatMap((suite) => suite.testsuite);
    const ran = tests.filter((test) => test.status === 'RUN' && test.result === 'COMPLETED');
    const failed = ran.filter((test) => (test.failures ?? []).length > 0).length;
    return settle(result, ran.length - failed, failed);
  },
});

/** One file of Node's own tests, counted by our reporter. */
const nodeTest = (name, file, options = {}) => ({
  name,
  ...options,
  run: async () => {
    const report = freshReport(name);
    const reporters = [
      ['spec', 'stdout'],
      [at('tools', 'js', 'counts_reporter.mjs'), report],
    ].flatMap(([reporter, to]) => [
      `--test-reporter=${reporter}`,
      `--test-reporter-destination=${to}`,
    ]);
    const result = await runCommand(process.execPath, [...reporters, file], options);
    const text = existsSync(report) ? readFileSync(report, 'utf8').trim() : '';
    const { passed, failed } = text ? JSON.parse(text) : { passed: 0, failed: 0 };
    return settle(result, passed, failed);
  },
});

function nodeTests(folder, options) {
  const full = at('tests', folder);
  const names = existsSync(full) ? readdirSync(full).sort() : [];
  return names
    .filter((name) => name.endsWith('.test.mjs'))
    .map((name) => {
      const stem = name.replace('.test.mjs', '');
      const title = stem === folder ? folder : `${folder}/${stem}`;
      return nodeTest(title, path.join('tests', folder, name), options);
    });
}

const testLayers = ['base', 'facts', 'sock', 'knitting', 'teaching', 'wire'];

/**
 * A suite `needs` builds; one that is `alone` uses all processors itself.
 * @returns {Array<{ name: string, needs?: string[], alone?: boolean, run: () => Promise<object> }>}
 */
export function allSuites() {
  const cpp = listed(['core', 'wasm', 'tools', 'tests'], /\.(h|cpp)$/);
  return [
    {
      name: 'layers',
      run: async () => {
        const problems = checkLayers(root);
        return oneCheck(problems.length === 0, problems.join('\n'));
      },
    },
    {
      name: 'every file is in a list',
      needs: ['native'],
      run: async () => {
        const missing = unlisted();
        return oneCheck(missing.length === 0, missing.join('\n'));
      },
    },
    command('clang-format', 'clang-format', ['--dry-run', '-Werror', ...cpp]),
    command('prettier', web('prettier'), [
      '--config=web/prettier.config.js',
      '--ignore-path=web/.prettierignore',
      '--check',
      'web/**/*.{js,css,html,json}',
      '{tools,tests}/**/*.mjs',
    ]),
    command('eslint', web('eslint'), [
      '-c',
      'web/eslint.config.js',
      '--max-warnings=0',
      'web',
      'tools',
      'tests',
    ]),
    command('types', web('tsc'), ['-p', 'web/tsconfig.json']),
    command('generated types', at('tools', 'make_types'), ['--check']),
    command('stylelint', web('stylelint'), [
      '--config=web/stylelint.config.js',
      'web/style/**/*.css',
    ]),
    command('html-validate', web('html-validate'), [
      '--config=web/.htmlvalidate.json',
      'web/index.html',
    ]),
    { name: 'clang-tidy', needs: ['native'], alone: true, run: tidy },
    ...testLayers.map((layer) =>
      googleTest(`native ${layer}`, at('build', 'native', 'tests', `test_${layer}`), [], {
        needs: ['native'],
      }),
    ),
    ...testLayers.map((layer) =>
      googleTest(`sanitized ${layer}`, at('build', 'asan', 'tests', `test_${layer}`), [], {
        needs: ['asan'],
        env: { UBSAN_OPTIONS: 'print_stacktrace=1' },
      }),
    ),
    ...testLayers.map((layer) =>
      googleTest(
        `wasm ${layer}`,
        process.execPath,
        [at('build', 'wasm', 'tests', `test_${layer}.js`)],
        {
          needs: ['wasm'],
        },
      ),
    ),
    ...nodeTests('must_not_compile', { needs: ['native'] }),
    ...nodeTests('tools', { needs: ['native', 'wasm'] }),
    ...nodeTests('golden', { needs: ['native', 'wasm'] }),
    ...nodeTests('browser', { needs: ['native', 'site'] }),
  ];
}
