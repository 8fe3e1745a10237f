// Packs the data of the families into the short strings that the core reads, so that a page does not pay for words,
// reasons and ids: `npm run generate`. A unit test fails when the module is stale. No part of what is published.
import { fileURLToPath } from 'node:url';
import checkFile from '../data/checks.json' with { type: 'json' };
import lossFile from '../data/losses.json' with { type: 'json' };
import needFile from '../data/needs.json' with { type: 'json' };
import readingFile from '../data/readings.json' with { type: 'json' };
import scaleFile from '../data/scale.json' with { type: 'json' };
import {
  type AnswerSets,
  type Gate,
  type ResolvedFamily,
  type ResolvedRow,
  resolveFamily,
  type Words,
} from '../src/data/families.ts';
import {
  ACCESSES,
  ACTIONS,
  BESIDES,
  CAUSES,
  CHECK_OUTCOMES,
  FAMILIES,
  KINDS,
  MEASUREMENTS,
  NEED_KINDS,
} from '../src/ids.ts';
import type { FamilyCode } from '../src/model-data.ts';
import type { CheckId, FamilyId, FrequencyWord } from '../src/types.ts';

const CHECKS = Object.keys(CHECK_OUTCOMES) as CheckId[];
const WORDS = Object.keys(scaleFile);

const at = (list: readonly string[], id: string): number => {
  const index = list.indexOf(id);
  if (index < 0) throw new Error(`${id} is none of ${list.join(', ')}`);
  return index;
};
const small = (list: readonly string[], id: string): string => String.fromCharCode(97 + at(list, id));
const large = (list: readonly string[], id: string): string => small(list, id).toUpperCase();
const digit = (word: FrequencyWord): string => String(at(WORDS, word));

/** One digit an outcome; what is left out never happens, or says nothing. */
const packed = (outcomes: readonly string[], words: Words, missing: string): string => {
  for (const outcome of Object.keys(words)) at(outcomes, outcome);
  return outcomes.map((outcome) => (words[outcome] === undefined ? missing : digit(words[outcome]))).join('');
};

/** Rows as letters of kinds, letters of causes, digits of words; the default has no letters. */
function rowsOf(check: CheckId, rows: Readonly<Record<string, ResolvedRow>>): string {
  // The default has no letters that would part it from a row before it, so it goes first.
  return Object.entries(rows)
    .sort(([a], [b]) => Number(b === 'default') - Number(a === 'default'))
    .map(([key, { words }]) => {
      const [kinds = '', causes = ''] = key === 'default' ? [] : key.split(' @ ');
      const letters =
        kinds === ''
          ? ''
          : kinds
              .split(' ')
              .map((kind) => small(KINDS, kind))
              .join('');
      const capitals =
        causes === ''
          ? ''
          : causes
              .split(' ')
              .map((cause) => large(CAUSES, cause))
              .join('');
      return letters + capitals + packed(CHECK_OUTCOMES[check], words, '0').replace(/0+$/, '');
    })
    .join('');
}

const answers = (sets: AnswerSets | undefined): string =>
  Object.entries(sets ?? {})
    .map(
      ([check, outcomes]) =>
        small(CHECKS, check) + outcomes.map((o) => at(CHECK_OUTCOMES[check as CheckId], o)).join(''),
    )
    .join('');

const gateOf = (gate: Gate | undefined): [string, string] => [answers(gate?.ruledOutBy), answers(gate?.onlyAfter)];

const causesOf = (family: ResolvedFamily): string =>
  Object.entries(family.causes)
    .map(([cause, { prior, conditions }]) => {
      const kinds = Object.entries(conditions).map(([kind, word]) => small(KINDS, kind) + digit(word));
      return `${large(CAUSES, cause)}${Math.round(prior * 1000)}${kinds.join('')}`;
    })
    .join('');

const historyOf = ({ history }: ResolvedFamily): string => {
  const told = CHECK_OUTCOMES.history;
  const byCause = Object.entries(history.causes).map(([cause, { words }]) => {
    return large(CAUSES, cause) + packed(told, { ...history.default.words, ...words }, '0');
  });
  const byKind = Object.entries(history.conditions).map(
    ([kind, { words }]) => small(KINDS, kind) + packed(told, words, '.'),
  );
  return [packed(told, history.default.words, '0'), ...byCause, ...byKind].join('');
};

