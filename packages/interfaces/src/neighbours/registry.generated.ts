// Generated from the files in data/ by `npm run generate`; edit those.
import type { NeighbourRecord } from '../neighbour.ts';
import { armLengths } from './arm-lengths.generated.ts';
import { boltCircle104x4 } from './bolt-circle-104x4.generated.ts';
import { boltCircle110x5 } from './bolt-circle-110x5.generated.ts';
import { boltCircle112x4 } from './bolt-circle-112x4.generated.ts';
import { boltCircle116x5 } from './bolt-circle-116x5.generated.ts';
import { boltCircle118x5 } from './bolt-circle-118x5.generated.ts';
import { boltCircle122x5 } from './bolt-circle-122x5.generated.ts';
import { boltCircle128x5 } from './bolt-circle-128x5.generated.ts';
import { boltCircle130x5 } from './bolt-circle-130x5.generated.ts';
import { boltCircle135x5 } from './bolt-circle-135x5.generated.ts';
import { boltCircle144x5 } from './bolt-circle-144x5.generated.ts';
import { boltCircle151x5 } from './bolt-circle-151x5.generated.ts';
import { boltCircle56x5 } from './bolt-circle-56x5.generated.ts';
import { boltCircle58x5 } from './bolt-circle-58x5.generated.ts';
import { boltCircle64x4 } from './bolt-circle-64x4.generated.ts';
import { boltCircle68x4 } from './bolt-circle-68x4.generated.ts';
import { boltCircle74x5 } from './bolt-circle-74x5.generated.ts';
import { boltCircle86x5 } from './bolt-circle-86x5.generated.ts';
import { boltCircle94x5 } from './bolt-circle-94x5.generated.ts';
import { boltCircle96x4 } from './bolt-circle-96x4.generated.ts';
import { boltM10 } from './bolt-m10.generated.ts';
import { boltM12x1 } from './bolt-m12x1.generated.ts';
import { boltM15x1 } from './bolt-m15x1.generated.ts';
import { boltM8x1 } from './bolt-m8x1.generated.ts';
import { chainlineMountainSingle } from './chainline-mountain-single.generated.ts';
import { chainlineRoadDouble } from './chainline-road-double.generated.ts';
import { chainlineTrack } from './chainline-track.generated.ts';
import { chainlineTriple } from './chainline-triple.generated.ts';
import { chainringBoltM8x075 } from './chainring-bolt-m8x0-75.generated.ts';
import { nutM10x125 } from './nut-m10x1-25.generated.ts';
import { nutM8x125 } from './nut-m8x1-25.generated.ts';
import { pedal12 } from './pedal-1-2.generated.ts';
import { pedal14x125 } from './pedal-14x1-25.generated.ts';
import { pedal916 } from './pedal-9-16.generated.ts';
import { pinchBoltM6x1 } from './pinch-bolt-m6x1.generated.ts';
import { pullerM22x1 } from './puller-m22x1.generated.ts';
import { pullerM23x1 } from './puller-m23x1.generated.ts';
import { pullerOddFrench } from './puller-odd-french.generated.ts';
import { pullerRepair24 } from './puller-repair-24.generated.ts';
import { shellAmerican } from './shell-american.generated.ts';
import { shellBore37 } from './shell-bore-37.generated.ts';
import { shellBore41 } from './shell-bore-41.generated.ts';
import { shellBore42 } from './shell-bore-42.generated.ts';
import { shellBore46 } from './shell-bore-46.generated.ts';
import { shellBsc } from './shell-bsc.generated.ts';
import { shellChildrens } from './shell-childrens.generated.ts';
import { shellClamped } from './shell-clamped.generated.ts';
import { shellFrench } from './shell-french.generated.ts';
import { shellItalian } from './shell-italian.generated.ts';
import { shellMiddle } from './shell-middle.generated.ts';
import { shellOldBritish } from './shell-old-british.generated.ts';
import { shellPlain } from './shell-plain.generated.ts';
import { shellSpanish } from './shell-spanish.generated.ts';
import { shellSwiss } from './shell-swiss.generated.ts';
import { shellT47 } from './shell-t47.generated.ts';
import { spindleCodeJis } from './spindle-code-jis.generated.ts';
import { spindleDesignationSpline10 } from './spindle-designation-spline-10.generated.ts';
import { spindleLengthAsymmetric } from './spindle-length-asymmetric.generated.ts';
import { spindleLengthSymmetric } from './spindle-length-symmetric.generated.ts';
import { squareCornerInLine } from './square-corner-in-line.generated.ts';
import { squareFlatInLine } from './square-flat-in-line.generated.ts';
import { tread } from './tread.generated.ts';

