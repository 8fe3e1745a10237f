// Writes the *.ref.json files below: node tests/reference/joints/mathjs-rows.ts
// Textbook formulas of joints, put in words of a general-purpose library that knows units and angles; nothing of this
// repository takes part. mathjs-rows.test.ts asserts that the files are what the library says.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { evaluate, version } from 'mathjs';
import type { ReferenceFile } from '../reference-file.ts';

const exact = {
  rtol: 1e-12,
  atol: 1e-12,
  why: 'the same statics in another form: some twenty roundings of doubles are 4e-15, and the units are of the order of 1',
};

interface Rows {
  id: string;
  title: string;
  function: string;
  /** Inputs by column, each with its unit. */
  given: Record<string, string>;
  /** Expected columns: unit, and the expression in the columns of the row. */
  asked: Record<string, { unit: string; by: string }>;
  rows: Record<string, number | string>[];
  source: string;
  citation: string;
  note?: string;
}

const rowSets: Rows[] = [
  {
    id: 'clamp-pressure-factors',
    title: 'Slip of a clamped hub under an even, a cosine and a line pressure',
    function: 'pinchClamp',
    given: {
      case: 'text',
      bolts: '1',
      preloadKN: 'kN',
      friction: '1',
      diameterMm: 'mm',
      boltLeverMm: 'mm',
      axisLeverMm: 'mm',
    },
    asked: {
      lineSlipNm: {
        unit: 'Nm',
        by: 'bolts * preloadKN * boltLeverMm / axisLeverMm * friction * diameterMm * pi / (2 * (pi / 2))',
      },
      cosineSlipNm: {
        unit: 'Nm',
        by: 'bolts * preloadKN * boltLeverMm / axisLeverMm * friction * diameterMm * pi / (2 * (pi^2 / 8))',
      },
      evenSlipNm: {
        unit: 'Nm',
        by: 'bolts * preloadKN * boltLeverMm / axisLeverMm * friction * diameterMm * pi / (2 * 1)',
      },
    },
    rows: [
      {
        case: 'slotted hub on 40 mm',
        bolts: 2,
        preloadKN: 10,
        friction: 0.15,
        diameterMm: 40,
        boltLeverMm: 60,
        axisLeverMm: 30,
      },
      {
        case: 'arm on 24 mm',
        bolts: 2,
        preloadKN: 8,
        friction: 0.12,
        diameterMm: 24,
        boltLeverMm: 32,
        axisLeverMm: 15,
      },
      {
        case: 'one bolt on 30 mm',
        bolts: 1,
        preloadKN: 12.5,
        friction: 0.2,
        diameterMm: 30,
        boltLeverMm: 35,
        axisLeverMm: 18,
      },
      {
        case: 'without friction',
        bolts: 2,
        preloadKN: 10,
        friction: 0,
        diameterMm: 40,
        boltLeverMm: 60,
        axisLeverMm: 30,
      },
    ],
    source: 'roloff-matek',
    citation:
      'clamped hubs, T = n F (l1/l2) mu pi d/(2 K) with K = 1 for an even pressure, pi^2/8 for a cosine, pi/2 for lines; from memory, not looked up',
  },
  {
    id: 'cotter-friction-angles',
    title: 'Cotter pressed in and driven out, by angles of friction',
    function: 'cotterWedge',
    given: { case: 'text', pressKN: 'kN', angleDeg: 'deg', flatFriction: '1', backFriction: '1' },
    asked: {
      acrossKN: {
        unit: 'kN',
        by: 'pressKN / (tan(angleDeg * pi / 180 + atan(flatFriction)) + backFriction)',
      },
      releasePerAcrossRatio: {
        unit: '1',
        by: 'tan(atan(flatFriction) - angleDeg * pi / 180) + backFriction',
      },
    },
    rows: [
      { case: 'angle of 5 deg, oiled', pressKN: 10, angleDeg: 5, flatFriction: 0.12, backFriction: 0.12 },
      { case: 'dry', pressKN: 10, angleDeg: 5, flatFriction: 0.25, backFriction: 0.3 },
      { case: 'taper 1:50', pressKN: 2, angleDeg: 1.1457628, flatFriction: 0.15, backFriction: 0.1 },
      { case: 'steep', pressKN: 20, angleDeg: 14, flatFriction: 0.1, backFriction: 0.1 },
      { case: 'back without friction', pressKN: 10, angleDeg: 5, flatFriction: 0.12, backFriction: 0 },
      { case: 'no friction at all', pressKN: 10, angleDeg: 5, flatFriction: 0, backFriction: 0 },
      // tan 2.5 deg on both sides: the angle of the flat is the sum of the two angles of friction.
      {
        case: 'at the limit of holding',
        pressKN: 10,
        angleDeg: 5,
        flatFriction: 0.04366094290851206,
        backFriction: 0.04366094290851206,
      },
    ],
    source: 'beer-johnston-statics',
    citation:
      "wedges, by angles of friction: press = across (tan(a + phi) + tan phi'), release = across (tan(phi - a) + tan phi'); the usual form of books on machine elements too, from memory",
    note: 'The force across the joint is that of the way on for the press, and that of the way off for the release.',
  },
  {
    id: 'cotter-flat-edge',
    title: 'First lifting and rocking of a flat under torque, by axial load and bending of a rectangle',
    function: 'cotterWedge',
    given: { case: 'text', pressKN: 'kN', angleDeg: 'deg', lengthMm: 'mm', widthMm: 'mm' },
    asked: {
      firstEdgeNm: {
        unit: 'Nm',
        by: 'pressKN / sin(angleDeg deg) / (lengthMm * widthMm) * (widthMm * lengthMm^2 / 6)',
      },
      rockingNm: { unit: 'Nm', by: 'pressKN / sin(angleDeg deg) * lengthMm / 2' },
      evenPressureMPa: { unit: 'MPa', by: '1000 * pressKN / sin(angleDeg deg) / (lengthMm * widthMm)' },
    },
    rows: [
      { case: 'flat of 12 by 8 mm', pressKN: 2, angleDeg: 5, lengthMm: 12, widthMm: 8 },
      { case: 'flat of 10 by 9 mm', pressKN: 3, angleDeg: 7, lengthMm: 10, widthMm: 9 },
      { case: 'long and narrow', pressKN: 1, angleDeg: 3, lengthMm: 20, widthMm: 4 },
    ],
    source: 'joint-statics-by-hand',
    citation: 'N/A = M/W at the edge, W = w l^2/6; rocking about the other edge; N = P/sin a without friction',
  },
  {
    id: 'cotter-travel',
    title: 'Travel of a cotter: play taken up on its slope, and the joint squeezed like a spring',
    function: 'cotterWedge',
    given: {
      case: 'text',
      pressKN: 'kN',
      angleDeg: 'deg',
      flatFriction: '1',
      backFriction: '1',
      slackMm: 'mm',
      stiffnessKNPerMm: 'kN/mm',
    },
    asked: {
      slackTravelMm: { unit: 'mm', by: 'slackMm * cos(angleDeg deg) / sin(angleDeg deg)' },
      // Squeeze = force across over stiffness; the slope turns travel into squeeze.
      pressTravelMm: {
        unit: 'mm',
        by:
          'pressKN / (tan(angleDeg * pi / 180 + atan(flatFriction)) + backFriction) / stiffnessKNPerMm ' +
          '* cos(angleDeg deg) / sin(angleDeg deg)',
      },
    },
    rows: [
      {
        case: 'oiled',
        pressKN: 10,
        angleDeg: 5,
        flatFriction: 0.12,
        backFriction: 0.12,
        slackMm: 0.1,
        stiffnessKNPerMm: 200,
      },
      {
        case: 'dry',
        pressKN: 15,
        angleDeg: 5,
        flatFriction: 0.25,
        backFriction: 0.3,
        slackMm: 0.05,
        stiffnessKNPerMm: 150,
      },
      {
        case: 'steep',
        pressKN: 8,
        angleDeg: 12,
        flatFriction: 0.1,
        backFriction: 0.15,
        slackMm: 0.3,
        stiffnessKNPerMm: 400,
      },
      {
        case: 'no friction',
        pressKN: 3,
        angleDeg: 6,
        flatFriction: 0,
        backFriction: 0,
        slackMm: 0.2,
        stiffnessKNPerMm: 250,
      },
    ],
    source: 'beer-johnston-statics',
    citation: 'wedges, by angles of friction, as in the rows of forces; the spring across is a model',
  },
  {
    id: 'face-teeth-statics',
    title: 'Face teeth: climbing as a screw without friction, opening as a ring in bending',
    function: 'faceSpline',
    given: {
      case: 'text',
      axialKN: 'kN',
      flankDeg: 'deg',
      outerMm: 'mm',
      innerMm: 'mm',
      torqueNm: 'Nm',
      bendingNm: 'Nm',
    },
    asked: {
      // A flank is a thread of lead 2 pi r/tan f, and a screw without friction turns at F lead/(2 pi).
      climbNm: {
        unit: 'Nm',
        by: 'axialKN * (2 * pi * (outerMm + innerMm) / 4 / tan(flankDeg deg)) / (2 * pi)',
      },
      // W and A of a ring, each by itself.
      needKN: {
        unit: 'kN',
        by:
          'torqueNm / ((outerMm + innerMm) / 4) * tan(flankDeg deg) + ' +
          'bendingNm / (pi * (outerMm^4 - innerMm^4) / (32 * outerMm)) * (pi / 4 * (outerMm^2 - innerMm^2))',
      },
      bearingMPa: { unit: 'MPa', by: '1000 * axialKN / (0.65 * pi / 4 * (outerMm^2 - innerMm^2))' },
    },
    rows: [
      {
        case: 'ring of 24 over 14 mm',
        axialKN: 25,
        flankDeg: 30,
        outerMm: 24,
        innerMm: 14,
        torqueNm: 200,
        bendingNm: 40,
      },
      { case: 'torque alone', axialKN: 20, flankDeg: 30, outerMm: 22, innerMm: 12, torqueNm: 150, bendingNm: 0 },
      { case: 'bending alone', axialKN: 30, flankDeg: 20, outerMm: 30, innerMm: 18, torqueNm: 0, bendingNm: 85 },
      { case: 'flat flanks', axialKN: 15, flankDeg: 45, outerMm: 26, innerMm: 10, torqueNm: 80, bendingNm: 20 },
      {
        case: 'toothed to the centre',
        axialKN: 10,
        flankDeg: 25,
        outerMm: 20,
        innerMm: 0,
        torqueNm: 60,
        bendingNm: 10,
      },
    ],
    source: 'shigley-9',
    citation:
      'chapter on power screws, T = F l/(2 pi) without friction, and section properties of a round ring; from memory, not looked up',
    note: 'Share of the ring that bears 0.65, as judged; each row works climbing, need and pressure by itself.',
  },
];