/** Ends of the bands in the order of the outcomes, blank where there is none. */
const bandsOf = (check: CheckId, bands: Readonly<Record<string, readonly [number, number]>>): string => {
  for (const outcome of Object.keys(bands)) at(CHECK_OUTCOMES[check], outcome);
  return CHECK_OUTCOMES[check].map((outcome) => bands[outcome]?.join(' ') ?? '').join();
};

const ruleOf = (measurement: string): (typeof readingFile.readings)[number] => {
  const rule = readingFile.readings.find((entry) => entry.measurement === measurement);
  if (rule === undefined) throw new Error(`readings.json says nothing of ${measurement}`);
  return rule;
};

const lossRow = (action: keyof typeof lossFile.actions): number[] => {
  const { joint } = lossFile.actions[action];
  const known: Readonly<Record<string, number>> = joint;
  return KINDS.map((kind) => known[kind] ?? joint.default);
};

function codeOf(id: FamilyId): FamilyCode {
  const family = resolveFamily(id);
  const checks = CHECKS.map((check) => {
    const common = checkFile.checks.find((entry) => entry.id === check);
    if (common === undefined) throw new Error(`checks.json says nothing of ${check}`);
    const { minutes = common.minutes, access = common.access } = family.checks[check] ?? {};
    return `${minutes}${small(ACCESSES, access)}`;
  });
  return {
    causes: causesOf(family),
    besides: BESIDES.map((beside): FamilyCode['besides'][number] => {
      const { prior, signs } = family.besides[beside];
      const code = signs.map(({ check, from, to, share }) => {
        const outcomes = CHECK_OUTCOMES[check];
        return `${small(CHECKS, check)}${at(outcomes, from)}${at(outcomes, to)}${digit(share)}`;
      });
      return [prior, code.join('')];
    }),
    sides: Object.fromEntries(
      Object.entries(family.sides).map(([side, { causes, conditions }]) => [
        side,
        Object.fromEntries([
          ...Object.entries(causes).map(([cause, factor]) => [large(CAUSES, cause), factor]),
          ...Object.entries(conditions).map(([kind, factor]) => [small(KINDS, kind), factor]),
        ]),
      ]),
    ) as FamilyCode['sides'],
    history: historyOf(family),
    rows: CHECKS.map((check) => (family.rows[check] === undefined ? '' : rowsOf(check, family.rows[check]))).join('|'),
    bands: MEASUREMENTS.map((measurement) => {
      const own = family.readings[measurement];
      return own === undefined ? '' : bandsOf(ruleOf(measurement).check as CheckId, own.bands);
    }).join('|'),
    joints: jointBands(family),
    stop: answers(family.stopSigns),
    pairs: family.incompatible
      .map((pair) => pair.map(([check, outcome]) => answers({ [check]: [outcome] })).join(''))
      .join(''),
    silent: family.silent.map((check) => small(CHECKS, check)).join(''),
    checks: checks.join(''),
    opening: ACCESSES.map((access): FamilyCode['opening'][number] => {
      const { minutes, wearMinutes, destroys } = { ...checkFile.access[access], ...family.access[access] };
      return [minutes, wearMinutes, destroys.map((check) => small(CHECKS, check)).join('')];
    }),
    gates: Object.fromEntries(
      Object.entries(family.gates).map(([action, gate]) => [small(ACTIONS, action), gateOf(gate)]),
    ),
    lacks: family.noActions.map((action) => small(ACTIONS, action)).join(''),
    losses: Object.fromEntries(
      Object.entries(family.losses).map(([action, changes]) => [
        small(ACTIONS, action),
        Object.fromEntries(Object.entries(changes).map(([kind, loss]) => [small(KINDS, kind), loss])),
      ]),
    ),
    instead: Object.fromEntries(Object.entries((needFile.instead as Record<string, Record<string, string>>)[id] ?? {})),
  };
}

