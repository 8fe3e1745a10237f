import { checkInput, type FieldSpecs, type Finding, nearestName } from '@spindlewright/quantity';
import data from '../data/property-classes.json' with { type: 'json' };
import { dataEdition } from './data-edition.ts';
import { outsideClassSizes } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';
import { refuse } from './refuse.ts';

/** Minimum strengths of a property class at one size. */
export interface PropertyClass {
  /** The class, such as `8.8` or `A2-70`. */
  propertyClass: string;
  /** Smallest yield strength or 0.2 % proof strength in MPa. */
  yieldStrengthMPa: number;
  /** Smallest tensile strength in MPa. */
  tensileStrengthMPa: number;
  /** Stress under proof load in MPa; null for stainless classes, which have none. */
  proofStressMPa: number | null;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
  /** What is worth saying. */
  findings: Finding[];
}

interface Row {
  propertyClass: string;
  aboveDiameterMm?: number;
  upToDiameterMm?: number;
  quantity: string;
  value: number;
  sources: string[];
}

// Read on demand: a table touched while the module loads would ride in every bundle.
const rows = (): readonly Row[] => data.rows;

const fields: FieldSpecs = {
  propertyClass: { type: 'text' },
  nominalDiameterMm: { type: 'number', unit: 'mm', above: 0, max: 1000 },
};

// Sizes that ISO 898-1 speaks of; from memory.
const SMALLEST_MM = 1.6;
const LARGEST_MM = 39;

/**
 * Gives the minimum strengths of a property class of bolts and screws at a diameter.
 *
 * @remarks
 * Formula: none; rows of the data, by class and diameter (8.8 changes above 16 mm, 9.8 ends there).
 *
 * Validity: classes 4.6 to 12.9 of carbon and alloy steel, A2 and A4 with 50, 70 and 80 of stainless steel. Sizes beyond
 * M1.6 to M39 are a finding. Strengths are minima: a bolt may be stronger, which is no help when it breaks the part.
 *
 * Accuracy: as printed; loads of bolts computed from them meet printed proof loads within 0.7 %.
 *
 * @param propertyClass - Class as on the head: `4.6 4.8 5.6 5.8 6.8 8.8 9.8 10.9 12.9 A2-50 A2-70 A2-80 A4-50 A4-70 A4-80`.
 * @param nominalDiameterMm - Nominal diameter in mm, above 0.
 * @returns Strengths in MPa, with their sources.
 * @throws {@link DomainError} for an unknown class, with the nearest, or a class that does not exist at this diameter.
 * @example
 * ```ts
 * import { propertyClass } from '@spindlewright/torque';
 * propertyClass('8.8', 8).yieldStrengthMPa; // => 640
 * propertyClass('8.8', 20).yieldStrengthMPa; // => 660
 * ```
 * @see Shigley (`shigley-9`), table 8-11; ISO 898-1 (`iso-898-1-quoted`).
 */
export function propertyClass(propertyClass: string, nominalDiameterMm: number): PropertyClass {
  const where = 'propertyClass';
  checkInput({ where, value: { propertyClass, nominalDiameterMm }, fields });
  const known = [...new Set(rows().map((row) => row.propertyClass))];
  const own = rows().filter((row) => row.propertyClass === propertyClass);
  if (own.length === 0) {
    const nearest = nearestName({ name: propertyClass.replace(',', '.'), known });
    throw refuse(where, 'propertyClass', JSON.stringify(propertyClass), known.join(', '), nearest);
  }
  const here = own.filter(
    (row) => nominalDiameterMm > (row.aboveDiameterMm ?? 0) && nominalDiameterMm <= (row.upToDiameterMm ?? Infinity),
  );
  const listed = (quantity: string): number | undefined => here.find((row) => row.quantity === quantity)?.value;
  const strengthOf = (quantity: string): number => {
    const value = listed(quantity);
    if (value !== undefined) return value;
    throw refuse(where, 'nominalDiameterMm', String(nominalDiameterMm), `a size in which ${propertyClass} is made`);
  };
  return {
    propertyClass,
    yieldStrengthMPa: strengthOf('yield-strength'),
    tensileStrengthMPa: strengthOf('tensile-strength'),
    proofStressMPa: listed('proof-stress') ?? null,
    sources: [...new Set(here.flatMap((row) => row.sources))].sort(),
    dataEdition,
    findings:
      nominalDiameterMm < SMALLEST_MM || nominalDiameterMm > LARGEST_MM
        ? [
            raiseText(
              'outside-class-sizes',
              outsideClassSizes,
              'caution',
              { diameterMm: nominalDiameterMm },
              { path: 'nominalDiameterMm' },
            ),
          ]
        : [],
  };
}
