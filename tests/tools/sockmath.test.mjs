// sockmath as a program: what it reads, writes and ends with. What it answers is tested elsewhere.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';

import { at } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';

const run = (args, input) => runCommand(at('build', 'native', 'sockmath'), args, { input });

const request = JSON.stringify({
  version: 1,
  yarn: { category: 4 },
  foot: { lengthMm: 246, ballGirthMm: 228 },
  legHeightMm: 200,
});

describe('sockmath link', () => {
  const link = (question) => run(['link'], JSON.stringify({ version: 1, ...question }));

  it('makes a link of a sheet, and opens it', async () => {
    const fields = [{ field: '/foot/lengthMm', value: 9.5, unit: 'in' }];
    const made = await link({ fields });
    assert.equal(made.code, 0);
    const { text } = JSON.parse(made.stdout).link;
    const opened = await link({ text });
    assert.equal(opened.code, 0);
    assert.equal(opened.stdout, made.stdout);
  });

  it('refuses a link that was cut, with 1', async () => {
    const { text } = JSON.parse((await link({ view: 'buy' })).stdout).link;
    const { code, stdout } = await link({ text: text.slice(0, -1) });
    assert.equal(code, 1);
    assert.equal(JSON.parse(stdout).problems[0].code, 'link_cut');
  });
});

describe('sockmath adjust', () => {
  const adjust = (needles) => run(['adjust'], JSON.stringify({ ...JSON.parse(request), needles }));

  it('answers what is measured on the needles', async () => {
    const { code, stdout } = await adjust({ roundsDone: 9, gramsLeftA: 50 });
    assert.equal(code, 0);
    assert.equal(JSON.parse(stdout).adjust.yarnLeft[0].sock, 'a');
  });

  it('refuses a plan without them, with 1', async () => {
    const { code, stdout } = await run(['adjust'], request);
    assert.equal(code, 1);
    assert.equal(JSON.parse(stdout).problems[0].field, '/needles');
  });
});

describe('sockmath', () => {
  it('answers with one line and 0', async () => {
    const { code, stdout } = await run(['plan'], request);
    assert.equal(code, 0);
    assert.match(stdout, /^\{"ok":true,.*\}\n$/);
  });

  it('refuses with one line and 1', async () => {
    const { code, stdout } = await run(['plan'], '{}');
    assert.equal(code, 1);
    assert.match(stdout, /^\{"ok":false,.*\}\n$/);
  });

  it('refuses an empty input in words', async () => {
    const { code, stdout } = await run(['plan'], '');
    assert.equal(code, 1);
    assert.equal(JSON.parse(stdout).problems[0].field, '');
  });

  it('reads 64 KiB to the last byte, and not one more', async () => {
    const full = request.padEnd(64 * 1024, ' ');
    assert.equal((await run(['plan'], full)).code, 0);
    const { code, stdout } = await run(['plan'], `${full} `);
    assert.equal(code, 1);
    assert.equal(JSON.parse(stdout).problems[0].code, 'too_large_text');
  });

  it('gives up early on an input without end', async () => {
    const { code, stdout } = await run(['plan'], ' '.repeat(20_000_000));
    assert.equal(code, 1);
    assert.equal(JSON.parse(stdout).problems[0].code, 'too_large_text');
  });

  for (const args of [[], ['knit'], ['plan', 'more'], ['--help']]) {
    it(`tells its use, and ends with 2, for [${args}]`, async () => {
      const { code, stdout, out } = await run(args, request);
      assert.equal(code, 2);
      assert.equal(stdout, '');
      assert.match(out, /^usage: sockmath plan/);
    });
  }
});
