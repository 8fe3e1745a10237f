import { describe, expect, it } from 'vitest';
import { linters } from '../scripts/linters.ts';
import { readRawData } from '../scripts/raw-data.ts';
import { recordSkeleton, skeletonNames } from '../scripts/record-skeleton.ts';
import { interfaceRecordSchema, neighbourRecordSchema } from './schema.ts';

describe('the skeleton of a record', () => {
  const raw = readRawData();

  it.each(skeletonNames)('%s has the form of its schema, and no linter lets it through', (name) => {
    const skeleton = recordSkeleton(name, 'brand-new');
    if (skeleton === undefined) throw new Error('no skeleton');
    const { folder, record } = skeleton;
    const schema = folder === 'records' ? interfaceRecordSchema : neighbourRecordSchema;
    expect(schema.safeParse(record).error).toBeUndefined();
    const data = { ...raw, [folder]: [...raw[folder], record] };
    const faults = linters.flatMap(({ id, check }) => check(data).map(({ place }) => `${id} ${place}`));
    expect(faults.filter((fault) => fault.startsWith('standing-sourced brand-new')).length).toBeGreaterThan(0);
    // A skeleton brings no fault but those of what is to be filled in.
    const kinds = new Set(faults.filter((fault) => fault.includes('brand-new')).map((fault) => fault.split(' ')[0]));
    expect([...kinds].every((kind) => ALLOWED.includes(kind ?? ''))).toBe(true);
  });

  it('is none for a name that is none', () => {
    expect(recordSkeleton('saddle', 'brand-new')).toBeUndefined();
  });
});

const ALLOWED = ['standing-sourced', 'plausible-ranges', 'inner-below-outer', 'thread-geometry', 'hole-spacing'];
