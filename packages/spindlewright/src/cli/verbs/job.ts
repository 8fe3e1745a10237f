import type { Verb } from './verb.ts';

/** Forms of a printed sheet. @internal */
export const SHEET_FORMS = ['text', 'markdown', 'html', 'json'] as const;

/** The verb `job`. @internal */
export const jobVerb: Verb = {
  name: 'job',
  about: 'work a crank-arm job: what is wrong, does it fit, how tight',
  usage: ['FILE [--as FORM] [--html FILE]'],
  operands: [{ name: 'FILE', file: true, about: 'the job (JSON); - for standard input' }],
  flags: [
    { name: 'as', value: 'FORM', choices: SHEET_FORMS, about: 'form of the printed sheet (text)' },
    { name: 'json', about: 'the same as --as json' },
    { name: 'html', value: 'FILE', file: true, about: 'write the page with the drawings there as well' },
  ],
  notes: [
    'A length, torque or angle may be a number in the unit of its name ("endGapMm": 2.5) or a text with a unit ("endGapMm": "0.1 in").',
  ],
  examples: [
    { about: 'print the sheet, and write the page that can be printed', command: 'job job.json --html sheet.html' },
    { about: 'the sheet as data for another program', command: 'job job.json --json' },
  ],
};
