import { boltStiffness, loadFactor, memberStiffness, wilemanStiffness } from '@spindlewright/torque';
import { inches, inMlbfPerIn, mpsi, pounds } from './units.ts';
import { steps, type Worked } from './worked.ts';

/** 5/8-11 bolts hold a cast-iron cover against 36 kip. */
export function castIronCover(): Worked {
  const area = (squareInches: number): number => squareInches * 25.4 ** 2;
  const bolt = boltStiffness({
    segments: [
      { areaMm2: area(0.3068), lengthMm: inches(0.75) },
      { areaMm2: area(0.226), lengthMm: inches(0.75) },
    ],
    modulusGPa: mpsi(30),
  });
  const iron = { gripLengthMm: inches(1.5), modulusGPa: mpsi(14) };
  const cones = memberStiffness({
    layers: [{ thicknessMm: iron.gripLengthMm, modulusGPa: iron.modulusGPa }],
    faceDiameterMm: inches(1.5 * 0.625),
    holeDiameterMm: inches(0.625),
  });
  const fit = wilemanStiffness({ ...iron, nominalDiameterMm: inches(0.625), material: 'cast-iron' });
  const proofN = pounds(85_000 * 0.226);
  const preloadN = 0.75 * proofN;
  const shared = loadFactor({
    boltStiffnessNPerMm: bolt.stiffnessNPerMm,
    memberStiffnessNPerMm: cones.stiffnessNPerMm,
    preloadN,
    externalLoadN: pounds(6000),
  });
  const reserveN = proofN - preloadN;
  return {
    title: 'Bolts of a cast-iron cover: stiffness, share of the load, how many',
    source: 'shigley-9',
    citation: 'example 8-4',
    steps: steps(0.004, 'three figures, rounded on the way', [
      ['stiffness of the bolt', 5.21, inMlbfPerIn(bolt.stiffnessNPerMm), 'Mlbf/in'],
      ['stiffness of the cover by cones', 8.95, inMlbfPerIn(cones.stiffnessNPerMm), 'Mlbf/in'],
      ['stiffness of the cover by the exponential fit', 8.81, inMlbfPerIn(fit.stiffnessNPerMm), 'Mlbf/in'],
      ['share of the load', 0.368, shared.loadFactor, '1'],
      ['preload', 14.4, preloadN / pounds(1000), 'kip'],
      ['bolts for a load factor of 2', 5.52, (2 * shared.loadFactor * pounds(36_000)) / reserveN, 'bolts'],
      ['load factor with six', 2.18, reserveN / (shared.boltForceN - preloadN), '1'],
      ['yielding factor with six', 1.16, proofN / shared.boltForceN, '1'],
      ['separation factor with six', 3.8, shared.separationLoadN / pounds(6000), '1'],
    ]),
  };
}
