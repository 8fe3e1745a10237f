import { allNumbers, everyObject, type Linter, type Node } from './linter.ts';

export const idsUnique: Linter = {
  id: 'ids-unique',
  rule: 'members of a list have ids of their own, and records share no id or former id',
  check: (data) => {
    const inLists = everyObject(data).flatMap(([path, node]) =>
      Object.entries(node).flatMap(([key, list]) =>
        Array.isArray(list)
          ? repeated(list.flatMap((item) => (item as Node | null)?.id ?? [])).map((id) => [`${path}.${key}`, id])
          : [],
      ),
    );
    const records = [...data.records, ...data.neighbours, ...data.observations];
    const ofRecords = repeated(records.flatMap(({ id, aliases }) => [id, ...aliases])).map((id) => ['records', id]);
    const rows = repeated(allNumbers(data).map(({ rowId }) => rowId)).map((id) => ['numbers', id]);
    return [...inLists, ...ofRecords, ...rows].map(([place, id]) => ({
      place: String(place),
      message: `${id} is there twice`,
    }));
  },
};

const repeated = (ids: readonly unknown[]): unknown[] => ids.filter((id, index) => ids.indexOf(id) !== index);

export const rulesOfMating: Linter = {
  id: 'rules-of-mating',
  rule: 'a rule of mating is about its own record and another one that exists',
  check: ({ records, neighbours }) => {
    const faults = (ids: readonly string[], id: string, [one, other]: readonly [string, string], rule: string) =>
      [one, other].includes(id) && one !== other && ids.includes(one) && ids.includes(other)
        ? []
        : [{ place: `${id}:mating[${rule}]`, message: `${one} with ${other}` }];
    const joints = records.map(({ id }) => id);
    const parts = neighbours.map(({ id }) => id);
    return [
      ...records.flatMap(({ id, mating }) =>
        mating.flatMap((rule) => faults(joints, id, [rule.spindle, rule.arm], rule.id)),
      ),
      ...neighbours.flatMap(({ id, mating }) =>
        mating.flatMap((rule) => faults(parts, id, [rule.male, rule.female], rule.id)),
      ),
    ];
  },
};

export const observationsComplete: Linter = {
  id: 'observations-complete',
  rule: 'a meaning for a family is about a check that is explained for any joint, and about interfaces of the family',
  check: ({ records, observations }) => {
    const common = observations.filter(({ family }) => family === 'any').flatMap(({ meanings }) => meanings);
    const checks = new Set(common.map(({ check }) => check));
    // Two checks belong to one family each, and are explained there alone.
    const ownChecks = ['clamp-slot', 'cotter'];
    return observations.flatMap(({ id, family, meanings }) =>
      meanings.flatMap(({ id: meaning, check, interfaces = [] }) => {
        const foreign = interfaces.filter(
          (name) => !records.some((record) => record.id === name && record.family === family),
        );
        const place = `${id}:meanings[${meaning}]`;
        return [
          ...(checks.has(check) || ownChecks.includes(check) ? [] : [{ place, message: `${check} is not explained` }]),
          ...foreign.map((name) => ({ place, message: `${name} is not of the family` })),
        ];
      }),
    );
  },
};
