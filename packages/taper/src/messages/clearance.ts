import type { Messages } from '@spindlewright/quantity';

/** Of the room between arm and frame. @internal */
export const clearanceMessages = {
  'arm-close-to-frame':
    'At the worst of the readings and under a hard push {roomMm:1} mm of room are left: turn the cranks with the wheel held and look before riding.',
  'arm-touches-frame':
    'The arm would stand {roomMm:1} mm from the frame (below 0: in it). It must not be ridden so: take a longer spindle or another arm.',
  'flex-assumed': 'The flex under load is not given; {lowerMm:0} to {upperMm:0} mm are taken (judgement).',
} as const satisfies Messages;
