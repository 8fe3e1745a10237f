import type { Verb } from './verb.ts';

/** Parts that readings can name. @internal */
export const IDENTIFY_PARTS = ['spindle', 'bore', 'thread'] as const;

/** The verb `identify`. @internal */
export const identifyVerb: Verb = {
  name: 'identify',
  about: 'name a spindle end, a bore or a thread by its readings',
  usage: ['PART [readings as flags]', '[PART] --readings FILE [flags]'],
  operands: [
    {
      name: 'PART',
      optional: true,
      choices: IDENTIFY_PARTS,
      about: 'what was measured (left out when the file says it)',
    },
  ],
  flags: [
    {
      name: 'flats',
      group: 'a square (spindle, bore)',
      value: 'SIZE@PLANE',
      repeats: true,
      about:
        'size across two opposite flats, and where the jaws bore: from the end of the spindle or from the inner mouth of the arm',
    },
    {
      name: 'length',
      group: 'a square (spindle, bore)',
      value: 'LENGTH',
      about: 'spindle: length of the flats; bore: from the inner mouth to the seat of the bolt',
    },
    {
      name: 'diameter',
      group: 'a round bore, a thread',
      value: 'SIZE',
      about: 'round bore, or thread over its crests',
    },
    {
      name: 'teeth',
      group: 'a round bore, a thread',
      value: 'WORD',
      choices: ['yes', 'no'],
      about: 'round bore: whether it is toothed',
    },
    {
      name: 'at',
      group: 'a round bore, a thread',
      value: 'PLANE',
      about: 'thread: where the diameter was read, from its end',
    },
    { name: 'pitch', group: 'a round bore, a thread', value: 'LENGTH', about: 'thread: from crest to crest' },
    {
      name: 'tpi',
      group: 'a round bore, a thread',
      value: 'N',
      about: 'thread: threads per inch, in place of the pitch',
    },
    {
      name: 'hand',
      group: 'a round bore, a thread',
      value: 'HAND',
      choices: ['right', 'left'],
      about: 'thread: which way it goes in',
    },
    {
      name: 'kind',
      group: 'a round bore, a thread',
      value: 'KIND',
      choices: ['external', 'internal'],
      about: 'thread: outside as on a bolt, inside as in a nut',
    },
    { name: 'readings', value: 'FILE', file: true, about: 'readings as JSON; - for standard input' },
    { name: 'json', about: 'the answer as data' },
  ],
  notes: [
    'A reading has its unit: "12.65 mm", "1/2 in", "12.65 +- 0.02 mm", "12.6..12.7 mm". Without bounds the usual error of a caliper is taken, and said.',
    'A file of readings: { "format": "spindlewright-readings-1", "part": "spindle", "readings": [{ "acrossFlatsMm": 12.65, "atMm": 2 }], "flatLengthMm": "16.5 mm" }. The other fields are diameterMm, atMm, pitchMm, threadsPerInch, hand and kind of a thread, boreLengthMm, diameterMm and toothed of a bore.',
  ],
  examples: [
    {
      about: 'a square spindle end, read in two places',
      command: 'identify spindle --flats "12.65 mm @ 0 mm" --flats "13.2 mm @ 8 mm"',
    },
    { about: 'the hole of an arm', command: 'identify bore --flats "13.58 mm @ 0 mm" --length "15.5 mm"' },
    { about: 'a bolt, in inches', command: 'identify thread --diameter "5/16 in" --tpi 24 --kind external' },
    { about: 'readings from a file, the answer as data', command: 'identify --readings readings.json --json' },
  ],
};
