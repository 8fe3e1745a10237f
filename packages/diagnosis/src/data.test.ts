import { getSource } from '@spindlewright/quantity/sources';
import { describe, expect, it } from 'vitest';
import checkFile from '../data/checks.json' with { type: 'json' };
import lossFile from '../data/losses.json' with { type: 'json' };
import scaleFile from '../data/scale.json' with { type: 'json' };
import taperFile from '../data/square-taper.json' with { type: 'json' };
import reasonFile from '../data/square-taper-reasons.json' with { type: 'json' };
import workshopFile from '../data/workshop.json' with { type: 'json' };
import {
  dataEdition,
  listBesideSigns,
  listCauses,
  listFrequencyWords,
  listLikelihoods,
  listLosses,
  listReadingRules,
} from './data.ts';
import { ACTIONS, BESIDES, CAUSES, CHECK_OUTCOMES, KINDS, MEASUREMENTS, MODELLED_JOINTS } from './ids.ts';
import { messages } from './messages/en.ts';
import { jointLoss, LOSSES } from './model-data.ts';
import type { CheckId } from './types.ts';

// JSON imports have no literal types, so every id in the files is compared with the ids of the package here.
const outcomesOf = (check: string): readonly string[] => CHECK_OUTCOMES[check as CheckId] ?? [];
const scale: Record<string, number> = scaleFile;

describe('scale', () => {
  it('rises, has a floor above 0 and stays below 1', () => {
    const numbers = listFrequencyWords().map(({ probability }) => probability);
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
    expect(numbers[0]).toBeGreaterThan(0);
    expect(numbers.at(-1)).toBeLessThan(1);
    for (const { sources } of listFrequencyWords()) for (const id of sources) expect(getSource(id).id).toBe(id);
  });
});

const rows = Object.entries(taperFile.rows).flatMap(([check, table]) =>
  Object.entries(table).map(([key, words]) => {
    const [conditions = '', causes = ''] = key.split(' @ ');
    const list = (text: string): string[] => (text === '' || text === 'default' ? [] : text.split(' '));
    return { id: `${check}: ${key}`, check, conditions: list(conditions), causes: list(causes), words };
  }),
);

