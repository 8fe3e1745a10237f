import { checkInput, convert, type FieldSpecs, isDomainError } from '@spindlewright/quantity';
import { type AssemblyLimit, assemblyLimit } from './assembly-limit.ts';
import { type Bearing, bearingSpec, checkRing } from './bearing.ts';
import { dataEdition } from './data-edition.ts';
import { frictionSpec, utilisationSpec } from './domain.ts';
import type { TorqueMethod } from './joint.ts';
import { refuse } from './refuse.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** One line of a torque table. */
export interface TorqueTableRow {
  /** Designation of the thread. */
  designation: string;
  /** Property class. */
  propertyClass: string;
  /** Friction of thread and head alike. */
  friction: number;
  /** Largest preload of tightening in N. */
  preloadN: number;
  /** Torque that makes it in Nm. */
  torqueNm: number;
  /** The same in lbf.in. */
  torqueLbfIn: number;
  /** The same in lbf.ft. */
  torqueLbfFt: number;
  /** The same in kgf.cm. */
  torqueKgfCm: number;
}

/** A torque table with what it rests on. */
export interface TorqueTable {
  /** Lines: threads outermost, then classes, then frictions, in the order given. */
  rows: TorqueTableRow[];
  /** Formula between preload and torque. */
  method: TorqueMethod;
  /** Share of yield that was used. */
  utilisation: number;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
}

/** One combination of the table. */
interface Combination {
  joint: { thread: Thread; bearing: Bearing };
  jointPath: string;
  propertyClass: string;
  classPath: string;
  friction: number;
  utilisation: number;
}

const WHERE = 'torqueTable';

const fields: FieldSpecs = {
  // Which fields a joint has depends on its face, so each is checked by itself.
  joints: { type: 'list', minLength: 1, item: { type: 'object', fields: {} } },
  propertyClasses: { type: 'list', minLength: 1, item: { type: 'text' } },
  frictions: { type: 'list', minLength: 1, item: frictionSpec },
  utilisation: utilisationSpec,
};

/**
 * Makes a table of assembly preloads and torques for any set of threads, property classes and frictions.
 *
 * @remarks
 * Formula: `assemblyLimit` for each combination, with one friction for thread and head.
 *
 * Validity: that of `assemblyLimit`. A line is a limit at its own friction, not advice: read the torque at the lowest
 * friction to be expected.
 *
 * Accuracy: that of `assemblyLimit`: printed VDI 2230 tables within 0.3 % of preload and 1.2 % of torque.
 *
 * @param input - `joints`: threads with their bearing faces in mm; `propertyClasses`: ids; `frictions` above 0 to 1;
 * `utilisation` above 0 to 1 (default 0.9).
 * @returns Lines with preload in N and torque in Nm, lbf.in, lbf.ft and kgf.cm by exact factors; method and provenance.
 * @throws {@link DomainError} for empty lists, values outside their domain, a thread whose sizes contradict
 * each other, a class that is unknown or not made in a size, or unknown keys.
 * @example
 * ```ts
 * import { threadFor, torqueTable } from '@spindlewright/torque';
 * const { rows } = torqueTable({
 *   joints: [{ thread: threadFor('M8x1'), bearing: { outerDiameterMm: 11.63, holeDiameterMm: 9 } }],
 *   propertyClasses: ['8.8', '10.9'],
 *   frictions: [0.1, 0.14],
 * });
 * rows.map((row) => Math.round(row.torqueNm)); // => [23, 29, 34, 43]
 * ```
 * @see VDI 2230:2001 (`vdi-2230-2001-quoted`), tables of assembly preloads.
 */
export function torqueTable(input: {
  joints: readonly { thread: Thread; bearing: Bearing }[];
  propertyClasses: readonly string[];
  frictions: readonly number[];
  utilisation?: number;
}): TorqueTable {
  const joints = Array.isArray(input?.joints) ? Array.from(input.joints, () => ({})) : input?.joints;
  checkInput({ where: WHERE, value: { ...input, joints }, fields });
  for (const [index, joint] of input.joints.entries()) checkTableJoint(joint, index);
  const { utilisation = 0.9 } = input;
  const sources = new Set<string>();
  const rows = input.joints.flatMap((joint, i) =>
    input.propertyClasses.flatMap((propertyClass, k) =>
      input.frictions.map((friction): TorqueTableRow => {
        const paths = { jointPath: `joints[${i}]`, classPath: `propertyClasses[${k}]` };
        const limit = limitOf({ joint, propertyClass, friction, utilisation, ...paths });
        for (const id of limit.sources) sources.add(id);
        const { preloadN, torqueNm } = limit;
        return {
          designation: joint.thread.designation,
          propertyClass,
          friction,
          preloadN,
          torqueNm,
          torqueLbfIn: convert(torqueNm, 'Nm', 'lbf.in'),
          torqueLbfFt: convert(torqueNm, 'Nm', 'lbf.ft'),
          torqueKgfCm: convert(torqueNm, 'Nm', 'kgf.cm'),
        };
      }),
    ),
  );
  return { rows, method: 'vdi-2230', utilisation, sources: [...sources].sort(), dataEdition };
}

function checkTableJoint(joint: { thread: Thread; bearing: Bearing }, index: number): void {
  const path = `joints[${index}]`;
  const spec: FieldSpecs = {
    thread: { type: 'object', fields: threadFields },
    bearing: bearingSpec(joint),
  };
  checkInput({ where: WHERE, value: { [path]: joint }, fields: { [path]: { type: 'object', fields: spec } } });
  checkThread(WHERE, joint.thread, `${path}.thread`);
  checkRing(WHERE, joint.bearing, `${path}.bearing`);
}

/** The limit of one combination; a class that it refuses is named by its place in the lists. */
function limitOf({ joint, jointPath, propertyClass, classPath, friction, utilisation }: Combination): AssemblyLimit {
  try {
    return assemblyLimit({ ...joint, propertyClass, threadFriction: friction, utilisation });
  } catch (error) {
    if (!isDomainError(error)) throw error;
    const path = error.path === 'propertyClass' ? classPath : `${jointPath}.thread.majorDiameterMm`;
    throw refuse(WHERE, path, error.received, error.allowed, error.nearest);
  }
}
