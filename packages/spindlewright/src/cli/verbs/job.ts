import { interfaceIds } from './interface-ids.ts';
import type { Verb } from './verb.ts';

/** Forms of a printed sheet. @internal */
export const SHEET_FORMS = ['text', 'markdown', 'html', 'json'] as const;

/** The verb `job`. @internal */
export const jobVerb: Verb = {
  name: 'job',
  about: 'work a crank-arm job: what is wrong, does it fit, how tight',
  usage: ['FILE [--as FORM] [--html FILE]', 'FILE --ask [--save FILE]'],
  operands: [{ name: 'FILE', file: true, about: 'the job (JSON); - for standard input' }],
  flags: [
    { name: 'as', value: 'FORM', choices: SHEET_FORMS, about: 'form of the printed sheet (text)' },
    { name: 'json', about: 'the same as --as json' },
    { name: 'html', value: 'FILE', file: true, about: 'write the page with the drawings there as well' },
    { name: 'ask', about: 'ask checks and readings one by one at the stand; a file that is not there is begun' },
    { name: 'save', value: 'FILE', file: true, about: 'with --ask: save there and not in the file itself' },
  ],
  notes: [
    'The shortest job: { "format": "spindlewright-job-1", "title": "demo", "date": "2026-11-25", "bike": "blue town bike", "side": "drive", "interface": { "spindle": "square-taper-jis", "arm": "square-taper-jis" }, "trialFit": { "endGapMm": 2.5, "shoulderGapMm": 3 } }. With --ask a file that is not there is begun, so none has to be written by hand.',
    `Interfaces: ${interfaceIds()}, or unknown.`,
    'A length, torque or angle may be a number in the unit of its name ("endGapMm": 2.5) or a text with a unit ("endGapMm": "0.1 in").',
    'With --ask the check that earns most is asked first, one key each, until no answer would change what to do; then, if wanted, the readings of the joint, one number each. Every answer is saved at once: stop when you like, the same command goes on from there, and undo takes back one answer after the other.',
  ],
  examples: [
    { about: 'begin a job at the stand, be asked check by check', command: 'job new-job.json --ask' },
    { about: 'print the sheet, and write the page that can be printed', command: 'job job.json --html sheet.html' },
    { about: 'the sheet as data for another program', command: 'job job.json --json' },
  ],
  exits: [[130, 'the walk of --ask was broken off; the answers so far are saved']],
};
