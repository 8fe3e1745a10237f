// The rules that the data keep, each a plain function that is tried on a seeded fault. Node only; not published.
import { listSources } from '@spindlewright/quantity/sources';
import { dataEdition } from '../src/data-edition.ts';
import { type NumberRow, numberRows } from '../src/number-rows.ts';
import type { ThreadRecord } from '../src/record.ts';
import { threadRows } from '../src/thread-rows.ts';
import { numberedTrees } from './atlas.ts';
import type { RawData } from './raw-data.ts';

/** A place in the data where a rule is broken. */
interface Fault {
  linter: string;
  /** Row id, or record and path. */
  place: string;
  message: string;
}

/** A rule of the data. */
interface Linter {
  id: string;
  /** What it asks for. */
  rule: string;
  check: (data: RawData) => Omit<Fault, 'linter'>[];
}

/** A fault that is known and let through until an edition. */
export interface LintException {
  linter: string;
  place: string;
  why: string;
  /** The first edition in which it is no longer let through, such as `2027.11`. */
  until: string;
}

type Node = Record<string, unknown>;

/** Every object of a tree with its path; members of lists by their id. */
function* objectsOf(node: unknown, path: string): Generator<[string, Node]> {
  if (typeof node !== 'object' || node === null) return;
  if (!Array.isArray(node)) yield [path, node as Node];
  for (const [key, child] of Object.entries(node)) {
    const name = Array.isArray(node) ? `[${(child as Node | null)?.id ?? key}]` : `.${key}`;
    yield* objectsOf(child, `${path}${name}`);
  }
}

const trees = (data: RawData): { name: string; data: object }[] => [
  ...numberedTrees(data),
  ...data.observations.map((record) => ({ name: record.id, data: record })),
];

const everyObject = (data: RawData): [string, Node][] =>
  trees(data).flatMap(({ name, data: tree }) => [...objectsOf(tree, name)]);

const allNumbers = (data: RawData): NumberRow[] => numberedTrees(data).flatMap((tree) => numberRows(tree));

const isDatum = (node: Node): boolean => 'value' in node && 'unit' in node;

const noBareNumbers: Linter = {
  id: 'no-bare-numbers',
  rule: 'every number stands in a datum with unit, standing and sources',
  check: (data) =>
    everyObject(data).flatMap(([path, node]) =>
      isDatum(node)
        ? []
        : Object.entries(node).flatMap(([key, child]) =>
            typeof child === 'number' ? [{ place: `${path}.${key}`, message: `${child} stands alone` }] : [],
          ),
    ),
};

const sourcesKnown: Linter = {
  id: 'sources-known',
  rule: 'sources stand in the register, each named once and in order',
  check: (data) => {
    const register = new Set(listSources().map(({ id }) => id));
    return everyObject(data).flatMap(([place, { sources }]) => {
      if (!Array.isArray(sources)) return [];
      const unknown = sources.filter((id) => !register.has(String(id)));
      if (unknown.length > 0) return [{ place, message: `not in the register: ${unknown.join(', ')}` }];
      const sorted = [...new Set(sources)].sort();
      return sorted.join() === sources.join() ? [] : [{ place, message: 'not sorted, or one named twice' }];
    });
  },
};

// Kept here beside the schema, so that data which skipped the schema are caught as well.
const WITHOUT_SOURCE = ['common-practice', 'judgement', 'from-memory'];

const standingSourced: Linter = {
  id: 'standing-sourced',
  rule: 'a standing that claims a source names one, and nothing is invented',
  check: (data) =>
    everyObject(data).flatMap(([place, { standing, sources }]) => {
      if (standing === undefined) return [];
      if (standing === 'invented') return [{ place, message: 'is invented' }];
      const named = Array.isArray(sources) && sources.length > 0;
      return named || WITHOUT_SOURCE.includes(String(standing))
        ? []
        : [{ place, message: `${standing} without a source` }];
    }),
};

const editionsNamed: Linter = {
  id: 'editions-named',
  rule: 'what stands as read in a standard names one whose edition is in the register',
  check: (data) => {
    const editions = new Map(listSources().map(({ id, edition }) => [id, edition]));
    return everyObject(data).flatMap(([place, { standing, sources }]) =>
      standing !== 'standard' || !Array.isArray(sources)
        ? []
        : sources.flatMap((id) =>
            (editions.get(String(id)) ?? '') === '' ? [{ place, message: `${id} has no edition` }] : [],
          ),
    );
  },
};

