import { loadFactor, memberStiffness, wilemanStiffness } from '@spindlewright/torque';
import { inches, inMlbfPerIn, mpsi } from './units.ts';
import { steps, type Worked } from './worked.ts';

/** Steel and cast iron under a half-inch bolt with a washer. */
export function washeredJoint(): Worked {
  const pack = memberStiffness({
    layers: [
      { thicknessMm: inches(0.5), modulusGPa: mpsi(30) },
      { thicknessMm: inches(0.625), modulusGPa: mpsi(14.5) },
      { thicknessMm: inches(0.095), modulusGPa: mpsi(30) },
    ],
    faceDiameterMm: inches(0.75),
    holeDiameterMm: inches(0.5),
  });
  const [steel = 0, upper = 0, lower = 0, washer = 0] = pack.cones.map((cone) => inMlbfPerIn(cone.stiffnessNPerMm));
  const shared = loadFactor({
    boltStiffnessNPerMm: 3.936e6 / inMlbfPerIn(1e6),
    memberStiffnessNPerMm: pack.stiffnessNPerMm,
    preloadN: 0,
    externalLoadN: 0,
  });
  return {
    title: 'Washer, steel and cast iron under a 1/2-13 bolt',
    source: 'shigley-8-solutions',
    citation: 'problem 8-24',
    steps: [
      ...steps(0.0005, 'four figures', [
        ['cone in steel', 33.3, steel, 'Mlbf/in'],
        ['cone in the washer', 97.27, washer, 'Mlbf/in'],
        ['all in series', 10.79, inMlbfPerIn(pack.stiffnessNPerMm), 'Mlbf/in'],
      ]),
      ...steps(0.001, 'worked with inner faces rounded to 0.001 in, which is up to 0.09 %', [
        ['cone in cast iron under the steel', 173.8, upper, 'Mlbf/in'],
        ['cone in cast iron above the washer', 21.47, lower, 'Mlbf/in'],
      ]),
      ...steps(0.002, 'three figures', [['share of the load', 0.267, shared.loadFactor, '1']]),
    ],
  };
}

/** A steel screw in cast iron whose printed sum has a slip. */
export function metricCapScrew(): Worked {
  const pack = memberStiffness({
    layers: [
      { thicknessMm: 20, modulusGPa: 207 },
      { thicknessMm: 6, modulusGPa: 100 },
    ],
    faceDiameterMm: 18,
    holeDiameterMm: 12,
  });
  const [first = 0, second = 0, third = 0] = pack.cones.map((cone) => cone.stiffnessNPerMm / 1000);
  return {
    title: 'M12 cap screw through steel into cast iron',
    source: 'shigley-8-solutions',
    citation: 'problem 8-23',
    steps: steps(0.003, 'the inner face is rounded to 24.9 mm, which takes 0.26 % off the second cone', [
      ['first cone', 5316, first, 'MN/m'],
      ['second cone', 15_620, second, 'MN/m'],
      ['third cone', 3887, third, 'MN/m'],
    ]),
    misprints: steps(0.003, '55620 stands in the sum for 15620', [
      ['all in series', 2158, pack.stiffnessNPerMm / 1000, 'MN/m'],
    ]),
  };
}

/** The exponential fit on its own. */
export function exponentialFit(): Worked {
  const grip = { nominalDiameterMm: inches(0.625), gripLengthMm: inches(1.5) };
  const iron = wilemanStiffness({ ...grip, modulusGPa: mpsi(14.5), material: 'cast-iron' });
  const steel = wilemanStiffness({ ...grip, modulusGPa: mpsi(30), material: 'steel' });
  const halves = 1 / (1 / (2 * iron.stiffnessNPerMm) + 1 / (2 * steel.stiffnessNPerMm));
  return {
    title: 'Members of cast iron, of steel and half of each',
    source: 'shigley-8-solutions',
    citation: 'problem 8-19',
    steps: steps(0.003, 'three figures', [
      ['cast iron', 9.12, inMlbfPerIn(iron.stiffnessNPerMm), 'Mlbf/in'],
      ['steel', 19.18, inMlbfPerIn(steel.stiffnessNPerMm), 'Mlbf/in'],
      ['half of each', 12.4, inMlbfPerIn(halves), 'Mlbf/in'],
    ]),
  };
}
