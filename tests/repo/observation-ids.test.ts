// The meanings of observations name checks and outcomes of the diagnosis, which their package may not import.
import { listChecks } from '@spindlewright/diagnosis';
import { listInterfaces, listObservations } from '@spindlewright/interfaces';
import { observationRecords } from '@spindlewright/interfaces/data';
import { describe, expect, it } from 'vitest';

const known = new Map(
  listChecks().map(({ id, outcomes }) => [id as string, outcomes.map((outcome) => outcome.id as string)]),
);

describe('meanings of observations', () => {
  it('are about checks and outcomes that the diagnosis knows', () => {
    const foreign = observationRecords.flatMap(({ id, checksWithoutObject, meanings }) => [
      ...checksWithoutObject.filter((check) => !known.has(check)).map((check) => `${id}: ${check}`),
      ...meanings
        .filter(({ check, outcome }) => known.get(check)?.includes(outcome) !== true)
        .map((meaning) => `${id}: ${meaning.check}/${meaning.outcome}`),
    ]);
    expect(foreign).toEqual([]);
  });

  it.each(listInterfaces())('leave no outcome of a check at $id without one', (record) => {
    const without = observationRecords.find(({ family }) => family === record.family)?.checksWithoutObject ?? [];
    const explained = new Set(listObservations(record).map(({ check, outcome }) => `${check}/${outcome}`));
    const silent = [...known].flatMap(([check, outcomes]) =>
      without.includes(check)
        ? []
        : outcomes.filter((o) => !explained.has(`${check}/${o}`)).map((o) => `${check}/${o}`),
    );
    expect(silent).toEqual([]);
  });
});
