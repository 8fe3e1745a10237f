import type { Datum } from '@spindlewright/quantity';

/** What the sheet takes when the job does not say; each is a datum with its standing, and is named on the sheet. */
export const jobDefaults = {
  /** Half-width of a depth-rod reading. */
  depthReading: {
    value: 0.1,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'half-width of a depth-rod reading at the stand',
  },
  /** Half-width of a caliper reading across flats. */
  caliperReading: {
    value: 0.02,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'half-width of a caliper reading across flats',
  },
  /** Half-width of the plane in which a caliper jaw bears. */
  caliperPlane: {
    value: 0.25,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'half-width of the place where the jaw bears',
  },
  /** Half-width of any other length read. */
  lengthReading: {
    value: 0.2,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'half-width of a length or diameter read with a caliper on an edge',
  },
  /** Friction of flats whose state is not known: the bounds of greased and dry flats together. */
  unknownFlats: {
    value: 0.17,
    lower: 0.1,
    upper: 0.3,
    unit: '1',
    standing: 'judgement',
    sources: [],
    note: 'steel spindle in an aluminium arm, state not known',
  },
  /** Friction of a lubricated thread and head. */
  lubricatedThread: {
    value: 0.12,
    lower: 0.08,
    upper: 0.16,
    unit: '1',
    standing: 'secondary',
    sources: ['vdi-2230-2001-quoted'],
    note: 'friction class B; the nominal is its middle',
  },
  /** Friction of a dry thread and head. */
  dryThread: {
    value: 0.19,
    lower: 0.14,
    upper: 0.24,
    unit: '1',
    standing: 'secondary',
    sources: ['vdi-2230-2001-quoted'],
    note: 'friction class C; the nominal is its middle',
  },
  /** Friction of a thread and head whose state is not known. */
  unknownThread: {
    value: 0.15,
    lower: 0.08,
    upper: 0.24,
    unit: '1',
    standing: 'secondary',
    sources: ['vdi-2230-2001-quoted'],
    note: 'friction classes B and C together',
  },
  /** Yield strength of the arm. */
  armYield: {
    value: 400,
    lower: 241,
    upper: 483,
    unit: 'MPa',
    standing: 'judgement',
    sources: ['material-properties-pipe'],
    note: 'alloys of arms are not marked: design yields of 6061-T6 (35 ksi) and 7075-T6 (70 ksi) as bounds, 2014-T6 (58 ksi) between',
  },
  /** Diameter of the boss. */
  bossDiameter: {
    value: 36,
    lower: 32,
    upper: 42,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'boss of an aluminium arm round the square hole',
  },
  /** Stiffness of the fixing bolt with all it clamps. */
  boltStiffness: {
    value: 400000,
    lower: 200000,
    upper: 600000,
    unit: 'N/mm',
    standing: 'judgement',
    sources: [],
    note: 'M8 steel bolt, 15 to 20 mm of free length, with washer and seat in series',
  },
  /** Across flats of the square hole where the washer lies. */
  squareUnderHead: {
    value: 12.5,
    unit: 'mm',
    standing: 'judgement',
    sources: ['taper-jp-sizes-2014'],
    note: 'small end of the square, which is what a head without a washer would have to bridge',
  },
  /** Property class to reckon with while none was read. */
  unreadPropertyClass: {
    value: 8.8,
    unit: 'class',
    standing: 'judgement',
    sources: [],
    note: 'the weakest class that a crank bolt is likely to have; only ever a reason to ask for the head mark',
  },
  /** How much larger the hole under the bolt head is than the thread. */
  bearingHoleClearance: {
    value: 0.4,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'washer hole over the nominal diameter of the thread, 8.4 mm for M8',
  },
  /** Smallest ring that a bolt head leaves round its hole, where the face was not read. */
  bearingRing: {
    value: 3.8,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'width of the ring under a crank bolt, 8.4 to 16 mm for M8',
  },
  /** Outer diameter of the face under the head of a pinch bolt. */
  pinchHead: {
    value: 10,
    unit: 'mm',
    standing: 'from-memory',
    sources: [],
    note: 'head of a socket screw M6, ISO 4762',
  },
  /** Pinch bolts of an arm whose number was not told. */
  pinchBolts: {
    value: 2,
    unit: 'bolts',
    standing: 'secondary',
    sources: ['dealer-torque-tables'],
    note: 'two bolts, tightened in turn',
  },
  /** Width of a clamp along the spindle. */
  clampWidth: {
    value: 18,
    lower: 14,
    upper: 22,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'pinched end of an aluminium arm',
  },
  /** From the hinge of a clamp to its bolts. */
  hingeToBolt: {
    value: 30,
    lower: 27,
    upper: 34,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'the solid part behind the spindle is taken for the hinge',
  },
  /** From the hinge of a clamp to the axis of the spindle. */
  hingeToAxis: {
    value: 16,
    lower: 14,
    upper: 18,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'half the spindle and what stands behind it',
  },
  /** Friction between an arm and the spindle that it is clamped or pressed on. */
  clampFriction: {
    value: 0.15,
    lower: 0.1,
    upper: 0.2,
    unit: '1',
    standing: 'judgement',
    sources: [],
    note: 'steel spindle in an aluminium arm, greased thinly or dry',
  },
  /** Pressure that the flanks of splines in an aluminium arm bear. */
  splinePressure: {
    value: 100,
    lower: 60,
    upper: 140,
    unit: 'MPa',
    standing: 'judgement',
    sources: [],
    note: 'flanks of splines in aluminium under a load that swells',
  },
  /** Friction of a cotter on its flat and on its back. */
  cotterFriction: {
    value: 0.15,
    lower: 0.1,
    upper: 0.2,
    unit: '1',
    standing: 'judgement',
    sources: [],
    note: 'steel on steel, greased thinly or dry',
  },
  /** Torque of a crank under a rider who stands on the pedal. */
  riderTorque: {
    value: 200,
    unit: 'Nm',
    standing: 'judgement',
    sources: [],
    note: 'some 1200 N on a crank of 170 mm',
  },
  /** Force of a rider who stands on the pedal. */
  riderForce: {
    value: 1200,
    unit: 'N',
    standing: 'judgement',
    sources: [],
    note: 'a heavy rider out of the saddle',
  },
  /** Face angle that the settling estimate reckons with. */
  settlingFaceAngle: {
    value: 2,
    unit: 'deg',
    standing: 'secondary',
    sources: ['taper-de-wiki'],
    note: 'the estimate hardly feels the few per cent by which published angles differ',
  },
  /** From here on a condition is stated without its chance. */
  plainStatement: {
    value: 0.9,
    unit: '1',
    standing: 'judgement',
    sources: [],
    note: 'probability from which a sheet states a condition plainly',
  },
  /** From here on a condition is called the most likely one. */
  evenChance: {
    value: 0.5,
    unit: '1',
    standing: 'judgement',
    sources: [],
    note: 'an even chance',
  },
  /** From here on a cause is told to the owner. */
  worthNamingCause: {
    value: 0.4,
    unit: '1',
    standing: 'judgement',
    sources: [],
    note: 'probability from which the owner is told a cause',
  },
  /** From here on an effect on the seat is worth a sentence. */
  worthNamingEffect: {
    value: 0.05,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'half of a depth-rod reading',
  },
  /** Share of the lowest, and inverse share of the highest trade torque beyond which a maker's value is doubted. */
  doubtedTorqueShare: {
    value: 0.6,
    unit: '1',
    standing: 'judgement',
    sources: [],
    note: 'far enough from the trade that a wrong unit is likelier than a special part',
  },
  /** Step in which extensions are chosen. */
  extensionStep: {
    value: 5,
    unit: 'mm',
    standing: 'judgement',
    sources: [],
    note: 'extensions are picked to the next 5 mm',
  },
} as const satisfies Record<string, Datum>;
