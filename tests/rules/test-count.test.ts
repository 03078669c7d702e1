import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(path.join(tmpdir(), 'gapwright-count-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The last line and the exit code for suites given as lists of test states. */
function count(suites: string[][] | string, failedSteps = 0) {
  const file = path.join(folder, 'report.json');
  const suite = (states: string[]) => ({
    status: states.length && !states.includes('failed') ? 'passed' : 'failed',
    assertionResults: states.map((status, n) => ({ status, fullName: `test ${n}` })),
  });
  writeFileSync(file, typeof suites === 'string' ? suites : JSON.stringify({ testResults: suites.map(suite) }));
  const { status, stdout } = spawnSync(process.execPath, ['build/test-count.mjs', file, String(failedSteps)], { encoding: 'utf8' });
  return { status, line: stdout.trimEnd().split('\n').at(-1) };
}

test('the last line counts, and only a run without a failure ends well', () => {
  expect(
    count([
      ['passed', 'passed'],
      ['passed', 'skipped'],
    ]),
  ).toEqual({ status: 0, line: '3 passed, 0 failed, 1 skipped' });
  expect(count([['passed', 'failed']])).toEqual({ status: 1, line: '1 passed, 1 failed, 0 skipped' });
});

test('a file that could not be loaded counts as a failure', () => {
  expect(count([['passed'], []])).toEqual({ status: 1, line: '1 passed, 1 failed, 0 skipped' });
});

test('a failed step, a run without tests and a report that is not there do not end well', () => {
  expect(count([['passed']], 1)).toEqual({ status: 1, line: '1 passed, 0 failed, 0 skipped' });
  expect(count([])).toEqual({ status: 1, line: '0 passed, 0 failed, 0 skipped' });
  expect(count('')).toEqual({ status: 1, line: '0 passed, 0 failed, 0 skipped' });
});
