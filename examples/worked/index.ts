// Every published example that is worked again in this folder.
import { assemblyTable } from './assembly-table.ts';
import { castIronCover } from './cast-iron-cover.ts';
import { engagementInAluminium } from './engagement-in-aluminium.ts';
import { measuredPreloads } from './measured-preloads.ts';
import { lubricatedBolt, smallScrew } from './nut-factors.ts';
import { preloadOfAThreeQuarterBolt } from './preload-of-a-three-quarter-bolt.ts';
import { exponentialFit, metricCapScrew, washeredJoint } from './washered-joint.ts';
import type { Worked } from './worked.ts';
import { wrenchExtension } from './wrench-extension.ts';

/** Works all of them. */
export const workAll = (): Worked[] =>
  [
    preloadOfAThreeQuarterBolt,
    smallScrew,
    lubricatedBolt,
    measuredPreloads,
    assemblyTable,
    wrenchExtension,
    engagementInAluminium,
    castIronCover,
    washeredJoint,
    metricCapScrew,
    exponentialFit,
  ].map((work) => work());