describe('rows of likelihoods', () => {
  it.each(rows)('$id: known ids, words that sum to about 1, a reason', (row) => {
    expect(Object.keys(CHECK_OUTCOMES)).toContain(row.check);
    for (const outcome of Object.keys(row.words)) expect(outcomesOf(row.check)).toContain(outcome);
    for (const kind of row.conditions) expect(KINDS).toContain(kind);
    for (const cause of row.causes) expect(CAUSES).toContain(cause);
    // Words are divided by their sum; a sum far from 1 would make a word mean something else than the scale says.
    const sum = Object.values<string>(row.words).reduce((total, word) => total + (scale[word] ?? Number.NaN), 0);
    expect(sum).toBeGreaterThan(0.85);
    expect(sum).toBeLessThan(1.25);
    const reason = (reasonFile as Record<string, { reason: string; sources?: string[] }>)[row.id];
    expect(reason?.reason.length).toBeGreaterThan(10);
    for (const id of reason?.sources ?? []) expect(getSource(id).id).toBe(id);
  });

  it('no two rows claim the same place, and no reason is left without its row', () => {
    const places = rows.flatMap(({ check, conditions, causes }) =>
      (conditions.length > 0 ? conditions : ['default']).flatMap((kind) =>
        (causes.length > 0 ? causes : ['any']).map((cause) => `${check}/${kind}/${cause}`),
      ),
    );
    expect(new Set(places).size).toBe(places.length);
    const known = new Set(rows.map(({ id }) => id));
    const others = /^(cause|history|beside|side|reading)\//;
    expect(Object.keys(reasonFile).filter((id) => !known.has(id) && !others.test(id))).toEqual([]);
  });

  it('every outcome of every check that applies has a row by default', () => {
    const withDefault = rows.filter(({ conditions }) => conditions.length === 0).map(({ check }) => check);
    expect(withDefault).toEqual(
      Object.keys(CHECK_OUTCOMES).filter((check) => !['clamp-slot', 'cotter', 'history'].includes(check)),
    );
  });

  // The file is written anew by running this test with `-u`.
  it('the records carry a reason each, and the CSV file holds the same', async () => {
    const records = listLikelihoods();
    expect(new Set(records.map(({ id }) => id)).size).toBe(records.length);
    for (const { id, reason, sources } of records) {
      expect(reason, id).not.toBe('');
      for (const source of sources) expect(getSource(source).id).toBe(source);
    }
    const cell = (text: string): string => (/[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
    const csv = [
      'id,check,outcome,condition,spindleToo,cause,word,probability,standing,sources,reason',
      ...records.map((record) =>
        [
          ...[record.id, record.check, record.outcome, record.condition, String(record.spindleToo), record.cause],
          ...[record.word, record.probability.toFixed(6), record.standing, record.sources.join(' '), record.reason],
        ]
          .map(cell)
          .join(','),
      ),
    ].join('\n');
    await expect(`${csv}\n`).toMatchFileSnapshot('../data/likelihoods.csv');
  });
});

describe('causes, history, sides', () => {
  it('known ids; priors sum to 1 as they stand and on either side', () => {
    expect(Object.keys(taperFile.causes).sort()).toEqual([...CAUSES].sort());
    const priors = Object.values(taperFile.causes).reduce((sum, { prior }) => sum + prior, 0);
    expect(priors).toBeCloseTo(1, 12);
    for (const { conditions } of Object.values(taperFile.causes)) {
      for (const kind of Object.keys(conditions)) expect(KINDS).toContain(kind);
      const sum = Object.values(conditions).reduce((total, word) => total + (scale[word] ?? Number.NaN), 0);
      expect(sum).toBeGreaterThan(0.85);
      expect(sum).toBeLessThan(1.25);
    }
    for (const side of [undefined, 'drive', 'non-drive'] as const) {
      expect(listCauses(side).reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 12);
    }
    for (const { reason, sources } of listCauses()) {
      expect(reason).not.toBe('');
      for (const source of sources) expect(getSource(source).id).toBe(source);
    }
  });

  it('the history has a word for every answer by default and known ids elsewhere', () => {
    expect(Object.keys(taperFile.history.default).sort()).toEqual([...CHECK_OUTCOMES.history].sort());
    for (const id of Object.keys(taperFile.history.causes)) expect(CAUSES).toContain(id);
    for (const id of Object.keys(taperFile.history.conditions)) expect(KINDS).toContain(id);
  });
});

describe('what holds beside the joint', () => {
  it('moves known outcomes of known checks', () => {
    expect(Object.keys(taperFile.besides)).toEqual(BESIDES);
    for (const { check, from, to, reason } of listBesideSigns()) {
      expect(outcomesOf(check)).toContain(from);
      expect(outcomesOf(check)).toContain(to);
      expect(reason).not.toBe('');
    }
  });
});

describe('readings', () => {
  it('have bands of some width for known outcomes, inside their range, one rule a reading', () => {
    expect(taperFile.readings.map(({ measurement }) => measurement)).toEqual(MEASUREMENTS);
    for (const { check, outcome, lower, upper, standardUncertainty, reason, sources } of listReadingRules()) {
      expect(outcomesOf(check)).toContain(outcome);
      expect(upper - lower).toBeGreaterThan(0);
      expect(standardUncertainty).toBeGreaterThan(0);
      expect(reason).not.toBe('');
      for (const source of sources) expect(getSource(source).id).toBe(source);
    }
    for (const rule of taperFile.readings) {
      for (const [lower, upper] of Object.values(rule.bands) as [number, number][]) {
        expect(lower).toBeGreaterThanOrEqual(rule.min);
        expect(upper).toBeLessThanOrEqual(rule.max);
      }
    }
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
});

describe('losses', () => {
  it('every action has a loss for every condition, at least 0, and riding unsafe outweighs all else', () => {
    expect(Object.keys(lossFile.actions)).toEqual(ACTIONS);
    const rideLosses = KINDS.filter((kind) => kind !== 'sound').map((kind) => jointLoss('ride', kind));
    for (const { action, lossMinutes, reason } of listLosses()) {
      expect(lossMinutes).toBeGreaterThanOrEqual(0);
      expect(reason).not.toBe('');
      // Actions after which the joint is ridden as it is aside, nothing costs as much as the least of riding unsafe.
      if (!['ride', 'look-elsewhere'].includes(action))
        expect(lossMinutes).toBeLessThanOrEqual(Math.min(...rideLosses));
    }
    for (const kind of KINDS) {
      if (kind === 'sound') continue;
      for (const action of ACTIONS) {
        if (action !== 'ride') expect(jointLoss(action, kind), action).toBeLessThan(jointLoss('ride', kind));
      }
    }
    for (const { ruledOutBy = {}, onlyAfter = {} } of Object.values(LOSSES.actions)) {
      for (const [check, outcomes] of [...Object.entries(ruledOutBy), ...Object.entries(onlyAfter)]) {
        for (const outcome of outcomes) expect(outcomesOf(check)).toContain(outcome);
      }
    }
    for (const { joint } of Object.values(lossFile.actions)) {
      expect(Object.keys(joint).filter((id) => id !== 'default' && !(KINDS as readonly string[]).includes(id))).toEqual(
        [],
      );
    }
  });

  it('no needless repair costs a tenth of riding unsafe', () => {
    const needless = ACTIONS.map((action) => jointLoss(action, 'sound'));
    expect(Math.max(...needless)).toBeLessThan(1500 / 10);
  });
});

describe('stop signs, incompatible answers, checks', () => {
  it('name known checks and outcomes', () => {
    for (const [check, outcomes] of Object.entries(taperFile.stopSigns)) {
      for (const outcome of outcomes) expect(outcomesOf(check)).toContain(outcome);
    }
    for (const pair of taperFile.incompatible) {
      for (const [check = '', outcome] of pair) expect(outcomesOf(check)).toContain(outcome);
    }
    expect(checkFile.checks.map(({ id }) => id)).toEqual(Object.keys(CHECK_OUTCOMES));
    for (const { access } of checkFile.checks) expect(Object.keys(checkFile.access)).toContain(access);
    for (const { destroys } of Object.values(checkFile.access)) {
      for (const check of destroys) expect(Object.keys(CHECK_OUTCOMES)).toContain(check);
    }
    expect(taperFile.joints).toEqual(MODELLED_JOINTS);
    expect(dataEdition).toMatch(/^\d{4}\.\d{1,2}$/);
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
