import { getInterface } from '@spindlewright/interfaces';
import { type Finding, hardLimits, type Measurand } from '@spindlewright/quantity';
import { findingLines } from '../finding-lines.ts';
import { wrapped } from '../wrap.ts';
import type { Identification } from './index.ts';
import type { PartReadings } from './input.ts';

const PARTS = { spindle: 'spindle end', bore: 'bore of an arm', thread: 'thread' } as const;
const READ = {
  acrossFlatsMm: 'across flats',
  flatLengthMm: 'length of the flats',
  boreLengthMm: 'from the mouth to the seat of the bolt',
  diameterMm: 'diameter',
  pitchMm: 'pitch',
  threadsPerInch: 'threads per inch',
} as const;

/** Below this a candidate is only counted. Judgement: under one in a hundred nothing is done about it. */
const SHOWN = 0.01;

/** The answer for people. @internal */
export function identificationText({ part, input }: PartReadings, result: Identification): string {
  const { candidates, next, findings, cautions, sources, dataEdition } = result;
  const shown = candidates.filter(({ probability }, index) => index === 0 || probability >= SHOWN);
  const rest = candidates.length - shown.length;
  return [
    `${PARTS[part]}, as read`,
    ...readLines(input as Readonly<Record<string, unknown>>, part === 'bore' ? 'mouth' : 'end'),
    '',
    'what it may be, likeliest first',
    ...shown.flatMap((candidate) =>
      wrapped(nameOf(candidate), undefined, `  ${chance(candidate.probability).padStart(9)}  `),
    ),
    ...(rest === 0 ? [] : [`             ${rest} more, each under 1 %`]),
    '',
    'the next reading',
    ...wrapped(sentence(next.message), undefined, '  '),
    '',
    ...findingLines([...findings, ...cautions] as Finding[]),
    '',
    ...wrapped(`Data ${dataEdition}; sources: ${sources.join(', ')}`),
    '',
  ].join('\n');
}

/** The heading says already that it is the next one. */
const sentence = (message: string): string =>
  message.replace(/^Next: (.)/, (_all, letter: string) => letter.toUpperCase());

/** No answer is certain, so none is rounded to 0 or 100. */
function chance(probability: number): string {
  const percent = Math.round(100 * probability);
  if (percent >= 100) return 'over 99 %';
  return percent === 0 ? 'under 1 %' : `${percent} %`;
}

function nameOf(candidate: Identification['candidates'][number]): string {
  if (candidate.id === 'unlisted') return 'none that is listed here (unlisted)';
  if (!('uses' in candidate)) return `${getInterface(candidate.id).title} (${candidate.id})`;
  const { id, designation = id, hand, uses } = candidate;
  return `${designation}${hand === 'left' ? ', left-hand' : ''}: ${uses.join('; ')} (${id})`;
}

function readLines(input: Readonly<Record<string, unknown>>, from: 'mouth' | 'end'): string[] {
  const flats = [input, ...((input.readings as Record<string, unknown>[] | undefined) ?? [])];
  const lines = flats.flatMap(({ acrossFlatsMm, atMm }) =>
    acrossFlatsMm === undefined
      ? []
      : [`across flats ${size(acrossFlatsMm as Measurand)} mm, ${size(atMm as Measurand)} mm from the ${from}`],
  );
  for (const [key, name] of Object.entries(READ)) {
    const value = input[key];
    if (value === undefined || key === 'acrossFlatsMm') continue;
    const unit = key.endsWith('Mm') ? ' mm' : '';
    const at =
      key === 'diameterMm' && input.atMm !== undefined ? `, ${size(input.atMm as Measurand)} mm from the ${from}` : '';
    lines.push(`${name} ${size(value as Measurand)}${unit}${at}`);
  }
  if (input.toothed !== undefined) lines.push(input.toothed === true ? 'toothed' : 'without teeth');
  if (typeof input.kind === 'string') lines.push(`${input.kind} thread`);
  if (typeof input.hand === 'string') lines.push(`${input.hand} hand`);
  return lines.map((line) => `  ${line}`);
}

function size(value: Measurand): string {
  const round = (x: number): string => String(Number(x.toFixed(3)));
  if (typeof value === 'number') return round(value);
  if ('standardUncertainty' in value) return `${round(value.value)} (u ${round(value.standardUncertainty)})`;
  const { lower, nominal, upper } = hardLimits(value);
  return `${round(nominal)} (${round(lower)} to ${round(upper)})`;
}