const idsUnique: Linter = {
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

// A maker or a model would begin with a capital inside a sentence, or stand in capitals.
const NAMES_ALLOWED =
  /^(JIS|ISO|IS|BS|BSC|D|C|K|Q|M\d+(x[\d.]+)?|U|Nm|Table|American|British|Continental|Cycle|French|Indian|Italian|Japan|Japanese|March|October|No|P(\^[\d.]*)?|Spanish|Standard|Swiss|T)$/;

const noProperNames: Linter = {
  id: 'no-proper-names',
  rule: 'no proper name but standards, units and countries',
  check: (data) =>
    everyObject(data).flatMap(([path, node]) =>
      Object.entries(node).flatMap(([key, text]) => {
        if (typeof text !== 'string' || key === 'designation') return [];
        const inside = text.split(/[.:;?!] /).flatMap((sentence) => sentence.split(/[\s,()/-]+/).slice(1));
        const names = inside.map((word) => word.replace(/[.;:]$/, '')).filter((word) => /^\W*\p{Lu}/u.test(word));
        const refused = names.filter((word) => !NAMES_ALLOWED.test(word));
        return refused.length === 0 ? [] : [{ place: `${path}.${key}`, message: `${refused.join(', ')} in: ${text}` }];
      }),
    ),
};

// [row id, unit, smallest, largest] that the part of a bicycle can have; the first pattern that fits decides.
const PLAUSIBLE: [RegExp, string, number, number][] = [
  [/^identification:.*([pP]robability|Gain|Share|Ratio|worthNaming)$/, '', 0, 10],
  [/^identification:neighbourThreads.*/, '', 0.5, 48],
  [/^identification:/, '', 0.0005, 500],
  [/^mating:/, 'mm', 0.01, 2],
  [/sets\[[\w-]+\]\.acrossFlatsAtEndMm$/, 'mm', 12.3, 13],
  [/(fixingHeads|heads)\[.*acrossFlatsMm$/, 'mm', 5, 16],
  [/\.faceAngleDeg(\.alternatives.*)?$/, 'deg', 1.5, 2.5],
  [/flatLengthMm$/, 'mm', 12, 21],
  [/handFit\w+GapMm$/, 'mm', 0.5, 4],
  [/fixingThreads.*nominalDiameterMm$/, 'mm', 5, 16],
  [/puller\.threads.*nominalDiameterMm(\.alternatives.*)?$/, 'mm', 22, 24],
  [/^(shell)-.*nominalDiameterMm(\.alternatives.*)?$/, 'mm', 34, 48],
  [/^(pedal)-.*nominalDiameterMm$/, 'mm', 12, 15],
  [/thread\.nominalDiameterMm(\.alternatives.*)?$/, 'mm', 5, 24],
  [/pitchMm$/, 'mm', 0.75, 1.5],
  [/threadsPerInch$/, 'tpi', 20, 28],
  [/(pitch|minor|internalMinor)DiameterMm$/, 'mm', 4.5, 24],
  [/stressAreaMm2$/, 'mm2', 15, 400],
  [/torqueNm$/, 'Nm', 5, 60],
  [/indexPositions\.count$/, 'positions', 1, 48],
  [/indexPositions\.stepDeg$/, 'deg', 7.5, 180],
  [/(spindle|Side)DiameterMm(\.alternatives.*)?$/, 'mm', 15, 30],
  [/(majorDiameter|minorDiameter|engagement|minimumSplineLength|stopFromEnd)Mm(\.alternatives.*)?$/, 'mm', 3, 25],
  [/splineWidthMm$/, 'mm', 1, 4],
  [/cotterDiameterMm(\.alternatives.*)?$/, 'mm', 8, 10],
  [/splineCount$/, 'splines', 8, 48],
  [/taperPerSideDeg$/, 'deg', 0.5, 2],
  [/shellBoreMm(\.alternatives.*)?$/, 'mm', 50, 52],
  [/boreMm(\.alternatives.*)?$/, 'mm', 30, 52],
  [/widthMm$/, 'mm', 60, 125],
  [/caliper\.(cupOutside|shellInside)Mm$/, 'mm', 33, 36],
  [/armCount$/, 'arms', 3, 5],
  [/boltCircleDiameterMm$/, 'mm', 56, 151],
  [/smallestRing$/, 'teeth', 18, 45],
  [/holeSpacingMm$/, 'mm', 30, 90],
  [/^chainline-.*quantity(\.alternatives.*)?$/, 'mm', 40, 56],
  [/^spindle-.*values\[share|^spindle-.*values\[spacer/, 'ratio', 0.5, 1],
  [/^spindle-(length|designation).*quantity$/, 'mm', 100, 130],
  [/^spindle-code.*quantity$/, 'mm', 65, 75],
  [/^arm-lengths.*quantity$/, 'mm', 160, 185],
  [/^square-(corner|flat)-in-line:.*quantity$/, 'deg', 0, 45],
  [/conflicts\[mixed-arm-shift\].*value$/, 'mm', 1.5, 5],
  [/conflicts\[(steepness|face-angle)\].*value$/, 'deg', 1.9, 4.2],
  [/conflicts\[m15-torque\].*value$/, 'Nm', 40, 60],
  [/conflicts\[(reading-plane|across-flats-at-end)\].*value$/, 'mm', 12, 13],
  [/conflicts\[eight-spline-engagement\].*value$/, 'mm', 3, 9],
  [/conflicts\[one-piece-bore\].*value$/, 'mm', 50, 52],
  [/conflicts\[odd-french-puller-thread\].*value$/, 'mm', 23, 24],
  [/conflicts\[bsc-thread-diameter\].*value$/, 'mm', 34.7, 35],
  [/conflicts\[bolt-force\].*value$/, 'N', 15000, 40000],
  [/conflicts\[road-chainline\].*value$/, 'mm', 40, 50],
  [/mating\[.*value$/, 'mm', -2, 2],
  [/^shell-bsc:claims\[(outboard-\d+)\]\.value$/, 'mm', 80, 95],
  [/^shell-bsc:claims\[(core|misprint)\]\.value$/, 'mm', 33, 35],
  [/^shell-bsc:claims\[angle\]\.value$/, 'deg', 55, 60],
  [/^shell-bore-4[12]:claims\[.*value$/, 'mm', 0.01, 42.1],
  [/^bolt-circle-.*claims\[printed-spacing\]\.value$/, 'mm', 30, 90],
  [/claims\[pitch-always-1\]\.value$/, 'mm', 0.9, 1.1],
  [/^chainline-road-double:claims\[.*value$/, 'mm', 0.5, 2],
  [/^spindle-length-symmetric:claims\[.*value$/, 'mm', 3, 10],
  [/claims\[cone-thread\]\.value(\.alternatives.*)?$/, 'tpi', 20, 30],
  // Numbers that a claim speaks of, each of a kind of its own.
  [/^square-taper-short:geometry\.claims\[tip-as-others\]\.value$/, 'mm', 12, 13],
  [/^square-taper-iso:geometry\.claims\[outlier-14\]\.value$/, 'mm', 12, 13],
  [/^spline-10:geometry\.claims\[minor-diameter-change\]\.value$/, 'mm', 0.001, 0.1],
  [/^cottered-metric:geometry\.claims\[inch-sibling\]\.value$/, 'mm', 15, 17],
  [/failures\[short-key\]\.value$/, 'Nm', 5, 15],
  [/retightening\[field-recipe\]\.value$/, 'km', 1, 100],
  [/^pedal-9-16:claims\[one-rider\]\.value$/, 'km', 1000, 100000],
  [/^bolt-m8x1:claims\[not-in-the-rule\]\.value$/, 'percent', 100, 150],
  [/^bolt-m8x1:claims\[read-out\]\.value$/, 'mm', 1, 1],
];

const plausibleRanges: Linter = {
  id: 'plausible-ranges',
  rule: 'every number is of a known kind, and within what a bicycle can have',
  check: (data) =>
    allNumbers(data).flatMap((row) => {
      const found = PLAUSIBLE.find(([pattern]) => pattern.test(row.rowId));
      if (found === undefined) return [{ place: row.rowId, message: 'is of no known kind' }];
      const [, unit, min, max] = found;
      const inside = [row.lower ?? row.value, row.value, row.upper ?? row.value].every((v) => min <= v && v <= max);
      return inside && (unit === '' || unit === row.unit)
        ? []
        : [{ place: row.rowId, message: `${row.value} ${row.unit} is not ${min} to ${max} ${unit}` }];
    }),
};

/** Pairs that have to rise, smaller first. */
function risingPairs(data: RawData): [string, number | undefined, number | undefined][] {
  const threads = [...data.records, ...data.neighbours]
    .flatMap(threadRows)
    .flatMap(({ rowId, thread }): [string, number | undefined, number | undefined][] => [
      [`${rowId} pitch, a third of the diameter`, thread.pitchMm?.value, thread.nominalDiameterMm.value / 3],
      [`${rowId} external minor, internal minor`, thread.minorDiameterMm?.value, thread.internalMinorDiameterMm?.value],
      [`${rowId} internal minor, pitch diameter`, thread.internalMinorDiameterMm?.value, thread.pitchDiameterMm?.value],
      [`${rowId} pitch diameter, nominal`, thread.pitchDiameterMm?.value, thread.nominalDiameterMm.value],
    ]);
  const joints = data.records.flatMap((record): [string, number | undefined, number | undefined][] => {
    const { geometry, id } = record;
    switch (record.family) {
      case 'spline': {
        const { minorDiameterMm, majorDiameterMm } = record.geometry;
        return [[`${id} minor, major`, minorDiameterMm?.value, majorDiameterMm?.value]];
      }
      case 'cottered': {
        const { cotterDiameterMm, spindleDiameterMm } = record.geometry;
        return [[`${id} cotter, spindle`, cotterDiameterMm.value, spindleDiameterMm.value]];
      }
      case 'square-taper': {
        const { handFitShoulderGapMm, fallback } = record.geometry;
        return [[`${id} gap, flats`, handFitShoulderGapMm.upper, fallback.flatLengthMm.value]];
      }
      case 'through-spindle': {
        const { nonDriveSideDiameterMm, driveSideDiameterMm } = record.geometry;
        // Never larger at the end over which the bearings go on; equal ones are not out of order.
        return [[`${id} non-drive, drive`, nonDriveSideDiameterMm.value - 1e-9, driveSideDiameterMm.value]];
      }
      default:
        return geometry === undefined ? [[id, 1, 0]] : [];
    }
  });
  const shells = data.neighbours.flatMap((record): [string, number | undefined, number | undefined][] => {
    if (record.kind === 'shell-thread') {
      const { shellInsideMm, cupOutsideMm } = record.caliper;
      return [[`${record.id} shell inside, cup outside`, shellInsideMm?.value, cupOutsideMm?.value]];
    }
    if (record.kind !== 'shell-bore') return [];
    return record.spindles.flatMap((spindle) =>
      record.bores.map(({ boreMm }): [string, number, number] => [
        `${record.id} spindle, bore`,
        spindle.spindleDiameterMm.value,
        boreMm.value,
      ]),
    );
  });
  return [...threads, ...joints, ...shells];
}

const innerBelowOuter: Linter = {
  id: 'inner-below-outer',
  rule: 'inner sizes are smaller than outer ones',
  check: (data) =>
    risingPairs(data).flatMap(([place, inner, outer]) =>
      inner === undefined || outer === undefined || inner < outer
        ? []
        : [{ place, message: `${inner} is not below ${outer}` }],
    ),
};

const MM_PER_INCH = 25.4;

/** Derived sizes of a thread by ISO 68-1 and 898-1, or ASME B1.1 for inch threads. */
function threadSizes({ nominalDiameterMm, pitchMm, threadsPerInch }: ThreadRecord): Record<string, number> | undefined {
  const d = nominalDiameterMm.value;
  const p = threadsPerInch === undefined ? pitchMm?.value : MM_PER_INCH / threadsPerInch.value;
  if (p === undefined) return undefined;
  const [minor, stress] = threadsPerInch === undefined ? [1.226869, 0.938194] : [1.299038, 0.974279];
  return {
    pitchMm: p,
    pitchDiameterMm: d - 0.649519 * p,
    minorDiameterMm: d - minor * p,
    internalMinorDiameterMm: d - 1.082532 * p,
    stressAreaMm2: (Math.PI / 4) * (d - stress * p) ** 2,
  };
}

const threadGeometry: Linter = {
  id: 'thread-geometry',
  rule: 'derived sizes of a thread follow from its diameter and pitch, and its designation says both',
  check: (data) =>
    [...data.records, ...data.neighbours].flatMap(threadRows).flatMap(({ rowId, thread }) => {
      const sizes = Object.entries(threadSizes(thread) ?? {}).flatMap(([key, value]) => {
        const stated = thread[key as 'pitchMm']?.value;
        // Half a unit of the last place that is written.
        const off = stated === undefined ? 0 : Math.abs(stated - value);
        return off <= (key === 'stressAreaMm2' ? 0.0005 : 0.00005) + 1e-9
          ? []
          : [{ place: `${rowId}.${key}`, message: `${stated} is not ${value}` }];
      });
      const named = thread.designation === designationOf(thread);
      return named ? sizes : [...sizes, { place: `${rowId}.designation`, message: `not ${designationOf(thread)}` }];
    }),
};

const INCHES: Record<number, string> = { 0.5: '1/2 in', 0.5625: '9/16 in', 1.37: '1.370 in', 1.375: '1 3/8 in' };

/** The designation that says diameter and pitch; a pitch left out of a metric one is in no source. */
function designationOf({ nominalDiameterMm: { value: d }, pitchMm, threadsPerInch }: ThreadRecord): string {
  if (threadsPerInch === undefined) return `M${d}${pitchMm === undefined ? '' : `x${pitchMm.value}`}`;
  const inches = INCHES[Number((d / MM_PER_INCH).toFixed(4))];
  return `${inches ?? `${d} mm`} x ${threadsPerInch.value} tpi`;
}

const holeSpacing: Linter = {
  id: 'hole-spacing',
  rule: 'the distance between chainring bolts follows from circle and number',
  check: ({ neighbours }) =>
    neighbours.flatMap((record) => {
      if (record.kind !== 'bolt-circle') return [];
      const { armCount, boltCircleDiameterMm, holeSpacingMm } = record;
      const value = boltCircleDiameterMm.value * Math.sin(Math.PI / armCount.value);
      return Math.abs(value - holeSpacingMm.value) <= 0.005 + 1e-9
        ? []
        : [{ place: `${record.id}:holeSpacingMm`, message: `${holeSpacingMm.value} is not ${value}` }];
    }),
};

const oneEdition: Linter = {
  id: 'one-edition',
  rule: 'every file carries the edition of the data',
  check: (data) =>
    trees(data).flatMap(({ name, data: tree }) => {
      const { dataEdition: own } = tree as { dataEdition?: unknown };
      return own === dataEdition ? [] : [{ place: name, message: `${own} is not ${dataEdition}` }];
    }),
};

const rulesOfMating: Linter = {
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

const observationsComplete: Linter = {
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

export const linters: readonly Linter[] = [
  noBareNumbers,
  sourcesKnown,
  standingSourced,
  editionsNamed,
  idsUnique,
  noProperNames,
  plausibleRanges,
  innerBelowOuter,
  threadGeometry,
  holeSpacing,
  oneEdition,
  rulesOfMating,
  observationsComplete,
];

/**
 * Faults that no exception covers. An exception has an edition at which it ends: from then on it is a fault itself, and
 * so is one that covers nothing.
 */
export function lint(data: RawData, exceptions: readonly LintException[], edition = dataEdition): Fault[] {
  const faults = linters.flatMap(({ id, check }) => check(data).map((fault) => ({ linter: id, ...fault })));
  const covers = (exception: LintException, fault: Fault): boolean =>
    exception.linter === fault.linter && exception.place === fault.place;
  // Editions are years and months with a full stop between them, so their texts sort as they do.
  const alive = exceptions.filter(({ until }) => edition < until);
  return [
    ...faults.filter((fault) => !alive.some((exception) => covers(exception, fault))),
    ...exceptions
      .filter((exception) => !alive.includes(exception))
      .map(({ linter, place, until }) => ({ linter, place, message: `the exception ended with edition ${until}` })),
    ...alive
      .filter((exception) => !faults.some((fault) => covers(exception, fault)))
      .map(({ linter, place }) => ({ linter, place, message: 'the exception covers nothing' })),
  ];
}
