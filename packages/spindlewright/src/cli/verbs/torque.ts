import { toolClasses, tradeTorques } from '@spindlewright/torque/data';
import type { Verb } from './verb.ts';

/** Units of the scale of a wrench. @internal */
export const WRENCH_UNITS = ['Nm', 'lbf.in', 'lbf.ft', 'kgf.cm'] as const;
/** States of thread and head. @internal */
export const LUBRICATIONS = ['lubricated', 'dry', 'unknown'] as const;

/** The verb `torque`. @internal */
export const torqueVerb: Verb = {
  name: 'torque',
  about: 'torque to wrench setting and preload, and back',
  usage: [
    '--target TORQUE --thread THREAD [flags]',
    '--read TORQUE --thread THREAD [flags]',
    '--hold FORCE --thread THREAD [flags]',
  ],
  operands: [],
  flags: [
    {
      name: 'target',
      group: 'what is asked, one of',
      value: 'TORQUE',
      about: "what the bolt is to get, the part maker's value first: what to set, what preload to reckon with",
    },
    {
      name: 'read',
      group: 'what is asked, one of',
      value: 'TORQUE',
      about: 'what the wrench showed while the bolt still turned: what preload there may be',
    },
    {
      name: 'hold',
      group: 'what is asked, one of',
      value: 'FORCE',
      about: 'preload that has to be there at the least: what to set',
    },
    { name: 'thread', group: 'the bolt', value: 'THREAD', about: 'such as M8x1, M12x1, 9/16-20 or "9/16-20 LH"' },
    {
      name: 'lubrication',
      group: 'the bolt',
      value: 'STATE',
      choices: LUBRICATIONS,
      about: 'what is on thread and head (unknown)',
    },
    {
      name: 'friction',
      group: 'the bolt',
      value: 'N..N',
      about: 'friction of thread and head, in place of the lubrication',
    },
    {
      name: 'head-friction',
      group: 'the bolt',
      value: 'N..N',
      about: 'friction under the head, where it is another one',
    },
    { name: 'head', group: 'the bolt', value: 'LENGTH', about: 'outer diameter of the face that bears under the head' },
    {
      name: 'class',
      group: 'the bolt',
      value: 'CLASS',
      about: 'property class on the head, such as 8.8: how far the bolt is used',
    },
    {
      name: 'tool',
      group: 'the wrench',
      value: 'TOOL',
      choices: toolClasses.map(({ id }) => id),
      about: 'how true the wrench is (click-wrench-iso-6789)',
    },
    {
      name: 'unit',
      group: 'the wrench',
      value: 'UNIT',
      choices: WRENCH_UNITS,
      about: 'unit of its scale (that of the torque given)',
    },
    { name: 'scale', group: 'the wrench', value: 'N..N', about: 'where its scale begins and ends, in that unit' },
    { name: 'wrench', group: 'the wrench', value: 'LENGTH', about: 'from its square to the mark on the grip' },
    { name: 'extension', group: 'the wrench', value: 'LENGTH', about: 'extension on its square; asks for --wrench' },
    { name: 'angle', group: 'the wrench', value: 'ANGLE', about: 'of the extension to the wrench ("0 deg": in line)' },
    {
      name: 'joint',
      value: 'JOINT',
      choices: [...new Set(tradeTorques.map(({ joint }) => joint))],
      about: 'whose trade torques are shown (the one that goes with the thread)',
    },
    { name: 'json', about: 'the answer as data' },
  ],
  notes: [
    'Torques, forces and lengths have their unit: "40 Nm", "350 in-lb", "30 ft-lb", "408 kgf.cm", "14 kN", "10 in". A range is "38..42 Nm"; as a target its middle is set.',
  ],
  examples: [
    { about: 'a crank bolt, greased', command: 'torque --target "40 Nm" --thread M8x1 --lubrication lubricated' },
    {
      about: 'a wrench in inch-pounds that ends too low: which extension reaches',
      command: 'torque --target "40 Nm" --thread M8x1 --unit lbf.in --scale 60..300 --wrench "300 mm"',
    },
    {
      about: 'the extension at hand',
      command: 'torque --target "350 lbf.in" --thread M8x1 --wrench "250 mm" --extension "75 mm"',
    },
    {
      about: 'what a reading of 35 Nm means, and whether the bolt bears it',
      command: 'torque --read "35 Nm" --thread M8x1 --lubrication dry --class 8.8',
    },
    {
      about: 'the setting at whose worst 12 kN are there, as data',
      command: 'torque --hold "12 kN" --thread M8x1 --json',
    },
  ],
};
