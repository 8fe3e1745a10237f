import { checkInput, type FieldSpecs } from '@spindlewright/quantity';
import { assemblyLimit } from './assembly-limit.ts';
import type { Bearing } from './bearing.ts';
import { dataEdition } from './data-edition.ts';
import { frictionSpec, utilisationSpec } from './domain.ts';
import type { Thread } from './thread.ts';

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
}

/** A torque table with what it rests on. */
export interface TorqueTable {
  /** Lines: threads outermost, then classes, then frictions, in the order given. */
  rows: TorqueTableRow[];
  /** Share of yield that was used. */
  utilisation: number;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
}

const fields: FieldSpecs = {
  joints: {
    type: 'list',
    minLength: 1,
    // Each joint is checked field by field where its limit is worked out.
    item: { type: 'object', fields: {} },
  },
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
 * @returns Lines with preload in N and torque in Nm, and their provenance.
 * @throws {@link DomainError} for empty lists, values outside their domain, an unknown class, or unknown keys.
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
  const joints = Array.isArray(input?.joints) ? input.joints.map(() => ({})) : input?.joints;
  checkInput({ where: 'torqueTable', value: { ...input, joints }, fields });
  const { utilisation = 0.9 } = input;
  const sources = new Set<string>();
  const rows = input.joints.flatMap((joint) =>
    input.propertyClasses.flatMap((propertyClass) =>
      input.frictions.map((friction): TorqueTableRow => {
        const limit = assemblyLimit({ ...joint, propertyClass, threadFriction: friction, utilisation });
        for (const id of limit.sources) sources.add(id);
        const { preloadN, torqueNm } = limit;
        return { designation: joint.thread.designation, propertyClass, friction, preloadN, torqueNm };
      }),
    ),
  );
  return { rows, utilisation, sources: [...sources].sort(), dataEdition };
}
