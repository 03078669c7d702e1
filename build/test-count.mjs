// Last line of .ci/run. Usage: node build/test-count.mjs REPORT.json FAILED_STEPS
// Exits with 1 when a test or a step failed, or when no test ran.
import { readFileSync } from 'node:fs';

const [file, failedSteps] = process.argv.slice(2);
const report = readReport(file);
const tests = report.testResults.flatMap((suite) => suite.assertionResults);
const count = (...states) => tests.filter((test) => states.includes(test.status)).length;
// A file that could not be loaded has failed without a single test of its own.
const failed =
  count('failed') +
  report.testResults.filter((s) => s.status === 'failed' && !s.assertionResults.some((t) => t.status === 'failed')).length;
const passed = count('passed');

for (const test of tests) if (['skipped', 'pending'].includes(test.status)) console.log(`skipped: ${test.fullName}`);
console.log(`${passed} passed, ${failed} failed, ${count('skipped', 'pending', 'todo', 'disabled')} skipped`);
process.exitCode = failed || !passed || Number(failedSteps) ? 1 : 0;

function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return { testResults: [] };
  }
}
