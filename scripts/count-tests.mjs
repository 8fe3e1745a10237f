// Prints "passed failed" of a vitest JSON report: count-tests.mjs <report> <exit status of the run>.
import { existsSync, readFileSync } from 'node:fs';

const [path = '', status = '1'] = process.argv.slice(2);
if (!existsSync(path)) {
  // A run that got as far as no report at all is one failure, whatever it was going to test.
  console.log('0 1');
} else {
  const report = JSON.parse(readFileSync(path, 'utf8'));
  const files = report.testResults ?? [];
  const tests = files.flatMap((file) => file.assertionResults ?? []);
  const count = (wanted) => tests.filter((test) => test.status === wanted).length;
  // A file that could not be loaded has no tests to fail, yet it is a failure.
  const broken = files.filter(
    (file) => file.status === 'failed' && !(file.assertionResults ?? []).some((test) => test.status === 'failed'),
  ).length;
  const failed = count('failed') + broken;
  const silent = failed === 0 && status !== '0' ? 1 : 0;
  console.log(`${count('passed')} ${failed + silent}`);
}
