// Generated from the files in data/ by `npm run generate`; edit those.
import type { InterfaceRecord } from '../record.ts';
import { cotteredInch } from './cottered-inch.generated.ts';
import { cotteredMetric } from './cottered-metric.generated.ts';
import { faceSpline } from './face-spline.generated.ts';
import { onePiece } from './one-piece.generated.ts';
import { spline10 } from './spline-10.generated.ts';
import { spline48 } from './spline-48.generated.ts';
import { spline8Long } from './spline-8-long.generated.ts';
import { spline8Short } from './spline-8-short.generated.ts';
import { squareTaperIso } from './square-taper-iso.generated.ts';
import { squareTaperJis } from './square-taper-jis.generated.ts';
import { squareTaperNarrow } from './square-taper-narrow.generated.ts';
import { squareTaperNutted } from './square-taper-nutted.generated.ts';
import { squareTaperShort } from './square-taper-short.generated.ts';
import { throughSpindle19 } from './through-spindle-19.generated.ts';
import { throughSpindle22 } from './through-spindle-22.generated.ts';
import { throughSpindle24 } from './through-spindle-24.generated.ts';
import { throughSpindle2422 } from './through-spindle-24-22.generated.ts';
import { throughSpindle25 } from './through-spindle-25.generated.ts';
import { throughSpindle2899 } from './through-spindle-28-99.generated.ts';
import { throughSpindle30 } from './through-spindle-30.generated.ts';

/** Records by id, former ids included. */
export const registry: Readonly<Record<string, InterfaceRecord>> = {
  "cottered-inch": cotteredInch,
  "cottered-metric": cotteredMetric,
  "face-spline": faceSpline,
  "one-piece": onePiece,
  "spline-10": spline10,
  "spline-48": spline48,
  "spline-8-long": spline8Long,
  "spline-8-short": spline8Short,
  "square-taper-iso": squareTaperIso,
  "square-taper-jis": squareTaperJis,
  "square-taper-narrow": squareTaperNarrow,
  "square-taper-nutted": squareTaperNutted,
  "square-taper-short": squareTaperShort,
  "through-spindle-19": throughSpindle19,
  "through-spindle-22": throughSpindle22,
  "through-spindle-24": throughSpindle24,
  "through-spindle-24-22": throughSpindle2422,
  "through-spindle-25": throughSpindle25,
  "through-spindle-28-99": throughSpindle2899,
  "through-spindle-30": throughSpindle30,
};

/** Every record, in the order of the ids. */
export const interfaceRecords: readonly InterfaceRecord[] = [
  cotteredInch,
  cotteredMetric,
  faceSpline,
  onePiece,
  spline10,
  spline48,
  spline8Long,
  spline8Short,
  squareTaperIso,
  squareTaperJis,
  squareTaperNarrow,
  squareTaperNutted,
  squareTaperShort,
  throughSpindle19,
  throughSpindle22,
  throughSpindle24,
  throughSpindle2422,
  throughSpindle25,
  throughSpindle2899,
  throughSpindle30,
];
