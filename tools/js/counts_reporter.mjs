// A reporter for node:test: JSON with how many tests passed, failed and were skipped. Node's own
// summaries differ from version to version and count groups and files as tests too; this counts tests.
export default async function* countsReporter(source) {
  const counts = { passed: 0, failed: 0, skipped: 0 };
  for await (const { type, data } of source) {
    if (type !== 'test:pass' && type !== 'test:fail') continue;
    const isGroup = data.details?.type === 'suite';
    // A group that fails only because a test in it did is told by that test.
    const byOthers = data.details?.error?.failureType === 'subtestsFailed';
    if (type === 'test:fail') counts.failed += byOthers ? 0 : 1;
    else if (data.skip !== undefined || data.todo !== undefined) counts.skipped += isGroup ? 0 : 1;
    else counts.passed += isGroup ? 0 : 1;
  }
  yield `${JSON.stringify(counts)}\n`;
}
