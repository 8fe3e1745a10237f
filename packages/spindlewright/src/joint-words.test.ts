import { readdirSync, readFileSync } from 'node:fs';
import {
  diagnose,
  type FamilyId,
  type JointId,
  listChecks,
  listConditions,
  listJoints,
} from '@spindlewright/diagnosis';
import { listCauses } from '@spindlewright/diagnosis/data';
import { getInterface, listInterfaces } from '@spindlewright/interfaces';
import { describe, expect, it } from 'vitest';
import { familyOf, jointOf } from './joint-kind.ts';
import { jointWords } from './joint-words.ts';
import { readJob } from './read-job.ts';
import { renderText } from './render-text.ts';
import { workJob } from './work-job.ts';

/** Words for what a joint does not have; bolts of the chainring are other bolts. */
const WRONG = {
  cottered: /\b(?<!chainring )bolts?\b|\bflats\b|\btaper|\bwall\b/i,
  'one-piece': /\b(?<!chainring )bolts?\b|\bflats\b|\btaper|\bwall\b|\bhole\b/i,
  'face-spline': /\bflats\b|\btaper|\bwall\b|\bhole of the arm\b|\bnut\b/i,
  spline: /\bflats\b|\btaper|\bwall\b|\bhole of the arm\b|\bnut\b/i,
  // A crank bolt there is not: bolts are those of the clamp.
  pinched: /\b(the|no|wrong) bolt\b|\bbolt(,| and| or|'s) (its )?(seat|washer|nut)|\bflats\b|\btaper|\bwall\b/i,
} as const;

function wrongAt(joint: JointId): RegExp | undefined {
  const family: FamilyId = familyOf(joint);
  if (family === 'through-spindle') {
    const known = listInterfaces().some(({ id }) => id === joint);
    return known && getInterface(joint).drawnTight.by === 'pinch-bolts' ? WRONG.pinched : WRONG.spline;
  }
  if (family.startsWith('spline-')) return WRONG.spline;
  return Object.hasOwn(WRONG, family) ? WRONG[family as 'cottered' | 'one-piece' | 'face-spline'] : undefined;
}

const joints = listJoints()
  .filter(({ id, modelled }) => modelled && wrongAt(id as JointId) !== undefined)
  .map(({ id }) => id as JointId);

describe('the words of a joint', () => {
  it.each(joints)('%s: no check, outcome, condition, cause, action or caution names what it does not have', (joint) => {
    const words = jointWords(joint);
    const { actions } = diagnose({ joint, side: 'drive', observations: {} });
    const conditions = listConditions(joint).map(({ id }) => id as string);
    const cautions = [
      ...(['loose-but-sound', 'bolt-not-clamping', 'fixing-thread-damaged'].some((id) => conditions.includes(id))
        ? ['caution-bolt-needed', 'caution-tighten-once', 'caution-spindle-thread']
        : []),
      ...(conditions.includes('bore-deformed') && familyOf(joint) !== 'cottered' ? ['caution-no-shim'] : []),
    ];
    const codes = [
      ...listChecks(joint).flatMap(({ id, access, outcomes }) => [
        `check-${id}`,
        `access-${access}`,
        ...outcomes.map((outcome) => `outcome-${id}-${outcome.id}`),
      ]),
      ...conditions.map((id) => `condition-${id}`),
      ...listCauses({ joint }).map(({ id }) => `cause-${id}`),
      ...actions.map(({ id }) => `action-${id}`),
      ...cautions,
    ];
    expect(codes.length).toBeGreaterThan(20);
    const wrong = wrongAt(joint) ?? /$^/;
    expect(
      codes.map((code) => `${code}: ${words[code]}`).filter((line) => wrong.test(line.replace(/^[^:]+: /, ''))),
    ).toEqual([]);
  });
});

const folder = new URL('../../../examples/jobs/', import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith('.json'));

describe('the sheets of the example jobs', () => {
  it('are sixteen', () => {
    expect(names.length).toBe(16);
  });

  it.each(names)('%s says nothing of a part that the joint does not have', (name) => {
    const job = readJob(JSON.parse(readFileSync(new URL(name, folder), 'utf8')));
    const wrong = wrongAt(jointOf(job));
    if (wrong === undefined) return;
    const sheet = workJob(job);
    // What does not apply is named there, and sources and candidates have names of their own.
    const own = sheet.sections.filter(({ id }) => !['not-here', 'grounds', 'candidates', 'buy'].includes(id));
    const text = renderText({ ...sheet, sections: own });
    const lines = text
      .replace(/\s+/g, ' ')
      .replace(/\[[^\]]*\]/g, '')
      .split(/(?<=[.;:]) /);
    // Printed claims on grease tell of other joints too.
    expect(lines.filter((line) => wrong.test(line) && !/never square tapers|greasing/i.test(line))).toEqual([]);
  });

  it('the check bites: a sheet of a square taper fails it for each of the others', () => {
    const job = readJob(JSON.parse(readFileSync(new URL('bore-gone.json', folder), 'utf8')));
    const text = renderText(workJob(job));
    for (const wrong of Object.values(WRONG)) expect(text).toMatch(wrong);
  });
});
