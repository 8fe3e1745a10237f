import { readFileSync } from 'node:fs';
import { getSource } from '@spindlewright/quantity/sources';
import { describe, expect, it } from 'vitest';
import checkFile from '../data/checks.json' with { type: 'json' };
import lossFile from '../data/losses.json' with { type: 'json' };
import needFile from '../data/needs.json' with { type: 'json' };
import readingFile from '../data/readings.json' with { type: 'json' };
import scaleFile from '../data/scale.json' with { type: 'json' };
import workshopFile from '../data/workshop.json' with { type: 'json' };
import { diagnosisFiles } from '../scripts/generate.ts';
import { FAMILY_FILES, type Reasoned, resolveFamily } from './data/families.ts';
import {
  dataEdition,
  listBesideSigns,
  listCauses,
  listFamilies,
  listFrequencyWords,
  listLikelihoods,
  listLosses,
  listReadingRules,
  listRepairNeeds,
} from './data.ts';
import { familyOf } from './family-of.ts';
import { ACTIONS, BESIDES, CAUSES, CHECK_OUTCOMES, FAMILIES, KINDS, MEASUREMENTS, MODELLED_JOINTS } from './ids.ts';
import { messages } from './messages/en.ts';
import type { CheckId, FamilyId, JointId } from './types.ts';

// JSON imports have no literal types, so every id in the files is compared with the ids of the package here.
const outcomesOf = (check: string): readonly string[] => CHECK_OUTCOMES[check as CheckId] ?? [];
const scale: Record<string, number> = scaleFile;
const jointOf = (family: FamilyId): JointId => {
  const [joint] = FAMILY_FILES[family].joints;
  if (joint === undefined) throw new Error(family);
  return joint;
};
const families = FAMILIES.map((id) => ({ id, file: FAMILY_FILES[id], all: resolveFamily(id), joint: jointOf(id) }));

function expectReasoned({ reason, sources = [] }: Reasoned, where: string): void {
  expect(reason.length, where).toBeGreaterThan(10);
  for (const source of sources) expect(getSource(source).id, where).toBe(source);
}

/** Words are divided by their sum; a sum far from 1 would make a word mean something else than the scale says. */
function expectSum(words: Readonly<Record<string, string>>, where: string): void {
  const sum = Object.values(words).reduce((total, word) => total + (scale[word] ?? Number.NaN), 0);
  expect(sum, where).toBeGreaterThan(0.85);
  expect(sum, where).toBeLessThan(1.25);
}

it('the packed module is what the files say', () => {
  for (const [path, text] of diagnosisFiles()) {
    expect(readFileSync(path, 'utf8') === text, 'stale: npm run generate').toBe(true);
  }
});

describe('scale', () => {
  it('rises, has a floor above 0 and stays below 1', () => {
    const numbers = listFrequencyWords().map(({ probability }) => probability);
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
    expect(numbers[0]).toBeGreaterThan(0);
    expect(numbers.at(-1)).toBeLessThan(1);
    for (const { sources } of listFrequencyWords()) for (const id of sources) expect(getSource(id).id).toBe(id);
  });
});

