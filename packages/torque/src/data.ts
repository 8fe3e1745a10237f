/**
 * The data of this package, typed: strengths, friction, tools, scatter, trade torques. Raw JSON and CSV with the same row
 * ids lie in `data/`.
 *
 * @packageDocumentation
 */
import type { Standing } from '@spindlewright/quantity';
import engagementJson from '../data/engagement-lengths.json' with { type: 'json' };
import frictionJson from '../data/friction-classes.json' with { type: 'json' };
import pressureJson from '../data/limiting-pressures.json' with { type: 'json' };
import majorJson from '../data/major-diameters-6g.json' with { type: 'json' };
import nutFactorJson from '../data/nut-factors.json' with { type: 'json' };
import classJson from '../data/property-classes.json' with { type: 'json' };
import settlementJson from '../data/settlements.json' with { type: 'json' };
import seriesJson from '../data/thread-series.json' with { type: 'json' };
import methodJson from '../data/tightening-methods.json' with { type: 'json' };
import toolJson from '../data/tool-classes.json' with { type: 'json' };
import torqueJson from '../data/trade-torques.json' with { type: 'json' };

export { dataEdition } from './data-edition.ts';
export { listTradeTorques } from './list-trade-torques.ts';

/** What every row of data carries. */
export interface DataRow {
  /** Stable id, never reused. */
  id: string;
  /** How much the row can be relied on. */
  standing: Standing;
  /** Ids in the register of sources. */
  sources: readonly string[];
  /** What a reader has to know to use it. */
  note?: string;
}

/** Provenance that all rows of a table share. */
export interface TableProvenance {
  /** How much the table can be relied on. */
  standing: Standing;
  /** Ids in the register of sources. */
  sources: readonly string[];
  /** What a reader has to know to use it. */
  note: string;
}

/** A thread of a standard series. */
export interface ThreadSeriesRow {
  /** Designation. */
  id: string;
  /** `metric-coarse`, `metric-fine`, `UNC`, `UNF` or `UNEF`. */
  series: string;
  /** Nominal diameter in mm, for metric threads. */
  nominalDiameterMm?: number;
  /** Pitch in mm, for metric threads. */
  pitchMm?: number;
  /** Nominal diameter in inches, for inch threads. */
  nominalDiameterIn?: number;
  /** Threads per inch, for inch threads. */
  threadsPerInch?: number;
  /** Diameter of the drill for tapping in mm. */
  coreHoleMm: number;
}

/** Largest major diameter of a bolt thread of tolerance 6g. */
export interface MajorDiameterRow {
  /** Designation, coarse pitch. */
  id: string;
  /** Nominal diameter in mm. */
  nominalDiameterMm: number;
  /** Largest major diameter in mm. */
  maxMajorDiameter6gMm: number;
}

/** One strength of a property class. */
export interface PropertyClassRow extends DataRow {
  /** The class, such as `8.8`. */
  propertyClass: string;
  /** Diameters above this one, in mm; from 0 when absent. */
  aboveDiameterMm?: number;
  /** Diameters up to this one, in mm; without end when absent. */
  upToDiameterMm?: number;
  /** `proof-stress`, `tensile-strength` or `yield-strength`. */
  quantity: string;
  /** Minimum strength, in `unit`. */
  value: number;
  /** Unit id. */
  unit: string;
}

/** A range of friction by class or by the state of the parts. */
export interface FrictionClassRow extends DataRow {
  /** Class A to E. */
  frictionClass: string;
  /** Lowest coefficient. */
  min: number;
  /** Highest coefficient; absent: the source gives none. */
  max?: number;
  /** Unit id, `1`. */
  unit: string;
}

/** A class of torque tools. */
export interface ToolClassRow extends DataRow {
  /** Description. */
  name: string;
  /** Permissible deviation in per cent. */
  deviationPercent: number;
  /** Torque in Nm up to which another deviation holds. */
  upToTorqueNm?: number;
  /** That other deviation in per cent. */
  deviationUpToPercent?: number;
}

/** Scatter of the preload by the way of tightening, friction included. */
export interface TighteningMethodRow extends DataRow {
  /** Description. */
  name: string;
  /** Scatter about the mean in per cent, at best. */
  minScatterPercent: number;
  /** Scatter about the mean in per cent, at worst. */
  maxScatterPercent: number;
}

/** Nut factor K of T = K d F by the state of the parts. */
export interface NutFactorRow extends DataRow {
  /** State of the parts. */
  condition: string;
  /** Lowest factor. */
  min: number;
  /** Highest factor. */
  max: number;
  /** Unit id, `1`. */
  unit: string;
}

