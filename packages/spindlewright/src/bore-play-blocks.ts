import { describeBorePlay, drawBorePlay } from '@spindlewright/drawing';
import { spindleGeometries } from '@spindlewright/interfaces';
import { hardLimits } from '@spindlewright/quantity';
import { assumedDimensions, clearanceFromPlay, playFromClearance } from '@spindlewright/taper';
import type { Job } from './job.ts';
import { hasTaperSeat, isTaperJob } from './joint-kind.ts';
import { recordsOf } from './records-of.ts';
import { plain } from './seat-words.ts';
import type { Block } from './sheet.ts';

/** Any length does: the angle was read, and the pedal only carries it. */
const CRANK_LENGTH_MM = 170;

/** Where the square is looked at: some way in, where the arm bears; judgement. */
const LOOKED_AT_MM = 7;

/** What a play that was read means for the square hole, drawn; nothing where the arm has no square or no play. @internal */
export function borePlayBlocks(job: Job): Block[] {
  const reading = job.measurements?.playAngleDeg;
  const moving = job.observations?.['play-at-arm'];
  if (reading === undefined || !isTaperJob(job) || (moving !== undefined && moving !== 'arm-moves-on-spindle'))
    return [];
  const { spindle } = recordsOf(job);
  const [published] = hasTaperSeat(spindle.id) ? spindleGeometries(spindle) : [];
  if (published === undefined) return [];
  const faceAngleDeg = hardLimits(published.geometry.faceAngleDeg).nominal;
  const growth = 2 * Math.tan((faceAngleDeg * Math.PI) / 180) * LOOKED_AT_MM;
  const halfWidthMm = (hardLimits(published.geometry.acrossFlatsAtEndMm).nominal + growth) / 2;
  const cornerMm = assumedDimensions.cornerDiameterMm.value / 2;
  const square = {
    halfWidthMm,
    flatWidthMm: 2 * Math.sqrt(cornerMm ** 2 - halfWidthMm ** 2),
    crankLengthMm: CRANK_LENGTH_MM,
  };
  const playDeg = hardLimits(reading).nominal;
  const playAtPedalMm = ((playDeg * Math.PI) / 180) * CRANK_LENGTH_MM;
  const { clearanceMm, rotationDeg } = clearanceFromPlay({ ...square, playAtPedalMm });
  if (clearanceMm === null || clearanceMm <= 0) return [];
  const { takeUpAdvanceMm } = playFromClearance({ ...square, clearanceMm, faceAngleDeg });
  const { flatWidthMm } = square;
  const picture = { halfWidthMm, flatWidthMm, clearanceMm, rotationDeg };
  return [
    {
      kind: 'paragraph',
      text: `The play of ${plain(playDeg, 1)} degrees is a clearance of some ${plain(clearanceMm, 2)} mm on each side of the square, ${plain(playAtPedalMm, 1)} mm at the pedal of a crank of ${CRANK_LENGTH_MM} mm${
        takeUpAdvanceMm === undefined
          ? ''
          : `; the arm would have to sit ${plain(takeUpAdvanceMm, 1)} mm farther in to take it up, and a worn hole is not even`
      } (square of ${plain(2 * halfWidthMm, 1)} mm by a published size, flats of ${plain(flatWidthMm, 1)} mm by judgement).`,
    },
    {
      kind: 'drawing',
      narrowSvg: drawBorePlay({ ...picture, idPrefix: 'play-narrow' }),
      wideSvg: drawBorePlay({ ...picture, idPrefix: 'play-wide', widthPx: 720 }),
      description: describeBorePlay(picture),
    },
  ];
}
