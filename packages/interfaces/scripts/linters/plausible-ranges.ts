import { allNumbers, type Linter } from './linter.ts';

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

export const plausibleRanges: Linter = {
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