/** Pressure under a head that a material bears. */
export interface LimitingPressureRow extends DataRow {
  /** Material by its standard name. */
  material: string;
  /** Tensile strength in MPa. */
  tensileStrengthMPa?: number;
  /** Limiting pressure in MPa. */
  limitingPressureMPa: number;
  /** Edition of VDI 2230. */
  edition: string;
}

/** How far faces settle into each other. */
export interface SettlementRow extends DataRow {
  /** Roughness Rz above this, in micrometres; from 0 when absent. */
  aboveRoughnessUm?: number;
  /** Roughness Rz up to this, in micrometres. */
  upToRoughnessUm: number;
  /** `tension` or `shear`: which way the joint is loaded. */
  loading: string;
  /** `thread`, `head` (each head or nut face) or `interface` (each inner one). */
  place: string;
  /** Settlement in micrometres. */
  settlementUm: number;
}

/** Engagement at which the bolt breaks rather than strips. */
export interface EngagementRow extends DataRow {
  /** Material of the tapped part. */
  nutMaterial: string;
  /** Its tensile strength is above this, in MPa. */
  aboveTensileStrengthMPa?: number;
  /** Property class of the bolt. */
  propertyClass: string;
  /** `coarse` or `fine`. */
  pitch: string;
  /** Engagement in nominal diameters. */
  engagementDiametersRatio: number;
}

/** A tightening torque as the trade states it. */
export interface TradeTorqueRow extends DataRow {
  /** Id of the kind of joint. */
  joint: string;
  /** The fastener as the source calls it. */
  fastener: string;
  /** Ids of the interfaces that it belongs to. */
  interfaces: readonly string[];
  /** Lowest torque as printed, in `unit`. */
  min: number;
  /** Highest torque as printed, in `unit`. */
  max: number;
  /** Unit as printed. */
  unit: string;
  /** Lowest torque in Nm, by exact factors. */
  minNm: number;
  /** Highest torque in Nm, by exact factors. */
  maxNm: number;
  /** Lowest torque in lbf.in, by exact factors. */
  minLbfIn: number;
  /** Highest torque in lbf.in, by exact factors. */
  maxLbfIn: number;
  /** Lowest torque in lbf.ft, by exact factors. */
  minLbfFt: number;
  /** Highest torque in lbf.ft, by exact factors. */
  maxLbfFt: number;
  /** Lowest torque in kgf.cm, by exact factors. */
  minKgfCm: number;
  /** Highest torque in kgf.cm, by exact factors. */
  maxKgfCm: number;
  /** Lowest torque in Nm that the source prints beside it. */
  printedMinNm?: number;
  /** Highest torque in Nm that the source prints beside it. */
  printedMaxNm?: number;
}

// Marked pure so that a bundle keeps the tables it names and no other.
const rowsOf = <T>(table: { rows: unknown }): readonly T[] => table.rows as readonly T[];

/** Threads of the standard series with their core holes. */
export const threadSeries = /* @__PURE__ */ rowsOf<ThreadSeriesRow>(seriesJson);

/** Provenance of {@link threadSeries}. */
export const threadSeriesProvenance = seriesJson as unknown as TableProvenance;

/** Largest major diameters of coarse bolt threads of tolerance 6g. */
export const majorDiameters6g = /* @__PURE__ */ rowsOf<MajorDiameterRow>(majorJson);

/** Provenance of {@link majorDiameters6g}. */
export const majorDiameters6gProvenance = majorJson as unknown as TableProvenance;

/** Strengths of property classes. */
export const propertyClasses = /* @__PURE__ */ rowsOf<PropertyClassRow>(classJson);

/** Friction classes of VDI 2230, and which state of parts is taken as which. */
export const frictionClasses = /* @__PURE__ */ rowsOf<FrictionClassRow>(frictionJson);

/** Classes of torque tools. */
export const toolClasses = /* @__PURE__ */ rowsOf<ToolClassRow>(toolJson);

/** Scatter of preload by the way of tightening. */
export const tighteningMethods = /* @__PURE__ */ rowsOf<TighteningMethodRow>(methodJson);

/** Nut factors by the state of the parts; sources differ and stay apart. */
export const nutFactors = /* @__PURE__ */ rowsOf<NutFactorRow>(nutFactorJson);

/** Limiting pressures under heads. */
export const limitingPressures = /* @__PURE__ */ rowsOf<LimitingPressureRow>(pressureJson);

/** Guide values of settlement, from memory. */
export const settlements = /* @__PURE__ */ rowsOf<SettlementRow>(settlementJson);

/** Engagement lengths by material and class. */
export const engagementLengths = /* @__PURE__ */ rowsOf<EngagementRow>(engagementJson);

/** Tightening torques of the trade; sources that differ stay apart. */
export const tradeTorques = /* @__PURE__ */ rowsOf<TradeTorqueRow>(torqueJson);
