import { version as diagnosisVersion } from '@spindlewright/diagnosis';
import { version as drawingVersion } from '@spindlewright/drawing';
import { dataEdition, version as interfacesVersion } from '@spindlewright/interfaces';
import { DomainError, version as quantityVersion } from '@spindlewright/quantity';
import { version as taperVersion } from '@spindlewright/taper';
import { version as torqueVersion } from '@spindlewright/torque';
import { version } from './version.ts';

/** What a result rests on: enough to make it again. */
export interface Provenance {
  /** Version of each package that took part, by name. */
  versions: Readonly<Record<string, string>>;
  /** Edition of the standards data. */
  dataEdition: string;
  /** Ids in the register of sources, sorted, without repeats. */
  sources: readonly string[];
}

/** The provenance of something that rests on these sources. @internal */
export const provenanceWith = (sources: readonly string[]): Provenance => ({
  versions: {
    spindlewright: version,
    '@spindlewright/diagnosis': diagnosisVersion,
    '@spindlewright/drawing': drawingVersion,
    '@spindlewright/interfaces': interfacesVersion,
    '@spindlewright/quantity': quantityVersion,
    '@spindlewright/taper': taperVersion,
    '@spindlewright/torque': torqueVersion,
  },
  dataEdition,
  sources: [...new Set(sources)].sort(),
});

/**
 * Gives the provenance of a result of any package: versions, edition of the data, every source that it cites.
 *
 * @remarks
 * Formula: none. A result that carries its provenance, such as a job sheet or the summary of a screening, is asked for it;
 * of any other one the lists named `sources` are gathered, however deep they lie, and its `dataEdition`.
 *
 * Validity: results as the functions gave them, or after a round trip through JSON. The versions are those of the packages
 * that are loaded, which for a result from a file need not be those that made it, unless it carries its own.
 *
 * Accuracy: exact; a source that a result rests on without citing it is not found.
 *
 * @param result - What a function gave: an object or a list of such.
 * @returns Versions by package, edition of the data, ids of the sources, sorted and each once.
 * @throws {@link DomainError} when there is no object to look into.
 * @example
 * ```ts
 * import { checkMate, getInterface } from '@spindlewright/interfaces';
 * import { provenance } from 'spindlewright';
 * const mate = checkMate({ spindle: getInterface('spline-10'), arm: getInterface('spline-10') });
 * provenance(mate).sources.includes('spline-10-overview'); // => true
 * ```
 * @see The register of sources in `@spindlewright/quantity/sources`.
 */
export function provenance(result: object): Provenance {
  if (typeof result !== 'object' || result === null) {
    const allowed = 'a result: an object or a list';
    throw new DomainError('provenance', [
      { path: 'result', received: result === null ? 'null' : typeof result, allowed },
    ]);
  }
  const own = (result as { provenance?: unknown }).provenance;
  if (isProvenance(own)) return { ...own, versions: { ...own.versions }, sources: [...own.sources] };
  const found = { sources: new Set<string>(), edition: undefined as string | undefined };
  gather(result, found, 0);
  const all = provenanceWith([...found.sources]);
  return found.edition === undefined ? all : { ...all, dataEdition: found.edition };
}

function isProvenance(value: unknown): value is Provenance {
  if (typeof value !== 'object' || value === null) return false;
  const { versions, dataEdition: edition, sources } = value as Partial<Provenance>;
  return typeof versions === 'object' && versions !== null && typeof edition === 'string' && Array.isArray(sources);
}

/** Deeper than any result; data that hold themselves would exhaust the stack. */
const DEEPEST = 40;

function gather(value: unknown, found: { sources: Set<string>; edition: string | undefined }, depth: number): void {
  if (typeof value !== 'object' || value === null || depth > DEEPEST) return;
  for (const [key, item] of Object.entries(value)) {
    if (key === 'dataEdition' && typeof item === 'string') found.edition ??= item;
    if (key === 'sources' && Array.isArray(item)) {
      for (const id of item) if (typeof id === 'string') found.sources.add(id);
    }
    gather(item, found, depth + 1);
  }
}
