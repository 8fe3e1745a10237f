// The picture at the top of each package's README: what its first example comes to, drawn by our own library.
import { readFileSync } from 'node:fs';
import { diagnose, listConditions } from '@spindlewright/diagnosis';
import { drawDiagnosis, drawPreloadRange, drawSeat } from '@spindlewright/drawing';
import { armGeometries, getInterface, spindleGeometries } from '@spindlewright/interfaces';
import { hardLimits } from '@spindlewright/quantity';
import { predictSeat } from '@spindlewright/taper';
import { preloadRange, threadFor } from '@spindlewright/torque';
import { readJob, workJob } from 'spindlewright';

const widthPx = 720;
const idPrefix = 'picture';

function quantityPicture(): string {
  const preloadN = hardLimits({ value: 12_000, standardUncertainty: 500 });
  return drawPreloadRange({ preloadN, title: 'A preload with its uncertainty, as hard limits', widthPx, idPrefix });
}

/** A published spindle with the arm of its own set, one as the other was measured. */
function interfacesPicture(): string {
  const record = getInterface('square-taper-jis');
  for (const { set, geometry: spindle } of spindleGeometries(record)) {
    const arm = armGeometries(record).find((other) => other.set === set)?.geometry;
    if (arm === undefined) continue;
    const { handFit, pressed } = predictSeat({ spindle, arm });
    return drawSeat({ spindle, arm, handFit, pressed, widthPx, idPrefix });
  }
  throw new Error('no published set has both parts');
}

function taperPicture(): string {
  const spindle = { acrossFlatsAtEndMm: 12.63, faceAngleDeg: 2, flatLengthMm: 15 };
  const arm = { acrossFlatsAtMouthMm: 13.54, faceAngleDeg: 2, boreLengthMm: 13.5, bossDiameterMm: 38 };
  const trialFit = { endGapMm: { lower: 0.2, nominal: 0.3, upper: 0.4 } };
  const pressing = { axialForceN: { lower: 18_000, nominal: 24_000, upper: 30_000 }, friction: 0.13 };
  const { handFit, pressed, verdict } = predictSeat({ spindle, arm, trialFit, pressing });
  return drawSeat({ spindle, arm, handFit, pressed, verdict, widthPx, idPrefix });
}

function torquePicture(): string {
  const friction = { lower: 0.08, nominal: 0.12, upper: 0.16 };
  const { preloadN } = preloadRange({
    torqueNm: 40,
    tool: 'click-wrench-iso-6789',
    thread: threadFor('M8x1'),
    threadFriction: friction,
    bearingFriction: friction,
    bearing: { outerDiameterMm: 16, holeDiameterMm: 8.4 },
  });
  return drawPreloadRange({ preloadN, widthPx, idPrefix });
}

function diagnosisPicture(): string {
  const joint = 'square-taper-jis';
  const { conditions } = diagnose({
    joint,
    observations: { 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'tight', 'bore-flats': 'rounded' },
  });
  const words = new Map(listConditions(joint).map(({ id, text }) => [id, text]));
  const likeliest = conditions.slice(0, 5);
  return drawDiagnosis({
    conditions: likeliest.map(({ id, probability }) => ({ label: words.get(id) ?? id, probability })),
    widthPx,
    idPrefix,
  });
}

const drawingPicture = (): string =>
  drawSeat({
    handFit: { endGapMm: 3.2, shoulderGapMm: 2.9 },
    pressed: { endGapMm: 2.1, shoulderGapMm: 1.8 },
    widthPx,
    idPrefix,
  });

/** The first drawing of a shipped job. */
function jobPicture(): string {
  const job = readJob(JSON.parse(readFileSync(new URL('../examples/jobs/good-arm.json', import.meta.url), 'utf8')));
  for (const block of workJob(job).sections.flatMap(({ blocks }) => blocks))
    if (block.kind === 'drawing') return block.wideSvg;
  throw new Error('the job has no drawing');
}

const PICTURES: Readonly<Record<string, () => string>> = {
  quantity: quantityPicture,
  interfaces: interfacesPicture,
  taper: taperPicture,
  torque: torquePicture,
  diagnosis: diagnosisPicture,
  drawing: drawingPicture,
  spindlewright: jobPicture,
};

/** Path and text of each picture. */
export const readmePictures = (): Map<string, string> =>
  new Map(Object.entries(PICTURES).map(([folder, draw]) => [`packages/${folder}/picture.svg`, `${draw()}\n`]));
