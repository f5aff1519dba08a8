// The tests' own counting: a suite that crashes, hangs or runs nothing must never look like a pass.
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { after, describe, it } from 'node:test';

import { at } from '../../tools/js/paths.mjs';
import { runCommand, runPool } from '../../tools/js/run_command.mjs';
import { settle } from '../../tools/js/suites.mjs';

const folder = mkdtempSync(path.join(os.tmpdir(), 'twinround-counts-'));
after(() => rmSync(folder, { recursive: true }));

describe('runCommand', () => {
  it('tells a program that is not there', async () => {
    const { ok, out } = await runCommand('no-such-program', []);
    assert.equal(ok, false);
    assert.match(out, /no-such-program/);
  });

  it('tells a program ended by a signal', async () => {
    const { ok, out } = await runCommand('sh', ['-c', 'kill -9 $$']);
    assert.equal(ok, false);
    assert.match(out, /SIGKILL/);
  });

  it('ends a program that takes too long, with all it started', async () => {
    const { ok, out } = await runCommand('sh', ['-c', 'sleep 60 & wait'], { timeout: 100 });
    assert.equal(ok, false);
    assert.match(out, /ended after/);
  });

  it('runs every job, no more than so many at once', async () => {
    let now = 0;
    let most = 0;
    let done = 0;
    const job = async () => {
      most = Math.max(most, ++now);
      await new Promise((resolve) => setTimeout(resolve, 5));
      now -= 1;
      done += 1;
    };
    await runPool(Array(7).fill(job), 2);
    assert.deepEqual({ most, done }, { most: 2, done: 7 });
  });
});

describe('settle', () => {
  const rows = [
    ['a good run', { ok: true }, [3, 0], [3, 0]],
    ['a failed test', { ok: false, code: 1 }, [3, 1], [3, 1]],
    ['a crash after passes', { ok: false, code: 139 }, [3, 0], [3, 1]],
    ['a run of nothing', { ok: true }, [0, 0], [0, 1]],
    ['a crash before the first test', { ok: false, code: 134 }, [0, 0], [0, 1]],
  ];
  for (const [what, result, [passed, failed], expected] of rows) {
    it(`counts ${what}`, () => {
      const counted = settle({ out: '', ...result }, passed, failed);
      assert.deepEqual([counted.passed, counted.failed], expected);
    });
  }
});

describe('the reporter', () => {
  it('counts tests, not the groups they stand in', async () => {
    const file = path.join(folder, 'some.test.mjs');
    const report = path.join(folder, 'report.json');
    writeFileSync(
      file,
      "import { describe, it } from 'node:test';\n" +
        "describe('group', () => {\n" +
        "  it('passes', () => {});\n  it('passes too', () => {});\n" +
        "  it('fails', () => { throw new Error('no'); });\n  it.skip('waits', () => {});\n});\n",
    );
    const args = [
      `--test-reporter=${at('tools', 'js', 'counts_reporter.mjs')}`,
      `--test-reporter-destination=${report}`,
      file,
    ];
    // Not a part of the run that this test itself may be in.
    const env = { NODE_TEST_CONTEXT: undefined };
    const { ok } = await runCommand(process.execPath, args, { env });
    assert.equal(ok, false);
    const counts = JSON.parse(readFileSync(report, 'utf8'));
    assert.deepEqual(counts, { passed: 2, failed: 1, skipped: 1 });
  });
});