function jointBands(family: ResolvedFamily): Record<string, string> {
  const entries = MEASUREMENTS.flatMap((measurement) =>
    Object.entries(family.readings[measurement]?.byJoint ?? {}).map(([joint, bands]) => [
      `${small(MEASUREMENTS, measurement)} ${joint}`,
      bandsOf(ruleOf(measurement).check as CheckId, bands),
    ]),
  );
  return Object.fromEntries(entries);
}

/** The contents of every generated file of the package, by absolute path. */
export function diagnosisFiles(): Map<string, string> {
  const values: [string, string, unknown][] = [
    ['EDITION', 'string', readingFile.edition],
    ['SCALE', 'readonly number[]', Object.values(scaleFile)],
    [
      'READINGS',
      'readonly ReadingCode[]',
      MEASUREMENTS.map((measurement) => {
        const rule = ruleOf(measurement);
        return [small(CHECKS, rule.check), rule.unit, rule.usualUncertainty, rule.min, rule.max];
      }),
    ],
    ['LOSSES', 'readonly (readonly number[])[]', ACTIONS.map((action) => lossRow(action))],
    [
      'GATES',
      'Readonly<Record<string, readonly [string, string]>>',
      Object.fromEntries(
        ACTIONS.map((action) => [small(ACTIONS, action), gateOf(lossFile.actions[action] as Gate)] as const).filter(
          ([, gate]) => gate.join('') !== '',
        ),
      ),
    ],
    [
      'ARM_OFF',
      'string',
      ACTIONS.filter((action) => 'takesArmOff' in lossFile.actions[action])
        .map((action) => small(ACTIONS, action))
        .join(''),
    ],
    ['IN_USE', 'string', lossFile.leavesInUse.map((action) => small(ACTIONS, action)).join('')],
    ['NO_REPAIR', 'string', lossFile.noRepair.map((action) => small(ACTIONS, action)).join('')],
    ['DO_NOT_RIDE_ABOVE', 'number', lossFile.doNotRideAbove],
    ['LESS_URGENT', 'string', lossFile.lessUrgent.map((kind) => small(KINDS, kind)).join('')],
    [
      'BESIDE_LOSSES',
      'readonly (readonly (readonly [number, number])[])[]',
      BESIDES.map((beside) => {
        const { left, cured, needless } = lossFile.besides[beside];
        const spared: Readonly<Record<string, number>> = needless;
        return ACTIONS.map((action) => [cured.includes(action) ? 0 : left, spared[action] ?? 0]);
      }),
    ],
    [
      'POINTLESS',
      'Readonly<Record<string, string>>',
      Object.fromEntries(
        checkFile.checks.flatMap((check) =>
          'pointlessAfter' in check ? [[small(CHECKS, check.id), answers(check.pointlessAfter as AnswerSets)]] : [],
        ),
      ),
    ],
    ['REFIT_MINUTES', 'number', checkFile.refitMinutes],
    ['NEED_ABOVE', 'number', needFile.worthSaying],
    [
      'NEEDS',
      'Readonly<Record<NeedId, string>>',
      Object.fromEntries(
        Object.entries(needFile.needs).map(([id, { kind }]) => {
          const actions = Object.entries(needFile.byAction).filter(([, needs]) => needs.includes(id));
          const causes = Object.entries(needFile.byCause).filter(([, needs]) => needs.includes(id));
          const letters = actions.map(([action]) => small(ACTIONS, action)).join('');
          return [id, at(NEED_KINDS, kind) + letters + causes.map(([cause]) => large(CAUSES, cause)).join('')];
        }),
      ),
    ],
    [
      'FAMILY_CODES',
      'Readonly<Record<FamilyId, FamilyCode>>',
      Object.fromEntries(FAMILIES.map((id) => [id, codeOf(id)])),
    ],
  ];
  const text = `// Generated from the files in data/ by \`npm run generate\`; edit those.
import type { FamilyCode, ReadingCode } from './model-data.ts';
import type { FamilyId, NeedId } from './types.ts';

${values.map(([name, type, value]) => `export const ${name}: ${type} = ${JSON.stringify(value, null, 1)};`).join('\n')}
`;
  return new Map([[fileURLToPath(new URL('../src/model.generated.ts', import.meta.url)), text]]);
}
