import type { Verb } from './verb.ts';

/** Kinds of files that can be checked. @internal */
export const DATA_KINDS = ['job', 'need', 'mapping', 'readings', 'sheet', 'record', 'catalogue'] as const;

/** The verb `check-data`. @internal */
export const checkDataVerb: Verb = {
  name: 'check-data',
  about: 'look for faults in jobs, needs, records, catalogues',
  usage: ['FILE... [--mapping FILE]'],
  operands: [{ name: 'FILE', file: true, repeats: true, about: 'one or more files; each is left as it is' }],
  flags: [
    { name: 'as', value: 'KIND', choices: DATA_KINDS, about: 'what they are, when they do not say it themselves' },
    { name: 'mapping', value: 'FILE', file: true, about: 'the mapping that a catalogue is read by' },
    { name: 'rows', value: 'N', about: 'how many rows of a catalogue are looked at (20000)' },
    { name: 'json', about: 'the faults as data' },
  ],
  notes: [
    'A file is known by its "format", a record by its "family" or "kind", a catalogue by its name or by being a list. Each fault is told with its line, its path, what came and what is allowed; a mark ! is worth a look and no fault.',
    'A record of your own is an interface, something that stands beside one, or what an observation means, in the form of the records of @spindlewright/interfaces.',
  ],
  examples: [
    { about: 'a job and a need before they are used', command: 'check-data job.json need.json' },
    { about: 'a catalogue with its mapping', command: 'check-data parts.csv --mapping mapping.json' },
    { about: 'a record of your own, the answer as data', command: 'check-data record.json --as record --json' },
  ],
  exits: [
    [0, 'no faults'],
    [1, 'a file cannot be read; the others were looked at'],
    [2, 'a file has faults, or a flag is wrong'],
  ],
};
