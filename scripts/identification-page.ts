// Writes docs/validation/identification.md: how far the probabilities of identification can be believed, tried on readings
// from a generator that is not the model. The same trial is a test: tests/properties/interfaces/calibration.test.ts.
// Runs after validation-pages.ts, which empties the folder.
import { appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { type Score, scoreOf, sharpened } from '../tests/properties/interfaces/scores.ts';
import { CASES, DEMANDS, SEED, SUBJECTS, type Subject, trial } from '../tests/properties/interfaces/trial.ts';
import { reliabilityPlot } from './reliability-plot.ts';

const out = 'docs/validation';

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

function reliabilityTable({ rows }: Score): string {
  const lines = rows.map(
    ({ from, to, count, claimed, right }) =>
      `| ${from.toFixed(1)} to ${to.toFixed(1)} | ${count} | ${percent(claimed)} | ${percent(right)} |`,
  );
  return `| probability of the likeliest | cases | claimed | right |\n| --- | --: | --: | --: |\n${lines.join('\n')}`;
}

function scoreTable(own: Score, sharp: Score): string {
  const demands = DEMANDS.map(({ what, bound, value, met }) => {
    const cell = (score: Score): string => `${value(score).toFixed(3)} (${met(score) ? 'met' : 'not met'})`;
    return `| ${what} ${bound} | ${cell(own)} | ${cell(sharp)} |`;
  });
  const scores = [
    `| Brier score (climatology ${own.climatology.brier.toFixed(3)}) | ${own.brier.toFixed(3)} | ${sharp.brier.toFixed(3)} |`,
    `| log score (climatology ${own.climatology.logScore.toFixed(3)}) | ${own.logScore.toFixed(3)} | ${sharp.logScore.toFixed(3)} |`,
    `| claims of 0.99 and more, of them wrong | ${own.nearCertain.count}, ${own.nearCertain.wrong} | ${sharp.nearCertain.count}, ${sharp.nearCertain.wrong} |`,
  ];
  return `| | as published | made overconfident |\n| --- | --: | --: |\n${[...demands, ...scores].join('\n')}`;
}

const results = SUBJECTS.map((subject): { subject: Subject; own: Score; sharp: Score } => {
  const forecasts = trial(subject, CASES, SEED);
  return { subject, own: scoreOf(forecasts), sharp: scoreOf(sharpened(forecasts, 3)) };
});

const TITLES: Record<Subject, string> = { spindle: 'Spindle ends', thread: 'Threads' };

const sections = results.map(
  ({ subject, own, sharp }) => `## ${TITLES[subject]} {#${subject}}

${CASES} readings, seed ${SEED}.

${scoreTable(own, sharp)}

${reliabilityTable(own)}`,
);

mkdirSync(out, { recursive: true });
writeFileSync(
  `${out}/identification.md`,
  `# Validation of identification

\`identifySpindle\` and \`identifyThread\` give probabilities. What is claimed with 80 % should be right in about 80 of 100
cases. A model tried on readings drawn from itself always comes out well, so these come from a generator that shares no
assumption with it: other frequencies of the parts, errors that are uniform or skewed where the model takes them as normal,
a caliper off its zero for a whole sitting, jaws that bear deeper than said, wrong planes, sizes without a record, steps of
0.05 mm, now and then a slip. It is in \`tests/properties/interfaces/foreign-readings.ts\`; its numbers are invented.

The climatology is the best forecast without any reading: the frequencies of the parts in the trial themselves. Brier and log
score are better when they are smaller. Beside the probabilities as they are stand the same ones made overconfident (each to
its third power, then brought back to a sum of 1): the trial has to find that out, or it would prove nothing.

What is asked for, and why:

${DEMANDS.map(({ what, bound, why }) => `- ${what} ${bound}: ${why}`).join('\n')}

In the plot the diagonal is where claimed and right agree; bars hold the true share in 95 of 100 cases.

What it does not show: that real workshops read as this one does. The readings are simulated; no collection of measured
parts with known names was at hand.

${reliabilityPlot(results.map(({ subject, own }) => ({ label: TITLES[subject], rows: own.rows })))}

${sections.join('\n\n')}
`,
);
appendFileSync(
  `${out}/index.md`,
  '\nProbabilities are tried apart from these tables: [how far those of identification can be believed](./identification.md).\n',
);
console.log(`wrote ${out}/identification.md`);
if (results.some(({ own }) => DEMANDS.some(({ met }) => !met(own)))) process.exitCode = 1;