/** Records by id, former ids included. */
export const neighbourRegistry: Readonly<Record<string, NeighbourRecord>> = {
  "arm-lengths": armLengths,
  "bolt-circle-104x4": boltCircle104x4,
  "bolt-circle-110x5": boltCircle110x5,
  "bolt-circle-112x4": boltCircle112x4,
  "bolt-circle-116x5": boltCircle116x5,
  "bolt-circle-118x5": boltCircle118x5,
  "bolt-circle-122x5": boltCircle122x5,
  "bolt-circle-128x5": boltCircle128x5,
  "bolt-circle-130x5": boltCircle130x5,
  "bolt-circle-135x5": boltCircle135x5,
  "bolt-circle-144x5": boltCircle144x5,
  "bolt-circle-151x5": boltCircle151x5,
  "bolt-circle-56x5": boltCircle56x5,
  "bolt-circle-58x5": boltCircle58x5,
  "bolt-circle-64x4": boltCircle64x4,
  "bolt-circle-68x4": boltCircle68x4,
  "bolt-circle-74x5": boltCircle74x5,
  "bolt-circle-86x5": boltCircle86x5,
  "bolt-circle-94x5": boltCircle94x5,
  "bolt-circle-96x4": boltCircle96x4,
  "bolt-m10": boltM10,
  "bolt-m12x1": boltM12x1,
  "bolt-m15x1": boltM15x1,
  "bolt-m8x1": boltM8x1,
  "chainline-mountain-single": chainlineMountainSingle,
  "chainline-road-double": chainlineRoadDouble,
  "chainline-track": chainlineTrack,
  "chainline-triple": chainlineTriple,
  "chainring-bolt-m8x0-75": chainringBoltM8x075,
  "nut-m10x1-25": nutM10x125,
  "nut-m8x1-25": nutM8x125,
  "pedal-1-2": pedal12,
  "pedal-14x1-25": pedal14x125,
  "pedal-9-16": pedal916,
  "pinch-bolt-m6x1": pinchBoltM6x1,
  "puller-m22x1": pullerM22x1,
  "puller-m23x1": pullerM23x1,
  "puller-odd-french": pullerOddFrench,
  "puller-repair-24": pullerRepair24,
  "shell-american": shellAmerican,
  "shell-bore-37": shellBore37,
  "shell-bore-41": shellBore41,
  "shell-bore-42": shellBore42,
  "shell-bore-46": shellBore46,
  "shell-bsc": shellBsc,
  "shell-childrens": shellChildrens,
  "shell-clamped": shellClamped,
  "shell-french": shellFrench,
  "shell-italian": shellItalian,
  "shell-middle": shellMiddle,
  "shell-old-british": shellOldBritish,
  "shell-plain": shellPlain,
  "shell-spanish": shellSpanish,
  "shell-swiss": shellSwiss,
  "shell-t47": shellT47,
  "spindle-code-jis": spindleCodeJis,
  "spindle-designation-spline-10": spindleDesignationSpline10,
  "spindle-length-asymmetric": spindleLengthAsymmetric,
  "spindle-length-symmetric": spindleLengthSymmetric,
  "square-corner-in-line": squareCornerInLine,
  "square-flat-in-line": squareFlatInLine,
  "tread": tread,
};

/** Every record, in the order of the ids. */
export const neighbourRecords: readonly NeighbourRecord[] = [
  armLengths,
  boltCircle104x4,
  boltCircle110x5,
  boltCircle112x4,
  boltCircle116x5,
  boltCircle118x5,
  boltCircle122x5,
  boltCircle128x5,
  boltCircle130x5,
  boltCircle135x5,
  boltCircle144x5,
  boltCircle151x5,
  boltCircle56x5,
  boltCircle58x5,
  boltCircle64x4,
  boltCircle68x4,
  boltCircle74x5,
  boltCircle86x5,
  boltCircle94x5,
  boltCircle96x4,
  boltM10,
  boltM12x1,
  boltM15x1,
  boltM8x1,
  chainlineMountainSingle,
  chainlineRoadDouble,
  chainlineTrack,
  chainlineTriple,
  chainringBoltM8x075,
  nutM10x125,
  nutM8x125,
  pedal12,
  pedal14x125,
  pedal916,
  pinchBoltM6x1,
  pullerM22x1,
  pullerM23x1,
  pullerOddFrench,
  pullerRepair24,
  shellAmerican,
  shellBore37,
  shellBore41,
  shellBore42,
  shellBore46,
  shellBsc,
  shellChildrens,
  shellClamped,
  shellFrench,
  shellItalian,
  shellMiddle,
  shellOldBritish,
  shellPlain,
  shellSpanish,
  shellSwiss,
  shellT47,
  spindleCodeJis,
  spindleDesignationSpline10,
  spindleLengthAsymmetric,
  spindleLengthSymmetric,
  squareCornerInLine,
  squareFlatInLine,
  tread,
];
