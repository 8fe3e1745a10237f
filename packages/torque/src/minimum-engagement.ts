import { checkInput, type FieldSpecs } from '@spindlewright/quantity';
import data from '../data/engagement-lengths.json' with { type: 'json' };
import { dataEdition } from './data-edition.ts';
import { refuse } from './refuse.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

interface Row {
  nutMaterial: string;
  propertyClass: string;
  pitch: string;
  engagementDiametersRatio: number;
  sources: string[];
}

// Read on demand: a table touched while the module loads would ride in every bundle.
const rows = (): readonly Row[] => data.rows;

/** Engagement that a tabulated material needs. */
export interface MinimumEngagement {
  /** Engagement in nominal diameters. */
  engagementDiametersRatio: number;
  /** Engagement in mm. */
  engagementMm: number;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
}

/**
 * Gives the engagement at which a bolt breaks rather than strips, from the table of tested materials.
 *
 * @remarks
 * Formula: ratio of the table times the nominal diameter.
 *
 * Validity: trials on M6 to M16, holes without countersink: add the depth of a countersink. Materials that the table lacks
 * need `strippingEngagement` with their shear strength.
 *
 * Accuracy: as printed, to a tenth or twentieth of a diameter.
 *
 * @param input - `thread`; `pitch`: `coarse` or `fine`; `propertyClass` of the bolt; `nutMaterial` as in the data.
 * @returns Ratio and engagement in mm, above 0.
 * @throws {@link DomainError} for a material, class or pitch that the table lacks, with the nearest, a thread whose sizes
 * contradict each other, or unknown keys.
 * @example
 * ```ts
 * import { minimumEngagement, threadFor } from '@spindlewright/torque';
 * const thread = threadFor('M8x1');
 * minimumEngagement({ thread, pitch: 'fine', propertyClass: '8.8', nutMaterial: 'S235' }).engagementMm; // => 10
 * ```
 * @see VDI 2230 (`vdi-2230-2001-quoted`), minimum engagement.
 */
export function minimumEngagement(input: {
  thread: Thread;
  pitch: 'coarse' | 'fine';
  propertyClass: string;
  nutMaterial: string;
}): MinimumEngagement {
  const valuesOf = (key: 'nutMaterial' | 'propertyClass'): string[] => [...new Set(rows().map((row) => row[key]))];
  const fields: FieldSpecs = {
    thread: { type: 'object', fields: threadFields },
    pitch: { type: 'choice', values: ['coarse', 'fine'] },
    propertyClass: { type: 'choice', values: valuesOf('propertyClass') },
    nutMaterial: { type: 'choice', values: valuesOf('nutMaterial') },
  };
  checkInput({ where: 'minimumEngagement', value: input, fields });
  checkThread('minimumEngagement', input.thread);
  const { thread, pitch, propertyClass, nutMaterial } = input;
  const ofMaterial = rows().filter((row) => row.nutMaterial === nutMaterial);
  const found = ofMaterial.find((row) => row.propertyClass === propertyClass && row.pitch === pitch);
  if (found === undefined) {
    const allowed = ofMaterial.map((row) => `${row.propertyClass} ${row.pitch}`).join(', ');
    throw refuse('minimumEngagement', 'propertyClass', `${propertyClass} ${pitch}`, `for ${nutMaterial}: ${allowed}`);
  }
  return {
    engagementDiametersRatio: found.engagementDiametersRatio,
    engagementMm: found.engagementDiametersRatio * thread.majorDiameterMm,
    sources: [...found.sources],
    dataEdition,
  };
}
