import {
  type BoreIdentification,
  identifyBore,
  identifySpindle,
  identifyThread,
  type SpindleIdentification,
  type ThreadIdentification,
} from '@spindlewright/interfaces';
import { withFlagPaths } from '../flag-paths.ts';
import type { CliHost } from '../host.ts';
import type { Parsed } from '../parse.ts';
import { flagOfField, type PartReadings, partReadings } from './input.ts';
import { identificationText } from './text.ts';

/** What the readings of any part were found to be. @internal */
export type Identification = SpindleIdentification | BoreIdentification | ThreadIdentification;

/** Names a part by its readings and prints the candidates, the next reading and the cautions. @internal */
export function runIdentify(parsed: Parsed, host: CliHost): number {
  const readings = partReadings(parsed, host);
  // Fields of a file are named as they are; those of flags by their flag.
  const flagOf =
    parsed.text('readings') === undefined ? (path: string) => flagOfField(readings.part, path) : () => undefined;
  const result = withFlagPaths(flagOf, () => identified(readings));
  host.print(
    parsed.on('json')
      ? `${JSON.stringify({ format: 'spindlewright-identification-1', ...readings, ...result }, null, 2)}\n`
      : identificationText(readings, result),
  );
  return 0;
}

/** Asks the function of the part. @internal */
export function identified(readings: PartReadings): Identification {
  switch (readings.part) {
    case 'spindle':
      return identifySpindle(readings.input);
    case 'bore':
      return identifyBore(readings.input);
    case 'thread':
      return identifyThread(readings.input);
  }
}
