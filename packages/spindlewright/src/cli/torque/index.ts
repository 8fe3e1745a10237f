import { withFlagPaths } from '../flag-paths.ts';
import type { CliHost } from '../host.ts';
import type { Parsed } from '../parse.ts';
import { torqueAnswer } from './answer.ts';
import { torqueText } from './text.ts';

/** Torque to setting and preload, or back, printed with its range. @internal */
export function runTorque(parsed: Parsed, host: CliHost): number {
  const answer = withFlagPaths(flagOf, () => torqueAnswer(parsed));
  host.print(parsed.on('json') ? `${JSON.stringify(answer, null, 2)}\n` : torqueText(answer));
  return 0;
}

const FLAGS: Readonly<Record<string, string>> = {
  designation: '--thread',
  propertyClass: '--class',
  bearing: '--head',
  threadFriction: '--friction',
  bearingFriction: '--head-friction or --friction',
  torqueNm: 'the torque',
  targetTorqueNm: 'the torque',
  neededPreloadN: '--hold',
  wrenchLengthMm: '--wrench',
  extensionLengthMm: '--extension',
  extensionAngleDeg: '--angle',
};

const flagOf = (path: string): string | undefined => {
  const [field = ''] = path.split('.');
  return Object.hasOwn(FLAGS, field) ? FLAGS[field] : undefined;
};
