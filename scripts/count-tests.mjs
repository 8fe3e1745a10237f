// Prints "passed failed" of a vitest JSON report: count-tests.mjs <report> <exit status of the run>. What failed is
// named on standard error, a line each.
import { existsSync, readFileSync } from 'node:fs';

const [path = '', status = '1'] = process.argv.slice(2);
if (!existsSync(path)) {
  // A run that got as far as no report at all is one failure, whatever it was going to test.
  console.log('0 1');
  console.error(`no report ${path}: the run ended with status ${status} before it wrote one`);
} else {
  const report = JSON.parse(readFileSync(path, 'utf8'));
  const files = report.testResults ?? [];
  const tests = files.flatMap((file) => file.assertionResults ?? []);
  const count = (wanted) => tests.filter((test) => test.status === wanted).length;
  const failing = (file) => (file.assertionResults ?? []).filter((test) => test.status === 'failed');
  // A file that could not be loaded has no tests to fail, yet it is a failure.
  const broken = files.filter((file) => file.status === 'failed' && failing(file).length === 0);
  const failed = count('failed') + broken.length;
  const silent = failed === 0 && status !== '0' ? 1 : 0;
  for (const file of files)
    for (const { fullName, failureMessages } of failing(file))
      console.error(`${file.name}: ${fullName}: ${failureMessages?.[0]?.split('\n')[0] ?? ''}`);
  for (const { name, message } of broken) console.error(`${name}: ${message?.split('\n')[0] ?? ''}`);
  if (silent) console.error(`the run ended with status ${status} though nothing in its report failed`);
  console.log(`${count('passed')} ${failed + silent}`);
}