describe('families', () => {
  it('have every joint once, and each joint begins with the id of its family', () => {
    expect(families.flatMap(({ file }) => file.joints).sort()).toEqual([...MODELLED_JOINTS].sort());
    for (const { id, file } of families) {
      expect(file.id).toBe(id);
      for (const joint of file.joints) expect(familyOf(joint)).toBe(id);
      expect(file.summary.length).toBeGreaterThan(40);
    }
    expect(listFamilies().map(({ id }) => id)).toEqual(FAMILIES);
  });

  it('say only what differs from their base', () => {
    for (const { file } of families) {
      if (file.base === undefined) continue;
      const base = resolveFamily(file.base);
      for (const [check, rows] of Object.entries(file.rows)) {
        for (const [key, row] of Object.entries(rows ?? {})) {
          const other = Object.hasOwn(rows ?? {}, '*') ? undefined : base.rows[check as CheckId]?.[key];
          if (row !== null && other !== undefined) {
            const own = [row.words, row.reason];
            expect(own, `${file.id} ${check}: ${key}`).not.toEqual([other.words, other.reason]);
          }
        }
      }
      for (const [cause, entry] of Object.entries(file.causes ?? {})) {
        const other = base.causes[cause as keyof typeof base.causes];
        if (entry && other) expect([entry.prior, entry.conditions], cause).not.toEqual([other.prior, other.conditions]);
      }
    }
  });

  it.each(families)('$id: rows have known ids, words that sum to about 1, a reason', ({ all, id }) => {
    for (const [check, rows] of Object.entries(all.rows)) {
      const places: string[] = [];
      for (const [key, row] of Object.entries(rows)) {
        const where = `${id} ${check}: ${key}`;
        const [conditions = '', causes = ''] = key === 'default' ? [] : key.split(' @ ');
        const kinds = conditions === '' ? ['default'] : conditions.split(' ');
        for (const kind of kinds) if (kind !== 'default') expect(KINDS, where).toContain(kind);
        for (const cause of causes === '' ? [] : causes.split(' ')) expect(CAUSES, where).toContain(cause);
        for (const outcome of Object.keys(row.words)) expect(outcomesOf(check), where).toContain(outcome);
        expectSum(row.words, where);
        expectReasoned(row, where);
        for (const kind of kinds) {
          for (const cause of causes === '' ? ['any'] : causes.split(' ')) places.push(`${kind}/${cause}`);
        }
      }
      expect(places).toContain('default/any');
      expect(new Set(places).size, `${id} ${check}: two rows claim one place`).toBe(places.length);
    }
    expect(Object.keys(all.rows)).not.toContain('history');
  });

  it.each(families)(
    '$id: causes sum to 1 on either side, with known conditions and reasons',
    ({ id, all, file, joint }) => {
      for (const [cause, entry] of Object.entries(file.causes ?? {})) {
        expect(CAUSES).toContain(cause);
        if (entry === null) continue;
        for (const kind of Object.keys(entry.conditions)) expect(KINDS).toContain(kind);
        expectSum(entry.conditions, `${id} ${cause}`);
        expectReasoned(entry, `${id} ${cause}`);
      }
      for (const kind of file.without ?? []) expect(KINDS).toContain(kind);
      const priors = Object.values(all.causes).reduce((sum, { prior }) => sum + prior, 0);
      // The base as it stands; the others are divided by their sum, which must not be far off.
      expect(Math.abs(priors - 1)).toBeLessThan(file.base === undefined ? 1e-12 : 0.06);
      for (const { prior } of Object.values(all.causes)) expect(prior * 1000).toBeCloseTo(Math.round(prior * 1000), 9);
      for (const side of [undefined, 'drive', 'non-drive'] as const) {
        const records = listCauses({ joint, ...(side === undefined ? {} : { side }) });
        expect(records.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 12);
      }
      for (const side of Object.values(all.sides)) expectReasoned(side, id);
    },
  );

  it.each(families)(
    '$id: the records carry a reason each, and the table of its own rows holds the same',
    async ({ id, joint }) => {
      const records = listLikelihoods(joint);
      expect(new Set(records.map((record) => record.id)).size).toBe(records.length);
      for (const record of records) expectReasoned(record, record.id);
      const cell = (text: string): string => (/[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
      const csv = [
        'id,check,outcome,condition,spindleToo,cause,word,probability,standing,sources,reason',
        ...records
          .filter(({ family }) => family === id)
          .map((record) =>
            [
              ...[record.id, record.check, record.outcome, record.condition, String(record.spindleToo), record.cause],
              ...[record.word, record.probability.toFixed(6), record.standing, record.sources.join(' '), record.reason],
            ]
              .map(cell)
              .join(','),
          ),
      ].join('\n');
      // The file is written anew by running this test with `-u`.
      await expect(`${csv}\n`).toMatchFileSnapshot(`../data/likelihoods/${id}.csv`);
    },
  );

  it('the history has a word for every answer by default and known ids elsewhere', () => {
    for (const { all } of families) {
      expect(Object.keys(all.history.default.words).sort()).toEqual([...CHECK_OUTCOMES.history].sort());
      for (const [id, row] of [...Object.entries(all.history.causes), ...Object.entries(all.history.conditions)]) {
        expect([...CAUSES, ...KINDS]).toContain(id);
        expectReasoned(row, id);
      }
    }
  });
});

describe('what holds beside the joint', () => {
  it.each(families)('moves known outcomes of checks that apply to $id', ({ all, joint }) => {
    expect(Object.keys(all.besides)).toEqual(BESIDES);
    for (const sign of listBesideSigns(joint)) {
      expect(outcomesOf(sign.check)).toContain(sign.from);
      expect(outcomesOf(sign.check)).toContain(sign.to);
      expectReasoned(sign, sign.id);
      expect(Object.keys(all.rows)).toContain(sign.check);
    }
    const seen = new Set(listBesideSigns(joint).map(({ beside }) => beside));
    expect([...seen]).toEqual(BESIDES);
  });
});

describe('readings', () => {
  it('have bands of some width for known outcomes, inside their range, only where their check applies', () => {
    expect(readingFile.readings.map(({ measurement }) => measurement)).toEqual(MEASUREMENTS);
    for (const rule of listReadingRules()) {
      expect(outcomesOf(rule.check)).toContain(rule.outcome);
      expect(rule.upper - rule.lower).toBeGreaterThan(0);
      expect(rule.standardUncertainty).toBeGreaterThan(0);
      expectReasoned(rule, rule.id);
      const common = readingFile.readings.find(({ measurement }) => measurement === rule.measurement);
      expect(rule.lower).toBeGreaterThanOrEqual(common?.min ?? Number.NaN);
      expect(rule.upper).toBeLessThanOrEqual(common?.max ?? Number.NaN);
      expect(Object.keys(resolveFamily(familyOf(rule.joint)).rows), rule.id).toContain(rule.check);
    }
    expect(new Set(listReadingRules().map(({ id }) => id)).size).toBe(listReadingRules().length);
    expect(listReadingRules('one-piece').map(({ measurement }) => measurement)).not.toContain('endGapMm');
  });

  it('turns to torque agree with the finite-element press: a right one in, a bolt on the spindle end out', () => {
    // Section 3 rows of fe-square-taper: travel to 12 kN is 0.6 to 1.3 mm at friction 0.15 to 0.05, pitch 1 mm, so that
    // travel alone takes 0.6 turn or more; a bolt on the spindle end has bolt stretch alone, some twenty degrees.
    const rule = listReadingRules().find(({ id }) => id === 'turnsToTorque/rises-steadily/square-taper');
    const { lower: from, upper: to } = rule ?? { lower: Number.NaN, upper: Number.NaN };
    const pitchMm = 1;
    for (const travelMm of [0.6, 0.82, 1.294]) {
      expect(travelMm / pitchMm).toBeGreaterThan(from);
      expect(travelMm / pitchMm).toBeLessThan(to);
    }
    expect(20 / 360).toBeLessThan(from);
  });

  it('torques that trade tables ask for count as tight, the reach of a short key does not', () => {
    const tight = (joint: JointId): readonly [number, number] => {
      const rule = listReadingRules(joint).find(({ id }) => id === `torqueAtFirstMovementNm/tight/${joint}`);
      return [rule?.lower ?? Number.NaN, rule?.upper ?? Number.NaN];
    };
    // dealer-torque-tables: M12 and M15 bolts 43 to 54 N.m, pinch bolts 12 to 15 N.m; jp-shop-pinch: a short key gives 8.
    for (const torqueNm of [43.4, 54.2]) {
      expect(torqueNm).toBeGreaterThan(tight('spline-10')[0]);
      expect(torqueNm).toBeLessThan(tight('spline-10')[1]);
    }
    for (const torqueNm of [12, 15]) {
      expect(torqueNm).toBeGreaterThan(tight('through-spindle-24')[0]);
      expect(torqueNm).toBeLessThan(tight('through-spindle-24')[1]);
    }
    expect(8).toBeLessThan(tight('through-spindle-24')[0]);
  });

  it('a mark that reaches the stop of ten splines, 16 mm from the end, covers the whole flat', () => {
    const rule = listReadingRules().find(({ id }) => id === 'markEndFromSpindleEndMm/whole-flat/spline-10');
    // spline-10-overview: the stop lies exactly 16 mm from the spindle end.
    expect(rule?.lower).toBeLessThan(16);
    expect(rule?.upper).toBeGreaterThan(16);
  });
});

describe('losses', () => {
  const lossOf = (joint: JointId, id: string): number =>
    listLosses(joint).find((record) => record.id === id)?.lossMinutes ?? Number.NaN;

  it.each(families)(
    '$id: every action has a loss for every condition, and riding unsafe outweighs all else',
    ({ joint }) => {
      const records = listLosses(joint).filter(({ condition }) => !(BESIDES as readonly string[]).includes(condition));
      const ofRiding = records.filter(({ action, condition }) => action === 'ride' && condition !== 'sound');
      const least = Math.min(...ofRiding.map(({ lossMinutes }) => lossMinutes));
      for (const { id, action, condition, lossMinutes, reason } of records) {
        expect(lossMinutes, id).toBeGreaterThanOrEqual(0);
        expect(reason).not.toBe('');
        if (action === 'ride' || condition === 'sound') continue;
        expect(lossMinutes, id).toBeLessThan(lossOf(joint, id.replace(action, 'ride')));
        // Actions after which the joint is ridden as it is aside, nothing costs as much as the least of riding unsafe.
        if (action !== 'look-elsewhere') expect(lossMinutes, id).toBeLessThanOrEqual(least);
      }
      // No needless repair costs a tenth of riding unsafe.
      for (const { condition, lossMinutes } of records) {
        if (condition === 'sound') expect(lossMinutes).toBeLessThan(1500 / 10);
      }
    },
  );

  it('name known ids', () => {
    expect(Object.keys(lossFile.actions)).toEqual(ACTIONS);
    for (const { joint } of Object.values(lossFile.actions)) {
      const unknown = Object.keys(joint).filter((id) => id !== 'default' && !(KINDS as readonly string[]).includes(id));
      expect(unknown).toEqual([]);
    }
    const gates = [...Object.values(lossFile.actions), ...families.flatMap(({ all }) => Object.values(all.gates))];
    for (const gate of gates as { ruledOutBy?: object; onlyAfter?: object }[]) {
      for (const [check, outcomes] of [
        ...Object.entries(gate.ruledOutBy ?? {}),
        ...Object.entries(gate.onlyAfter ?? {}),
      ]) {
        for (const outcome of outcomes) expect(outcomesOf(check)).toContain(outcome);
      }
    }
    for (const { all } of families) {
      for (const action of all.noActions) expect(ACTIONS).toContain(action);
      for (const [action, changes] of Object.entries(all.losses)) {
        expect(ACTIONS).toContain(action);
        for (const kind of Object.keys(changes)) expect(KINDS).toContain(kind);
      }
    }
  });
});

describe('stop signs, incompatible answers, checks, needs', () => {
  it.each(families)('name known checks and outcomes at $id', ({ all }) => {
    for (const [check, outcomes] of Object.entries(all.stopSigns)) {
      expect(Object.keys(all.rows)).toContain(check);
      for (const outcome of outcomes) expect(outcomesOf(check)).toContain(outcome);
    }
    for (const pair of all.incompatible) {
      for (const [check, outcome] of pair) {
        expect(Object.keys(all.rows)).toContain(check);
        expect(outcomesOf(check)).toContain(outcome);
      }
    }
    for (const check of all.silent) expect(Object.keys(all.rows)).not.toContain(check);
    for (const { destroys = [] } of Object.values(all.access)) {
      for (const check of destroys) expect(Object.keys(CHECK_OUTCOMES)).toContain(check);
    }
  });

  it('name known ids in what is common to all', () => {
    expect(checkFile.checks.map(({ id }) => id)).toEqual(Object.keys(CHECK_OUTCOMES));
    for (const { access } of checkFile.checks) expect(Object.keys(checkFile.access)).toContain(access);
    for (const { destroys } of Object.values(checkFile.access)) {
      for (const check of destroys) expect(Object.keys(CHECK_OUTCOMES)).toContain(check);
    }
    expect(dataEdition).toMatch(/^\d{4}\.\d{1,2}$/);
  });

  it('every cause but none has a need, every need is asked for, with a reason', () => {
    expect(Object.keys(needFile.byCause).sort()).toEqual(CAUSES.filter((cause) => cause !== 'none').sort());
    for (const record of listRepairNeeds()) {
      expectReasoned(record, record.id);
      expect(record.causes.length + record.actions.length, record.id).toBeGreaterThan(0);
      for (const cause of record.causes) expect(CAUSES).toContain(cause);
      for (const action of record.actions) expect(ACTIONS).toContain(action);
      for (const family of record.families) expect(FAMILIES).toContain(family);
    }
  });

  it('have words in the table of messages', () => {
    const wanted = [
      ...CAUSES.map((id) => `cause-${id}`),
      ...checkFile.checks.map(({ access }) => `access-${access}`),
      ...Object.values(workshopFile.tools).flatMap((tools) => tools.map((tool) => `tool-${tool}`)),
      ...Object.values(workshopFile.parts).map((part) => `part-${part}`),
    ];
    expect(Object.keys(workshopFile.tools)).toEqual(Object.keys(CHECK_OUTCOMES));
    expect(Object.keys(workshopFile.parts)).toEqual(ACTIONS);
    for (const code of wanted) expect(messages[code], code).toBeDefined();
  });
});