/** The files by name, without the path. */
export const files: Record<string, ReferenceFile> = Object.fromEntries(
  rowSets.map((set) => [
    `${set.id}.ref.json`,
    {
      id: set.id,
      title: set.title,
      function: set.function,
      columns: {
        ...set.given,
        ...Object.fromEntries(Object.entries(set.asked).map(([name, { unit }]) => [name, unit])),
      },
      expected: Object.keys(set.asked),
      rows: set.rows.map((row) => ({
        ...row,
        ...Object.fromEntries(
          Object.entries(set.asked).map(([name, { by }]) => [name, Number(evaluate(by, { ...row }))]),
        ),
      })),
      tolerance: Object.fromEntries(Object.keys(set.asked).map((name) => [name, exact])),
      origin: {
        kind: 'closed-form',
        source: set.source,
        citation: set.citation,
        tool: `mathjs ${version}`,
        command: 'node tests/reference/joints/mathjs-rows.ts',
        note: Object.entries(set.asked)
          .map(([name, { by }]) => `${name} = ${by}`)
          .join('; '),
      },
      ...(set.note === undefined ? {} : { note: set.note }),
    },
  ]),
);

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, file] of Object.entries(files)) {
    writeFileSync(new URL(name, import.meta.url), `${JSON.stringify(file, null, 2)}\n`);
  }
}
