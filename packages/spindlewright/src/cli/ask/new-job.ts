import { listJoints } from '@spindlewright/diagnosis';
import { listInterfaces } from '@spindlewright/interfaces';
import type { Asker } from './asker.ts';

const UNKNOWN = 'unknown';

/** Asks what a job cannot do without; undefined when that is broken off. @internal */
export async function askNewJob(asker: Asker, date: string): Promise<Record<string, unknown> | undefined> {
  asker.say('There is no such file yet: a few words to begin it.');
  const bike = await asker.text('Which bike?', 'blue town bike of a customer');
  if (bike === undefined) return undefined;
  const side = await asker.one('Which side?', [
    { value: 'drive', label: 'the side of the chain' },
    { value: 'non-drive', label: 'the other side' },
  ]);
  if (side === undefined) return undefined;
  const titles = new Map(listInterfaces().map(({ id, title }) => [id, title]));
  const joint = await asker.one('Which joint is between arm and spindle?', [
    { value: UNKNOWN, label: 'a square taper, not known which' },
    ...listJoints()
      .filter(({ id, modelled }) => modelled && titles.has(id))
      .map(({ id }) => ({ value: id, label: titles.get(id) ?? id, hint: id })),
  ]);
  if (joint === undefined) return undefined;
  return newJob({ bike, side, joint, date });
}

/** A job with what every job has. */
const newJob = ({ bike, side, joint, date }: Record<'bike' | 'side' | 'joint' | 'date', string>) => ({
  format: 'spindlewright-job-1',
  title: bike,
  date,
  bike,
  side,
  interface: { spindle: joint, arm: joint },
});
