import { convert } from '@spindlewright/quantity';
import { loadFactor, threadFor, torqueFromPreload } from '@spindlewright/torque';
import { inMlbfPerIn, pounds } from './units.ts';
import { steps, type Worked } from './worked.ts';

/** A 3/4-16 bolt is tightened to 25 kip and pulled with 6 kip more. */
export function preloadOfAThreeQuarterBolt(): Worked {
  const thread = threadFor('3/4-16 UNF');
  const preloadN = pounds(25_000);
  // The example takes the mean diameter of the collar as 1.25 d: a face of 1.5 d on a hole of d.
  const bearing = { outerDiameterMm: 1.5 * thread.majorDiameterMm, holeDiameterMm: thread.majorDiameterMm };
  const byFriction = torqueFromPreload({ preloadN, thread, threadFriction: 0.15, bearingFriction: 0.15, bearing });
  const byNutFactor = torqueFromPreload({ preloadN, thread, nutFactor: 0.2, method: 'nut-factor' });
  const perMlbf = 1e6 / inMlbfPerIn(1e6);
  const shared = loadFactor({
    boltStiffnessNPerMm: 6.5 * perMlbf,
    memberStiffnessNPerMm: 13.8 * perMlbf,
    preloadN,
    externalLoadN: pounds(6000),
  });
  const stressKpsi = (forceN: number): number => convert(forceN, 'N', 'lbf') / 0.373 / 1000;
  return {
    title: 'Torque for a 3/4-16 bolt, and its stress under load',
    source: 'shigley-9',
    citation: 'example 8-3',
    steps: [
      ...steps(0.0005, 'four figures, some of them carried on rounded', [
        ['torque by nut factor 0.2', 3750, convert(byNutFactor.torqueNm, 'Nm', 'lbf.in'), 'lbf.in'],
        ['torque by the long form', 3551, convert(byFriction.torqueNm, 'Nm', 'lbf.in'), 'lbf.in'],
        ['lead angle', 1.6066, thread.leadAngleDeg, 'deg'],
        ['stress of the preload', 67.02, stressKpsi(preloadN), 'kpsi'],
        ['stress under load', 72.17, stressKpsi(shared.boltForceN), 'kpsi'],
      ]),
      ...steps(0.0016, 'three places', [['share of the load', 0.32, shared.loadFactor, '1']]),
    ],
  };
}
