import { interfaceIds } from './interface-ids.ts';
import type { Verb } from './verb.ts';

/** Kinds of parts that can be looked for. */
const SCREEN_KINDS = ['arm', 'spindle', 'bolt', 'chainring', 'pedals', 'puller'] as const;
/** Forms of a catalogue. */
const CATALOGUE_FORMS = ['csv', 'ndjson', 'json'] as const;
/** Forms of what is written. */
const ANSWER_FORMS = ['text', 'ndjson', 'csv', 'json'] as const;

/** The verb `screen`. @internal */
export const screenVerb: Verb = {
  name: 'screen',
  about: 'say of every part of a catalogue whether it fits',
  usage: [
    '--need FILE [--mapping FILE] [CATALOGUE]',
    '--job FILE [--mapping FILE] [CATALOGUE]',
    '--draft-mapping CATALOGUE [--out FILE]',
  ],
  operands: [
    {
      name: 'CATALOGUE',
      file: true,
      optional: true,
      about: 'CSV (comma, semicolon, tab), NDJSON or JSON; standard input when left out or -',
    },
  ],
  flags: [
    { name: 'need', value: 'FILE', file: true, about: 'what is wanted, written by hand (JSON)' },
    { name: 'job', value: 'FILE', file: true, about: 'take what is wanted from a job' },
    { name: 'draft-mapping', about: 'write a first mapping of the columns and words of the catalogue, judge nothing' },
    { name: 'mapping', value: 'FILE', file: true, about: 'what columns, units and words of the catalogue mean (JSON)' },
    { name: 'for', value: 'KIND', choices: SCREEN_KINDS, about: 'what to look for, when the job does not say' },
    { name: 'catalogue', value: 'FILE', file: true, about: 'the catalogue, another way to name it' },
    {
      name: 'form',
      value: 'FORM',
      choices: CATALOGUE_FORMS,
      about: 'form of the catalogue, when name and beginning do not tell',
    },
    {
      name: 'format',
      value: 'FORM',
      choices: ANSWER_FORMS,
      about: 'form of the answers: text is counts and shortlist (as without it), the others hold every row',
    },
    { name: 'json', about: 'the same as --format json' },
    { name: 'out', value: 'FILE', file: true, about: 'write there and not to standard output' },
    { name: 'top', value: 'N', about: 'length of the shortlist (10)' },
    { name: 'quiet', about: 'no progress and no counts on standard error' },
  ],
  notes: [
    'A need is one object: { "format": "spindlewright-need-1", "for": "arm", "interface": "square-taper-jis", "side": "drive" }',
    `Interfaces: ${interfaceIds()}.`,
    'Rows are never dropped: rows = fits + does not fit + cannot tell + refused. NDJSON and CSV are written as they come and stay whole when interrupted; JSON is written under its name only when it is complete.',
  ],
  examples: [
    { about: 'start from nothing: a first mapping', command: 'screen --draft-mapping parts.csv --out mapping.json' },
    {
      about: 'then ask, with counts and a shortlist',
      command: 'screen --need need.json --mapping mapping.json parts.csv',
    },
    {
      about: 'an answer for every row, for a spreadsheet',
      command: 'screen --job job.json --mapping mapping.json parts.csv --format csv --out answers.csv',
    },
  ],
  exits: [[130, 'interrupted; what was written is whole rows']],
};
