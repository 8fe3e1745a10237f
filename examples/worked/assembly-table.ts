import { threadFor, torqueTable } from '@spindlewright/torque';
import { steps, type Worked } from './worked.ts';

// Friction, then preload in kN and torque in Nm for 8.8, 10.9, 12.9.
const M8X1 = [
  [0.1, [20.7, 30.4, 35.6], [22.8, 33.5, 39.2]],
  [0.12, [20.2, 29.7, 34.7], [26.1, 38.3, 44.9]],
  [0.14, [19.7, 28.9, 33.9], [29.2, 42.8, 50.1]],
] as const;

/** The lines of an assembly table for a crank bolt's thread. */
export function assemblyTable(): Worked {
  const { rows } = torqueTable({
    joints: [{ thread: threadFor('M8x1'), bearing: { outerDiameterMm: 11.63, holeDiameterMm: 9 } }],
    propertyClasses: ['8.8', '10.9', '12.9'],
    frictions: M8X1.map(([friction]) => friction),
  });
  const lines = M8X1.flatMap(([friction, preloads, torques]) =>
    ['8.8', '10.9', '12.9'].flatMap((propertyClass, k) => {
      const row = rows.find((entry) => entry.friction === friction && entry.propertyClass === propertyClass);
      const name = `${propertyClass}, friction ${friction}`;
      return [
        [`preload, ${name}`, preloads[k] ?? 0, (row?.preloadN ?? 0) / 1000, 'kN'],
        [`torque, ${name}`, torques[k] ?? 0, row?.torqueNm ?? 0, 'Nm'],
      ] as const;
    }),
  );
  return {
    title: 'Assembly preloads and torques of M8x1',
    source: 'vdi-2230-2001-quoted',
    citation: 'table of fine threads, 0.9 of yield',
    steps: steps(0.005, 'three figures; the bearing diameters behind the table are not printed', lines),
  };
}
