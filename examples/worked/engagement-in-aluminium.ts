import { strippingEngagement, threadFor } from '@spindlewright/torque';
import { steps, type Worked } from './worked.ts';

/** How deep a 10.9 bolt must go into aluminium. */
export function engagementInAluminium(): Worked {
  const found = strippingEngagement({
    thread: threadFor('M10'),
    loadN: 1200 * 58,
    shearStrengthMPa: 130,
    externalMajorDiameterMm: 9.968,
    internalPitchDiameterMm: 9.206,
  });
  return {
    title: 'M10 of class 10.9 in aluminium: engagement that does not strip',
    source: 'fastener-handbook-stripping',
    citation: 'chapter 99, example',
    steps: steps(0.003, 'three figures', [['engagement', 21.6, found.engagementMm, 'mm']]),
  };
}
