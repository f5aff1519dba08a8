// The heart of tools/test: builds, runs the suites, says one line for each, and counts on the last line.
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

import { build, buildNeeds } from './builds.mjs';
import { at } from './paths.mjs';
import { runPool } from './run_command.mjs';

const total = { passed: 0, failed: 0 };
const brokenBuilds = new Set();
const failedNames = [];

// How long each suite took the last time: the longest start first, so that the short ones fill the
// gaps and no processor waits for one at the end.
const timesFile = at('build', 'reports', 'seconds.json');
const times = {};
const longestFirst = (suites) => {
  const last = ({ name }) => times[name] ?? 1000;
  return [...suites].sort((one, other) => last(other) - last(one));
};

/** Runs one suite or build and tells it in a line; what it said is shown only if it failed. */
async function tell(name, needs, run) {
  const start = Date.now();
  const broken = needs.filter((need) => brokenBuilds.has(need));
  const result =
    broken.length > 0
      ? { passed: 0, failed: 1, log: `not run: the build of ${broken.join(', ')} failed` }
      : await run().catch((error) => ({ passed: 0, failed: 1, log: error.stack ?? String(error) }));
  total.passed += result.passed;
  total.failed += result.failed;
  const seconds = ((Date.now() - start) / 1000).toFixed(1);
  times[name] = Number(seconds);
  if (result.failed > 0) {
    failedNames.push(name);
    console.log(`\n${result.log.trimEnd()}\n`);
  }
  const verdict = result.failed > 0 ? 'FAIL' : 'ok  ';
  const counts = `${result.passed} passed, ${result.failed} failed`;
  console.log(`${verdict} ${name.padEnd(28)} ${counts.padEnd(24)} ${seconds} s`);
  return result.failed === 0;
}

/** The builds these suites need, each after the one it starts from. */
function buildsFor(suites) {
  const wanted = new Set(suites.flatMap((suite) => suite.needs ?? []));
  for (const name of [...wanted]) for (const need of buildNeeds[name]) wanted.add(need);
  return Object.keys(buildNeeds).filter((name) => wanted.has(name));
}

async function main(words) {
  if (existsSync(timesFile)) Object.assign(times, JSON.parse(readFileSync(timesFile, 'utf8')));
  // Only now, so that a suite that cannot even be read is counted like any failure.
  const { allSuites } = await import('./suites.mjs');
  const suites = allSuites().filter(
    ({ name }) => words.length === 0 || words.some((word) => name.includes(word)),
  );
  for (const name of buildsFor(suites)) {
    const ok = await tell(`build ${name}`, buildNeeds[name], () => build(name));
    if (!ok) brokenBuilds.add(name);
  }
  const job =
    ({ name, needs = [], run }) =>
    () =>
      tell(name, needs, run);
  const together = longestFirst(suites.filter(({ alone }) => !alone));
  await runPool(together.map(job), os.cpus().length);
  await runPool(suites.filter(({ alone }) => alone).map(job), 1);
}

try {
  await main(process.argv.slice(2));
  mkdirSync(path.dirname(timesFile), { recursive: true });
  // In one stroke: an interrupted run leaves the old file or the new one.
  writeFileSync(`${timesFile}.new`, JSON.stringify(times));
  renameSync(`${timesFile}.new`, timesFile);
} catch (error) {
  console.log(error.stack);
  total.failed += 1;
}
if (total.passed + total.failed === 0) {
  console.log('nothing was run');
  total.failed = 1;
}
if (failedNames.length > 0) console.log(`\nfailed: ${failedNames.join('; ')}`);
console.log(`${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed > 0 ? 1 : 0;
