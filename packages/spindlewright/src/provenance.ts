import { version as diagnosisVersion } from '@spindlewright/diagnosis';
import { version as drawingVersion } from '@spindlewright/drawing';
import { dataEdition, version as interfacesVersion } from '@spindlewright/interfaces';
import { version as quantityVersion } from '@spindlewright/quantity';
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
