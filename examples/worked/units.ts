import { convert } from '@spindlewright/quantity';

/** Millimetres of inches. */
export const inches = (value: number): number => value * 25.4;

/** GPa of million psi. */
export const mpsi = (value: number): number => convert(value * 1e6, 'psi', 'MPa') / 1000;

/** Newtons of pounds-force. */
export const pounds = (value: number): number => convert(value, 'lbf', 'N');

/** Million pounds-force per inch of N/mm. */
export const inMlbfPerIn = (stiffnessNPerMm: number): number => (convert(stiffnessNPerMm, 'N', 'lbf') * 25.4) / 1e6;
